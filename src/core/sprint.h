/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's legs from timed splits: top speed and time constant of the mono-exponential sprint
/// x(t) = vmax (t - tau (1 - exp(-t/tau))), which is the motion model's own equation, by least squares
/// of time on distance. Standard errors from s^2 (J'J)^-1.
///
/// Sources: K. Furusawa, A. V. Hill, J. L. Parkinson, Proc. R. Soc. Lond. B 102, 1927 (the form);
/// P. Samozino et al., Scand. J. Med. Sci. Sports 26, 2016 (the fit); T. Haugen, E. Tonnessen,
/// S. Seiler, J. Strength Cond. Res. 26, 2012, and J. D. Vescovi, M. Jovanovic, Front. Sports Act.
/// Living 3, 2021 (why the start must be modelled). Limits: runs of up to about six seconds, before
/// any fade; one straight sprint says nothing of turning.
#ifndef BW_CORE_SPRINT_H
#define BW_CORE_SPRINT_H

#include "core/base.h"
#include "core/motion.h"

enum { BW_MAX_SPLITS = 24, BW_SPLITS_FOR_SHIFT = 5 };

/// Seconds added to times from a gate at the line when there are too few splits to estimate the
/// start: what practice adds (Haugen, Tonnessen, Seiler 2012; 0.3 s in open split data).
#define BW_GATE_SECONDS 0.3

/// When the clock started.
typedef enum bw_clock {
    BW_CLOCK_MOVE,   ///< at his first movement
    BW_CLOCK_SIGNAL, ///< at a whistle or gun: his reaction is in the times
    BW_CLOCK_GATE,   ///< at a light gate at the line, which he trips already moving
    BW_CLOCK_COUNT
} bw_clock;

/// Its id: "move", "signal", "gate". "" for anything else.
const char *bw_clock_id(bw_clock clock);

typedef struct bw_split {
    double distance; ///< from the start line, m, (0, 200]
    double seconds;  ///< on the clock, (0, 60]
} bw_split;

typedef enum bw_sprint_verdict {
    BW_SPRINT_FITTED,
    BW_SPRINT_FEW,       ///< fewer than two splits, or more than BW_MAX_SPLITS
    BW_SPRINT_ORDER,     ///< distances and times do not rise together
    BW_SPRINT_RANGE,     ///< a split outside what bw_split allows
    BW_SPRINT_TOO_FAST,  ///< between two splits faster than anybody has run
    BW_SPRINT_NO_TOP,    ///< he still speeds up at the last split: no top speed to be seen
    BW_SPRINT_NO_START,  ///< the splits begin too far out: the start is not to be seen
    BW_SPRINT_CLOCK,     ///< the first split leaves no time for a start
    BW_SPRINT_SCATTERED, ///< near and far enough, but too uneven to tell start or top speed from
    BW_SPRINT_NOT_A_RUN  ///< no sprint of this form comes near the times
} bw_sprint_verdict;

typedef struct bw_sprint {
    bw_sprint_verdict verdict; ///< the rest holds only when fitted
    bw_legs legs;              ///< vmax (m/s), tau (s)
    double vmax_error;         ///< standard error, m/s; negative when there is no split to spare
    double tau_error;          ///< s, likewise
    double late;               ///< seconds the clock started after (< 0: before) his first movement
    double late_error;         ///< 0 when it was given, not estimated
    double residual;           ///< standard error of a split, s; negative when none to spare
    int splits;
    bool start_estimated; ///< `late` was estimated from the splits
} bw_sprint;

/// Fits the splits of one run, or of several put together in order of distance. The start is estimated
/// from BW_SPLITS_FOR_SHIFT splits or more, where they can tell it; otherwise it is taken as usual:
/// BW_GATE_SECONDS for a gate, `reaction` seconds for a signal, nothing for first movement. O(count) for
/// each of at most 60 steps, twice.
bw_sprint bw_sprint_fit(const bw_split *splits, int count, bw_clock clock, double reaction);

/// The fit with the delay of the clock free or given; bw_sprint_fit chooses between them.
bw_sprint bw_sprint_fit_late(const bw_split *splits, int count, double late, bool estimate);

/// The start modelled as a distance: he stood `behind` metres behind the gate, which is estimated from
/// at least BW_SPLITS_FOR_SHIFT splits. `late` is then what the start cost on the clock.
bw_sprint bw_sprint_fit_behind(const bw_split *splits, int count, double *behind);

/// Seconds to run d >= 0 metres from rest, passing through.
double bw_sprint_time(bw_legs legs, double d);

/// One sentence on a fit that was refused, e.g. "Two splits at least are needed, the first within ..."
/// "" when fitted.
const char *bw_sprint_why(bw_sprint_verdict verdict);

#endif
