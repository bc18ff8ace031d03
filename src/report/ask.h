/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is asked for, value by name: options of a command line, or values of a request. A reader leaves what
/// is not said as it was. BW_BAD_INPUT: a value is not of its form; BW_NOT_FOUND: the scheme has no such thing.
/// One sentence without its full stop in ask->why then.
#ifndef BW_REPORT_ASK_H
#define BW_REPORT_ASK_H

#include "report/order.h"

typedef struct bw_asked {
    const char *(*value)(const void *self, const char *name); ///< NULL: not said
    const void *self;
    const char *prefix;          ///< of a name in a sentence: "--" or ""
    int tries_least, tries_most; ///< how many candidates of a tuning may be asked for
    char why[4096];
} bw_asked;

/// The break into def and seconds: offence, defence, set, start, late, seconds and seed.
bw_status bw_ask_break(bw_asked *ask, bw_order *order);

/// What a tuning may change into tune.def: stage, keep, within, spacing, mix, practice, tries and breaks.
bw_status bw_ask_tuning(bw_asked *ask, bw_order *order);

/// The index of the stage with as many defenders as `stage` says.
bw_status bw_ask_stage(bw_asked *ask, const bw_scheme *scheme, int *stage);

/// A whole number from low to high.
bw_status bw_ask_whole(bw_asked *ask, const char *name, int low, int high, int *out);

/// Writes the sentence, printf-style. Returns the status.
bw_status bw_ask_refuse(bw_asked *ask, bw_status status, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/// "3, 4, 5 and 6": the stages a scheme has.
void bw_put_stages(const bw_scheme *scheme, bw_text *out);

/// The ids of attack sets, the built-in ones first, and of landmarks of a bw_scheme; NULL past the last.
const char *bw_set_id(const void *scheme, int index);
const char *bw_landmark_id(const void *scheme, int index);

/// A plain decimal number at *text ("-3.5", "12", ".5"; no exponent, no spaces): *text moves past it.
bool bw_scan_decimal(const char **text, double *out);

/// Whether the text is a decimal number that is whole and from low to high; then in *out.
bool bw_scan_whole(const char *text, int low, int high, int *out);

/// The candidate nearest to a mistyped word, or NULL when none is near.
const char *bw_nearest_word(const char *word, const char *(*candidate)(const void *, int),
                            const void *self);

#endif
