/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/shade.h"
#include "core/match.h"

/// Proportions of shading. Common practice, no source.
static const double goal_mouth = 6 * 0.3048; ///< m
static const double threat_least = 0.15;     ///< rad of goal seen below which nobody shades
static const double goal_side = 1.0;         ///< m: he stands this far goal side of the attacker
static const double ball_side = 0.4;         ///< m: and this far toward the ball
static const double far_discount =
    0.6; ///< an attacker at the edge of the area counts this much less
static const double on_ball_gap = 1.4; ///< m goal side of a carrier he has

/// About the angle of goal mouth an attacker sees, rad: small-angle form of the published
/// expected-goals angle (R. Pollard, J. Ensum, S. Taylor 2004), cheap enough to ask everywhere.
static double threat(bw_vec a) {
    return goal_mouth * bw_max(a.y, 0) / (bw_length2(a) + goal_mouth * goal_mouth / 4);
}

static bw_vec goal_side_of(bw_vec attacker, bw_vec ball) {
    bw_vec to_goal = bw_scale(bw_unit(bw_v(-attacker.x, -attacker.y)), goal_side);
    bw_vec to_ball = bw_scale(bw_unit(bw_sub(ball, attacker)), ball_side);
    return bw_add(attacker, bw_add(to_goal, to_ball));
}

bw_vec bw_mark_place(bw_vec attacker, bw_vec ball, bool has_ball) {
    bw_vec goal = bw_v(0, 0);
    if (has_ball) {
        double r = bw_length(attacker);
        return r > 0 ? bw_scale(attacker, bw_max(1 - on_ball_gap / r, 0.4)) : goal;
    }
    return bw_sag_place(attacker, ball);
}

/// The attacker in this station's area worth most, or -1.
static int pick(const bw_formation *unit, bw_vec at, const bw_vec *attackers, int count,
                unsigned used) {
    const double area = unit->rule->area;
    int best = -1;
    double best_weight = 0;
    for (int a = 0; a < count; a++) {
        if (used >> a & 1u) continue;
        double t = threat(attackers[a]), d = bw_distance(at, attackers[a]);
        if (t < threat_least || d > area) continue;
        double weight = t * (1 - far_discount * d / area);
        bool equal = best >= 0 && weight == best_weight;
        if (best < 0 || weight > best_weight || (equal && attackers[a].x > attackers[best].x)) {
            best = a;
            best_weight = weight;
        }
    }
    return best;
}

/// The next station to choose: the crease man, then from low to high and from the ball's side over.
static int next_chooser(const bw_formation *unit, const bw_station *stations, unsigned done) {
    int best = -1;
    for (int i = 0; i < unit->spots; i++) {
        if (done >> i & 1u) continue;
        if (stations[i].duty == BW_DUTY_CREASE) return i;
        if (best < 0 || unit->home[i].y < unit->home[best].y ||
            (unit->home[i].y == unit->home[best].y && unit->home[i].x > unit->home[best].x)) {
            best = i;
        }
    }
    return best;
}

void bw_shade_zone(const bw_formation *unit, bw_vec ball, const bw_vec *attackers, int count,
                   bw_station *stations) {
    const bw_rule *rule = unit->rule;
    unsigned done = 0, used = 0;
    for (int i = 0; i < unit->spots; i++) {
        if (stations[i].duty == BW_DUTY_BALL || stations[i].duty == BW_DUTY_HOLD) done |= 1u << i;
    }
    // The carrier is the man on the ball's; nobody else shades to him.
    for (int a = 0; a < count; a++) {
        if (attackers[a].x == ball.x && attackers[a].y == ball.y) used |= 1u << a;
    }
    for (int i; (i = next_chooser(unit, stations, done)) >= 0; done |= 1u << i) {
        int a = pick(unit, stations[i].at, attackers, count, used);
        if (a < 0) continue;
        used |= 1u << a;
        bw_vec step = bw_sub(goal_side_of(attackers[a], ball), stations[i].at);
        stations[i].at = bw_add(stations[i].at, bw_limit(bw_scale(step, rule->pull), rule->area));
        stations[i].man = a;
    }
}

/// Indices of points from low to high, and from the ball's side over: neither numbering nor left and
/// right may decide a tie.
static void order_by_place(const bw_vec *at, int count, int *order) {
    for (int i = 0; i < count; i++) {
        int k = i;
        for (; k > 0; k--) {
            bw_vec before = at[order[k - 1]];
            if (before.y < at[i].y || (before.y == at[i].y && before.x >= at[i].x)) break;
            order[k] = order[k - 1];
        }
        order[k] = i;
    }
}

/// Of the attackers in `row`, in that order.
static int nearest_to(bw_vec ball, const bw_vec *attackers, const int *row, int count) {
    int best = row[0];
    for (int r = 1; r < count; r++) {
        if (bw_distance(attackers[row[r]], ball) < bw_distance(attackers[best], ball))
            best = row[r];
    }
    return best;
}

/// More attackers than men: the ones farthest from the goal go free, never the one with the ball.
/// Returns how many are left in `row`.
static int leave_out(const bw_vec *attackers, int carrier, int count, int most, int *row) {
    for (; count > most; count--) {
        int free = -1;
        for (int r = 0; r < count; r++) {
            if (row[r] == carrier) continue;
            if (free < 0 || bw_length2(attackers[row[r]]) > bw_length2(attackers[row[free]]))
                free = r;
        }
        for (int r = free; r < count - 1; r++)
            row[r] = row[r + 1];
    }
    return count;
}

void bw_shade_match(const bw_formation *unit, bw_vec ball, const bw_vec *attackers, int count,
                    bw_station *stations) {
    int row[BW_MAX_ATTACKERS] = {0}, column[BW_MAX_SPOTS] = {0};
    order_by_place(attackers, count, row);
    const int carrier = nearest_to(ball, attackers, row, count);
    const int pairs = leave_out(attackers, carrier, count, unit->spots, row);
    order_by_place(unit->home, unit->spots, column);
    double run[BW_MATCH_MAX][BW_MATCH_MAX] = {{0}};
    for (int r = 0; r < pairs; r++) {
        for (int c = 0; c < unit->spots; c++) {
            run[r][c] = bw_distance(unit->home[column[c]], attackers[row[r]]);
        }
    }
    const bw_matching pairing = bw_match(run, pairs, unit->spots);
    for (int i = 0; i < unit->spots; i++) {
        if (stations[i].duty != BW_DUTY_CREASE) stations[i].duty = BW_DUTY_MAN;
    }
    // The farthest man keeps the name of the crease duty, being the first to help; unless the ball
    // is his, when the next in line is not renamed: everyone has a man.
    for (int r = 0; r < pairs; r++) {
        bw_station *station = &stations[column[pairing.taken[r]]];
        station->man = row[r];
        station->at = bw_mark_place(attackers[row[r]], ball, row[r] == carrier);
        if (row[r] == carrier) station->duty = BW_DUTY_BALL;
    }
}
