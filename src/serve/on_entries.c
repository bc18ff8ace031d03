/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The log: breaks read, sent in, put right and taken out.
#include "report/team_json.h"
#include "serve/route.h"
#include "serve/team_desk.h"
#include "serve/team_form.h"
#include "serve/team_odd.h"
#include <stdlib.h>

bw_reply bw_on_entries(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_entry *list = NULL;
    int count, game;
    if (!bw_target_number(&ask->target, "game", 1, 999999, 0, &game))
        return bw_reply_words(400, "game is the number of a game.");
    bw_team *team = bw_desk_open(site, ask, BW_TEAM_READ, &answer);
    if (!team) return answer;
    const bw_status status =
        bw_team_entries(team, &(bw_entry_filter){.game = game}, &list, &count, &error);
    bw_team_close(team);
    if (status != BW_OK) return bw_desk_refusal(&error);
    bw_reply_json out;
    answer = bw_reply_no_memory();
    if (bw_reply_json_begin(&out)) {
        free(answer.own.data);
        bw_json_put_open(&out.json, "entries", '[');
        for (int i = 0; i < count; i++)
            bw_json_entry(&out.json, &list[i], NULL, BW_METRES);
        bw_json_close(&out.json, ']');
        answer = bw_reply_json_end(&out, 200);
    }
    free(list);
    return answer;
}

/// Breaks of one request, each with what became of it.
typedef struct batch {
    bw_sent sent;
    bw_entry entries[BW_SENT_MAX];
    bool fresh[BW_SENT_MAX];
    bw_odd odd[BW_SENT_MAX];
} batch;

/// A game or revision that is not in the file makes a break no good; not found is the break itself alone.
static bw_status of_the_break(bw_status status, bw_error *error) {
    if (status != BW_NOT_FOUND) return status;
    return error->status = BW_BAD_INPUT;
}

static bw_status put_game(bw_team *team, bw_sent_entry *sent, bw_error *error) {
    if (!sent->named) return BW_OK;
    const bw_status status = bw_team_put_game(team, &sent->game, error);
    sent->entry.game = sent->game.id;
    return status;
}

/// Games and breaks in one change.
static bw_status store(bw_team *team, batch *b, bw_error *error) {
    int added;
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    for (int i = 0; i < b->sent.count && status == BW_OK; i++) {
        status = put_game(team, &b->sent.list[i], error);
        b->entries[i] = b->sent.list[i].entry;
    }
    if (status == BW_OK)
        status = bw_team_add_entries(team, b->entries, b->sent.count, b->fresh, &added, error);
    if (status == BW_OK) bw_odd_entries_sent(team, b->entries, b->fresh, b->sent.count, b->odd);
    return of_the_break(bw_team_end(team, status, error), error);
}

/// What became of each break.
static bw_reply tell(const bw_entry *entries, const bool *fresh, const bw_odd *odd, int count) {
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_open(&out.json, "entries", '[');
    for (int i = 0; i < count; i++) {
        bw_json_open(&out.json, '{');
        bw_json_put_text(&out.json, "id", entries[i].client);
        bw_json_put_number(&out.json, "number", (double)entries[i].order);
        bw_json_put_bool(&out.json, "fresh", fresh[i]);
        if (odd[i].kind != BW_ODD_NOTHING) bw_json_put_text(&out.json, "odd", odd[i].message);
        bw_json_close(&out.json, '}');
    }
    bw_json_close(&out.json, ']');
    return bw_reply_json_end(&out, 200);
}

static bw_reply take(bw_site *site, bw_ask *ask, batch *b) {
    bw_reply answer;
    bw_error error;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_sent, &b->sent, &answer);
    if (!team) return answer;
    const bw_status status = store(team, b, &error);
    bw_team_close(team);
    return status == BW_OK ? tell(b->entries, b->fresh, b->odd, b->sent.count)
                           : bw_desk_refusal(&error);
}

bw_reply bw_on_entries_post(bw_site *site, bw_ask *ask) {
    batch *b = calloc(1, sizeof *b);
    if (!b) return bw_reply_no_memory();
    const bw_reply answer = take(site, ask, b);
    free(b);
    return answer;
}

/// The game, if it was named, and the break in one change. A break keeps the id it was logged under.
static bw_status change(bw_team *team, bw_sent_entry *sent, bw_odd *odd, bw_error *error) {
    bw_entry there;
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = bw_team_entry(team, sent->entry.order, &there, error);
    if (status != BW_OK) return bw_team_end(team, status, error);
    status = put_game(team, sent, error);
    if (status == BW_OK) status = bw_team_change_entry(team, &sent->entry, error);
    bw_copy(sent->entry.client, sizeof sent->entry.client, there.client);
    if (status == BW_OK) bw_odd_entries_sent(team, &sent->entry, &(bool){true}, 1, odd);
    return of_the_break(bw_team_end(team, status, error), error);
}

bw_reply bw_on_entry_change(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_sent_entry sent;
    bw_odd odd;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_entry, &sent, &answer);
    if (!team) return answer;
    sent.entry.order = ask->id;
    const bw_status status = change(team, &sent, &odd, &error);
    bw_team_close(team);
    return status == BW_OK ? tell(&sent.entry, &(bool){false}, &odd, 1) : bw_desk_refusal(&error);
}

bw_reply bw_on_entry_remove(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_team *team = bw_desk_open(site, ask, BW_TEAM_WRITE, &answer);
    if (!team) return answer;
    const bw_status status = bw_team_remove_entry(team, ask->id, &error);
    bw_team_close(team);
    return status == BW_OK ? bw_reply_words(200, "Taken out.") : bw_desk_refusal(&error);
}
