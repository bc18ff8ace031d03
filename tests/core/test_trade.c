/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What every coach knows, with margins, by typical worth on several sets and starts. Common practice,
/// no source. Where the model and the trade disagree the model is to be mended, never this file.
/// Seeds are fixed, so the sampling error (about 0.008 on a mean of 18 breaks) is the same every time;
/// docs/model.md has the figures of a run with three times the roll-outs.
#include "breaks.h"
#include "harness.h"

enum { ROLLOUTS = 12, BY = 6 };

static const char *const sets[] = {"2-2-2", "2-3-1", "spread"};
static const char *const starts[] = {"top", "tr", "wl", "gr", "gl", "x"};
static const char *const behind[] = {"x", "bl", "br"};
static const char *const crease_sets[] = {"2-2-2", "2-3-1", "3-3"};

typedef struct field_day {
    int offence, defence;
    const char *const *sets, *const *starts;
    int start_count;
    double late[2]; ///< yards behind; 0: nobody
    int by;         ///< seconds
} field_day;

static const field_day usual = {6, 4, sets, starts, 6, {0, 0}, BY};

/// Mean typical worth over three sets and the starts.
static double worth(field_day day) {
    double sum = 0;
    int count = 0;
    for (int set = 0; set < 3; set++) {
        for (int k = 0; k < day.start_count; k++) {
            bw_break_def def = breaks_def(day.offence, day.defence, day.sets[set], day.starts[k]);
            for (int i = 0; i < 2 && day.late[i] > 0; i++)
                def.late[def.late_count++] = day.late[i] * BW_METRES_PER_YARD;
            static bw_break b;
            CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
            sum += breaks_typical(&b, ROLLOUTS, 5).worth[day.by];
            count++;
        }
    }
    return sum / count;
}

static double base; ///< 6v4, nobody coming

static field_day with(int offence, int defence) {
    field_day day = usual;
    day.offence = offence;
    day.defence = defence;
    return day;
}

/// Builds the ground anew after `scheme` or the level was changed.
static void rebuild(const bw_level *level) {
    bw_ground_build(&breaks_scheme, level, &breaks_ground, NULL);
}

static void numbers_count(void) {
    base = worth(usual);
    const double five = worth(with(6, 5)), six = worth(with(6, 6)), short_one = worth(with(5, 4));
    printf("6v4 %.3f, 6v5 %.3f, 6v6 %.3f, 5v4 %.3f\n", base, five, six, short_one);
    CHECK(six + 0.05 < five);
    CHECK(five + 0.01 < base);
    CHECK(short_one <= base + 0.005);
    const double four = worth(with(4, 4)), fast = worth(with(4, 3));
    CHECK(four + 0.05 < fast);
}

static void too_wide_concedes_more(void) {
    const bw_scheme kept = breaks_scheme;
    const bw_level *level = breaks_ground.level;
    double at[3];
    static const double factor[] = {0.8, 1.2, 1.8};
    for (int i = 0; i < 3; i++) {
        breaks_scheme = kept;
        bw_stage *four = &breaks_scheme.stages[bw_scheme_stage(&kept, 4)];
        for (int s = 0; s < 4; s++)
            four->spots[s].home.x *= factor[i];
        rebuild(level);
        at[i] = worth(usual);
    }
    breaks_scheme = kept;
    rebuild(level);
    printf("width 0.8: %.3f, 1: %.3f, 1.2: %.3f, 1.8: %.3f\n", at[0], base, at[1], at[2]);
    CHECK(at[2] > base + 0.01);
    // And a flat region about the usual width.
    CHECK_NEAR(at[0], base, 0.03);
    CHECK_NEAR(at[1], base, 0.03);
}

static void the_far_man_covers_the_crease(void) {
    const bw_scheme kept = breaks_scheme;
    const bw_level *level = breaks_ground.level;
    field_day day = usual;
    day.sets = crease_sets;
    const double covered = worth(day);
    breaks_scheme.stages[bw_scheme_stage(&kept, 4)].rule.crease = BW_CREASE_NONE;
    rebuild(level);
    const double open = worth(day);
    breaks_scheme = kept;
    rebuild(level);
    printf("crease covered %.3f, open %.3f\n", covered, open);
    CHECK(covered + 0.06 < open);
}

static void holding_beats_chasing_behind(void) {
    const bw_scheme kept = breaks_scheme;
    const bw_level *level = breaks_ground.level;
    field_day day = usual;
    day.starts = behind;
    day.start_count = 3;
    const double hold = worth(day);
    breaks_scheme.stages[bw_scheme_stage(&kept, 4)].rule.hold_behind = false;
    rebuild(level);
    const double chase = worth(day);
    breaks_scheme = kept;
    rebuild(level);
    printf("hold %.3f, chase %.3f\n", hold, chase);
    CHECK(hold <= chase);
}

static void slower_men_concede_no_less(void) {
    const bw_level *kept = breaks_ground.level;
    bw_level level = *kept;
    level.defender.vmax *= 0.75;
    rebuild(&level);
    const double slow_legs = worth(usual);
    level = *kept;
    level.react_base += 0.2;
    rebuild(&level);
    const double slow_heads = worth(usual);
    rebuild(kept);
    printf("as they are %.3f, slower legs %.3f, slower reaction %.3f\n", base, slow_legs,
           slow_heads);
    CHECK(slow_legs > base - 0.01);
    CHECK(slow_heads > base + 0.01);
}

static void a_man_sooner_is_no_worse(void) {
    field_day day = usual;
    day.by = BW_MAX_SECONDS;
    static const double late[][2] = {{15, 20}, {20, 30}, {30, 45}, {0, 0}};
    double at[4];
    for (int i = 0; i < 4; i++) {
        day.late[0] = late[i][0];
        day.late[1] = late[i][1];
        at[i] = worth(day);
        if (i > 0) CHECK(at[i] >= at[i - 1] - 0.012);
    }
    printf("late 15/20: %.3f, 20/30: %.3f, 30/45: %.3f, nobody: %.3f\n", at[0], at[1], at[2],
           at[3]);
    CHECK(at[0] + 0.02 < at[3]);
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(numbers_count);
    RUN(too_wide_concedes_more);
    RUN(the_far_man_covers_the_crease);
    RUN(holding_beats_chasing_behind);
    RUN(slower_men_concede_no_less);
    RUN(a_man_sooner_is_no_worse);
    return test_report(argc, argv);
}
