/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rule in code; docs/shape.md tells it in words.
#include "core/rule.h"

#define YD BW_METRES_PER_YARD

/// Fixed proportions of the rule. Common practice, no source, unless said otherwise.
static const double shift_reach = 12.0;   ///< m: the unit follows the ball sideways no farther
static const double shift_level = 7 * YD; ///< ball height at which the unit neither rises nor drops
static const double shift_drop = 11.0;    ///< m below that level, at most
static const double shift_rise = 9.0;     ///< m above it, at most
static const double shift_upfield = 0.5; ///< the unit moves up and down half as readily as sideways
static const double lowest = 0.6;        ///< m: no zone man is pushed below this by the shift
static const double on_line = 0.3;       ///< m: the man on the ball stays above the goal line
static const double closest = 0.4;       ///< of the ball's distance: he stays between ball and goal
static const double meet_beyond_post =
    1 * YD; ///< at GLE the ball is met this far outside the hold post
static const double meet_start = 2.5 * YD; ///< ball this wide behind the goal begins to draw him
static const double meet_full = 3 * YD;    ///< ... and over this much more width he is out
static const double meet_depth = 3 * YD;   ///< ball this deep behind the line draws nobody
static const double post_shift = 0.3; ///< the holding pair follow this share of the unit's shift
static const double crease_follow = 0.12; ///< the crease man follows this share of the ball's x
static const double middle_stays =
    2.0; ///< m: the spot that owns the crease leaves it this unwillingly

/// Among equals: first the spot nearer the ball's side, then the lower one. Homes never coincide
/// in both, for two spots may not share a home.
static bool ahead(bw_vec a, bw_vec b) {
    return a.x != b.x ? a.x > b.x : a.y < b.y;
}

/// The spot nearest to where the ball is met, not to the ball: on the wing the ball is met low, so it
/// is the low man's, and the top man stays up.
static int nearest(const bw_formation *unit, const bw_vec *base, bw_vec meeting) {
    int best = 0;
    double best_cost = 0;
    for (int i = 0; i < unit->spots; i++) {
        double cost = bw_distance(meeting, base[i]);
        if (i == unit->rule->crease) cost += middle_stays;
        if (i == 0 || cost < best_cost ||
            (cost == best_cost && ahead(unit->home[i], unit->home[best]))) {
            best = i;
            best_cost = cost;
        }
    }
    return best;
}

/// The farthest spot without a duty yet, or -1.
static int farthest(const bw_formation *unit, const bw_vec *base, bw_vec ball, unsigned taken) {
    int best = -1;
    double best_d = 0;
    for (int i = 0; i < unit->spots; i++) {
        if (taken >> i & 1u) continue;
        double d = bw_length2(bw_sub(ball, base[i]));
        if (best < 0 || d > best_d || (d == best_d && ahead(unit->home[best], unit->home[i]))) {
            best = i;
            best_d = d;
        }
    }
    return best;
}

/// Distance from the goal at which the ball is met, by how far in front it is: sine 1 straight in
/// front, 0 on the goal line extended.
static double meeting_distance(const bw_rule *rule, double sine) {
    double meet = rule->hold_at.x + meet_beyond_post;
    return meet + (rule->pickup - meet) * (1 - rule->soft * (1 - sine));
}

bw_vec bw_rule_on_ball(const bw_rule *rule, bw_vec ball) {
    double r = bw_length(ball);
    if (r == 0) return bw_v(0, on_line);
    double sine = bw_max(ball.y, 0) / r;
    double m = bw_min(r - rule->cushion, meeting_distance(rule, sine));
    bw_vec at = bw_scale(ball, bw_max(m, closest * r) / r);
    at.y = bw_max(at.y, on_line);
    return at;
}

/// How far (0 to 1) the ball-side low man has left his post to meet a carrier coming round.
static double meeting_share(bw_vec ball) {
    return bw_clamp((ball.x - meet_start) / meet_full, 0, 1) *
           bw_clamp(1 + ball.y / meet_depth, 0, 1);
}

/// A zone man leaves the crease to the goalkeeper: he is moved straight out to its edge.
static bw_vec outside_crease(const bw_formation *unit, bw_vec at) {
    double r = bw_length(at);
    return r > 0 && r < unit->keep_out ? bw_scale(at, unit->keep_out / r) : at;
}

