/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Published games with known values, played with the core's own motion and random numbers. The
/// motion model turns into the games' instant turning as tau goes to 0.
#include "core/base.h"
#include "core/motion.h"
#include "core/random.h"
#include "harness.h"

/// Legs that turn at once.
static bw_legs instant(double speed) {
    return (bw_legs){speed, 1e-6};
}

static bw_body run(bw_body body, double speed, bw_vec to, double dt) {
    const bw_vec way = bw_scale(bw_unit(bw_sub(to, body.at)), speed);
    return bw_advance(instant(speed), body, way, dt);
}

/// Pure pursuit of an evader on a straight line, closed form a (u + w cos th) / (u^2 - w^2) (P.
/// Bouguer's curve of pursuit; values worked out apart): gap 10, speeds 7 and 5.
static void pure_pursuit(void) {
    static const double want[] = {5.0, 2.9166666667, 1.875};
    static const double angle[] = {0, BW_PI / 2, 2 * BW_PI / 3};
    for (int i = 0; i < 3; i++) {
        bw_body dog = {{0, 0}, {0, 0}}, hare = {{10, 0}, {0, 0}};
        const bw_vec away = bw_v(1e6 * bw_cos(angle[i]), 1e6 * bw_sin(angle[i]));
        double t = 0;
        for (const double dt = 5e-4; bw_distance(dog.at, hare.at) > 5e-3; t += dt) {
            dog = run(dog, 7, hare.at, dt);
            hare = run(hare, 5, away, dt);
        }
        CHECK_NEAR(t, want[i], 4e-3);
    }
}

/// Four bugs on a square of side 1 chasing each other meet after side / speed.
static void four_bugs(void) {
    bw_body bug[4] = {{{0, 0}, {0, 0}}, {{1, 0}, {0, 0}}, {{1, 1}, {0, 0}}, {{0, 1}, {0, 0}}};
    double t = 0;
    for (const double dt = 1e-4; bw_distance(bug[0].at, bug[1].at) > 1e-3; t += dt) {
        bw_body next[4];
        for (int i = 0; i < 4; i++)
            next[i] = run(bug[i], 1, bug[(i + 1) % 4].at, dt);
        for (int i = 0; i < 4; i++)
            bug[i] = next[i];
    }
    CHECK_NEAR(t, 1, 2e-3);
}

/// Guarding the line y = 0 (R. Isaacs, "Differential Games", 1965): defender (3, 2) with speed 1,
/// attacker (0, 6) with 0.8. The attacker gets down to y = 2 exactly, at (-5.3333, 2).
static void line_guard(void) {
    const bw_vec p = bw_v(3, 2), e = bw_v(0, 6);
    const double g = 0.8, d = bw_distance(e, p);
    const double lowest = (e.y - g * g * p.y - g * d) / (1 - g * g);
    const bw_vec aim = bw_v((e.x - g * g * p.x) / (1 - g * g), lowest);
    CHECK_NEAR(lowest, 2, 1e-12);
    CHECK_NEAR(aim.x, -5.3333333333, 1e-9);
    // Both get there at the same moment.
    const double by_defender = bw_arrive(instant(1), (bw_body){p, {0, 0}}, aim, BW_FIRST_TOUCH);
    const double by_attacker = bw_arrive(instant(g), (bw_body){e, {0, 0}}, aim, BW_FIRST_TOUCH);
    CHECK_NEAR(by_defender, by_attacker, 1e-5);
    // Played out, both running at the aim worked out anew each step.
    bw_body def = {p, {0, 0}}, att = {e, {0, 0}};
    for (const double dt = 1e-3; bw_distance(def.at, att.at) > 1e-2;) {
        const double gap = bw_distance(def.at, att.at);
        const bw_vec goal = bw_v((att.at.x - g * g * def.at.x) / (1 - g * g),
                                 (att.at.y - g * g * def.at.y - g * gap) / (1 - g * g));
        def = run(def, 1, goal, dt);
        att = run(att, g, goal, dt);
    }
    CHECK_NEAR(att.at.y, 2, 0.02);
}

