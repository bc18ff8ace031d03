/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Runs: rotations that ask for more speed than the level has, and carries along which the shape
/// moves a man faster than he can go. Only the few worst of a stage are told.
#include "core/ball.h"
#include "scheme/caption.h"
#include "scheme/lint_part.h"

/// A man lags this far behind the shape, m, before it is held against the shape (assumed: 1 yd).
static const double lag_allowed = 1 * BW_METRES_PER_YARD;
static const double step = 0.25; ///< m of carry between two looks at the shape
enum { WORST = 3 };              ///< rotations and carries told a stage

/// One rotation or carry, and the man who has most to do.
typedef struct run {
    int from, to;
    int spot;
    double asked; ///< top speed, m/s
} run;

/// The worst runs so far, the worst first.
typedef struct runs {
    int kept;
    int over; ///< runs that ask too much, kept or not
    run worst[WORST];
} runs;

static void keep(runs *list, run r) {
    list->over++;
    int k = list->kept < WORST ? list->kept++ : WORST;
    for (; k > 0 && list->worst[k - 1].asked < r.asked; k--) {
        if (k < WORST) list->worst[k] = list->worst[k - 1];
    }
    if (k < WORST) list->worst[k] = r;
}

static bw_vec landmark(const bw_lint *lint, int l) {
    return lint->scheme->landmarks[l].at;
}

/// In a stage that is its own mirror image the twin rotation tells the same, save that a ball on the
/// centre line has a side of its own: the scheme's tie side.
static bool told(const bw_lint *lint, int from, int to) {
    const bw_landmark *a = &lint->scheme->landmarks[from], *b = &lint->scheme->landmarks[to];
    if (!lint->symmetric || a->at.x == 0 || b->at.x == 0) return false;
    return a->twin < from || (a->twin == from && b->twin < to);
}

/// Whether a man's place waits for the pass after this one: nobody shoots before the next pass finds
/// his man. The crease is handed over: whoever has it stays until he is relieved, unless he is the one
/// who must go to the ball.
static bool can_wait(const bw_lint *lint, int from, int to, int spot) {
    bw_duty duty = lint->at[to][spot].duty;
    if (duty == BW_DUTY_ADJACENT || duty == BW_DUTY_BACKSIDE) return true;
    if (duty != BW_DUTY_CREASE) return false;
    for (int s = 0; s < lint->plan.spots; s++) {
        if (lint->at[from][s].duty == BW_DUTY_CREASE)
            return s != spot && lint->at[to][s].duty != BW_DUTY_BALL;
    }
    return false;
}

double bw_lint_time_for(const bw_lint *lint, int from, int to, int spot) {
    bw_vec ball = landmark(lint, to);
    double time = bw_lint_time(lint, landmark(lint, from), ball);
    if (!can_wait(lint, from, to, spot)) return time;
    const bw_level *level = lint->level;
    double d = bw_distance(ball, lint->at[to][spot].at);
    return time + level->release + bw_ball_time(level->pass_speed, BW_BALL_DRAG, d);
}

/// Passed from one landmark to the other: who must be fastest to be in his place in time. A man is in
/// it when his stick is.
static run passed(const bw_lint *lint, int from, int to) {
    run worst = {from, to, -1, 0};
    for (int s = 0; s < lint->plan.spots; s++) {
        double d = bw_distance(lint->at[from][s].at, lint->at[to][s].at) - lint->level->stick_reach;
        if (d <= 0) continue;
        double time = bw_lint_time_for(lint, from, to, s);
        double asked = bw_speed_needed(lint->level->defender.tau, d, time);
        if (asked > worst.asked) {
            worst.asked = asked;
            worst.spot = s;
        }
    }
    return worst;
}

static bool same_duties(const bw_lint *lint, const bw_station *a, const bw_station *b) {
    for (int s = 0; s < lint->plan.spots; s++) {
        if (a[s].duty != b[s].duty) return false;
    }
    return true;
}

