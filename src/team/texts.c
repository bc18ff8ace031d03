/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/texts.h"
#include "core/text.h"
#include "scheme/tree.h"
#include "team/revisions.h"
#include "team/scheme_texts.h"
#include "team/sql.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/// One column of texts.
typedef struct source {
    const char *read;  ///< row number, text, where it stands; ?1 is the player's jersey
    const char *write; ///< ?1 is the new text, ?2 the row number, or the old text
    const char
        *taken; ///< with the same values, a row when the text may not be; NULL: it always may
    bool by_text, code, names_only;
} source;

/// Whatever is called by a scheme's name comes before the name itself.
static const source sources[] = {
    {.read = "SELECT id, note, 'break ' || id || ', note' FROM entry ORDER BY id",
     .write = "UPDATE entry SET note = ?1 WHERE id = ?2"},
    {.read = "SELECT id, client, 'break ' || id || ', its id' FROM entry ORDER BY id",
     .write = "UPDATE entry SET client = ?1 WHERE id = ?2",
     .taken = "SELECT 1 FROM entry WHERE client = ?1 AND id <> ?2"
              " UNION ALL SELECT 1 FROM removed WHERE client = ?1",
     .code = true},
    {.read = "SELECT 0, client, 'a removed break, its id' FROM removed ORDER BY client",
     .write = "UPDATE removed SET client = ?1 WHERE client = ?2",
     .taken = "SELECT 1 FROM removed WHERE client = ?1 AND client <> ?2"
              " UNION ALL SELECT 1 FROM entry WHERE client = ?1",
     .by_text = true,
     .code = true},
    {.read = "SELECT 0, who, 'out of place in ' || count(*) || ' breaks' FROM entry_out"
             " GROUP BY who ORDER BY who",
     .write = "DELETE FROM entry_out WHERE who = ?2",
     .by_text = true},
    {.read = "SELECT id, opponent, 'game ' || id || ' of ' || date || ', opponent' FROM game"
             " ORDER BY id",
     .write = "UPDATE game SET opponent = ?1 WHERE id = ?2",
     .taken = "SELECT 1 FROM game WHERE opponent = ?1 AND id <> ?2"
              " AND date = (SELECT date FROM game WHERE id = ?2)"},
    {.read = "SELECT id, field, 'game ' || id || ' of ' || date || ', field' FROM game ORDER BY id",
     .write = "UPDATE game SET field = ?1 WHERE id = ?2"},
    {.read = "SELECT 0, value, 'the team''s name' FROM setting WHERE name = 'team'",
     .write = "UPDATE setting SET value = ?1 WHERE name = 'team'"},
    {.read = "SELECT 0, value, 'the line on every review' FROM setting WHERE name = 'about'",
     .write = "UPDATE setting SET value = ?1 WHERE name = 'about'"},
    {.read = "SELECT quiz.id, code, 'a quiz result of number ' || jersey FROM quiz"
             " JOIN player ON player.id = quiz.player WHERE jersey <> ?1 ORDER BY quiz.id",
     .write = "UPDATE quiz SET code = ?1 WHERE id = ?2",
     .taken = "SELECT 1 FROM quiz WHERE code = ?1 AND id <> ?2"
              " AND player = (SELECT player FROM quiz WHERE id = ?2)",
     .names_only = true},
    {.read = "SELECT id, note, 'revision ' || id || ', note' FROM revision ORDER BY id",
     .write = "UPDATE revision SET note = ?1 WHERE id = ?2"},
};

static const source scheme_names = {
    .read = "SELECT id, name, 'scheme ' || name || ', its name' FROM scheme ORDER BY id",
    .write = "UPDATE scheme SET name = ?1 WHERE id = ?2",
    .taken = "SELECT 1 FROM scheme WHERE name = ?1 AND id <> ?2"};

/// A document that can no longer be read as a scheme is gone over as it is.
static const source damaged = {
    .read = "SELECT id, document, 'revision ' || id || ', its damaged document' FROM revision"
            " WHERE id = ?1",
    .write = "UPDATE revision SET document = ?1 WHERE id = ?2"};

/// A row read before any is changed: a change may move rows under a statement that still reads them.
typedef struct row {
    int64_t id;
    char *text, *where;
} row;

static char *copy_at(bw_sql *q, int column) {
    const char *text = (const char *)sqlite3_column_text(q->statement, column);
    char *copy = strdup(text ? text : "");
    if (!copy) q->code = SQLITE_NOMEM;
    return copy;
}

static void drop_rows(row *rows, int count) {
    for (int i = 0; i < count; i++) {
        free(rows[i].text);
        free(rows[i].where);
    }
    free(rows);
}