/// Two defenders together (E. Garcia, D. Casbeer, M. Pachter 2020, the cooperative football game):
/// with a second one at (-6, 2) all three meet after 4.5514158740.
static void two_guards(void) {
    const bw_vec p[2] = {{3, 2}, {-6, 2}}, e = {0, 6};
    const double g = 0.8;
    bw_vec centre[2];
    double radius[2];
    for (int i = 0; i < 2; i++) {
        centre[i] = bw_scale(bw_sub(e, bw_scale(p[i], g * g)), 1 / (1 - g * g));
        radius[i] = g * bw_distance(e, p[i]) / (1 - g * g);
    }
    // The lower of the points where the two circles cross.
    const bw_vec between = bw_sub(centre[1], centre[0]);
    const double d = bw_length(between);
    const double a = (radius[0] * radius[0] - radius[1] * radius[1] + d * d) / (2 * d);
    const double h = bw_sqrt(radius[0] * radius[0] - a * a);
    const bw_vec foot = bw_add(centre[0], bw_scale(between, a / d));
    const bw_vec side = bw_scale(bw_v(between.y, -between.x), h / d);
    const bw_vec one = bw_add(foot, side), two = bw_sub(foot, side);
    const bw_vec meet = one.y < two.y ? one : two;
    const double want = 4.5514158740;
    CHECK_NEAR(bw_arrive(instant(g), (bw_body){e, {0, 0}}, meet, BW_FIRST_TOUCH), want, 1e-5);
    for (int i = 0; i < 2; i++)
        CHECK_NEAR(bw_arrive(instant(1), (bw_body){p[i], {0, 0}}, meet, BW_FIRST_TOUCH), want,
                   1e-5);
}

/// A goal mouth from post to post, equal speeds: the attacker scores when he is first at some point of
/// it, and testing the posts is exact.
static void goal_mouth(void) {
    const bw_vec post[2] = {{-0.9, 0}, {0.9, 0}};
    const bw_vec p[2] = {{0.5, 1}, {-3, 4}}, e[2] = {{4, 5}, {2, 4}};
    const double want[2][2] = {{-46.05, -33.45}, {-4.0, 14.0}};
    for (int i = 0; i < 2; i++) {
        for (int k = 0; k < 2; k++) {
            const double def =
                bw_arrive(instant(1), (bw_body){p[i], {0, 0}}, post[k], BW_FIRST_TOUCH);
            const double att =
                bw_arrive(instant(1), (bw_body){e[i], {0, 0}}, post[k], BW_FIRST_TOUCH);
            CHECK_NEAR(def * def - att * att, want[i][k], 1e-4);
            if (i == 1 && k == 1) CHECK_NEAR(def - att, 1.438097387, 1e-5);
        }
    }
}

/// The 4x3 world (S. Russell, P. Norvig, "Artificial Intelligence: A Modern Approach", figure 17.3):
/// rewards -0.04 a step, moves go astray one time in five.
static const int step_x[] = {0, 1, 0, -1}, step_y[] = {1, 0, -1, 0};

static int go(int at, int way) {
    const int x = at % 4 + step_x[way], y = at / 4 + step_y[way];
    const bool out = x < 0 || x > 3 || y < 0 || y > 2 || (x == 1 && y == 1);
    return out ? at : y * 4 + x;
}

static void grid_world(void) {
    double value[12] = {0};
    int best[12] = {0};
    value[11] = 1;
    value[7] = -1;
    for (int sweep = 0; sweep < 200; sweep++) {
        for (int at = 0; at < 12; at++) {
            if (at == 11 || at == 7 || at == 5) continue;
            double most = -1e9;
            for (int way = 0; way < 4; way++) {
                const double v = 0.8 * value[go(at, way)] + 0.1 * value[go(at, (way + 1) % 4)] +
                                 0.1 * value[go(at, (way + 3) % 4)];
                if (v > most) {
                    most = v;
                    best[at] = way;
                }
            }
            value[at] = most - 0.04;
        }
    }
    const double figure[] = {0.705, 0.655, 0.611, 0.388, 0.762, 0,
                             0.660, -1,    0.812, 0.868, 0.918, 1};
    for (int at = 0; at < 12; at++)
        CHECK_NEAR(value[at], figure[at], 5.1e-4);
    // The same by roll-outs with the core's random numbers.
    bw_random random = {42};
    double mean = 0;
    enum { GAMES = 20000 };
    for (int n = 0; n < GAMES; n++) {
        double sum = 0;
        int at = 0;
        while (at != 11 && at != 7) {
            const double u = bw_random_unit(&random);
            at = go(at, u < 0.8 ? best[at] : u < 0.9 ? (best[at] + 1) % 4 : (best[at] + 3) % 4);
            sum -= 0.04;
        }
        mean += (sum + (at == 11 ? 1 : -1)) / GAMES;
    }
    CHECK_NEAR(mean, 0.70530822, 0.015);
}

