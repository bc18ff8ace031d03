/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Order of drawing, far to near: paper, danger, field, paths, ghosts, labels, attackers, goalkeeper,
/// defenders, ball.
#include "draw/scene.h"

#include "draw/chart.h"
#include "draw/metrics.h"
#include "draw/people.h"

/// A man this near to where he was has not moved: no ghost, no run. Metres.
static const double stayed = 1.5;

/// A name longer than this share of the chart's width is left out: the code on the disc is enough.
static const double longest = 0.35;

static int duty_of(const bw_scene *scene, int spot) {
    return scene->duties ? (int)scene->stations[spot].duty : BW_NO_DUTY;
}

static bw_chart_people people_of(const bw_scene *scene, const bw_view *view, bw_mark_size size) {
    const bw_stage *stage = &scene->scheme->stages[scene->stage];
    const double ball_x = scene->ball ? scene->ball->x : 0;
    bw_chart_people people = {
        .size = size,
        .keeper = bw_keeper_point(view, bw_field_at(scene->scheme->field), size, ball_x)};
    for (int i = 0; i < scene->attacker_count; i++)
        bw_people_attacker(&people, bw_view_point(view, scene->attackers[i]));
    for (int s = 0; s < stage->defenders; s++)
        bw_people_defender(&people, (bw_chart_man){.at = bw_view_point(view, scene->stations[s].at),
                                                   .code = stage->spots[s].id,
                                                   .duty = duty_of(scene, s)});
    if (scene->ball) bw_people_ball(&people, bw_view_point(view, *scene->ball));
    return people;
}

static bool ran(const bw_scene *scene, int spot) {
    return scene->from && bw_distance(scene->from[spot], scene->stations[spot].at) > stayed;
}

/// Where the pass's number stands: on the path, as far from every disc as it gets.
static bw_vec order_at(const bw_scene *scene, const bw_view *view) {
    const bw_vec a = bw_view_point(view, *scene->ball_from), b = bw_view_point(view, *scene->ball);
    const int spots = scene->scheme->stages[scene->stage].defenders;
    bw_vec best = a;
    double most = -1;
    for (int i = 0; i <= 8; i++) {
        const bw_vec p = bw_lerp(a, b, 0.5 + 0.04 * (i & 1 ? -(i + 1) / 2 : i / 2));
        double nearest = 22; // farther than this is as good
        for (int s = 0; s < spots; s++) {
            nearest = bw_min(nearest, bw_distance(p, bw_view_point(view, scene->stations[s].at)));
        }
        if (nearest > most) {
            most = nearest;
            best = p;
        }
    }
    return best;
}

static void collect(bw_labels *labels, const bw_scene *scene, const bw_chart_people *people,
                    const bw_view *view) {
    const bw_stage *stage = &scene->scheme->stages[scene->stage];
    const bw_mark_size size = people->size;
    const bw_field *field = bw_field_at(scene->scheme->field);
    const double crease = field->crease * view->scale;
    bw_labels_begin_chart(labels, view);
    bw_labels_shun(labels, view->origin, bw_v(crease, crease));
    bw_labels_avoid(labels, people->keeper, bw_keeper_reach(size));
    bw_labels_avoid_goal(labels, field, view);
    if (scene->ball)
        bw_labels_avoid(labels, bw_view_point(view, *scene->ball),
                        bw_v(BW_BALL_REACH, BW_BALL_REACH));
    bw_people_avoid(people, labels);
    if (scene->ball && scene->ball_from) {
        bw_labels_avoid_line(labels, bw_view_point(view, *scene->ball_from),
                             bw_view_point(view, *scene->ball));
        if (scene->order > 0)
            bw_labels_avoid(labels, order_at(scene, view), bw_v(BW_ORDER_REACH, BW_ORDER_REACH));
    }
    for (int s = 0; s < stage->defenders; s++) {
        const bw_vec at = people->defenders[s].at;
        const bw_vec reach = bw_mark_reach(size, stage->spots[s].id, duty_of(scene, s));
        if (ran(scene, s)) {
            const bw_vec from = bw_view_point(view, scene->from[s]);
            bw_labels_avoid_line(labels, from, at);
            bw_labels_shun(labels, from, bw_v(size.radius * 0.6, size.radius * 0.6));
        }
        if (scene->beside == BW_BESIDE_DUTY)
            bw_labels_add(labels, bw_duty_name(scene->stations[s].duty), BW_REGULAR, size.label,
                          BW_ROLE_TEXT, at, reach);
        if (scene->beside == BW_BESIDE_NAME &&
            bw_width(stage->spots[s].name, size.label) <= longest * view->box.width)
            bw_labels_add(labels, stage->spots[s].name, BW_REGULAR, size.label, BW_ROLE_TEXT, at,
                          reach);
    }
}

static void draw_paths(bw_ink *ink, const bw_scene *scene, const bw_view *view, bw_mark_size size) {
    const bw_stage *stage = &scene->scheme->stages[scene->stage];
    for (int s = 0; s < stage->defenders; s++) {
        if (!ran(scene, s)) continue;
        const bw_vec from = bw_view_point(view, scene->from[s]);
        const bw_vec at = bw_view_point(view, scene->stations[s].at);
        const bw_vec reach = bw_mark_reach(size, stage->spots[s].id, duty_of(scene, s));
        bw_mark_ghost(ink, size, from);
        bw_mark_route(ink, BW_ROUTE_RUN, from, at, size.radius * 0.6 + 1, reach.y + 1.5,
                      scene->from_soft);
    }
    if (scene->ball && scene->ball_from) {
        const bw_vec from = bw_view_point(view, *scene->ball_from);
        const bw_vec at = bw_view_point(view, *scene->ball);
        bw_mark_route(ink, BW_ROUTE_PASS, from, at, 2, BW_BALL_REACH + 1, false);
        const bw_vec number = order_at(scene, view);
        if (scene->order > 0) bw_mark_order(ink, number, number, scene->order);
    }
}

int bw_draw_scene(bw_ink *ink, const bw_scene *scene, const bw_view *view, bw_mark_size size,
                  bool figures) {
    const bw_field *field = bw_field_at(scene->scheme->field);
    const bw_units units = scene->scheme->units;
    const bw_chart_people people = people_of(scene, view, size);
    bw_labels labels;
    collect(&labels, scene, &people, view);
    const int covering = bw_labels_place(&labels);

    bw_draw_paper(ink, view);
    if (scene->danger) bw_draw_danger(ink, scene->danger, &labels, units, view);
    bw_draw_field(ink, field, units, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
    draw_paths(ink, scene, view, size);
    bw_labels_draw(ink, &labels);
    bw_draw_people(ink, &people);
    bw_ink_unclip(ink);
    bw_draw_border(ink, units, view, figures);
    return covering;
}

bw_scene bw_scene_homes(const bw_scheme *scheme, int stage, bw_station homes[BW_MAX_SPOTS]) {
    for (int s = 0; s < scheme->stages[stage].defenders; s++)
        homes[s] = (bw_station){scheme->stages[stage].spots[s].home, BW_DUTY_HOLD, -1};
    return (bw_scene){
        .scheme = scheme, .stage = stage, .stations = homes, .beside = BW_BESIDE_NAME};
}
