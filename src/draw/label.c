/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Candidate places, costs and the descent.
#include "draw/label.h"

#include "draw/metrics.h"
#include "draw/path.h"

enum { PLACES = 20, ROUNDS = 8 };

/// Where a label may stand round its mark, best first. `side` 1 is just clear of it on the outward
/// side, `rise` 1 just clear below it, `slide` shifts by a share of the text's width.
static const struct {
    double side, rise, slide, cost;
} places[PLACES] = {
    {0, 1, 0, 0},      {1, 0, 0, 1},      {0, -1, 0, 2},      {-1, 0, 0, 3},    {0.9, 0.7, 0, 4},
    {0.9, -0.7, 0, 5}, {-0.9, 0.7, 0, 6}, {-0.9, -0.7, 0, 7}, {0, 1, 0.35, 3},  {0, 1, -0.35, 4},
    {0, -1, 0.35, 5},  {0, -1, -0.35, 6}, {0, 1.7, 0, 9},     {0, -1.7, 0, 10}, {1.25, 0, 0, 8},
    {-1.25, 0, 0, 9},  {1.1, 1, 0, 8},    {1.1, -1, 0, 8},    {-1.1, 1, 0, 9},  {-1.1, -1, 0, 9},
};

static const double clear = 2.4; // points between a mark and its label
static const double touch = 0.1; // square points of overlap that do not count

void bw_labels_begin(bw_labels *labels, bw_box bounds, double middle) {
    labels->bounds = bounds;
    labels->middle = middle;
    labels->label_count = labels->obstacle_count = 0;
    labels->shunned_count = labels->crossing_count = labels->rival_count = 0;
}

void bw_labels_begin_chart(bw_labels *labels, const bw_view *view) {
    const bw_box *box = &view->box;
    bw_labels_begin(labels, (bw_box){box->x + 2, box->y + 2, box->width - 4, box->height - 4},
                    view->origin.x);
}

void bw_labels_avoid_goal(bw_labels *labels, const bw_field *field, const bw_view *view) {
    const double net = field->goal_depth * view->scale;
    bw_labels_avoid(labels, bw_v(view->origin.x, view->origin.y + net / 2),
                    bw_v(field->goal / 2 * view->scale, net / 2));
}

void bw_labels_avoid(bw_labels *labels, bw_vec at, bw_vec reach) {
    if (labels->obstacle_count == BW_MAX_OBSTACLES) return;
    labels->obstacles[labels->obstacle_count++] =
        (bw_box){at.x - reach.x, at.y - reach.y, 2 * reach.x, 2 * reach.y};
}

void bw_labels_shun(bw_labels *labels, bw_vec at, bw_vec reach) {
    if (labels->shunned_count == BW_MAX_SHUNNED) return;
    labels->shunned[labels->shunned_count++] =
        (bw_box){at.x - reach.x, at.y - reach.y, 2 * reach.x, 2 * reach.y};
}

void bw_labels_avoid_line(bw_labels *labels, bw_vec a, bw_vec b) {
    if (labels->crossing_count == BW_MAX_CROSSINGS) return;
    labels->crossings[labels->crossing_count][0] = a;
    labels->crossings[labels->crossing_count++][1] = b;
}

void bw_labels_rival(bw_labels *labels, bw_vec at, bw_vec reach) {
    if (labels->rival_count == BW_MAX_RIVALS) return;
    labels->rivals[labels->rival_count++] = (bw_label){.at = at, .reach = reach};
}

void bw_labels_add(bw_labels *labels, const char *text, bw_weight weight, double size, bw_role role,
                   bw_vec at, bw_vec reach) {
    if (labels->label_count == BW_MAX_LABELS) return;
    labels->labels[labels->label_count++] = (bw_label){.text = text,
                                                       .size = size,
                                                       .role = role,
                                                       .weight = weight,
                                                       .at = at,
                                                       .reach = reach,
                                                       .ground = BW_ROLE_PAPER,
                                                       .width = bw_width(text, size)};
}

static bw_box box_at(const bw_labels *labels, const bw_label *label, int place) {
    const double outward = label->at.x < labels->middle ? -1 : 1;
    const double ascent = label->size * BW_CAP_HEIGHT;
    const double width = label->width, height = ascent + label->size * BW_DESCENT;
    const double side = places[place].side, rise = places[place].rise;
    const double x = label->at.x + outward * (side * (label->reach.x + clear + width / 2) +
                                              places[place].slide * width);
    const double y = label->at.y + rise * (label->reach.y + clear + height / 2);
    return (bw_box){x - width / 2, rise == 0 ? y - ascent / 2 : y - height / 2, width, height};
}

static double overlap(bw_box a, bw_box b) {
    const double x = bw_min(a.x + a.width, b.x + b.width) - bw_max(a.x, b.x);
    const double y = bw_min(a.y + a.height, b.y + b.height) - bw_max(a.y, b.y);
    return x > 0 && y > 0 ? x * y : 0;
}

static double outside(bw_box a, bw_box bounds) {
    return a.width * a.height - overlap(a, bounds);
}