/// Ball behind: the low pair stand at their posts, the near one going out to the goal line extended
/// as the carrier comes round. Returns the set of spots used.
static unsigned hold_low_pair(const bw_formation *unit, bw_vec ball, double sideways,
                              bw_ruled *out) {
    const bw_rule *rule = unit->rule;
    bw_vec near = bw_v(rule->hold_at.x + post_shift * sideways, rule->hold_at.y);
    bw_vec far = bw_v(-rule->hold_at.x + post_shift * sideways, rule->hold_at.y);
    double out_to = bw_min(ball.x - rule->cushion, meeting_distance(rule, 0));
    bw_vec meet = bw_v(bw_max(out_to, rule->hold_at.x), on_line);
    double share = meeting_share(ball);
    out[unit->low_near].at = outside_crease(unit, bw_lerp(near, meet, share));
    out[unit->low_near].duty = share >= 0.5 ? BW_DUTY_BALL : BW_DUTY_HOLD;
    out[unit->low_far].at = outside_crease(unit, far);
    out[unit->low_far].duty = BW_DUTY_HOLD;
    return 1u << unit->low_near | 1u << unit->low_far;
}

/// One man chases behind the goal: he presses the carrier from the goal's side.
static bw_vec chase_place(const bw_rule *rule, bw_vec ball) {
    double r = bw_length(ball);
    double m = bw_max(bw_min(r - rule->cushion, rule->pickup), closest * r);
    return bw_scale(ball, m / r);
}

/// Off the ball: the two nearest are one pass away, the rest are the back side.
static void name_the_rest(const bw_formation *unit, const bw_vec *base, bw_vec ball, unsigned taken,
                          int adjacent, bw_ruled *out) {
    for (unsigned all = (1u << unit->spots) - 1; taken != all;) {
        int next = -1;
        double next_d = 0;
        for (int i = 0; i < unit->spots; i++) {
            if (taken >> i & 1u) continue;
            double d = bw_length2(bw_sub(ball, base[i]));
            if (next < 0 || d < next_d || (d == next_d && ahead(unit->home[i], unit->home[next]))) {
                next = i;
                next_d = d;
            }
        }
        out[next].at = outside_crease(unit, base[next]);
        if (unit->match_up)
            out[next].duty = BW_DUTY_MAN;
        else
            out[next].duty = adjacent > 0 ? BW_DUTY_ADJACENT : BW_DUTY_BACKSIDE;
        adjacent--;
        taken |= 1u << next;
    }
}

void bw_rule_places(const bw_formation *unit, bw_vec ball, bw_ruled *out) {
    const bw_rule *rule = unit->rule;
    double follow = bw_clamp(ball.x, 0, shift_reach);
    double sideways = rule->shift * follow;
    double upfield =
        shift_upfield * rule->shift * bw_clamp(ball.y - shift_level, -shift_drop, shift_rise);
    bw_vec base[BW_MAX_SPOTS];
    for (int i = 0; i < unit->spots; i++) {
        base[i] = bw_v(unit->home[i].x + sideways, bw_max(unit->home[i].y + upfield, lowest));
    }

    unsigned taken = 0;
    int adjacent = 2;
    if (ball.y < 0 && rule->hold_behind) {
        taken = hold_low_pair(unit, ball, sideways, out);
        adjacent = out[unit->low_near].duty == BW_DUTY_BALL ? 1 : 0;
    } else {
        bw_vec meeting = ball.y < 0 ? chase_place(rule, ball) : bw_rule_on_ball(rule, ball);
        int man = ball.y < 0 ? unit->low_near : nearest(unit, base, meeting);
        out[man].at = meeting;
        out[man].duty = BW_DUTY_BALL;
        taken = 1u << man;
    }

    if (rule->crease != BW_CREASE_NONE) {
        int man = rule->crease;
        if (man < 0 || taken >> man & 1u) man = farthest(unit, base, ball, taken);
        out[man].at = bw_v(unit->crease_x + crease_follow * follow, rule->crease_at.y);
        out[man].duty = BW_DUTY_CREASE;
        taken |= 1u << man;
    }
    name_the_rest(unit, base, ball, taken, adjacent, out);
}

/// Lower, or as low and wider, or its mirror image on the ball's side.
static bool lower(bw_vec a, bw_vec b) {
    if (a.y != b.y) return a.y < b.y;
    if (bw_abs(a.x) != bw_abs(b.x)) return bw_abs(a.x) > bw_abs(b.x);
    return a.x > b.x;
}

void bw_rule_low_pair(const bw_vec *home, int spots, int low[2]) {
    int first = -1, second = -1;
    for (int i = 0; i < spots; i++) {
        if (first < 0 || lower(home[i], home[first])) {
            second = first;
            first = i;
        } else if (second < 0 || lower(home[i], home[second])) {
            second = i;
        }
    }
    // One behind the other: the lower one is the nearer.
    const bool first_near = home[first].x >= home[second].x;
    low[0] = first_near ? second : first;
    low[1] = first_near ? first : second;
}