static bw_status read_rows(bw_team *team, const source *from, int64_t value, row **rows, int *count,
                           bw_error *error) {
    *rows = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, from->read);
    if (sqlite3_bind_parameter_count(q.statement) > 0) bw_sql_int(&q, value);
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)rows, *count, sizeof **rows)) {
        row *r = &(*rows)[(*count)++];
        *r = (row){bw_sql_int_at(&q, 0), copy_at(&q, 1), copy_at(&q, 2)};
    }
    const bw_status status = bw_sql_end(&q, error);
    if (status == BW_OK) return BW_OK;
    drop_rows(*rows, *count);
    *rows = NULL;
    *count = 0;
    return status;
}

static void bind(bw_sql *q, const source *to, const row *r, const char *text) {
    bw_sql_text(q, text);
    if (sqlite3_bind_parameter_count(q->statement) < 2) return;
    if (to->by_text)
        bw_sql_text(q, r->text);
    else
        bw_sql_int(q, r->id);
}

static bw_status is_taken(bw_team *team, const source *to, const row *r, const char *text,
                          bool *taken, bw_error *error) {
    *taken = false;
    if (!to->taken) return BW_OK;
    bw_sql q = bw_sql_of(team, to->taken);
    bind(&q, to, r, text);
    *taken = bw_sql_row(&q);
    return bw_sql_end(&q, error);
}

/// Puts the text back. Where it may not be the same as another, with a number in place of what would make it
/// longer than BW_CLIENT_SIZE, the shortest room that such a text has.
static bw_status write_row(bw_team *team, const source *to, const row *r, const char *text,
                           bw_error *error) {
    char numbered[BW_NAME_SIZE];
    const char *put = text;
    bool taken;
    bw_status status = is_taken(team, to, r, text, &taken, error);
    for (int number = 2; status == BW_OK && taken; number++) {
        char base[BW_CLIENT_SIZE - 8];
        bw_copy(base, sizeof base, text);
        snprintf(numbered, sizeof numbered, "%s-%d", base, number);
        put = numbered;
        status = is_taken(team, to, r, put, &taken, error);
    }
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, to->write);
    bind(&q, to, r, put);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

static bw_status hear_row(bw_team *team, const source *from, const row *r, bw_hear hear, void *self,
                          bw_error *error) {
    const size_t length = r->text ? strlen(r->text) : 0;
    char *out = malloc(length + 1);
    if (!out) return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    const bw_speech speech = {.where = r->where,
                              .text = r->text,
                              .length = length,
                              .code = from->code,
                              .names_only = from->names_only};
    bw_status status = BW_OK;
    if (length > 0 && hear(self, &speech, out)) status = write_row(team, from, r, out, error);
    free(out);
    return status;
}

static bw_status hear_source(bw_team *team, const source *from, int64_t value, bw_hear hear,
                             void *self, bw_error *error) {
    row *rows;
    int count;
    bw_status status = read_rows(team, from, value, &rows, &count, error);
    for (int i = 0; status == BW_OK && i < count; i++)
        status = hear_row(team, from, &rows[i], hear, self, error);
    drop_rows(rows, count);
    return status;
}

static bw_status hear_revision(bw_team *team, int64_t id, bw_scheme *scheme, bw_hear hear,
                               void *self, bw_error *error) {
    const bw_status status = bw_team_scheme(team, id, scheme, NULL, error);
    if (status == BW_BAD_INPUT) return hear_source(team, &damaged, id, hear, self, error);
    if (status != BW_OK || !bw_scheme_texts(scheme, id, hear, self)) return status;
    return bw_team_rewrite(team, id, scheme, error);
}

static bw_status hear_revisions(bw_team *team, bw_hear hear, void *self, bw_error *error) {
    bw_revision *list;
    int count;
    bw_status status = bw_team_revisions(team, &list, &count, error);
    bw_scheme *scheme = malloc(sizeof *scheme);
    if (status == BW_OK && !scheme) status = bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    for (int i = 0; status == BW_OK && i < count; i++)
        status = hear_revision(team, list[i].id, scheme, hear, self, error);
    free(scheme);
    free(list);
    return status;
}

bw_status bw_team_texts(bw_team *team, int jersey, bw_hear hear, void *self, bw_error *error) {
    bw_status status = BW_OK;
    for (int i = 0; status == BW_OK && i < BW_COUNT(sources); i++)
        status = hear_source(team, &sources[i], jersey, hear, self, error);
    if (status == BW_OK) status = hear_revisions(team, hear, self, error);
    return status == BW_OK ? hear_source(team, &scheme_names, jersey, hear, self, error) : status;
}
