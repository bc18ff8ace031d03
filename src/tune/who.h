/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who goes where: players with their own legs to the spots of a stage and to the late men who complete
/// it, with the coach's fixed choices respected, and what each choice is worth.
#ifndef BW_TUNE_WHO_H
#define BW_TUNE_WHO_H

#include "core/lineup.h"
#include "core/scheme.h"
#include "trial/watcher.h"
#include "tune/judge.h"

/// A player who may be chosen.
typedef struct bw_candidate {
    int jersey;
    bw_legs legs;                 ///< vmax 0: not known, the level's are taken
    bool may[BW_LINEUP_PLACES];   ///< can play that place
    bool fixed[BW_LINEUP_PLACES]; ///< the coach has settled that he does
} bw_candidate;

typedef enum bw_who_aim {
    BW_WHO_MARGIN, ///< the tightest run of any of them as loose as can be
    BW_WHO_WORTH   ///< the fewest goals a break, typical play
} bw_who_aim;

typedef struct bw_who_place {
    char name[BW_NAME_SIZE]; ///< the spot's name, or the late man's role
    int man;                 ///< index of the candidate
    bool idle;   ///< a spot no pass makes its man run from: nothing is asked of his legs there
    double cost; ///< his: seconds short in his tightest run (0 where idle), or goals a break above
                 ///< level legs
    bool fixed;  ///< the coach's own choice
    int second;  ///< who would step in, -1: nobody can
    double swap; ///< what that would change, in the same unit; 0 without
} bw_who_place;

typedef struct bw_who {
    int place_count, spots; ///< spots first, then late men
    bw_who_place place[BW_LINEUP_PLACES];
    double worst, sum; ///< of the costs of places that are not idle; 0 when all are
    double
        level_typical; ///< goals a break with everyone on the level's legs; only with BW_WHO_WORTH
    double chosen_typical; ///< and with the men chosen
} bw_who;

/// Places of a stage: its spots, then the late men who complete it up to even numbers; returns how many
/// and their names.
int bw_who_places(const bw_scheme *scheme, int stage, char name[BW_LINEUP_PLACES][BW_NAME_SIZE]);

/// Spot codes that make a player fit for a place: his own spot's for a spot, those a late man may take for
/// a late man ("" ends the list; none at all: anybody). Into codes[BW_MAX_SPOTS + 1].
void bw_who_codes(const bw_scheme *scheme, int stage, int place,
                  char codes[BW_MAX_SPOTS + 1][BW_ID_SIZE]);

/// Chooses. BW_NOT_FOUND: some place nobody can play; *unfilled names the first such when it can be told
/// (-1 otherwise). BW_BAD_INPUT: a player fixed to two places or two to one; BW_NO_ROOM: no memory.
/// By worth it takes seconds: the watch is told of men tried in places; BW_LIMIT: cancelled.
bw_status bw_who_choose(const bw_scheme *scheme, int stage, const bw_candidate *men, int count,
                        bw_who_aim aim, bw_watcher watch, bw_who *out, int *unfilled);

#endif
