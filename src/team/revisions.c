/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/revisions.h"
#include "core/hash.h"
#include "file/document.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include "team/sql.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void hash_of(const char *document, char *hash) {
    uint64_t h = BW_HASH_START;
    for (const char *c = document; *c; c++)
        h = bw_hash_u64(h, (unsigned char)*c);
    snprintf(hash, BW_REVISION_HASH_SIZE, "%016llx", (unsigned long long)h);
}

/// The number of the scheme of this name, put in when it is new.
static bw_status scheme_row(bw_team *team, const char *name, int64_t *id, bw_error *error) {
    bw_sql put = bw_sql_of(team, "INSERT INTO scheme (name) VALUES (?) ON CONFLICT DO NOTHING");
    bw_sql_text(&put, name);
    bw_sql_again(&put);
    const bw_status status = bw_sql_end(&put, error);
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, "SELECT id FROM scheme WHERE name = ?");
    bw_sql_text(&q, name);
    *id = bw_sql_row(&q) ? bw_sql_int_at(&q, 0) : 0;
    return bw_sql_end(&q, error);
}

/// The newest revision of a scheme when it is this very document, otherwise 0.
static bw_status newest_same(bw_team *team, int64_t scheme, const char *document, int64_t *id,
                             bw_error *error) {
    bw_sql q = bw_sql_of(team, "SELECT id, document = ? FROM revision WHERE scheme = ?"
                               " ORDER BY id DESC LIMIT 1");
    bw_sql_text(&q, document);
    bw_sql_int(&q, scheme);
    *id = bw_sql_row(&q) && bw_sql_int_at(&q, 1) != 0 ? bw_sql_int_at(&q, 0) : 0;
    return bw_sql_end(&q, error);
}

typedef struct saving {
    const char *name, *note, *document;
    int64_t time;
} saving;

static bw_status save(bw_team *team, const saving *s, int64_t *revision, bool *fresh,
                      bw_error *error) {
    int64_t scheme = 0;
    bw_status status = scheme_row(team, s->name, &scheme, error);
    if (status == BW_OK) status = newest_same(team, scheme, s->document, revision, error);
    if (status != BW_OK) return status;
    *fresh = *revision == 0;
    if (!*fresh) return BW_OK;
    char hash[BW_REVISION_HASH_SIZE];
    hash_of(s->document, hash);
    bw_sql q = bw_sql_of(team, "INSERT INTO revision (scheme, time, hash, note, document)"
                               " VALUES (?, ?, ?, ?, ?)");
    bw_sql_int(&q, scheme);
    bw_sql_int(&q, s->time);
    bw_sql_text(&q, hash);
    bw_sql_text(&q, s->note);
    bw_sql_text(&q, s->document);
    if (bw_sql_again(&q)) *revision = sqlite3_last_insert_rowid(team->db);
    return bw_sql_end(&q, error);
}

bw_status bw_team_save_scheme(bw_team *team, const bw_scheme *scheme, int64_t time,
                              const char *note, int64_t *revision, bool *fresh, bw_error *error) {
    if (!bw_text_plain(note) || strlen(note) >= BW_NOTE_SIZE || time < 0)
        return bw_team_fail(error, BW_BAD_INPUT, "a note is one line of at most %d bytes",
                            BW_NOTE_SIZE - 1);
    char *document = malloc(BW_DOCUMENT_BYTES);
    if (!document) return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    bw_text out = bw_text_in(document, BW_DOCUMENT_BYTES);
    bw_scheme_write(scheme, &out);
    bool is_new = false;
    bw_status status = out.full ? bw_team_fail(error, BW_LIMIT, "the scheme is too large")
                                : bw_team_begin(team, error);
    if (status == BW_OK) {
        const saving s = {scheme->name, note, document, time};
        status = bw_team_end(team, save(team, &s, revision, &is_new, error), error);
    }
    if (fresh) *fresh = is_new;
    free(document);
    return status;
}

