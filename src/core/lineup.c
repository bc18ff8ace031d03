/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Players are looked at one after the other; best[filled] is the best way for those so far to fill
/// that set of places, each player taking one place or none. The least worst cost is found first, and
/// then the least sum without any cost above it.
#include "core/lineup.h"

enum { SETS = 1 << BW_LINEUP_PLACES };

/// Above every sum of costs.
#define NOT_YET 1e300

/// Whether `man` may take `place`.
static bool may(const bw_lineup *l, int man, int place, const int *not_him) {
    if (l->cost[man][place] >= BW_LINEUP_NEVER) return false;
    if (not_him && not_him[0] == man && not_him[1] == place) return false;
    if (l->fixed[place] >= 0) return l->fixed[place] == man;
    for (int p = 0; p < l->places; p++) {
        if (l->fixed[p] == man) return false;
    }
    return true;
}

static bool sound(const bw_lineup *l) {
    if (l->places < 1 || l->places > BW_LINEUP_PLACES) return false;
    if (l->men < l->places || l->men > BW_LINEUP_MEN) return false;
    for (int p = 0; p < l->places; p++) {
        if (l->fixed[p] >= l->men) return false;
        for (int q = 0; q < p; q++) {
            if (l->fixed[p] >= 0 && l->fixed[p] == l->fixed[q]) return false;
        }
    }
    return true;
}

/// Least largest cost; BW_LINEUP_NEVER when no line-up respects what is forbidden.
static double least_worst(const bw_lineup *l, const int *not_him) {
    double best[SETS];
    const int all = (1 << l->places) - 1;
    for (int filled = 1; filled <= all; filled++)
        best[filled] = BW_LINEUP_NEVER;
    best[0] = -BW_LINEUP_NEVER;
    for (int man = 0; man < l->men; man++) {
        // From large sets down, so that a man is not used twice.
        for (int filled = all; filled > 0; filled--) {
            for (int p = 0; p < l->places; p++) {
                if (!(filled >> p & 1) || !may(l, man, p, not_him)) continue;
                const double rest = best[filled ^ 1 << p], cost = l->cost[man][p];
                const double worst = cost > rest ? cost : rest;
                if (worst < best[filled]) best[filled] = worst;
            }
        }
    }
    return best[all];
}

/// Least sum without a cost above `most`; BW_NOT_FOUND when there is none.
static bw_status least_sum(const bw_lineup *l, const int *not_him, double most,
                           bw_lineup_choice *out) {
    double best[SETS];
    int8_t took[BW_LINEUP_MEN]
               [SETS]; // the place the man takes on the best way to the set; -1: none
    const int all = (1 << l->places) - 1;
    for (int filled = 1; filled <= all; filled++)
        best[filled] = NOT_YET;
    best[0] = 0;
    for (int man = 0; man < l->men; man++) {
        for (int filled = all; filled >= 0; filled--) {
            took[man][filled] = -1;
            for (int p = 0; p < l->places; p++) {
                if (!(filled >> p & 1) || !may(l, man, p, not_him) || l->cost[man][p] > most)
                    continue;
                const double rest = best[filled ^ 1 << p];
                if (rest >= NOT_YET || rest + l->cost[man][p] >= best[filled]) continue;
                best[filled] = rest + l->cost[man][p];
                took[man][filled] = (int8_t)p;
            }
        }
    }
    if (best[all] >= NOT_YET) return BW_NOT_FOUND;
    *out = (bw_lineup_choice){.worst = -BW_LINEUP_NEVER, .sum = best[all]};
    int filled = all;
    for (int man = l->men - 1; man >= 0; man--) {
        const int p = took[man][filled];
        if (p < 0) continue;
        out->man[p] = man;
        if (l->cost[man][p] > out->worst) out->worst = l->cost[man][p];
        filled ^= 1 << p;
    }
    return BW_OK;
}

static bw_status solve(const bw_lineup *l, bw_lineup_aim aim, const int *not_him,
                       bw_lineup_choice *out) {
    if (!sound(l)) return BW_BAD_INPUT;
    double most = BW_LINEUP_NEVER;
    if (aim == BW_LINEUP_WORST) most = least_worst(l, not_him);
    return least_sum(l, not_him, most, out);
}

bw_status bw_lineup_best(const bw_lineup *lineup, bw_lineup_aim aim, bw_lineup_choice *best) {
    return solve(lineup, aim, NULL, best);
}

bw_status bw_lineup_without(const bw_lineup *lineup, bw_lineup_aim aim, int man, int place,
                            bw_lineup_choice *best) {
    if (place < 0 || place >= lineup->places || lineup->fixed[place] == man) return BW_BAD_INPUT;
    const int not_him[2] = {man, place};
    return solve(lineup, aim, not_him, best);
}
