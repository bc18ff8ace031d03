/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The goalkeeper's race, integrated over the shooter's scatter, and the tables made of it.
#include "core/shot.h"
#include "core/base.h"
#include "core/ramp.h"

enum { MOUTH_CELLS = 20, MAX_CELLS = 400, AIMS_ACROSS = 7, AIMS_UP = 5, RAYS = 25, REACHES = 60 };

/// Goals are as high as they are wide in every code: 6 ft.
#define GOAL_HEIGHT 1.8288
/// Seconds a shot that is read gains the keeper: "subtract up to 0.1 s for cue reading", assumed.
#define READ_LEAD 0.12
/// No shot is worth a table entry beyond this, m.
#define FARTHEST 32.0
/// The stick's trouble fades from whole to none over twice this, m (assumed).
#define BODY_FADE 1.2
/// Half-width of the lane in which a body stops or hurries a shot, m (assumed).
#define LANE_WIDTH 1.2

/// Logistic function.
static double logistic(double x) {
    return x > 40 ? 1 : x < -40 ? 0 : 1 / (1 + bw_exp(-x));
}

/// Normal distribution function within 1.4e-4: S. R. Bowling et al., "A logistic approximation to
/// the cumulative normal distribution", J. Ind. Eng. Manag. 2(1), 2009.
static double normal(double x) {
    return logistic(x * (1.5976 + 0.070565992 * x * x));
}

/// Chance that the keeper meets a ball crossing the mouth `s` metres from his centre after `flight`
/// seconds. The logistic scale has the standard deviation keeper_spread.
static double saved(const bw_level *level, double flight, double s) {
    const double scale = 1.8137993642342178 / level->keeper_spread; // pi / sqrt(3)
    const double need = s <= level->keeper_cover
                            ? 0
                            : level->keeper_react + (s - level->keeper_cover) / level->keeper_speed;
    const double late = logistic((flight - need) * scale);
    const double early = logistic((flight + READ_LEAD - need) * scale);
    return late + level->keeper_read * (early - late);
}

/// Chance that a scatter of deviation `sd` around `aim` ends in each of `n` equal cells from -half to half.
static void scatter(double aim, double sd, double half, int n, double *share) {
    double below = normal((-half - aim) / sd);
    for (int i = 0; i < n; i++) {
        const double edge = -half + 2 * half * (i + 1) / n;
        const double above = normal((edge - aim) / sd);
        share[i] = above - below;
        below = above;
    }
}

double bw_shot_integral(const bw_level *level, double goal, double d, double sine, int fine) {
    BW_ASSERT(fine >= 1 && fine <= MAX_CELLS);
    if (sine <= 0 || d <= 0) return 0;
    const double half_w = 0.5 * goal * sine, half_h = 0.5 * GOAL_HEIGHT;
    const double flight = bw_ball_time(level->shot_speed, BW_BALL_DRAG, d);
    const double sd = d * level->shot_error;
    double across[MAX_CELLS], up[MAX_CELLS], row[AIMS_UP];
    double goals[AIMS_UP][MAX_CELLS];

    // Chance of a goal in each column of cells, for each height of aim; then for each aim across.
    for (int a = 0; a < AIMS_UP; a++) {
        scatter(half_h * a / AIMS_UP, sd, half_h, fine, up);
        for (int i = 0; i < fine; i++) {
            const double u = half_w * (2 * i + 1 - fine) / fine;
            goals[a][i] = 0;
            for (int j = 0; j < fine; j++) {
                const double v = half_h * (2 * j + 1 - fine) / fine;
                if (up[j] < 1e-9) continue;
                goals[a][i] += up[j] * (1 - saved(level, flight, bw_sqrt(u * u + v * v)));
            }
        }
    }
    double most = 0;
    for (int b = 0; b < AIMS_ACROSS; b++) {
        scatter(half_w * b / AIMS_ACROSS, sd, half_w, fine, across);
        for (int a = 0; a < AIMS_UP; a++) {
            row[a] = 0;
            for (int i = 0; i < fine; i++)
                row[a] += across[i] * goals[a][i];
            most = bw_max(most, row[a]);
        }
    }
    return most;
}

/// Chances along rays: [sine k / (RAYS - 1)][distance k FARTHEST / (REACHES - 1)].
typedef double polar[RAYS][REACHES];

static double polar_worth(polar p, double d, double sine) {
    const double a = sine * (RAYS - 1), b = bw_min(d / FARTHEST, 1) * (REACHES - 1);
    int i = (int)a, k = (int)b;
    if (i > RAYS - 2) i = RAYS - 2;
    if (k > REACHES - 2) k = REACHES - 2;
    const double fa = a - i, fb = b - k;
    const double near = p[i][k] + (p[i + 1][k] - p[i][k]) * fa;
    const double far = p[i][k + 1] + (p[i + 1][k + 1] - p[i][k + 1]) * fa;
    return near + (far - near) * fb;
}

