/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Label placement: nothing covered where there is room, mirror images mirrored, the same every time.
#include "draw/label.h"
#include "draw/metrics.h"
#include "harness.h"

enum { MEN = 6 };

static const bw_box bounds = {0, 0, 240, 200};
static const bw_vec reach = {12, 12};
static const char *const words[MEN] = {"ball", "adjacent", "adjacent", "crease", "backside", "man"};

static int place(bw_labels *labels, const bw_vec *at, bool flipped) {
    bw_labels_begin(labels, bounds, 120);
    for (int i = 0; i < MEN; i++) {
        const bw_vec p = flipped ? bw_v(240 - at[i].x, at[i].y) : at[i];
        bw_labels_avoid(labels, p, reach);
        bw_labels_add(labels, words[i], BW_REGULAR, 9, BW_ROLE_TEXT, p, reach);
    }
    return bw_labels_place(labels);
}

/// True when the boxes share less than a tenth of a square point.
static bool apart(bw_box a, bw_box b) {
    const double x = fmin(a.x + a.width, b.x + b.width) - fmax(a.x, b.x);
    const double y = fmin(a.y + a.height, b.y + b.height) - fmax(a.y, b.y);
    return x <= 0 || y <= 0 || x * y <= 0.1 + 1e-9;
}

static bool inside(bw_box a) {
    return a.x >= bounds.x - 0.02 && a.y >= bounds.y - 0.02 &&
           a.x + a.width <= bounds.x + bounds.width + 0.02 &&
           a.y + a.height <= bounds.y + bounds.height + 0.02;
}

static void spread(unsigned long long *seed, bw_vec *at) {
    for (int i = 0; i < MEN;) {
        at[i] = bw_v(test_uniform(seed, 20, 220), test_uniform(seed, 20, 180));
        bool clear = fabs(at[i].x - 120) > 1;
        for (int k = 0; k < i; k++) {
            clear = clear && bw_distance(at[i], at[k]) > 27;
        }
        i += clear;
    }
}

static void labels_cover_nothing_where_there_is_room(void) {
    unsigned long long seed = 11;
    int crowded = 0;
    for (int round = 0; round < 400; round++) {
        bw_vec at[MEN];
        bw_labels labels;
        spread(&seed, at);
        if (place(&labels, at, false) > 0) {
            crowded++;
            continue;
        }
        for (int i = 0; i < MEN; i++) {
            const bw_box box = bw_label_box(&labels, i);
            CHECK(inside(box));
            CHECK_NEAR(box.width, bw_width(words[i], 9), 1e-9);
            for (int k = 0; k < MEN; k++) {
                CHECK(apart(box, labels.obstacles[k]));
                if (k != i) CHECK(apart(box, bw_label_box(&labels, k)));
            }
        }
    }
    CHECK(crowded <= 8); // 2 in 100 of random crowds may have no way out
}

static void mirrored_crowds_have_mirrored_labels(void) {
    unsigned long long seed = 12;
    for (int round = 0; round < 200; round++) {
        bw_vec at[MEN];
        bw_labels one, other;
        spread(&seed, at);
        CHECK_INT(place(&one, at, false), place(&other, at, true));
        for (int i = 0; i < MEN; i++) {
            const bw_box a = bw_label_box(&one, i), b = bw_label_box(&other, i);
            CHECK_NEAR(240 - a.x - a.width, b.x, 1e-9);
            CHECK_NEAR(a.y, b.y, 1e-9);
        }
    }
}

static void a_label_goes_below_its_mark(void) {
    bw_labels labels;
    bw_labels_begin(&labels, bounds, 120);
    bw_labels_avoid(&labels, bw_v(60, 60), reach);
    bw_labels_add(&labels, "ball", BW_REGULAR, 9, BW_ROLE_TEXT, bw_v(60, 60), reach);
    CHECK_INT(bw_labels_place(&labels), 0);
    const bw_box box = bw_label_box(&labels, 0);
    CHECK_NEAR(box.x + box.width / 2, 60, 1e-9);
    CHECK(box.y >= 72);
    CHECK(bw_labels_free(&labels, (bw_box){100, 100, 10, 10}));
    CHECK(!bw_labels_free(&labels, (bw_box){55, 55, 10, 10}));
    CHECK(!bw_labels_free(&labels, box));
    CHECK(!bw_labels_free(&labels, (bw_box){-5, 100, 10, 10}));
}

int main(int argc, char **argv) {
    RUN(labels_cover_nothing_where_there_is_room);
    RUN(mirrored_crowds_have_mirrored_labels);
    RUN(a_label_goes_below_its_mark);
    return test_report(argc, argv);
}
