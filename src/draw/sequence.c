/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Trails of men, the ball's way, and which moments to show.
#include "draw/sequence.h"

#include "draw/chart.h"
#include "draw/path.h"
#include "draw/people.h"

/// A man who has moved less than this has no trail, m.
static const double stayed = 0.9;
/// A ply longer than this is shown in parts, about `part` long, s.
static const double long_ply = 1.25, part = 0.75;

static const double head_length = 6, head_width = 4.8;

const char *bw_defender_code(const bw_break *b, int defender) {
    static const char *const late[] = {"+1", "+2", "+3", "+4"};
    if (defender >= b->def.defence) return late[defender - b->def.defence];
    const bw_scheme *scheme = b->ground->scheme;
    const int stage = bw_scheme_stage(scheme, b->def.defence);
    static const char *const plain[] = {"D1", "D2", "D3", "D4", "D5", "D6"};
    return stage >= 0 ? scheme->stages[stage].spots[defender].id : plain[defender];
}

static void include(bw_window *w, bw_vec p) {
    w->right = bw_max(w->right, bw_abs(p.x));
    w->bottom = bw_min(w->bottom, p.y);
    w->top = bw_max(w->top, p.y);
}

bw_window bw_window_sequence(const bw_sequence *sq) {
    const bw_scheme *scheme = sq->b->ground->scheme;
    const double unit = bw_unit_length(scheme->units);
    const double crease = sq->b->ground->field->crease;
    bw_window w = {0, crease, -crease, crease};
    for (int f = 0; f < sq->count; f++) {
        const bw_frame *frame = &sq->frames[f];
        for (int a = 0; a < sq->b->attackers; a++)
            include(&w, frame->attackers[a]);
        for (int d = 0; d < sq->b->defenders; d++) {
            if (frame->in[d]) include(&w, frame->defenders[d]);
        }
    }
    w.right += 2 * unit;
    w.bottom -= 2 * unit;
    w.top += 2 * unit;
    w.right = -bw_floor(-w.right / unit) * unit;
    w.left = -w.right;
    w.bottom = bw_floor(w.bottom / unit) * unit;
    w.top = -bw_floor(-w.top / unit) * unit;
    return w;
}

static bw_vec man_at(const bw_frame *f, int man) {
    return man < BW_MAX_ATTACKERS ? f->attackers[man] : f->defenders[man - BW_MAX_ATTACKERS];
}

/// One man's path from frame `from` to frame `to`, with its head `gap` points short of the end.
static void draw_trail(bw_ink *ink, const bw_sequence *sq, const bw_view *view, int man, int from,
                       int to, double gap, bool soft) {
    const bw_vec start = man_at(&sq->frames[from], man), end = man_at(&sq->frames[to], man);
    if (bw_distance(start, end) < stayed) return;
    const bw_vec tip_at = bw_view_point(view, end);
    // The line ends at the last point far enough from the end to leave the head its direction.
    int last = to - 1;
    while (last > from && bw_distance(bw_view_point(view, man_at(&sq->frames[last], man)), tip_at) <
                              gap + head_length + 2)
        last--;
    const bw_vec before = bw_view_point(view, man_at(&sq->frames[last], man));
    if (bw_distance(before, tip_at) < gap + head_length) return;
    const bw_vec along = bw_unit(bw_sub(tip_at, before));
    const bw_vec tip = bw_sub(tip_at, bw_scale(along, gap));
    const bw_role role = man < BW_MAX_ATTACKERS ? BW_ROLE_ATTACKER
                         : soft                 ? BW_ROLE_SOFT_LINE
                                                : BW_ROLE_DEFENDER;
    bw_mark_line(ink, BW_ROUTE_RUN, role, soft ? 0.9 : 1.3);
    for (int f = from; f <= last; f++) {
        const bw_vec p = bw_view_point(view, man_at(&sq->frames[f], man));
        if (f == from)
            bw_ink_move(ink, p.x, p.y);
        else
            bw_ink_line(ink, p.x, p.y);
    }
    const bw_vec neck = bw_sub(tip, bw_scale(along, head_length * 0.9));
    bw_ink_line(ink, neck.x, neck.y);
    bw_ink_fill(ink, role);
    bw_path_head(ink, tip, along, head_length, head_width);
}