/// Ring r + 1 from ring r: the largest over a disc of one metre more. The offsets' hull holds the disc
/// of two cells, so repeated widening never falls short of it.
static void widen(float from[BW_SHOT_ROWS][BW_SHOT_COLUMNS],
                  float to[BW_SHOT_ROWS][BW_SHOT_COLUMNS]) {
    for (int r = 0; r < BW_SHOT_ROWS; r++) {
        for (int c = 0; c < BW_SHOT_COLUMNS; c++) {
            float most = 0;
            for (int dr = -2; dr <= 2; dr++) {
                for (int dc = -2; dc <= 2; dc++) {
                    if (dr * dr + dc * dc > 5) continue;
                    const int rr = r + dr;
                    int cc = c + dc;
                    if (cc < 0) cc = -cc;
                    if (rr < 0 || rr >= BW_SHOT_ROWS || cc >= BW_SHOT_COLUMNS) continue;
                    if (from[rr][cc] > most) most = from[rr][cc];
                }
            }
            to[r][c] = most;
        }
    }
}

void bw_shot_build(const bw_level *level, const bw_field *field, bw_shot_table *table) {
    polar p;
    for (int i = 0; i < RAYS; i++) {
        for (int k = 0; k < REACHES; k++)
            p[i][k] = bw_shot_integral(level, field->goal, FARTHEST * k / (REACHES - 1),
                                       (double)i / (RAYS - 1), MOUTH_CELLS);
        // Nobody shoots from on the goal line's centre; the first point only closes the table.
        p[i][0] = p[i][1];
    }
    table->half_goal = 0.5 * field->goal;
    for (int r = 0; r < BW_SHOT_ROWS; r++) {
        for (int c = 0; c < BW_SHOT_COLUMNS; c++) {
            const double x = c * BW_SHOT_CELL, y = r * BW_SHOT_CELL;
            const double d = bw_sqrt(x * x + y * y);
            table->worth[r][c] = r == 0 ? 0 : polar_worth(p, d, y / d);
            // Rounded up: a float may not hide a chance from the bound.
            table->most[0][r][c] = (float)(table->worth[r][c] * (1 + 1e-6));
        }
    }
    for (int ring = 1; ring < BW_SHOT_RINGS - 1; ring++)
        widen(table->most[ring - 1], table->most[ring]);
    float most = 0;
    for (int r = 0; r < BW_SHOT_ROWS; r++) {
        for (int c = 0; c < BW_SHOT_COLUMNS; c++)
            most = table->most[0][r][c] > most ? table->most[0][r][c] : most;
    }
    for (int r = 0; r < BW_SHOT_ROWS; r++) {
        for (int c = 0; c < BW_SHOT_COLUMNS; c++)
            table->most[BW_SHOT_RINGS - 1][r][c] = most;
    }
}

double bw_shot_worth(const bw_shot_table *table, bw_vec p) {
    const double a = bw_abs(p.x) / BW_SHOT_CELL, b = p.y / BW_SHOT_CELL;
    if (!(b > 0) || a >= BW_SHOT_COLUMNS - 1 || b >= BW_SHOT_ROWS - 1) return 0;
    const int c = (int)a, r = (int)b;
    const double fc = a - c, fr = b - r;
    const double *low = &table->worth[r][c], *high = &table->worth[r + 1][c];
    const double below = low[0] + (low[1] - low[0]) * fc;
    const double above = high[0] + (high[1] - high[0]) * fc;
    return below + (above - below) * fr;
}

double bw_shot_most(const bw_shot_table *table, bw_vec p, double radius) {
    // A place outside the table is moved to its edge, which brings it no farther from any place inside
    // (projection on a convex set). From there to the nearest point of the table and from any place
    // to a corner of its cell: at most 0.354 + 0.707 m more.
    const double x = bw_min(bw_abs(p.x) / BW_SHOT_CELL, BW_SHOT_COLUMNS - 1) + 0.5;
    const double y = bw_clamp(p.y / BW_SHOT_CELL, 0, BW_SHOT_ROWS - 1) + 0.5;
    const double reach = radius + 1.0607;
    if (reach > BW_SHOT_RINGS - 2) return table->most[BW_SHOT_RINGS - 1][0][0];
    int ring = (int)reach;
    if (ring < reach) ring++;
    return table->most[ring][(int)y][(int)x];
}

/// What one defender leaves, given the shooter's distance `g` from the goal's centre and the unit
/// vector to it.
static inline double left_by(const bw_level *level, bw_vec to_goal, double g, bw_vec man) {
    const double d2 = bw_length2(man), along = bw_dot(man, to_goal);
    const double far = level->stick_reach + BODY_FADE;
    double left = 1;
    if (d2 < far * far) {
        const double d = bw_sqrt(d2);
        const double facing = d > 0 ? bw_max(along / d, 0) : 1;
        left -= level->body_contest * bw_ramp((level->stick_reach - d) / BODY_FADE) *
                (0.4 + 0.6 * facing);
    }
    const double off2 = d2 - along * along;
    if (along > 0 && along < g && off2 < LANE_WIDTH * LANE_WIDTH) {
        const double share = 1 - off2 / (LANE_WIDTH * LANE_WIDTH);
        left *= 1 - level->lane_contest * share * share;
    }
    return left;
}

double bw_shot_left(const bw_level *level, bw_vec shooter, bw_vec defender) {
    const double g = bw_length(shooter);
    return left_by(level, bw_unit(bw_scale(shooter, -1)), g, bw_sub(defender, shooter));
}

double bw_shot_left_all(const bw_level *level, bw_vec shooter, const double *x, const double *y,
                        int count) {
    const double g = bw_length(shooter);
    const bw_vec to_goal = bw_unit(bw_scale(shooter, -1));
    double left = 1;
    for (int d = 0; d < count; d++)
        left *= left_by(level, to_goal, g, bw_v(x[d] - shooter.x, y[d] - shooter.y));
    return left;
}
