/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The numbers of a rule as one table: what each is called, what it says and how far it goes. The
/// reader and whatever lets a person turn them share it.
#ifndef BW_SCHEME_KNOB_H
#define BW_SCHEME_KNOB_H

#include "core/scheme.h"

typedef struct bw_knob {
    const char *key;     ///< in the document
    const char *meaning; ///< in words, after "the rule says"
    double low, high;    ///< limits, ends included: yards, or shares of one
    bool length;         ///< a length; else a share
} bw_knob;

enum { BW_KNOBS = 6 };

/// 0 <= index < BW_KNOBS, in the order of the document.
const bw_knob *bw_knob_at(int index);

/// Where a rule keeps this number: metres, or a share.
double *bw_knob_in(bw_rule *rule, int index);

#endif