static bw_status put_document(bw_team *team, int64_t revision, const char *document,
                              bw_error *error) {
    char hash[BW_REVISION_HASH_SIZE];
    hash_of(document, hash);
    bw_sql q = bw_sql_of(team, "UPDATE revision SET hash = ?, document = ? WHERE id = ?");
    bw_sql_text(&q, hash);
    bw_sql_text(&q, document);
    bw_sql_int(&q, revision);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

bw_status bw_team_rewrite(bw_team *team, int64_t revision, const bw_scheme *scheme,
                          bw_error *error) {
    char *document = malloc(BW_DOCUMENT_BYTES);
    bw_scheme *again = malloc(sizeof *again);
    bw_status status = document && again ? BW_OK : bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    if (status == BW_OK) {
        bw_text out = bw_text_in(document, BW_DOCUMENT_BYTES);
        bw_scheme_write(scheme, &out);
        if (out.full || bw_document_parse(document, out.used, again, error) != BW_OK)
            status = bw_team_fail(error, BW_BAD_INPUT,
                                  "revision %lld of the scheme cannot be kept in that form",
                                  (long long)revision);
    }
    if (status == BW_OK) status = put_document(team, revision, document, error);
    free(again);
    free(document);
    return status;
}

static void read_about(const bw_sql *q, bw_revision *r) {
    r->id = bw_sql_int_at(q, 0);
    bw_sql_text_at(q, 1, r->scheme, sizeof r->scheme);
    r->time = bw_sql_int_at(q, 2);
    bw_sql_text_at(q, 3, r->hash, sizeof r->hash);
    bw_sql_text_at(q, 4, r->note, sizeof r->note);
}

bw_status bw_team_revisions(bw_team *team, bw_revision **list, int *count, bw_error *error) {
    *list = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, "SELECT revision.id, name, time, hash, note FROM revision"
                               " JOIN scheme ON scheme.id = revision.scheme ORDER BY revision.id");
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)list, *count, sizeof **list))
        read_about(&q, &(*list)[(*count)++]);
    return bw_sql_end_list(&q, (void **)list, count, error);
}

static bw_status parse(const char *document, const bw_revision *about, bw_scheme *scheme,
                       bw_error *error) {
    char hash[BW_REVISION_HASH_SIZE];
    hash_of(document, hash);
    if (strcmp(hash, about->hash) == 0 &&
        bw_document_parse(document, strlen(document), scheme, error) == BW_OK)
        return BW_OK;
    return bw_team_fail(error, BW_BAD_INPUT,
                        "revision %lld in the file is damaged; restore a backup of it",
                        (long long)about->id);
}

bw_status bw_team_scheme(bw_team *team, int64_t revision, bw_scheme *scheme, bw_revision *about,
                         bw_error *error) {
    bw_revision found = {0};
    bw_status parsed = BW_NOT_FOUND;
    bw_sql q = bw_sql_of(team, "SELECT revision.id, name, time, hash, note, document FROM revision"
                               " JOIN scheme ON scheme.id = revision.scheme"
                               " WHERE ?1 = 0 OR revision.id = ?1"
                               " ORDER BY revision.id DESC LIMIT 1");
    bw_sql_int(&q, revision);
    if (bw_sql_row(&q)) {
        read_about(&q, &found);
        const char *document = (const char *)sqlite3_column_text(q.statement, 5);
        parsed = parse(document ? document : "", &found, scheme, error);
    }
    bw_error failed;
    const bw_status status = bw_sql_end(&q, &failed);
    if (status != BW_OK) {
        *error = failed;
        return status;
    }
    if (parsed == BW_NOT_FOUND)
        return revision ? bw_team_fail(error, BW_NOT_FOUND,
                                       "there is no scheme revision %lld in the team file",
                                       (long long)revision)
                        : bw_team_fail(error, BW_NOT_FOUND, "there is no scheme in the team file");
    if (about) *about = found;
    return parsed;
}
