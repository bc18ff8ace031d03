/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any bytes as what the page sends for the team file. What is taken is sound; what is not is refused in
/// words.
#include "core/text.h"
#include "file/document.h"
#include "serve/team_form.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

static void refused_in_words(const bw_error *error) {
    must(error->status != BW_OK && error->message[0], "a refusal has words");
    must(memchr(error->message, '\0', sizeof error->message) != NULL, "and ends");
}

static void try_entry(const bw_form *form) {
    bw_sent_entry sent;
    if (!bw_form_entry(form, &sent)) {
        refused_in_words(form->error);
        return;
    }
    must(bw_entry_check(&sent.entry, NULL) == BW_OK, "a break that is taken is sound");
    must(bw_text_plain(sent.entry.note), "a note is one line");
}

static void try_others(const bw_form *form) {
    bw_player player;
    bw_timed_split split;
    bw_game game;
    bw_sent_forget forget;
    if (bw_form_player(form, &player))
        must(player.jersey >= 0 && player.jersey <= BW_MAX_JERSEY &&
                 player.spot_count <= BW_MAX_PLAYER_SPOTS,
             "a player is in bounds");
    else
        refused_in_words(form->error);
    if (bw_form_split(form, &split))
        must(split.jersey >= 0 && split.jersey <= BW_MAX_JERSEY, "a sprint has a number");
    else
        refused_in_words(form->error);
    if (!bw_form_game(form, &game)) refused_in_words(form->error);
    if (bw_form_forget(form, &forget))
        must(forget.jersey >= 0 && forget.jersey <= BW_MAX_JERSEY &&
                 forget.places <= BW_SENT_PLACES,
             "who is forgotten is in bounds");
    else
        refused_in_words(form->error);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static bw_tree tree;
    bw_error error = {.status = BW_OK};
    if (bw_tree_parse((const char *)data, size, &tree, &error) != BW_OK) {
        refused_in_words(&error);
        return 0;
    }
    for (int32_t i = 0; i < tree.node_count && i < 64; i++) {
        const bw_form form = {&tree, i, &error};
        try_entry(&form);
        try_others(&form);
    }
    return 0;
}
