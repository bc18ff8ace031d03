/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One moment of a lesson on the chart, far to near: paper, field, ball places, the ball's way, tethers,
/// men, ball.
#include "core/late.h"
#include "draw/chart.h"
#include "draw/lesson/lesson_parts.h"
#include "draw/metrics.h"
#include "draw/path.h"
#include "draw/people.h"

static const double ball_ring = 7.5; // radius of the wide ring that leads the eye

/// Everything one chart needs.
typedef struct sketch {
    const bw_lesson_film *film;
    const bw_walk_moment *moment;
    const bw_stage *stage;
    const bw_view *view;
    bw_mark_size size;
    bw_ink *ink;
} sketch;

/// Whether he has a tether: too far from his place by now.
static bool away(const bw_walker *man) {
    return bw_is_late(man->needs, bw_distance(man->body.at, man->station.at));
}

bool bw_walker_late(const bw_walker *man) {
    return bw_is_late(man->late, bw_distance(man->body.at, man->station.at));
}

static bw_vec man_at(const sketch *k, int spot) {
    return bw_view_point(k->view, k->moment->men[spot].body.at);
}

static bw_chart_people people_of(const sketch *k) {
    bw_chart_people people = {.size = k->size,
                              .keeper =
                                  bw_keeper_point(k->view, bw_field_at(k->film->scheme->field),
                                                  k->size, k->moment->ball.x),
                              .ring = ball_ring,
                              .ring_width = 1.4};
    for (int s = 0; s < k->stage->defenders; s++)
        bw_people_defender(&people, (bw_chart_man){.at = man_at(k, s),
                                                   .code = k->stage->spots[s].id,
                                                   .duty = (int)k->moment->men[s].station.duty});
    bw_people_ball(&people, bw_view_point(k->view, k->moment->ball));
    return people;
}

static void draw_places(const sketch *k) {
    const bw_scheme *scheme = k->film->scheme;
    bw_ink_fill(k->ink, BW_ROLE_BALL);
    for (int l = 0; l < scheme->landmark_count; l++)
        bw_path_circle(k->ink, bw_view_point(k->view, scheme->landmarks[l].at), 1.7);
}

static void draw_way(const sketch *k) {
    if (k->moment->way == BW_WAY_NONE) return;
    const bw_vec from = bw_view_point(k->view, k->moment->from);
    const bw_vec to = bw_view_point(k->view, k->film->walk.stops[k->moment->stop].ball);
    bw_mark_route(k->ink, k->moment->way == BW_WAY_CARRY ? BW_ROUTE_CARRY : BW_ROUTE_PASS, from, to,
                  2, BW_BALL_REACH + 1, false);
}

/// What the seconds of late men must not cover.
static void collect(const sketch *k, const bw_chart_people *people, bw_labels *taken) {
    bw_labels_begin_chart(taken, k->view);
    bw_labels_avoid(taken, people->keeper, bw_keeper_reach(k->size));
    bw_labels_avoid(taken, people->ball, bw_v(ball_ring, ball_ring));
    for (int s = 0; s < k->stage->defenders; s++) {
        const bw_walker *man = &k->moment->men[s];
        bw_labels_avoid(taken, man_at(k, s),
                        bw_mark_reach(k->size, k->stage->spots[s].id, BW_DUTY_BALL));
        if (away(man))
            bw_labels_avoid(taken, bw_view_point(k->view, man->station.at),
                            bw_v(k->size.radius * 0.8, k->size.radius * 0.8));
    }
}

/// His seconds on a patch of paper, behind him as he runs or else beside him; nowhere when there is no
/// room, for the panel has them too.
static void put_seconds(const sketch *k, int spot, bw_vec place, bw_labels *taken) {
    const double type = k->size.type, high = type * BW_CAP_HEIGHT / 2;
    char words[24];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put_fixed(&t, k->moment->men[spot].late, 1);
    bw_put(&t, " s");
    const double half = bw_width(words, type) / 2;
    const bw_vec at = man_at(k, spot), back = bw_unit(bw_sub(at, place));
    const double out = at.x < k->view->origin.x ? -1 : 1;
    const bw_vec reach = bw_mark_reach(k->size, k->stage->spots[spot].id, BW_DUTY_BALL);
    const bw_vec sides[] = {back, bw_v(out, 0), bw_v(0, -1), bw_v(0, 1), bw_v(-out, 0)};
    for (int i = 0; i < BW_COUNT(sides); i++) {
        const bw_vec middle = bw_v(at.x + sides[i].x * (reach.x + half + 3),
                                   at.y + sides[i].y * (reach.y + high + 4));
        const bw_box patch = {middle.x - half - 2, middle.y - high - 2, 2 * half + 4, 2 * high + 4};
        if (!bw_labels_free(taken, patch)) continue;
        bw_labels_avoid(taken, middle, bw_v(half + 2, high + 2));
        bw_ink_fill(k->ink, BW_ROLE_PAPER);
        bw_path_rect(k->ink, patch.x, patch.y, patch.width, patch.height);
        bw_ink_text(k->ink, BW_ROLE_ACCENT, BW_BOLD, type, BW_CENTRE_ALIGN, middle.x,
                    middle.y + high, words);
        return;
    }
}

static void draw_late(const sketch *k, const bw_chart_people *people) {
    bw_labels taken;
    collect(k, people, &taken);
    for (int s = 0; s < k->stage->defenders; s++) {
        const bw_walker *man = &k->moment->men[s];
        if (away(man))
            bw_mark_tether(k->ink, k->size, man_at(k, s), bw_view_point(k->view, man->station.at),
                           man->needs);
    }
    for (int s = 0; s < k->stage->defenders; s++) {
        const bw_walker *man = &k->moment->men[s];
        if (bw_walker_late(man)) put_seconds(k, s, bw_view_point(k->view, man->station.at), &taken);
    }
}

void bw_lesson_chart(const bw_lesson_film *film, const bw_walk_moment *moment, const bw_view *view,
                     bw_ink *ink) {
    const bw_scheme *scheme = film->scheme;
    const sketch k = {film, moment, &scheme->stages[film->walk.stage], view, bw_marks_large(), ink};
    const bw_chart_people people = people_of(&k);
    bw_draw_paper(ink, view);
    bw_draw_field(ink, bw_field_at(scheme->field), scheme->units, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
    draw_places(&k);
    draw_way(&k);
    draw_late(&k, &people);
    bw_draw_people(ink, &people);
    bw_ink_unclip(ink);
    bw_draw_border(ink, scheme->units, view, false);
}