/// True when attacker `man` carries the ball in frame f: his path is the ball's then.
static bool carries(const bw_sequence *sq, int f, int man) {
    const bw_answer_ply *step = &sq->answer->plies[sq->frames[f].ply];
    return step->ply.kind == BW_CARRY && step->who == man;
}

/// An attacker's path without the stretches on which he carries the ball.
static void draw_cuts(bw_ink *ink, const bw_sequence *sq, const bw_view *view, int man, int from,
                      int to, double gap) {
    int start = from;
    for (int f = from; f <= to; f++) {
        const bool ball = carries(sq, f, man);
        if (!ball && f < to) continue;
        const int end = ball ? f - 1 : f;
        if (end > start) draw_trail(ink, sq, view, man, start, end, gap, false);
        start = f + 1;
    }
}

static bw_route_kind route_of(bw_kind kind) {
    if (kind == BW_SHOOT) return BW_ROUTE_SHOT;
    return kind == BW_PASS ? BW_ROUTE_PASS : BW_ROUTE_CARRY;
}

/// Attackers of one frame and defenders of another. The goalkeeper stands in the middle.
static bw_chart_people people_of(const bw_sequence *sq, const bw_frame *attack,
                                 const bw_frame *defence, const bw_view *view, bw_mark_size size) {
    bw_chart_people people = {.size = size,
                              .keeper = bw_keeper_point(view, sq->b->ground->field, size, 0)};
    for (int a = 0; a < sq->b->attackers; a++)
        bw_people_attacker(&people, bw_view_point(view, attack->attackers[a]));
    for (int d = 0; d < sq->b->defenders; d++) {
        const bw_vec at = bw_view_point(view, defence->defenders[d]);
        // A late man may still be above the chart.
        if (at.y + size.radius < view->box.y) continue;
        bw_people_defender(
            &people,
            (bw_chart_man){.at = at, .code = bw_defender_code(sq->b, d), .duty = BW_NO_DUTY});
    }
    return people;
}

