/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/breaks.h"
#include "team/sql.h"
#include <stdlib.h>

static bw_status check(const bw_entry *e, bw_error *error) {
    *error = (bw_error){.status = BW_OK};
    bw_text why = bw_text_in(error->message, sizeof error->message);
    const bw_status status = bw_entry_check(e, &why);
    error->status = status;
    return status;
}

static void bind_optional(bw_sql *q, bool known, int64_t value) {
    if (known)
        bw_sql_int(q, value);
    else
        bw_sql_null(q);
}

static void bind_place(bw_sql *q, bool known, double metres) {
    if (known)
        bw_sql_real(q, metres);
    else
        bw_sql_null(q);
}

/// Everything but the client id, in the order of both statements below.
static void bind_entry(bw_sql *q, const bw_entry *e) {
    bind_optional(q, e->game != 0, e->game);
    bw_sql_int(q, e->time);
    bw_sql_int(q, e->offence);
    bw_sql_int(q, e->defence);
    bw_sql_text(q, bw_outcome_id(e->outcome));
    bind_place(q, !(e->seconds < 0), e->seconds);
    bind_optional(q, e->passes >= 0, e->passes);
    bind_place(q, e->shot_known, e->shot.x);
    bind_place(q, e->shot_known, e->shot.y);
    bind_optional(q, e->stage != 0, e->stage);
    bind_optional(q, e->revision != 0, e->revision);
    bw_sql_text(q, e->note);
}

static bw_status put_out(bw_team *team, const bw_entry *e, int64_t id, bw_error *error) {
    bw_sql q = bw_sql_of(team, "INSERT INTO entry_out (entry, place, who) VALUES (?, ?, ?)");
    for (int i = 0; i < e->out_count; i++) {
        bw_sql_int(&q, id);
        bw_sql_int(&q, i);
        bw_sql_text(&q, e->out[i]);
        bw_sql_again(&q);
    }
    return bw_sql_end(&q, error);
}

static bw_status insert(bw_team *team, bw_entry *e, bw_error *error) {
    bw_sql q = bw_sql_of(team, "INSERT INTO entry (client, game, time, offence, defence, outcome,"
                               " seconds, passes, shot_x, shot_y, stage, revision, note)"
                               " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    bw_sql_text(&q, e->client);
    bind_entry(&q, e);
    if (bw_sql_again(&q)) e->order = sqlite3_last_insert_rowid(team->db);
    const bw_status status = bw_sql_end(&q, error);
    return status == BW_OK ? put_out(team, e, e->order, error) : status;
}

/// Whether an entry is known; its order number is 0 when it was removed.
static bw_status known(bw_team *team, bw_entry *e, bool *is, bw_error *error) {
    bw_sql q = bw_sql_of(team, "SELECT id FROM entry WHERE client = ?1 UNION ALL"
                               " SELECT 0 FROM removed WHERE client = ?1 LIMIT 1");
    bw_sql_text(&q, e->client);
    *is = bw_sql_row(&q);
    e->order = *is ? bw_sql_int_at(&q, 0) : 0;
    return bw_sql_end(&q, error);
}

static bw_status add(bw_team *team, bw_entry *e, bool *is_new, bw_error *error) {
    bool is_known = false;
    bw_status status = check(e, error);
    if (status == BW_OK) status = known(team, e, &is_known, error);
    *is_new = status == BW_OK && !is_known;
    return *is_new ? insert(team, e, error) : status;
}

bw_status bw_team_add_entries(bw_team *team, bw_entry *entries, int count, bool *fresh, int *added,
                              bw_error *error) {
    *added = 0;
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    for (int i = 0; status == BW_OK && i < count; i++) {
        bool is_new;
        status = add(team, &entries[i], &is_new, error);
        if (fresh) fresh[i] = is_new;
        *added += is_new;
    }
    return bw_team_end(team, status, error);
}

static bw_status read_out(bw_team *team, bw_entry *list, int count, bw_error *error) {
    bw_sql q = bw_sql_of(team, "SELECT who FROM entry_out WHERE entry = ? ORDER BY place");
    for (int i = 0; i < count; i++) {
        bw_entry *e = &list[i];
        bw_sql_int(&q, e->order);
        while (bw_sql_row(&q) && e->out_count < BW_MAX_OUT)
            bw_sql_text_at(&q, 0, e->out[e->out_count++], BW_ID_SIZE);
        sqlite3_reset(q.statement);
        q.bound = 0;
    }
    return bw_sql_end(&q, error);
}

static void read_entry(const bw_sql *q, bw_entry *e) {
    char outcome[32];
    *e = (bw_entry){.order = bw_sql_int_at(q, 0),
                    .game = bw_sql_int_at(q, 2),
                    .time = bw_sql_int_at(q, 3),
                    .offence = (int)bw_sql_int_at(q, 4),
                    .defence = (int)bw_sql_int_at(q, 5),
                    .seconds = bw_sql_real_at(q, 7, -1),
                    .passes = bw_sql_null_at(q, 8) ? -1 : (int)bw_sql_int_at(q, 8),
                    .shot_known = !bw_sql_null_at(q, 9),
                    .shot = bw_v(bw_sql_real_at(q, 9, 0), bw_sql_real_at(q, 10, 0)),
                    .stage = (int)bw_sql_int_at(q, 11),
                    .revision = bw_sql_int_at(q, 12)};
    bw_sql_text_at(q, 1, e->client, sizeof e->client);
    bw_sql_text_at(q, 6, outcome, sizeof outcome);
    e->outcome = bw_outcome_find(outcome);
    bw_sql_text_at(q, 13, e->note, sizeof e->note);
}

/// What was written passed the check; what does not now was damaged on the disk.
static bw_status still_sound(bw_entry *list, int count, bw_error *error) {
    for (int i = 0; i < count; i++) {
        if (check(&list[i], error) != BW_OK)
            return bw_team_fail(error, BW_BAD_INPUT,
                                "break %lld in the file is damaged; restore a backup of it",
                                (long long)list[i].order);
    }
    return BW_OK;
}

bw_status bw_team_entries(bw_team *team, const bw_entry_filter *filter, bw_entry **list, int *count,
                          bw_error *error) {
    static const bw_entry_filter all = {0};
    if (!filter) filter = &all;
    *list = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, "SELECT id, client, game, time, offence, defence, outcome, seconds,"
                               " passes, shot_x, shot_y, stage, revision, note FROM entry"
                               " WHERE (?1 = 0 OR game = ?1) AND (?2 = 0 OR revision = ?2)"
                               " AND id BETWEEN ?3 AND ?4 ORDER BY id");
    bw_sql_int(&q, filter->game);
    bw_sql_int(&q, filter->revision);
    bw_sql_int(&q, filter->order); // a range: one break is then found without looking at all
    bw_sql_int(&q, filter->order ? filter->order : INT64_MAX);
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)list, *count, sizeof **list))
        read_entry(&q, &(*list)[(*count)++]);
    bw_status status = bw_sql_end_list(&q, (void **)list, count, error);
    if (status == BW_OK) status = read_out(team, *list, *count, error);
    if (status == BW_OK) status = still_sound(*list, *count, error);
    if (status != BW_OK) {
        free(*list);
        *list = NULL;
        *count = 0;
    }
    return status;
}

