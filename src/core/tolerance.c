/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/tolerance.h"

#include "core/follow.h"
#include "core/ground.h"

void bw_tolerances_build(const bw_scheme *scheme, bw_tolerances *model) {
    model->scheme = scheme;
    for (int s = 0; s < scheme->stage_count; s++)
        bw_plan_build(scheme, s, &model->plan[s]);
    bw_shot_build(bw_level_at(scheme->level), bw_field_at(scheme->field), &model->shot);
}

/// What a shot from `target` is worth when the ball gets there from `ball`.
static double threat(const bw_tolerances *model, int stage, const bw_station *now, bw_vec ball,
                     bw_vec target) {
    const bw_level *level = bw_level_at(model->scheme->level);
    const double worth = bw_shot_worth(&model->shot, target);
    const double far = bw_distance(ball, target);
    if (worth <= 0 || far > BW_LONGEST_PASS) return 0;
    const int spots = model->plan[stage].spots;
    double run = 0, sure = 1;
    bw_station then[BW_MAX_SPOTS];
    bw_where(&model->plan[stage], target, NULL, 0, then);
    if (far > 0) {
        const double seen = bw_follow_delay(level, 0, spots) * BW_FOLLOW_STEP;
        const double time = bw_ball_time(level->pass_speed, BW_BALL_DRAG, far) + level->shoot;
        run = bw_reach(level->defender, bw_max(time - seen, 0));
        sure = bw_max(level->pass_sure - level->pass_fall * bw_max(far - 8, 0), 0);
    }
    double x[BW_MAX_SPOTS], y[BW_MAX_SPOTS];
    for (int s = 0; s < spots; s++) {
        const bw_vec way = bw_limit(bw_sub(then[s].at, now[s].at), run);
        x[s] = now[s].at.x + way.x;
        y[s] = now[s].at.y + way.y;
    }
    return sure * worth * bw_shot_left_all(level, target, x, y, spots);
}

double bw_shape_danger(const bw_tolerances *model, int stage, bw_vec ball, int spot, bw_vec at) {
    const bw_scheme *scheme = model->scheme;
    bw_station now[BW_MAX_SPOTS];
    bw_where(&model->plan[stage], ball, NULL, 0, now);
    now[spot].at = at;
    double sum = threat(model, stage, now, ball, ball);
    for (int l = 0; l < scheme->landmark_count; l++) {
        const bw_vec target = scheme->landmarks[l].at;
        if (bw_distance(target, ball) > 0) sum += threat(model, stage, now, ball, target);
    }
    return sum;
}

static double along(const bw_tolerances *model, int stage, bw_vec ball, int spot, bw_vec unit) {
    static const int halvings = 8; // to a hundredth of the bounds' width
    bw_station now[BW_MAX_SPOTS];
    bw_where(&model->plan[stage], ball, NULL, 0, now);
    const bw_vec place = now[spot].at;
    const double most = bw_shape_danger(model, stage, ball, spot, place) * (1 + BW_TOLERANCE_RISE);
    // The first crossing, found on a coarse walk, then halved.
    double low = BW_TOLERANCE_LEAST, high = low;
    while (high < BW_TOLERANCE_MOST) {
        if (bw_shape_danger(model, stage, ball, spot, bw_add(place, bw_scale(unit, high))) > most)
            break;
        low = high;
        high = bw_min(high + BW_METRES_PER_YARD / 2, BW_TOLERANCE_MOST);
    }
    for (int i = 0; i < halvings && high > low; i++) {
        const double mid = (low + high) / 2;
        const bw_vec at = bw_add(place, bw_scale(unit, mid));
        if (bw_shape_danger(model, stage, ball, spot, at) > most)
            high = mid;
        else
            low = mid;
    }
    return low;
}

double bw_tolerance(const bw_tolerances *model, int stage, bw_vec ball, int spot, bw_vec toward) {
    BW_ASSERT(stage >= 0 && stage < model->scheme->stage_count && spot >= 0 &&
              spot < model->plan[stage].spots);
    if (bw_length2(toward) > 0) return along(model, stage, ball, spot, bw_unit(toward));
    double least = BW_TOLERANCE_MOST;
    for (int i = 0; i < 8; i++) {
        const double turn = i * BW_PI / 4;
        const bw_vec way = bw_v(bw_cos(turn), bw_sin(turn));
        least = bw_min(least, along(model, stage, ball, spot, way));
    }
    return least;
}
