/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/test_set.h"
#include "core/text.h"

static bool same_break(const bw_break_def *a, const bw_break_def *b) {
    return a->offence == b->offence && a->defence == b->defence && bw_same(a->set, b->set) &&
           bw_same(a->start, b->start);
}

int bw_test_set(const bw_scheme *scheme, const bw_break_def *headline, int seconds, bool alone,
                bw_trial *trials) {
    trials[0].def = *headline;
    trials[0].effort = bw_effort_default();
    trials[0].effort.seconds = seconds;
    if (alone) return 1;
    bw_break_def standard[BW_STANDARD_MAX];
    const int count = bw_standard_set(scheme, standard);
    int used = 1;
    for (int i = 0; i < count; i++) {
        if (same_break(&standard[i], headline)) continue;
        trials[used].def = standard[i];
        trials[used].def.seed = headline->seed;
        trials[used].effort = bw_effort_standard();
        trials[used++].effort.seconds = seconds;
    }
    return used;
}