static bw_status none(int64_t order, bw_error *error) {
    return order > 0 ? bw_team_fail(error, BW_NOT_FOUND, "there is no break %lld in the log",
                                    (long long)order)
                     : bw_team_fail(error, BW_NOT_FOUND, "there is no break in the log yet");
}

bw_status bw_team_entry(bw_team *team, int64_t order, bw_entry *entry, bw_error *error) {
    bw_entry *list;
    int count;
    int64_t newest = 0;
    bw_status status = BW_OK;
    if (order == 0) status = bw_sql_number(team, "SELECT max(id) FROM entry", 0, &newest, error);
    if (status != BW_OK) return status;
    const int64_t wanted = order != 0 ? order : newest;
    if (wanted <= 0) return none(order, error);
    status = bw_team_entries(team, &(bw_entry_filter){.order = wanted}, &list, &count, error);
    if (status != BW_OK) return status;
    if (count > 0) *entry = list[0];
    free(list);
    return count > 0 ? BW_OK : none(order, error);
}

static bw_status drop_out(bw_team *team, int64_t order, bw_error *error) {
    bw_sql q = bw_sql_of(team, "DELETE FROM entry_out WHERE entry = ?");
    bw_sql_int(&q, order);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

static bw_status update(bw_team *team, const bw_entry *e, bw_error *error) {
    bw_sql q = bw_sql_of(team, "UPDATE entry SET game = ?, time = ?, offence = ?, defence = ?,"
                               " outcome = ?, seconds = ?, passes = ?, shot_x = ?, shot_y = ?,"
                               " stage = ?, revision = ?, note = ? WHERE id = ?");
    bind_entry(&q, e);
    bw_sql_int(&q, e->order);
    const bool ran = bw_sql_again(&q);
    const int rows = sqlite3_changes(team->db);
    bw_status status = bw_sql_end(&q, error);
    if (ran && rows == 0) return none(e->order, error);
    if (status == BW_OK) status = drop_out(team, e->order, error);
    return status == BW_OK ? put_out(team, e, e->order, error) : status;
}

bw_status bw_team_change_entry(bw_team *team, const bw_entry *entry, bw_error *error) {
    bw_status status = check(entry, error);
    if (status != BW_OK) return status;
    status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = update(team, entry, error);
    return bw_team_end(team, status, error);
}

static bw_status remove_one(bw_team *team, int64_t order, bw_error *error) {
    bw_sql keep = bw_sql_of(team, "INSERT INTO removed (client) SELECT client FROM entry"
                                  " WHERE id = ?");
    bw_sql_int(&keep, order);
    const bool ran = bw_sql_again(&keep);
    const int rows = sqlite3_changes(team->db);
    const bw_status status = bw_sql_end(&keep, error);
    if (ran && rows == 0) return none(order, error);
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, "DELETE FROM entry WHERE id = ?");
    bw_sql_int(&q, order);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

bw_status bw_team_remove_entry(bw_team *team, int64_t order, bw_error *error) {
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = remove_one(team, order, error);
    return bw_team_end(team, status, error);
}
