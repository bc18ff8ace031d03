/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Forgetting a player for good: his row, splits, quiz results, spots, his number where men out of place
/// are named, and his full name wherever a note says it. Then the file is written anew, so that nothing of
/// it is left in free pages or in the log beside the file. Backups and exports made before still have it.
#ifndef BW_TEAM_FORGET_H
#define BW_TEAM_FORGET_H

#include "team/team.h"

typedef struct bw_forgotten {
    int splits, quizzes;
    int marks; ///< breaks in which he was named out of place
    int notes; ///< notes from which his full name was taken
    int left; ///< notes that still say "#" and his number, or his initials, for the coach to look at
} bw_forgotten;

/// BW_NOT_FOUND when nobody wears the number. BW_FILE when he is forgotten but another program holds the
/// file open, so that traces are left in it: close that program, then bw_team_scrub() once more.
bw_status bw_team_forget(bw_team *team, int jersey, bw_forgotten *what, bw_error *error);

/// Writes the file anew without anything that was deleted, and empties the log beside it.
bw_status bw_team_scrub(bw_team *team, bw_error *error);

#endif
