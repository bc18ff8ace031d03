/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The break that is being logged: what the page has put in so far, checked and said by the same code as
/// everywhere, and the chart on which one tap says where the shot came from. Nothing is stored here.
#ifndef BW_WEB_LOG_H
#define BW_WEB_LOG_H

#include "core/entry.h"
#include "draw/view.h"

/// Numbers of a break that the page puts in; a NaN stands for "not known".
typedef enum bw_log_field {
    BW_LOG_OFFENCE,
    BW_LOG_DEFENCE,
    BW_LOG_OUTCOME,
    BW_LOG_SECONDS,
    BW_LOG_PASSES,
    BW_LOG_SHOT_X, ///< metres; the shot is known once both are
    BW_LOG_SHOT_Y
} bw_log_field;

/// What can be asked of an outcome.
typedef enum bw_log_outcome {
    BW_LOG_OUTCOME_ID,    ///< its word in files
    BW_LOG_OUTCOME_WORDS, ///< in words
    BW_LOG_OUTCOME_SHOT   ///< "shot" when one was taken, else ""
} bw_log_outcome;

typedef struct bw_logging {
    bw_entry entry;
    bool shot_half[2]; ///< which of its two numbers is there
    bw_view chart;     ///< as it was last drawn
    char saying[640];
} bw_logging;

/// Nothing known yet.
void bw_log_clear(bw_logging *log);

void bw_log_set(bw_logging *log, bw_log_field field, double value);

/// The number as it is now; a NaN when it is not known.
double bw_log_figure(const bw_logging *log, bw_log_field field);

/// Names a man out of place. False when it is no spot or jersey number, or there are too many.
bool bw_log_out(bw_logging *log, const char *who);

/// The chart of the attack end into `memory`, at most this large (points), with the shot on it.
void bw_log_draw(bw_logging *log, const bw_scheme *scheme, double width, double height,
                 void *memory, size_t size);

/// The shot came from this point of the chart as drawn.
void bw_log_shot(bw_logging *log, bw_vec point);

#endif
