/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whether a tuned scheme is better, on breaks it was not tuned on, and by how much more than chance.
#ifndef BW_TUNE_EVIDENCE_H
#define BW_TUNE_EVIDENCE_H

#include "tune/tune.h"

enum { BW_EVIDENCE_SEEDS = 4 };

/// One kind of play on one kind of breaks, goals a break; the same breaks and seeds for both.
typedef struct bw_gain {
    double before, after;
    double gain;  ///< before - after: above 0 the new one concedes less
    double low;   ///< least gain of any seed
    double high;  ///< and greatest
    double error; ///< standard error of the gain over breaks
} bw_gain;

typedef struct bw_evidence {
    int seeds;
    int drills[BW_DRILL_KINDS]; ///< breaks of each kind, for each seed
    bw_gain typical[BW_DRILL_KINDS];
    bw_gain best[BW_DRILL_KINDS];
    int level; ///< the one held out, an index into bw_level_at
} bw_evidence;

/// Judges both schemes fully on every kind of break with `seeds` seeds (1 to BW_EVIDENCE_SEEDS), at most
/// `most` breaks a kind. Seeds other than the tuning's are used, so that even the training breaks are
/// played anew. Watched as the tuning is; BW_LIMIT: cancelled.
bw_status bw_evidence_collect(const bw_tuning *def, const bw_scheme *after, int seeds, int most,
                              bw_evidence *out);

/// Whether a gain is more than chance: above two standard errors, with every seed above nothing.
bool bw_gain_is_real(const bw_gain *gain);

#endif
