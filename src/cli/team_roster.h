/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The squad for `team legs` and `team lineup`: players with their legs, and a scheme.
#ifndef BW_CLI_TEAM_ROSTER_H
#define BW_CLI_TEAM_ROSTER_H

#include "cli/options.h"
#include "core/scheme.h"
#include "team/legs.h"
#include "team/roster.h"
#include "tune/who.h"

typedef struct bw_squad_man {
    bw_player player;
    bw_player_legs legs;
} bw_squad_man;

typedef struct bw_squad {
    bw_scheme scheme; ///< the file named second, else the newest in the team file
    bool has_scheme;
    bw_units units;
    int count;
    bw_squad_man *men; ///< by number
} bw_squad;

/// Loads the squad the operands name: FILE [SCHEME]. BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_squad(const bw_args *args, bw_squad **squad);
void bw_squad_drop(bw_squad *squad);

/// The players who can take some place of a stage, and where they stand in the squad: men and man
/// [BW_LINEUP_MEN]. Returns how many.
int bw_squad_candidates(const bw_squad *squad, int stage, bw_candidate *men, int *man);

/// For --team FILE of another verb: the legs of the men who would take the places of a stage (by the
/// tightest run), said in a line. Leaves legs alone without --team. BW_EXIT_OK, or the code after saying what
/// is wrong.
int bw_load_squad_legs(const bw_args *args, const bw_scheme *scheme, int stage,
                       bw_legs legs[BW_MAX_SPOTS]);

#endif
