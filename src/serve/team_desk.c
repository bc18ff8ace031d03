/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/team_desk.h"

#include "core/text.h"
#include "file/document.h"
#include "team/settings.h"
#include <stdlib.h>

bw_reply bw_desk_refusal(const bw_error *error) {
    switch (error->status) {
    case BW_NOT_FOUND: return bw_reply_error(404, error);
    case BW_FILE: return bw_reply_error(503, error);
    case BW_NO_ROOM: return bw_reply_error(500, error);
    default: return bw_reply_error(422, error);
    }
}

static const char mark_name[] = "mark";

bw_status bw_desk_mark(bw_team *team, char mark[BW_SECRET_SIZE], bw_error *error) {
    bw_status status = bw_team_setting(team, mark_name, mark, BW_SECRET_SIZE, error);
    if (status != BW_OK || mark[0]) return status;
    if (!bw_secret_make(mark)) {
        *error = (bw_error){.status = BW_FILE, .message = "the system has no random numbers"};
        return BW_FILE;
    }
    return bw_team_set(team, mark_name, mark, error);
}

static bw_reply refuse_file(const bw_error *error) {
    char room[BW_MESSAGE_SIZE + 32];
    bw_text t = bw_text_in(room, sizeof room);
    bw_put(&t, "The team file: ");
    bw_put(&t, error->message);
    return bw_reply_words(503, room);
}

bw_team *bw_desk_open(const bw_site *site, const bw_ask *ask, bw_team_mode mode, bw_reply *answer) {
    const char *wanted = bw_target_value(&ask->target, "mark");
    char mark[BW_SECRET_SIZE] = "";
    bw_team *team = NULL;
    bw_error error;
    if (!site->team) {
        *answer = bw_reply_words(503, "The board was opened without a team file.");
        return NULL;
    }
    bw_status status = bw_team_open(site->team, mode, &team, &error);
    if (status == BW_OK && wanted)
        status = bw_team_setting(team, mark_name, mark, sizeof mark, &error);
    if (status == BW_OK && (!wanted || bw_same(mark, wanted))) return team;
    *answer = status == BW_OK
                  ? bw_reply_words(410, "The program has another team's file open now: reload the "
                                        "page. What waits here is kept for its own file.")
                  : refuse_file(&error);
    bw_team_close(team);
    return NULL;
}

/// False with the refusal in *answer.
static bool read_body(const bw_ask *ask, bool (*read)(const bw_form *form, void *out), void *out,
                      bw_reply *answer) {
    bw_error error;
    bw_tree *tree = malloc(sizeof *tree);
    if (!tree) {
        *answer = bw_reply_no_memory();
        return false;
    }
    const bw_form form = {tree, 0, &error};
    const bool parsed = bw_tree_parse(ask->body, ask->length, tree, &error) == BW_OK;
    const bool good = parsed && read(&form, out);
    free(tree);
    if (!good) *answer = parsed ? bw_desk_refusal(&error) : bw_reply_error(422, &error);
    return good;
}

bw_team *bw_desk_take(const bw_site *site, const bw_ask *ask, bw_team_mode mode,
                      bool (*read)(const bw_form *form, void *out), void *out, bw_reply *answer) {
    return read_body(ask, read, out, answer) ? bw_desk_open(site, ask, mode, answer) : NULL;
}
