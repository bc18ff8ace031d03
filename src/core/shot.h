/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a shot is worth from a place: the chance that it goes in. The goalkeeper covers only so much
/// of the mouth in the ball's flight time (a race of reaction and reach against the ball), the
/// shooter misses his aim by an angle, and he aims where the product is best. A table of the level,
/// filled once; between its points bilinear. The table is the model. Defenders are dealt with apart.
///
/// Structure: reaction plus movement time against flight time, as in the goalkeeping literature
/// (G. D. Sinclair, P. W. Moyls 1979). Constants: fitted to the anchors told in docs/model.md.
/// Limits: a keeper already set in the middle, no rebounds, bounces, fakes or screens.
#ifndef BW_CORE_SHOT_H
#define BW_CORE_SHOT_H

#include "core/ball.h"
#include "core/field.h"

enum {
    BW_SHOT_COLUMNS = 41, ///< |x| from 0 to 20 m
    BW_SHOT_ROWS = 53,    ///< y from 0 to 26 m
    BW_SHOT_RINGS = 18    ///< discs of 0 to 17 m
};

/// Metres between the table's points.
#define BW_SHOT_CELL 0.5

typedef struct bw_shot_table {
    double half_goal;                            ///< half the mouth, m
    double worth[BW_SHOT_ROWS][BW_SHOT_COLUMNS]; ///< [y][|x|], in [0, 1)
    /// At least the largest worth within so many metres; the last ring holds for any distance.
    float most[BW_SHOT_RINGS][BW_SHOT_ROWS][BW_SHOT_COLUMNS];
} bw_shot_table;

/// Fills the table for a level and a field's goal. About 20 ms.
void bw_shot_build(const bw_level *level, const bw_field *field, bw_shot_table *table);

/// Chance of a goal from p with time and room, in [0, 1). Zero on and behind the goal line and far out.
double bw_shot_worth(const bw_shot_table *table, bw_vec p);

/// At least as much as bw_shot_worth anywhere within `radius` >= 0 of p: what the search may hope for.
double bw_shot_most(const bw_shot_table *table, bw_vec p, double radius);

/// The same chance by direct integration on a `fine` x `fine` grid over the mouth, for tests and for
/// the table's own filling. d metres from the goal's centre, `sine` the sine of the angle between the
/// line to the goal's centre and the goal line (1 straight in front).
double bw_shot_integral(const bw_level *level, double goal, double d, double sine, int fine);

/// Share of the worth that is left when a defender stands at `defender`: body near the shooter on
/// the goal side, and stick or body in the lane. In (0, 1].
double bw_shot_left(const bw_level *level, bw_vec shooter, bw_vec defender);

/// The product of those shares over `count` defenders at (x[d], y[d]).
double bw_shot_left_all(const bw_level *level, bw_vec shooter, const double *x, const double *y,
                        int count);

#endif
