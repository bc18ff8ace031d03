/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/limits.h"

#include "trial/words.h"

static void say_best(const bw_trial *trial, bw_text *out) {
    bw_put(out, "Best is perfect play that never hesitates, thought out over ");
    bw_put_int(out, trial->effort.curve.search.depth);
    bw_put(out, " decisions and a shot: a stress test of the scheme. No team plays like that. Cuts "
                "are limited to one begun at each decision, so a cleverer offence may exist.");
}

static void say_typical(const bw_trial *trial, bw_text *out) {
    bw_put(out,
           "Typical is how people choose: mostly the better play, often not the best one, in ");
    bw_put_int(out, trial->curve.forecast.rollouts);
    bw_put(out,
           " simulated breaks. Its height rests on how sharply players choose, how far and how "
           "patiently they look ahead, and what keeping the ball seems worth, which no open "
           "data fixes. Compare with it and rank with it; do not read it as a scoring rate. "
           "Even numbers are a plain man-to-man that comes out low: the floor of the curve, "
           "not a figure to quote.");
}

static void say_late(const bw_trial *trial, bw_text *out) {
    (void)trial;
    bw_put(out, "The late men's arrivals are those for a ball that stays where it starts.");
}

static void say_assumed(const bw_trial *trial, bw_text *out) {
    const bw_level *level = trial->begun.ground->level;
    bw_put(out, "Assumed for ");
    bw_put(out, level->name);
    bw_put(out, ": top speed ");
    bw_put_fixed(out, level->defender.vmax, 1);
    bw_put(out, " m/s while watching the play, reaction ");
    bw_put_fixed(out, level->react_base, 2);
    bw_put(out, " s and more the more men there are to watch, a pass released ");
    bw_put_fixed(out, level->release, 2);
    bw_put(out, " s after the catch and thrown at ");
    bw_put_fixed(out, level->pass_speed, 0);
    bw_put(out, " m/s. Running and reaction rest on published measurements, the rest is assumed; "
                "docs/model.md names each source.");
}

static void say_left_out(const bw_trial *trial, bw_text *out) {
    (void)trial;
    bw_put(out, "Left out: contact, picks, fakes, stick checks, rebounds, fatigue, fouls and "
                "officials, weather, and what one player does better than another. A model of "
                "players as points rehearses ideas; it does not foretell a game. Where it "
                "disagrees with what your players can do, trust your players.");
}

bool bw_say_limit(const bw_trial *trial, int index, bw_text *out) {
    static void (*const limits[])(const bw_trial *, bw_text *) = {say_typical, say_best, say_late,
                                                                  say_left_out, say_assumed};
    if (index >= BW_COUNT(limits)) return false;
    limits[index](trial, out);
    return true;
}
