/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/team_desk.h"

#include "file/document.h"
#include <stdlib.h>

bw_reply bw_desk_refusal(const bw_error *error) {
    switch (error->status) {
    case BW_NOT_FOUND: return bw_reply_error(404, error);
    case BW_FILE: return bw_reply_error(503, error);
    case BW_NO_ROOM: return bw_reply_error(500, error);
    default: return bw_reply_error(422, error);
    }
}

bw_team *bw_desk_open(const bw_site *site, bw_team_mode mode, bw_reply *answer) {
    bw_team *team = NULL;
    bw_error error;
    if (!site->team) {
        *answer = bw_reply_words(404, "The board was opened without a team file.");
        return NULL;
    }
    if (bw_team_open(site->team, mode, &team, &error) == BW_OK) return team;
    char room[BW_MESSAGE_SIZE + 32];
    bw_text t = bw_text_in(room, sizeof room);
    bw_put(&t, "The team file: ");
    bw_put(&t, error.message);
    *answer = bw_reply_words(503, room);
    return NULL;
}

bw_tree *bw_desk_read(const bw_ask *ask, bw_form *form, bw_error *error, bw_reply *answer) {
    bw_tree *tree = malloc(sizeof *tree);
    if (!tree) {
        *answer = bw_reply_words(500, "There is no memory left.");
        return NULL;
    }
    if (bw_tree_parse(ask->body, ask->length, tree, error) == BW_OK) {
        *form = (bw_form){tree, 0, error};
        return tree;
    }
    *answer = bw_reply_error(422, error);
    free(tree);
    return NULL;
}
