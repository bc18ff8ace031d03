/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is hardly meant (team/odd.h) among what the page sends. Players, sprints and games are answered with 409
/// and the sentence unless the target says odd=keep: whoever typed them is there to look again. Breaks are
/// kept and the sentence goes with the answer: one that was logged at the sideline must not be lost.
#ifndef BW_SERVE_TEAM_ODD_H
#define BW_SERVE_TEAM_ODD_H

#include "serve/site.h"
#include "team/odd.h"

/// Whether to refuse: *answer is the refusal then, also when the file itself fails. To be asked before it is
/// stored.
bool bw_odd_player_sent(bw_team *team, const bw_ask *ask, const bw_player *player,
                        bw_reply *answer);
bool bw_odd_split_sent(bw_team *team, const bw_ask *ask, const bw_timed_split *split,
                       bw_reply *answer);
bool bw_odd_game_sent(bw_team *team, const bw_ask *ask, const bw_game *game, bw_reply *answer);

/// What is odd in each break that was stored new or put right (fresh), into odd[count]; nothing where it cannot be told. Once games
/// and breaks are in.
void bw_odd_entries_sent(bw_team *team, const bw_entry *entries, const bool *fresh, int count,
                         bw_odd *odd);

#endif
