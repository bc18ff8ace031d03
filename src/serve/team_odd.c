/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/team_odd.h"
#include "core/text.h"
#include "serve/team_desk.h"
#include <time.h>

static bool kept(const bw_ask *ask) {
    const char *value = bw_target_value(&ask->target, "odd");
    return value && bw_same(value, "keep");
}

static bw_known *load(bw_team *team, bw_reply *answer) {
    bw_known *known;
    bw_error error;
    if (bw_known_load(team, (int64_t)time(NULL), &known, &error) != BW_OK)
        *answer = bw_desk_refusal(&error);
    return known;
}

static bool refuse(const bw_odd *odd, bw_reply *answer) {
    char words[BW_MESSAGE_SIZE + 48];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put(&t, odd->message);
    bw_put(&t, "; look at it again.");
    *answer = bw_reply_words(409, words);
    return true;
}

bool bw_odd_player_sent(bw_team *team, const bw_ask *ask, const bw_player *player,
                        bw_reply *answer) {
    bw_odd odd, old;
    bw_player before;
    bw_error error;
    if (kept(ask)) return false;
    bw_known *known = load(team, answer);
    if (!known) return true;
    bool is = bw_odd_player(known, player, &odd);
    // What was odd in him before is kept already.
    if (is && bw_team_player(team, player->jersey, &before, &error) == BW_OK)
        is = !bw_odd_player(known, &before, &old) || !bw_same(odd.message, old.message);
    bw_known_drop(known);
    return is && refuse(&odd, answer);
}

bool bw_odd_split_sent(bw_team *team, const bw_ask *ask, const bw_timed_split *split,
                       bw_reply *answer) {
    bw_odd odd;
    if (kept(ask)) return false;
    bw_known *known = load(team, answer);
    if (!known) return true;
    const bool is = bw_odd_split(known, split, &odd);
    bw_known_drop(known);
    return is && refuse(&odd, answer);
}

bool bw_odd_game_sent(bw_team *team, const bw_ask *ask, const bw_game *game, bw_reply *answer) {
    bw_odd odd;
    if (kept(ask)) return false;
    bw_known *known = load(team, answer);
    if (!known) return true;
    const bool is = bw_odd_game(known, game, &odd);
    bw_known_drop(known);
    return is && refuse(&odd, answer);
}

static const bw_game *game_of(const bw_known *known, int64_t id) {
    for (int i = 0; i < known->game_count; i++) {
        if (known->games[i].id == id) return &known->games[i];
    }
    return NULL;
}

void bw_odd_entries_sent(bw_team *team, const bw_entry *entries, const bool *fresh, int count,
                         bw_odd *odd) {
    bw_known *known;
    bw_error error;
    bw_known_load(team, (int64_t)time(NULL), &known, &error);
    for (int i = 0; i < count; i++) {
        odd[i] = (bw_odd){.kind = BW_ODD_NOTHING};
        if (known && fresh[i])
            bw_odd_entry(known, &entries[i], game_of(known, entries[i].game), &odd[i]);
    }
    bw_known_drop(known);
}
