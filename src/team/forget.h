/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Forgetting a player for good: his row, splits, quiz results, spots, his number where men out of place
/// are named, and every other place of the file that speaks of him and is to be struck (places.h). Then the
/// file is written anew, so that nothing of it is left in free pages or in the log beside the file. Backups
/// and exports made before still have it.
#ifndef BW_TEAM_FORGET_H
#define BW_TEAM_FORGET_H

#include "team/places.h"

/// What the coach decided on the places that bw_team_places() listed.
typedef struct bw_forget_how {
    const char *name;   ///< a full name to look for as well, as it was listed with; NULL: none
    const bool *strike; ///< one for each place; NULL: the sure ones, whatever they are now
    uint32_t seen;      ///< of the list
    int count;
} bw_forget_how;

typedef struct bw_forgotten {
    int splits, quizzes;
    int marks; ///< breaks in which he was named out of place
    int texts; ///< texts in which something was struck
    int left;  ///< places that stay as they are
} bw_forgotten;

/// BW_NOT_FOUND when nobody wears the number; BW_BAD_INPUT when the file no longer has the places that were
/// listed. BW_FILE when he is forgotten but another program holds the file open, so that traces are left in
/// it: close that program, then bw_team_scrub() once more.
bw_status bw_team_forget(bw_team *team, int jersey, const bw_forget_how *how, bw_forgotten *what,
                         bw_error *error);

#endif
