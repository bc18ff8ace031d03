/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What may be turned on one stage: the homes of its spots and the numbers of its rule. A pair of
/// mirrored spots is one knob each way, so a tuned scheme stays its own mirror image where it was one.
#ifndef BW_TUNE_KNOB_H
#define BW_TUNE_KNOB_H

#include "core/scheme.h"
#include "core/text.h"

typedef enum bw_knob_kind {
    BW_KNOB_WIDE, ///< a home's distance from the centre line; signed when the spot has no twin
    BW_KNOB_OUT,  ///< a home's distance up-field
// Numbers of the rule.
#define RULE_TUNED(ID, ...) BW_KNOB_##ID,
#include "core/rule_params.def"
    BW_KNOB_KINDS
} bw_knob_kind;

enum { BW_KNOB_RULE = BW_KNOB_OUT + 1 }; ///< the first kind that is the rule's

enum { BW_MAX_KNOBS = 2 * BW_MAX_SPOTS + BW_KNOB_KINDS - BW_KNOB_RULE };

typedef struct bw_knob {
    bw_knob_kind kind;
    int spot;         ///< whose home: the right one of a mirrored pair; -1 for the rule
    int twin;         ///< his mirror image, which follows; -1 when there is none
    double low, high; ///< metres, or a plain share
    double now;       ///< as the scheme has it
    double practice;  ///< as the usual starting scheme has it; `now` where that has no such spot
    double scale; ///< one step worth speaking of: a yard or two, or a tenth and a half of a share
} bw_knob;

/// What the coach lets be changed.
typedef struct bw_knob_limits {
    double most;                   ///< metres a home may move each way; default 4 yd
    bool keep_rule;                ///< the rule stays as it is
    bool keep_homes;               ///< all homes stay
    bool keep[BW_MAX_SPOTS];       ///< this spot's home stays (and his twin's)
    bool keep_kind[BW_KNOB_KINDS]; ///< this number of the rule stays
} bw_knob_limits;

bw_knob_limits bw_knob_limits_default(void);

/// The kind in one word: "wide", "out", or the key of a RULE_TUNED.
const char *bw_knob_key(bw_knob_kind kind);

/// Takes what a word names out of what may be turned: a spot of the stage by its id, "homes", "rule", or
/// a number of the rule by its key. False when it names none of these.
bool bw_knob_keep(const bw_stage *stage, const char *word, bw_knob_limits *limits);

/// Lists the knobs of a stage into list[BW_MAX_KNOBS]; returns how many.
int bw_knobs(const bw_scheme *scheme, int stage, const bw_knob_limits *limits, bw_knob *list);

/// Sets the stage to the values at[count], one a knob.
void bw_knobs_turn(const bw_knob *list, int count, const double *at, bw_stage *stage);

/// "low left and low right, wide", "pickup".
void bw_knob_name(const bw_stage *stage, const bw_knob *knob, bw_text *out);

/// Whether its values are lengths; shares otherwise.
bool bw_knob_is_length(const bw_knob *knob);

#endif
