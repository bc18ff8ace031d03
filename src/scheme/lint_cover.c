/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Cover, with the ball at each landmark: a man on the ball, a man near the crease, nobody doing
/// another's job, and no gap in front of the goal that the two men beside it cannot close in time.
#include "core/rule.h"
#include "scheme/lint_part.h"

#define YD BW_METRES_PER_YARD

/// Common practice, no source.
static const double on_ball_slack = 1.5 * YD; ///< beyond the rule's gap, and still on the ball
static const double double_slack = 0.5 * YD;  ///< ... and within which a second man is on it too
static const double crowded = 1.5 * YD;       ///< nearer than this, two men do one man's work
static const double on_line = 1e-6;           ///< m: rounding; a ball on the line is inside it
static const double crease_front = 4 * YD;    ///< the place in front of the goal that must be near

static bw_vec ball_at(const bw_lint *lint, int landmark) {
    return lint->scheme->landmarks[landmark].at;
}

/// The man nearest to p with the ball at this landmark.
static int nearest(const bw_lint *lint, int landmark, bw_vec p) {
    int best = 0;
    for (int s = 1; s < lint->plan.spots; s++) {
        if (bw_distance(lint->at[landmark][s].at, p) < bw_distance(lint->at[landmark][best].at, p))
            best = s;
    }
    return best;
}

/// Ball in front and inside the pickup line, the cushion before it included, and nobody as near to it
/// as the rule would have a man.
static void look_at_ball(bw_lint *lint, int landmark) {
    const bw_rule *rule = &lint->plan.rule;
    bw_vec ball = ball_at(lint, landmark);
    if (ball.y < 0 || bw_length(ball) <= rule->cushion) return;
    bw_vec met = bw_rule_on_ball(rule, ball);
    double line = bw_max(rule->pickup, bw_length(met) + rule->cushion);
    int man = nearest(lint, landmark, ball);
    double gap = bw_distance(lint->at[landmark][man].at, ball);
    if (bw_length(ball) > line + on_line) return;
    if (gap <= bw_max(rule->cushion, bw_distance(met, ball)) + on_ball_slack) return;

    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_spot(lint, f, landmark, man);
    bw_lint_say(lint, f, &bw_s_lint_off_ball, &bw_s_lint_off_ball_mend,
                bw_lint_as_at("at", lint, landmark), bw_lint_as_spot("spot", lint, man),
                bw_as_length("gap", gap), bw_lint_as_sides("sides", lint, landmark));
}

/// Nobody can be in front of the crease by the time a pass thrown there is shot.
static void look_at_crease(bw_lint *lint, int landmark) {
    bw_vec front = bw_v(0, crease_front);
    int man = nearest(lint, landmark, front);
    double gap = bw_distance(lint->at[landmark][man].at, front);
    double t_pass = bw_lint_time(lint, ball_at(lint, landmark), front);
    double reach = bw_reach(lint->level->defender, t_pass) + lint->level->stick_reach;
    if (gap <= reach + BW_LINT_SHOWN) return;

    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_spot(lint, f, landmark, man);
    bw_lint_say(lint, f, &bw_s_lint_no_crease, &bw_s_lint_no_crease_mend,
                bw_lint_as_at("at", lint, landmark), bw_lint_as_spot("spot", lint, man),
                bw_as_length("gap", gap), bw_as_length("reach", reach),
                bw_lint_as_sides("sides", lint, landmark));
}

static void say_pair(bw_lint *lint, int landmark, int a, int b, double apart,
                     const bw_sentence *sentence, const bw_sentence *mend) {
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_spot(lint, f, landmark, b);
    bw_lint_say(lint, f, sentence, mend, bw_lint_as_spot("one", lint, a),
                bw_lint_as_spot("other", lint, b), bw_as_length("apart", apart),
                bw_lint_as_at("at", lint, landmark), bw_lint_as_sides("sides", lint, landmark));
}

