/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: every text of a team file that a coach may have written, one after the other, and
/// put back when it was changed. docs/team.md says table by table what is gone over.
#ifndef BW_TEAM_TEXTS_H
#define BW_TEAM_TEXTS_H

#include "team/speech.h"
#include "team/team.h"

/// Goes over all texts but those in rows that are this player's own. What was heard is changed as it said;
/// where two things may not be called the same, the second gets a number. For changes, call it between
/// bw_team_begin() and bw_team_end().
bw_status bw_team_texts(bw_team *team, int jersey, bw_hear hear, void *self, bw_error *error);

#endif
