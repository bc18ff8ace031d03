/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Reaction against the Hick-Hyman law (W. E. Hick 1952; R. Hyman 1953), a = 0.200 s, b = 0.150 s a
/// bit, form a + b log2 N: 0.200, 0.350, 0.500, 0.650 s for 1, 2, 4, 8 choices. (Hick's own form,
/// log2(N + 1), is not the one used.) Simple reaction, 213 to 231 ms in 1469 people: D. L. Woods et
/// al., Front. Hum. Neurosci. 9:131, 2015.
#include "core/base.h"
#include "core/level.h"
#include "harness.h"

static void doublings(void) {
    bw_level level = *bw_level_find("high-school");
    level.react_base = 0.2;
    level.react_bit = 0.15;
    CHECK_NEAR(bw_reaction(&level, 1), 0.200, 1e-12);
    CHECK_NEAR(bw_reaction(&level, 2), 0.350, 1e-12);
    CHECK_NEAR(bw_reaction(&level, 4), 0.500, 1e-12);
    CHECK_NEAR(bw_reaction(&level, 8), 0.650, 1e-12);
    CHECK_NEAR(bw_reaction(&level, 1.5), 0.2 + 0.15 * 0.58496250072, 1e-10);
    CHECK_SAME(bw_reaction(&level, 0.5), 0.2);
}

static void levels_are_in_the_published_range(void) {
    for (int i = 0; i < bw_level_count(); i++) {
        const bw_level *l = bw_level_at(i);
        CHECK(l->react_base >= 0.15 && l->react_base <= 0.30);
        CHECK(l->react_bit >= 0.10 && l->react_bit <= 0.20);
    }
}

int main(int argc, char **argv) {
    RUN(doublings);
    RUN(levels_are_in_the_published_range);
    return test_report(argc, argv);
}