/// Two men where one would do.
static void look_at_pair(bw_lint *lint, int landmark, int a, int b) {
    bw_vec p = lint->at[landmark][a].at, q = lint->at[landmark][b].at;
    bw_vec ball = ball_at(lint, landmark);
    double on_ball = lint->plan.rule.cushion + double_slack;
    double d = bw_distance(p, q);
    if (d < crowded)
        say_pair(lint, landmark, a, b, d, &bw_s_lint_crowded, &bw_s_lint_crowded_mend);
    else if (bw_distance(p, ball) < on_ball && bw_distance(q, ball) < on_ball)
        say_pair(lint, landmark, a, b, d, &bw_s_lint_both_on_ball, &bw_s_lint_both_on_ball_mend);
}

/// Two men are neighbours when nobody else is as near to the middle between them as they are: the gap
/// is theirs to close (a Gabriel neighbour: K. R. Gabriel, R. R. Sokal 1969).
static bool neighbours(const bw_lint *lint, int landmark, int a, int b) {
    const bw_station *at = lint->at[landmark];
    bw_vec middle = bw_lerp(at[a].at, at[b].at, 0.5);
    for (int s = 0; s < lint->plan.spots; s++) {
        if (s == a || s == b) continue;
        if (bw_distance(at[s].at, middle) < bw_distance(at[a].at, at[b].at) / 2) return false;
    }
    return true;
}

/// A gap is open when an attacker could catch in its middle and shoot before the two men beside it,
/// each running from rest, have closed it: both run for the time of that pass and shot, and both have
/// a stick. Only gaps in the hole count, and of those not the ones at a poor angle, less than half a
/// right angle from the goal line: such shots are given up before closer ones.
static void look_at_gap(bw_lint *lint, int landmark, int a, int b) {
    bw_vec from = lint->at[landmark][a].at, to = lint->at[landmark][b].at;
    bw_vec middle = bw_lerp(from, to, 0.5);
    if (bw_abs(middle.x) > middle.y || bw_length(middle) > BW_LINT_HOLE) return;
    double time = bw_lint_time(lint, ball_at(lint, landmark), middle);
    double one = bw_reach(lint->level->defender, time) + lint->level->stick_reach;
    double wide = bw_distance(from, to);
    if (wide <= 2 * one + BW_LINT_SHOWN || !neighbours(lint, landmark, a, b)) return;

    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_spot(lint, f, landmark, b);
    bw_lint_say(lint, f, &bw_s_lint_gap, &bw_s_lint_gap_mend, bw_lint_as_spot("one", lint, a),
                bw_lint_as_spot("other", lint, b), bw_as_length("wide", wide),
                bw_lint_as_at("at", lint, landmark), bw_as_length("closed", 2 * one),
                bw_lint_as_sides("sides", lint, landmark));
}

static void look_at_pairs(bw_lint *lint, int landmark) {
    for (int b = 1; b < lint->plan.spots; b++) {
        for (int a = 0; a < b; a++) {
            look_at_pair(lint, landmark, a, b);
            look_at_gap(lint, landmark, a, b);
        }
    }
}

void bw_lint_cover(bw_lint *lint) {
    if (bw_lint_stage(lint)->rule.crease == BW_CREASE_NONE) {
        bw_finding *f = bw_lint_begin(lint, BW_WARNING);
        bw_lint_point(lint, f, "/rule/crease");
        bw_lint_say(lint, f, &bw_s_lint_crease_to_nobody, &bw_s_lint_crease_to_nobody_mend,
                    bw_as_word("shape", bw_lint_stage(lint)->shape));
    }
    for (int l = 0; l < lint->scheme->landmark_count; l++) {
        if (bw_lint_told(lint, l)) continue;
        look_at_ball(lint, l);
        if (bw_lint_shot_next(lint, l)) continue;
        look_at_crease(lint, l);
        look_at_pairs(lint, l);
    }
}
