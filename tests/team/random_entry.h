/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Breaks at random, every one of them true enough to be stored; the same seed gives the same.
#ifndef BW_TESTS_TEAM_RANDOM_ENTRY_H
#define BW_TESTS_TEAM_RANDOM_ENTRY_H

#include "core/entry.h"

#include "harness.h"

static inline int entry_below(unsigned long long *seed, int most) {
    return (int)(test_random(seed) % (unsigned)most);
}

/// Its client id is "test-NUMBER".
static inline bw_entry random_entry(unsigned long long *seed, int number) {
    static const char *const words[] = {"",   "slow slide", "=SUM(A1)", "caf\xc3\xa9, \"quoted\"",
                                        "-1", "'quote",     "@home",    "#7 late; 'x'); --"};
    static const char *const who[] = {"TL", "TR", "M", "LL", "12", "0"};
    bw_entry e = bw_entry_default();
    snprintf(e.client, sizeof e.client, "test-%d", number);
    e.time = entry_below(seed, 2000000000);
    e.offence = 4 + entry_below(seed, 3);
    e.defence = 2 + entry_below(seed, e.offence - 1);
    e.outcome = (bw_outcome)entry_below(seed, BW_OUTCOME_COUNT);
    if (entry_below(seed, 3) > 0) e.seconds = entry_below(seed, 200) / 10.0;
    if (entry_below(seed, 3) > 0) e.passes = entry_below(seed, 9);
    e.shot_known = entry_below(seed, 2) > 0;
    if (e.shot_known) e.shot.x = entry_below(seed, 4000) / 128.0 - 15;
    if (e.shot_known) e.shot.y = entry_below(seed, 3000) / 128.0 - 5;
    e.stage = entry_below(seed, 2) > 0 ? 3 + entry_below(seed, 4) : 0;
    e.out_count = entry_below(seed, 3);
    const int first = entry_below(seed, 6);
    for (int i = 0; i < e.out_count; i++)
        bw_copy(e.out[i], BW_ID_SIZE, who[(first + i) % 6]);
    bw_copy(e.note, sizeof e.note, words[entry_below(seed, 8)]);
    return e;
}

#endif
