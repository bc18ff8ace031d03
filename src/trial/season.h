/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a log of breaks comes to: counts first, and nothing that few cases cannot carry. Pure counting; a
/// model's forecast stands beside it where the caller brings one.
#ifndef BW_TRIAL_SEASON_H
#define BW_TRIAL_SEASON_H

#include "core/calibration.h"
#include "core/entry.h"
#include "core/scheme.h"

enum {
    BW_SEASON_GAMES = 60,
    BW_SEASON_NUMBERS = 12,
    BW_SEASON_PLACES = 6,
    BW_SEASON_REVISIONS = 24,
    BW_SEASON_MEN = 12,
    BW_GROUP_LABEL = 96
};

/// Breaks of one kind and what became of them.
typedef struct bw_group {
    int64_t
        key; ///< game or revision number, 10 x offence + defence, defenders of a stage, or a place
    char label[BW_GROUP_LABEL];
    int breaks;
    int outcome[BW_OUTCOME_COUNT];
    bw_count goals;   ///< of the breaks
    bw_count shots;   ///< of the breaks
    bw_count on_shot; ///< goals of the shots
    int timed;        ///< breaks whose seconds are known
    double seconds;   ///< their mean; 0 when none is
    double expected;  ///< goals a model forecast for `forecast_breaks` of them
    int forecast_breaks;
    bw_belief leaning; ///< goals a break after what all groups of this kind say (bw_rate_spread)
} bw_group;

/// Where a shot came from, by distance from the goal's centre, and behind the goal line.
typedef enum bw_shot_place {
    BW_SHOT_NEAR,   ///< within 5 yd
    BW_SHOT_MIDDLE, ///< 5 to 10 yd
    BW_SHOT_FAR,    ///< 10 to 15 yd
    BW_SHOT_LONG,   ///< beyond
    BW_SHOT_BACK,   ///< from behind the goal line
    BW_SHOT_UNKNOWN
} bw_shot_place;

bw_shot_place bw_shot_place_of(const bw_entry *entry);

/// A man named out of place.
typedef struct bw_named {
    char who[BW_ID_SIZE];
    int times, goals; ///< breaks he was named in, and those that were scored on
} bw_named;

typedef struct bw_season {
    bw_group all;
    bw_group numbers[BW_SEASON_NUMBERS]; ///< "6v4", by attackers then defenders
    bw_group stages[BW_MAX_STAGES + 1];  ///< by defenders; the last: not known
    bw_group games[BW_SEASON_GAMES];     ///< in the order the caller gave them
    bw_group revisions[BW_SEASON_REVISIONS];
    bw_group places[BW_SEASON_PLACES]; ///< of shots alone; `goals` is of the shots
    int number_count, stage_count, game_count, revision_count, place_count;
    int named_count;
    bw_named named[BW_SEASON_MEN]; ///< most often first
    bw_count named_breaks;         ///< breaks with somebody named, of all
    bw_calibration calibration;    ///< of the breaks with a forecast
    int forecast_breaks;
} bw_season;

/// A game or revision as the caller knows it; entries name it by `id`.
typedef struct bw_season_name {
    int64_t id;
    char label[BW_GROUP_LABEL];
} bw_season_name;

/// What is counted.
typedef struct bw_season_log {
    const bw_entry *entries;
    int count;
    const double
        *forecast; ///< chance of a goal a model gives each break, negative: none; NULL: none at all
    const bw_season_name *games;
    int game_count;
    const bw_season_name *revisions;
    int revision_count;
} bw_season_log;

/// Counts a log. Games or revisions beyond the room keep the newest (those given last). O(entries x
/// games).
void bw_season_count(const bw_season_log *log, bw_season *out);

/// How much may be said of a rate with so many cases.
typedef enum bw_saying {
    BW_SAY_COUNTS, ///< under ten: counts, no rate
    BW_SAY_ROUGH,  ///< under thirty: a rough rate with its interval
    BW_SAY_PLAIN
} bw_saying;

bw_saying bw_may_say(int cases);

/// "7 of 23, about 30 in 100 (likely 16 to 51)"; "2 of 6, too few to say"; "none in 6, too few to say";
/// "none in 15; could still be up to 20 in 100"; "no breaks". `what` names a case in the last, such as "breaks".
void bw_say_count(bw_count count, const char *what, bw_text *out);

/// "shot saved, 7 s, 3 passes, shot from 4.0 yd left, 9.0 yd out, out of place: TL, 12": a break without its
/// numbers, its number and its note.
void bw_say_entry(const bw_entry *entry, bw_units units, bw_text *out);

/// The difference of two rates in a sentence: whether it is more than chance, and within what.
void bw_say_difference(bw_count now, bw_count before, bw_text *out);

#endif
