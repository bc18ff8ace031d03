/* SPDX-License-Identifier: GPL-3.0-or-later */
/// bw_where over balls all over the right half of the field, against the plain way. Both ways must
/// agree first: a fast wrong answer is no answer.
#include "bench/benches.h"
#include "bench/plain_where.h"
#include "scheme/fresh.h"

enum { BALLS = 64, STAGE = 1 };

typedef struct walk {
    bw_scheme scheme, bare;
    bw_plan plan;
    bw_vec ball[BALLS];
    double sum; ///< of the answers, so that no compiler leaves the work out
} walk;

/// A 2-2 with each spot pinned at a landmark of its own, or with none pinned.
static void begin(walk *walk, bool pins) {
    bw_scheme_fresh(0, 3, &walk->bare);
    walk->scheme = walk->bare;
    bw_stage *stage = &walk->scheme.stages[STAGE];
    for (int s = 0; s < stage->defenders && pins; s++) {
        const int landmark = s * walk->scheme.landmark_count / stage->defenders;
        stage->pinned[landmark][s] = 1;
        stage->pins[landmark][s] = bw_add(stage->spots[s].home, bw_v(0.5, 0.75));
    }
    bw_plan_build(&walk->scheme, STAGE, &walk->plan);
    for (int i = 0; i < BALLS; i++)
        walk->ball[i] = bw_v(0.37 + i % 8 * 2.1, i / 8 * 3.3 - 7.9);
}

static void ready_made(void *context) {
    walk *walk = context;
    bw_station out[BW_MAX_SPOTS];
    for (int i = 0; i < BALLS; i++) {
        bw_where(&walk->plan, walk->ball[i], NULL, 0, out);
        walk->sum += out[0].at.x;
    }
}

static void plainly(void *context) {
    walk *walk = context;
    bw_station out[BW_MAX_SPOTS];
    for (int i = 0; i < BALLS; i++) {
        plain_where(&walk->scheme, &walk->bare, STAGE, walk->ball[i], out);
        walk->sum += out[0].at.x;
    }
}

static bool agree(const walk *walk) {
    for (int i = 0; i < BALLS; i++) {
        bw_station fast[BW_MAX_SPOTS], plain[BW_MAX_SPOTS];
        bw_where(&walk->plan, walk->ball[i], NULL, 0, fast);
        plain_where(&walk->scheme, &walk->bare, STAGE, walk->ball[i], plain);
        for (int s = 0; s < walk->plan.spots; s++) {
            const double apart = bw_distance(fast[s].at, plain[s].at);
            if (apart < 1e-9) continue;
            fprintf(stderr, "ball %d, spot %d: %g m apart\n", i, s, apart);
            return false;
        }
    }
    return true;
}

static bool measure(bool pins, bench_result *result) {
    static walk walk;
    begin(&walk, pins);
    if (!agree(&walk)) return false;
    *result = (bench_result){.value = bench_seconds(ready_made, &walk) / BALLS * 1e9,
                             .baseline = bench_seconds(plainly, &walk) / BALLS * 1e9,
                             .unit = "ns",
                             .against = "working everything out at each call"};
    return walk.sum == walk.sum;
}

bool bench_where(bench_result *result) {
    return measure(false, result);
}

bool bench_where_pinned(bench_result *result) {
    return measure(true, result);
}
