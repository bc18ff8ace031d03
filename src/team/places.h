/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a team file speaks of a player (mention.h), for the coach to look at before anything is struck. The
/// same words at the same spot of several revisions of a scheme are one place.
#ifndef BW_TEAM_PLACES_H
#define BW_TEAM_PLACES_H

#include "team/mention.h"
#include "team/team.h"

enum { BW_PLACE_WHERE_SIZE = 200, BW_PLACE_SAID_SIZE = 80, BW_PLACE_AROUND_SIZE = 48 };

typedef struct bw_place {
    uint64_t key;                      ///< of where it stands and what the text says
    char where[BW_PLACE_WHERE_SIZE];   ///< "break 3, note"
    char before[BW_PLACE_AROUND_SIZE]; ///< what stands before it, cut at its beginning
    char said[BW_PLACE_SAID_SIZE];     ///< what speaks of him
    char after[BW_PLACE_AROUND_SIZE];  ///< what follows, cut at its end
    bw_mention_kind kind;
    bool sure;           ///< his whole full name, which nobody else on the roster has
    int64_t first, last; ///< revisions it stands in; 0: none
} bw_place;

typedef struct bw_places {
    bw_place *list; ///< in the order of the file
    int count;
    int sure;       ///< how many of them are
    bool named;     ///< a full name was looked for
    uint32_t seen;  ///< of the whole list: another list has another
    uint32_t *slot; ///< look-up by key: index + 1, 0 is free
    int slots;
} bw_places;

/// Looks through the file. `name` is a full name to look for as well as the one on the roster, or NULL.
/// BW_NOT_FOUND when nobody wears the number. Drop *places, whatever is returned.
bw_status bw_team_places(bw_team *team, int jersey, const char *name, bw_places *places,
                         bw_error *error);

/// Strikes those places for which `strike`, one for each, is true. *texts: in how many texts something was.
bw_status bw_team_strike(bw_team *team, int jersey, const char *name, const bw_places *places,
                         const bool *strike, int *texts, bw_error *error);

void bw_places_drop(bw_places *places);

/// "his whole name", "part of his name", "his initials", "his number".
const char *bw_mention_words(bw_mention_kind kind);

#endif