static void draw_ground(bw_ink *ink, const bw_sequence *sq, const bw_view *view) {
    bw_draw_paper(ink, view);
    bw_draw_field(ink, sq->b->ground->field, sq->b->ground->scheme->units, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
}

static void draw_end(bw_ink *ink, const bw_sequence *sq, const bw_view *view, bool figures) {
    bw_ink_unclip(ink);
    bw_draw_border(ink, sq->b->ground->scheme->units, view, figures);
}

/// True when nobody, and no number placed before, stands within a ring's reach of `at`.
static bool is_free(const bw_labels *labels, bw_vec at) {
    for (int i = 0; i < labels->obstacle_count; i++) {
        const bw_box *box = &labels->obstacles[i];
        const double x = bw_clamp(at.x, box->x, box->x + box->width);
        const double y = bw_clamp(at.y, box->y, box->y + box->height);
        if (bw_distance(at, bw_v(x, y)) < BW_ORDER_REACH) return false;
    }
    return true;
}

/// Where the order number of a ply stands: on its way near the middle; where that is taken, or the
/// ball stays with its man, beside where it begins.
static bw_vec order_at(const bw_answer_ply *step, const bw_view *view, bw_mark_size size,
                       const bw_labels *labels) {
    static const double shares[] = {0.5, 0.38, 0.62, 0.28, 0.72, 0.2, 0.8};
    static const bw_vec sides[] = {{-1, 0}, {1, 0}, {-0.7, -0.7}, {0.7, -0.7}, {0, -1}, {0, 1}};
    const bw_vec a = bw_view_point(view, step->from), b = bw_view_point(view, step->to);
    const double beside = size.radius + BW_ORDER_REACH + 1.5;
    const bool stays = bw_distance(a, b) < 2 * beside;
    for (int k = 0; k < BW_COUNT(shares) && !stays; k++) {
        const bw_vec at = bw_lerp(a, b, shares[k]);
        if (is_free(labels, at)) return at;
    }
    for (int k = 0; k < BW_COUNT(sides); k++) {
        const bw_vec at = bw_add(a, bw_scale(sides[k], beside));
        if (is_free(labels, at)) return at;
    }
    return stays ? bw_add(a, bw_scale(sides[0], beside)) : bw_lerp(a, b, 0.5);
}

/// The numbers' places, and the times to be written beside them.
static void place_orders(const bw_sequence *sq, const bw_view *view, bw_mark_size size,
                         bw_vec *order, char (*times)[16], bw_labels *labels) {
    for (int i = 0; i < sq->answer->count; i++) {
        const bw_answer_ply *step = &sq->answer->plies[i];
        order[i] = order_at(step, view, size, labels);
        bw_text t = bw_text_in(times[i], sizeof times[i]);
        bw_put_fixed(&t, step->at_s, 1);
        bw_put(&t, " s");
        const bw_vec reach = bw_v(BW_ORDER_REACH, BW_ORDER_REACH);
        bw_labels_avoid(labels, order[i], reach);
        bw_labels_avoid_line(labels, bw_view_point(view, step->from),
                             bw_view_point(view, step->to));
        bw_labels_add(labels, times[i], BW_REGULAR, size.label, BW_ROLE_TEXT, order[i], reach);
    }
}

static void avoid_people(const bw_sequence *sq, const bw_view *view, bw_mark_size size,
                         bw_labels *labels) {
    const bw_frame *first = &sq->frames[0], *last = &sq->frames[sq->count - 1];
    const double r = size.radius + 0.8;
    bw_labels_avoid(labels, bw_keeper_point(view, sq->b->ground->field, size, 0),
                    bw_keeper_reach(size));
    for (int a = 0; a < sq->b->attackers; a++)
        bw_labels_avoid(labels, bw_view_point(view, first->attackers[a]), bw_v(r, r));
    for (int d = 0; d < sq->b->defenders; d++)
        bw_labels_avoid(labels, bw_view_point(view, last->defenders[d]),
                        bw_mark_reach(size, bw_defender_code(sq->b, d), BW_NO_DUTY));
}

int bw_draw_sequence(bw_ink *ink, const bw_sequence *sq, const bw_view *view, bw_mark_size size,
                     bool figures) {
    const int end = sq->count - 1;
    bw_vec order[BW_DEEPEST + 1];
    char times[BW_DEEPEST + 1][16];
    bw_labels labels;
    bw_labels_begin(&labels, view->box, view->origin.x);
    avoid_people(sq, view, size, &labels);
    place_orders(sq, view, size, order, times, &labels);
    const int covering = bw_labels_place(&labels);

    const bw_chart_people people = people_of(sq, &sq->frames[0], &sq->frames[end], view, size);

    draw_ground(ink, sq, view);
    for (int d = 0; d < sq->b->defenders; d++) {
        const int man = BW_MAX_ATTACKERS + d;
        if (bw_distance(man_at(&sq->frames[0], man), man_at(&sq->frames[end], man)) < stayed)
            continue;
        bw_mark_ghost(ink, size, bw_view_point(view, man_at(&sq->frames[0], man)));
        draw_trail(ink, sq, view, man, 0, end, size.radius + 1, true);
    }
    for (int a = 0; a < sq->b->attackers; a++)
        draw_cuts(ink, sq, view, a, 0, end, 0);
    for (int i = 0; i < sq->answer->count; i++) {
        const bw_answer_ply *step = &sq->answer->plies[i];
        const double gap = step->ply.kind == BW_SHOOT ? 0 : size.radius + 1;
        bw_mark_route(ink, route_of((bw_kind)step->ply.kind), bw_view_point(view, step->from),
                      bw_view_point(view, step->to), i == 0 ? size.radius + 1 : 4, gap, false);
    }
    bw_labels_draw(ink, &labels);
    bw_draw_people(ink, &people);
    for (int i = 0; i < sq->answer->count; i++)
        bw_mark_order(ink, order[i], order[i], i + 1);
    draw_end(ink, sq, view, figures);
    return covering;
}

/// Where the ball's mark stands: beside the disc of the man who has it, away from the goal.
static bw_vec ball_at(const bw_frame *f, const bw_view *view, bw_mark_size size) {
    const bw_vec at = bw_view_point(view, f->ball);
    if (f->flying) return at;
    const bw_vec away = bw_unit(bw_sub(at, view->origin));
    return bw_add(at, bw_scale(away, size.radius + BW_BALL_REACH - 1));
}

void bw_draw_moment_ways(bw_ink *ink, const bw_sequence *sq, int from, int to, const bw_view *view,
                         bw_mark_size size) {
    const bw_frame *was = &sq->frames[from], *now = &sq->frames[to];
    const int ply = now->ply < sq->answer->count ? now->ply : sq->answer->count - 1;
    const bw_answer_ply *step = &sq->answer->plies[ply];
    draw_ground(ink, sq, view);
    for (int man = 0; man < BW_MEN; man++) {
        const bool attacker = man < BW_MAX_ATTACKERS;
        if (attacker ? man >= sq->b->attackers : man - BW_MAX_ATTACKERS >= sq->b->defenders)
            continue;
        if (attacker)
            draw_cuts(ink, sq, view, man, from, to, size.radius + 1);
        else
            draw_trail(ink, sq, view, man, from, to, size.radius + 1, false);
    }
    const bw_vec a = bw_view_point(view, was->ball), b = bw_view_point(view, now->ball);
    if (to > from && step->ply.kind != BW_SHOOT && step->ply.kind != BW_HOLD)
        bw_mark_route(ink, route_of((bw_kind)step->ply.kind), a, b,
                      step->ply.kind == BW_CARRY ? 0 : size.radius,
                      now->flying ? BW_BALL_REACH : size.radius + 1, false);
    if (to == sq->count - 1 && step->ply.kind == BW_SHOOT)
        bw_mark_route(ink, BW_ROUTE_SHOT, bw_view_point(view, step->from), view->origin,
                      size.radius + 1, 0, false);
}

void bw_draw_moment_people(bw_ink *ink, const bw_sequence *sq, int at, const bw_view *view,
                           bw_mark_size size, bool figures) {
    const bw_frame *now = &sq->frames[at];
    bw_chart_people people = people_of(sq, now, now, view, size);
    people.keeper_below = true;
    bw_people_ball(&people, ball_at(now, view, size));
    bw_draw_people(ink, &people);
    draw_end(ink, sq, view, figures);
}

void bw_draw_moment(bw_ink *ink, const bw_sequence *sq, int from, int to, const bw_view *view,
                    bw_mark_size size) {
    bw_draw_moment_ways(ink, sq, from, to, view, size);
    bw_draw_moment_people(ink, sq, to, view, size, false);
}

/// The frame nearest in time to `at` from `low` to `high`.
static int frame_at(const bw_sequence *sq, int low, int high, double at) {
    int best = low;
    for (int f = low; f <= high; f++) {
        if (bw_abs(sq->frames[f].at_s - at) < bw_abs(sq->frames[best].at_s - at)) best = f;
    }
    return best;
}

int bw_pick_moments(const bw_sequence *sq, int *picked, int room) {
    int count = 0, from = 0;
    if (room > 0) picked[count++] = 0;
    for (int i = 0; i < sq->answer->count; i++) {
        int end = from;
        while (end + 1 < sq->count && sq->frames[end + 1].ply <= i)
            end++;
        const double a = sq->frames[from].at_s, b = sq->frames[end].at_s;
        const int parts = b - a > long_ply ? (int)bw_floor((b - a) / part + 0.5) : 1;
        for (int k = 1; k <= parts; k++) {
            const int f = frame_at(sq, from, end, a + (b - a) * k / parts);
            if (count < room && f > picked[count - 1]) picked[count++] = f;
        }
        from = end;
    }
    return count;
}