/// Piglet to 2 with a coin (T. Neller, C. Presser, "Optimal play of the dice game Pig", UMAP J. 25(1),
/// 2004): from the start the first player wins 4 games in 7 with the best play. Rolling on until he
/// has 2 is best for both from every score but those where the other holds at 1.
static double piglet[2][2][2];

static void pig_and_piglet(void) {
    for (int sweep = 0; sweep < 2000; sweep++) {
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                for (int k = 0; k < 2 - i; k++) {
                    const double won = i + k + 1 >= 2 ? 1 : piglet[i][j][k + 1];
                    const double flip = 0.5 * won + 0.5 * (1 - piglet[j][i][0]);
                    const double hold = 1 - piglet[j][i + k >= 2 ? 1 : i + k][0];
                    piglet[i][j][k] = flip > hold ? flip : hold;
                }
            }
        }
    }
    CHECK_NEAR(piglet[0][0][0], 4.0 / 7, 1e-12);
    CHECK_NEAR(piglet[0][0][1], 5.0 / 7, 1e-12);
    CHECK_NEAR(piglet[0][1][0], 2.0 / 5, 1e-12);
    CHECK_NEAR(piglet[0][1][1], 3.0 / 5, 1e-12);
    CHECK_NEAR(piglet[1][0][0], 4.0 / 5, 1e-12);
    CHECK_NEAR(piglet[1][1][0], 2.0 / 3, 1e-12);

    // Played out with the core's random numbers.
    bw_random random = {2004};
    enum { GAMES = 40000 };
    int first_wins = 0;
    for (int n = 0; n < GAMES; n++) {
        int score[2] = {0, 0}, turn = 0, pot = 0;
        while (score[0] < 2 && score[1] < 2) {
            const int i = score[turn], j = score[1 - turn];
            const double flip =
                0.5 * (i + pot + 1 >= 2 ? 1 : piglet[i][j][pot + 1]) + 0.5 * (1 - piglet[j][i][0]);
            const bool hold = pot > 0 && 1 - piglet[j][i + pot][0] > flip;
            const bool head = !hold && bw_random_unit(&random) < 0.5;
            if (head) pot++;
            if (hold || i + pot >= 2) score[turn] += pot;
            if (head && i + pot < 2) continue;
            if (score[turn] >= 2) break;
            turn = 1 - turn;
            pot = 0;
        }
        first_wins += score[0] >= 2;
    }
    CHECK_NEAR((double)first_wins / GAMES, 4.0 / 7, 0.01);
}

/// The smallest pass game, by hand: hold and shoot 0.10; a pass (0.8) and a shot 0.30, or a second
/// pass (0.7) and 0.45. A line's worth is the product of its chances: pass, pass, shoot, 0.252.
static void smallest_pass_game(void) {
    const double second[] = {0.7, 0.66};
    const double want[] = {0.252, 0.24};
    for (int i = 0; i < 2; i++) {
        const double after = bw_max(0.30, second[i] * 0.45);
        CHECK_NEAR(bw_max(0.10, 0.8 * after), want[i], 1e-12);
    }
}

int main(int argc, char **argv) {
    RUN(pure_pursuit);
    RUN(four_bugs);
    RUN(line_guard);
    RUN(two_guards);
    RUN(goal_mouth);
    RUN(grid_world);
    RUN(pig_and_piglet);
    RUN(smallest_pass_game);
    return test_report(argc, argv);
}
