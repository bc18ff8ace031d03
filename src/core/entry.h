/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One logged break as plain data: what happened when the other side came down with more men. Written
/// by hand, on a phone or in bulk; stored by the team file; counted by the review.
#ifndef BW_CORE_ENTRY_H
#define BW_CORE_ENTRY_H

#include "core/base.h"
#include "core/text.h"
#include "core/vec.h"
#include <stdint.h>

/// How a break ended: identifier, the word a file and the command line use, plain words, and whether a
/// shot was taken. Files keep the word, so the order may change; JavaScript learns it from here.
#define BW_OUTCOME_MAP(X)                                                                          \
    X(GOAL, "goal", "goal", true)                                                                  \
    X(SAVE, "save", "shot saved", true)                                                            \
    X(WIDE, "wide", "shot wide", true)                                                             \
    X(FORCED, "forced", "turnover we forced", false)                                               \
    X(UNFORCED, "unforced", "turnover of their own", false)                                        \
    X(GROUND_BALL, "ground-ball", "loose ball", false)                                             \
    X(MATCHED_UP, "matched-up", "matched up in time", false)                                       \
    X(WHISTLE, "whistle", "whistle", false)

typedef enum bw_outcome {
#define BW_X(id, word, words, shot) BW_OUTCOME_##id,
    BW_OUTCOME_MAP(BW_X)
#undef BW_X
        BW_OUTCOME_COUNT
} bw_outcome;

enum {
    BW_CLIENT_SIZE = 40, ///< bytes of a client id, terminator included
    BW_NOTE_SIZE = 240,  ///< bytes of a note, terminator included
    BW_MAX_JERSEY =
        999,        ///< two digits on the shirt; a club with two squads in one file adds a third
    BW_MAX_OUT = 6, ///< men who can be named out of place in one break
    BW_MAX_PASSES = 50,     ///< in one break
    BW_MAX_BREAK_TIME = 120 ///< seconds a break can last
};

/// The last second of the year 9999: no clock is later.
#define BW_LAST_TIME INT64_C(253402300799)

/// Where a shot can come from, metres: somewhat wider than the largest field.
#define BW_SHOT_ACROSS 40.0
#define BW_SHOT_BEHIND 25.0
#define BW_SHOT_AHEAD 70.0

typedef struct bw_entry {
    /// Chosen once where the break was logged; the same id is the same break however often it is sent:
    /// 1 to 39 letters, digits, "-", "_", ".".
    char client[BW_CLIENT_SIZE];
    int64_t order; ///< rises in the order in which entries were stored, from 1; 0: not stored yet
    int64_t game;  ///< number of the game in the team file; 0: none
    int64_t time;  ///< UTC seconds since 1970; 0: unknown. Clocks may be wrong: `order` orders
    int offence;   ///< attackers, 3 to 6
    int defence;   ///< defenders in when it started, 2 to offence
    bw_outcome outcome;
    double seconds;  ///< from the start to the outcome, [0, 120]; negative: unknown
    int passes;      ///< completed by the offence, 0 to 50; -1: unknown
    bool shot_known; ///< `shot` holds
    bw_vec shot;     ///< where the shot was taken, metres (docs/units.md)
    int out_count;
    char out[BW_MAX_OUT][BW_ID_SIZE]; ///< who was out of place: spot codes or jersey numbers
    int stage;        ///< defenders of the stage that was called, 3 to 6; 0: unknown
    int64_t revision; ///< revision of the scheme in the team file; 0: unknown
    char note[BW_NOTE_SIZE];
} bw_entry;

/// Nothing known: 6 v 4, whistle, every optional field unknown, no client id.
bw_entry bw_entry_default(void);

/// BW_OK, or BW_BAD_INPUT with one sentence in `why` (NULL: not wanted). Looks at the entry alone, not
/// at whether its game and revision exist.
bw_status bw_entry_check(const bw_entry *entry, bw_text *why);

/// Whether two entries tell the same of a break, whatever their order numbers.
bool bw_entry_same(const bw_entry *a, const bw_entry *b);

const char *bw_outcome_id(bw_outcome outcome);    ///< "ground-ball"; NULL when out of range
const char *bw_outcome_words(bw_outcome outcome); ///< "turnover we forced"
bool bw_outcome_shot(bw_outcome outcome);         ///< a shot was taken

/// BW_OUTCOME_COUNT when there is none of this word.
bw_outcome bw_outcome_find(const char *id);

/// Whether `who` may name a man out of place: a spot code (1 to 3 letters or digits, not digits alone)
/// or a jersey number.
bool bw_entry_who(const char *who);

#endif