/// Carried from one landmark to the other: the greatest speed at which the shape takes a man along,
/// of the men it leaves behind by more than is allowed. Where a duty changes hands the target jumps
/// and men run; that is not the shape's doing, and the count begins anew.
static run carried(const bw_lint *lint, int from, int to) {
    bw_vec a = landmark(lint, from), b = landmark(lint, to);
    double length = bw_distance(a, b);
    int steps = (int)(length / step) + 1;
    double seconds = length / steps / lint->level->carry_speed;
    run worst = {from, to, -1, 0};
    double lag[BW_MAX_SPOTS] = {0}, top[BW_MAX_SPOTS] = {0};
    bw_station before[BW_MAX_SPOTS], now[BW_MAX_SPOTS];
    bw_where(&lint->plan, a, NULL, 0, before);
    for (int i = 1; i <= steps; i++) {
        bw_where(&lint->plan, bw_lerp(a, b, (double)i / steps), NULL, 0, now);
        bool same = same_duties(lint, before, now);
        for (int s = 0; s < lint->plan.spots; s++) {
            double moved = bw_distance(before[s].at, now[s].at);
            before[s] = now[s];
            double behind = lag[s] + moved - lint->level->defender.vmax * seconds;
            lag[s] = same ? bw_max(behind, 0) : 0;
            top[s] = lag[s] > 0 ? bw_max(top[s], moved / seconds) : 0;
            if (lag[s] <= lag_allowed || top[s] <= worst.asked) continue;
            worst.asked = top[s];
            worst.spot = s;
        }
    }
    return worst;
}

static void say(bw_lint *lint, run r, const bw_sentence *sentence, const bw_sentence *mend) {
    const bw_vec from = landmark(lint, r.from), to = landmark(lint, r.to);
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_spot(lint, f, r.to, r.spot);
    bw_lint_say(lint, f, sentence, mend, bw_as_ball("from", lint->scheme, from),
                bw_as_ball("to", lint->scheme, to), bw_lint_as_spot("spot", lint, r.spot),
                bw_as_speed("needed", r.asked), bw_as_speed("top", lint->level->defender.vmax),
                from.x != 0 && to.x != 0 ? bw_lint_as_sides("sides", lint, r.from)
                                         : bw_as_part("sides", NULL));
}

static void say_more(bw_lint *lint, int more, const bw_sentence *sentence) {
    if (more <= 0) return;
    bw_finding *f = bw_lint_begin(lint, BW_NOTE);
    bw_lint_point(lint, f, "");
    bw_lint_say(lint, f, sentence, &bw_s_lint_more_mend, bw_as_count("count", more),
                bw_as_word("shape", bw_lint_stage(lint)->shape));
}

void bw_lint_runs(bw_lint *lint) {
    double had = lint->level->defender.vmax;
    runs passes = {0}, carries = {0};
    const int count = lint->scheme->landmark_count;
    for (int a = 0; a < count; a++) {
        for (int b = 0; b < count; b++) {
            if (!lint->rotations.rotation[a][b] || told(lint, a, b)) continue;
            run r = passed(lint, a, b);
            if (r.asked > had + BW_LINT_SHOWN) keep(&passes, r);
            double clear = bw_goal_clearance(landmark(lint, a), landmark(lint, b));
            if (a > b || clear < lint->field->crease) continue;
            r = carried(lint, a, b);
            if (r.asked > had + BW_LINT_SHOWN) keep(&carries, r);
        }
    }
    for (int i = 0; i < passes.kept; i++)
        say(lint, passes.worst[i], &bw_s_lint_pass, &bw_s_lint_pass_mend);
    say_more(lint, passes.over - passes.kept, &bw_s_lint_more_passes);
    for (int i = 0; i < carries.kept; i++)
        say(lint, carries.worst[i], &bw_s_lint_carry, &bw_s_lint_carry_mend);
    say_more(lint, carries.over - carries.kept, &bw_s_lint_more_carries);
}