/// Length of the segment inside the box, by clipping its parameter to the slabs.
static double inside_length(bw_box box, bw_vec a, bw_vec b) {
    double from = 0, to = 1;
    const double start[] = {a.x, a.y}, step[] = {b.x - a.x, b.y - a.y};
    const double low[] = {box.x, box.y}, high[] = {box.x + box.width, box.y + box.height};
    for (int i = 0; i < 2; i++) {
        if (step[i] == 0) {
            if (start[i] < low[i] || start[i] > high[i]) return 0;
            continue;
        }
        const double t1 = (low[i] - start[i]) / step[i], t2 = (high[i] - start[i]) / step[i];
        from = bw_max(from, bw_min(t1, t2));
        to = bw_min(to, bw_max(t1, t2));
    }
    return to > from ? (to - from) * bw_distance(a, b) : 0;
}

/// How far a mark's edge is from a box, roughly: from its middle less its larger half.
static double apart(bw_box box, bw_vec at, bw_vec reach) {
    const double x = bw_max(0, bw_max(box.x - at.x, at.x - box.x - box.width));
    const double y = bw_max(0, bw_max(box.y - at.y, at.y - box.y - box.height));
    return bw_length(bw_v(x, y)) - bw_max(reach.x, reach.y);
}

/// How many other marks a label would be as near to as to its own.
static int strangers(const bw_labels *labels, int index, bw_box box) {
    const bw_label *own = &labels->labels[index];
    const double distance = apart(box, own->at, own->reach);
    int count = 0;
    for (int i = 0; i < labels->label_count; i++) {
        const bw_label *other = &labels->labels[i];
        count += i != index && apart(box, other->at, other->reach) < distance + 1;
    }
    for (int i = 0; i < labels->rival_count; i++) {
        const bw_label *other = &labels->rivals[i];
        count += apart(box, other->at, other->reach) < distance + 1;
    }
    return count;
}

/// What must not be covered weighs most, by area; crossed lines by length; shunned ground a little.
static double cost_at(const bw_labels *labels, int index, int place, double *covered) {
    const bw_box box = box_at(labels, &labels->labels[index], place);
    double area = outside(box, labels->bounds), crossed = 0, shunned = 0;
    for (int i = 0; i < labels->obstacle_count; i++) {
        area += overlap(box, labels->obstacles[i]);
    }
    for (int i = 0; i < labels->label_count; i++) {
        if (i != index && !labels->labels[i].left_out)
            area += overlap(box, box_at(labels, &labels->labels[i], labels->labels[i].place));
    }
    for (int i = 0; i < labels->crossing_count; i++) {
        crossed += inside_length(box, labels->crossings[i][0], labels->crossings[i][1]);
    }
    *covered = area;
    for (int i = 0; i < labels->shunned_count; i++) {
        shunned += overlap(box, labels->shunned[i]);
    }
    return 1000 * (area > touch) + 20 * area + 0.8 * crossed + 0.4 * shunned +
           25 * strangers(labels, index, box) + places[place].cost;
}

int bw_labels_place(bw_labels *labels) {
    bool moved = true;
    int covering = 0;
    for (int round = 0; round < ROUNDS && moved; round++) {
        moved = false;
        covering = 0;
        for (int i = 0; i < labels->label_count; i++) {
            double covered, best_covered;
            int best = labels->labels[i].place;
            double least = cost_at(labels, i, best, &best_covered);
            for (int p = 0; p < PLACES; p++) {
                const double cost = cost_at(labels, i, p, &covered);
                if (cost < least - 1e-6) { // rounding decides nothing
                    least = cost;
                    best = p;
                    best_covered = covered;
                    moved = true;
                }
            }
            labels->labels[i].place = best;
            covering += best_covered > touch;
        }
    }
    return covering;
}

bool bw_labels_free(const bw_labels *labels, bw_box box) {
    double area = outside(box, labels->bounds);
    for (int i = 0; i < labels->obstacle_count; i++) {
        area += overlap(box, labels->obstacles[i]);
    }
    for (int i = 0; i < labels->label_count; i++) {
        if (!labels->labels[i].left_out) area += overlap(box, bw_label_box(labels, i));
    }
    return area <= touch;
}

void bw_labels_leave_out(bw_labels *labels) {
    for (int worst = 0; worst >= 0;) {
        double most = 0;
        worst = -1;
        for (int i = 0; i < labels->label_count; i++) {
            const bw_label *label = &labels->labels[i];
            if (label->left_out) continue;
            double covered;
            const double cost = cost_at(labels, i, label->place, &covered);
            const bool bad =
                covered > touch || strangers(labels, i, box_at(labels, label, label->place)) > 0;
            if (!bad || cost <= most) continue;
            most = cost;
            worst = i;
        }
        if (worst >= 0) labels->labels[worst].left_out = true;
    }
}

bw_box bw_label_box(const bw_labels *labels, int index) {
    return box_at(labels, &labels->labels[index], labels->labels[index].place);
}

void bw_labels_draw(bw_ink *ink, const bw_labels *labels) {
    for (int i = 0; i < labels->label_count; i++) {
        if (labels->labels[i].left_out) continue;
        const bw_box box = bw_label_box(labels, i);
        bw_ink_fill(ink, labels->labels[i].ground);
        bw_path_rect(ink, box.x - 0.8, box.y - 0.5, box.width + 1.6, box.height);
    }
    for (int i = 0; i < labels->label_count; i++) {
        const bw_label *label = &labels->labels[i];
        if (label->left_out) continue;
        const bw_box box = bw_label_box(labels, i);
        bw_ink_text(ink, label->role, label->weight, label->size, BW_CENTRE_ALIGN,
                    box.x + box.width / 2, box.y + label->size * BW_CAP_HEIGHT, label->text);
    }
}
