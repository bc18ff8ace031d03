/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Charts: to scale, true to the field's profile, and every mark told apart without colour.
#include "draw/chart.h"
#include "draw/marks.h"
#include "draw/trace.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "tests/draw/pages.h"

static double memory[1 << 15];

static bw_ink *fresh(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 600, 600);
    return ink;
}

/// Points of field (x, y) that strokes of the page begin or end a straight piece at.
static bool has_segment(const bw_ink *ink, const bw_view *view, bw_vec a, bw_vec b) {
    const bw_vec p = bw_view_point(view, a), q = bw_view_point(view, b);
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        const double *n = bw_ink_numbers(i);
        if (i->kind != BW_INK_STROKE) continue;
        for (int k = 0; k + 6 <= i->numbers && n[k] == BW_MOVE && n[k + 3] == BW_LINE; k += 6) {
            if (bw_distance(bw_v(n[k + 1], n[k + 2]), p) < 1e-6 &&
                bw_distance(bw_v(n[k + 4], n[k + 5]), q) < 1e-6)
                return true;
        }
    }
    return false;
}

static void fields_are_true_to_their_profiles(void) {
    const bw_window window = {-40, 40, -20, 70};
    const bw_view view = bw_view_fit(window, 0, 0, 400);
    for (int f = 0; f < bw_field_count(); f++) {
        const bw_field *field = bw_field_at(f);
        const double side = field->width / 2;
        bw_ink *ink = fresh();
        bw_draw_field(ink, field, BW_YARDS, &view);
        CHECK(has_segment(ink, &view, bw_v(-side, -field->end_line), bw_v(side, -field->end_line)));
        CHECK(has_segment(ink, &view, bw_v(-field->goal / 2, 0), bw_v(field->goal / 2, 0)));
        CHECK(has_segment(ink, &view, bw_v(field->goal / 2, 0), bw_v(0, -field->goal_depth)));
        CHECK(field->restraining <= 0 || has_segment(ink, &view, bw_v(-side, field->restraining),
                                                     bw_v(side, field->restraining)));
        CHECK(field->box_half <= 0 || field->restraining <= 0 ||
              has_segment(ink, &view, bw_v(field->box_half, -field->end_line),
                          bw_v(field->box_half, field->restraining)));
        bool crease = false;
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
            if (i->kind != BW_INK_STROKE || !i->numbers) continue;
            const bw_box box = path_box(i);
            crease |= fabs(box.width - 2 * field->crease * 5) < 1e-9 &&
                      fabs(box.x + box.width / 2 - view.origin.x) < 1e-9;
        }
        CHECK(crease); // 5 points a metre
    }
}

static void views_keep_the_scale_and_the_sides(void) {
    const bw_window window = {-10, 30, -5, 15};
    const bw_view view = bw_view_fit(window, 50, 60, 400);
    CHECK_NEAR(view.box.height, 200, 1e-9);
    CHECK_NEAR(bw_view_width(window, 200), 400, 1e-9);
    const bw_vec right = bw_view_point(&view, bw_v(3, 0)), up = bw_view_point(&view, bw_v(0, 3));
    CHECK_NEAR(right.x - view.origin.x, 30, 1e-9);
    CHECK_NEAR(view.origin.y - up.y, 30, 1e-9); // up-field is up
    const bw_vec back = bw_view_place(&view, bw_view_point(&view, bw_v(7.25, -2.5)));
    CHECK_NEAR(back.x, 7.25, 1e-12);
    CHECK_NEAR(back.y, -2.5, 1e-12);
}

static void windows_show_everything(void) {
    static bw_scheme scheme;
    for (int f = 0; f < bw_field_count(); f++) {
        bw_scheme_fresh(f, 0, &scheme);
        const bw_window unit = bw_window_unit(&scheme), field = bw_window_field(&scheme);
        CHECK_SAME(unit.left, -unit.right);
        CHECK(field.right >= unit.right && field.top >= unit.top && field.bottom <= unit.bottom);
        for (int l = 0; l < scheme.landmark_count; l++) {
            const bw_vec p = scheme.landmarks[l].at;
            CHECK(p.x > unit.left && p.x < unit.right && p.y > unit.bottom && p.y < unit.top);
        }
    }
}

/// The filled steps of a border are five yards long to scale, and every second one is open.
static void the_border_is_a_ruler(void) {
    const double yard = BW_METRES_PER_YARD;
    const bw_window window = {-15 * yard, 15 * yard, -10 * yard, 20 * yard};
    const bw_view view = bw_view_fit(window, 100, 100, 300); // 10 points a yard
    bw_ink *ink = fresh();
    bw_draw_border(ink, BW_YARDS, &view, true);
    const bw_ink_item *steps = bw_ink_first(ink);
    CHECK_INT(steps->kind, BW_INK_FILL);
    const double *n = bw_ink_numbers(steps);
    int across = 0;
    for (int i = 0; i < steps->numbers; i += 13) { // M L L L Z
        const double wide = n[i + 4] - n[i + 1], high = n[i + 8] - n[i + 2];
        CHECK(fabs(wide - 50) < 1e-9 || fabs(high - 50) < 1e-9);
        across += fabs(wide - 50) < 1e-9;
    }
    CHECK_INT(across, 6); // three of six on each long side
    CHECK_INT(steps->numbers / 13, 12);
    CHECK(has_text(ink, "15", false) && has_text(ink, "0", false) && has_text(ink, "20", false));
}

static void the_scale_bar_is_to_scale(void) {
    bw_ink *ink = fresh();
    bw_draw_scale(ink, BW_METRES, 7, 500, 300);
    const bw_box half = path_box(bw_ink_first(ink));
    CHECK_NEAR(half.width, 35, 1e-9); // five metres at seven points a metre
    CHECK(has_text(ink, "metres", false) && has_text(ink, "10", false));
    const bw_box page = {300, 270, 200, 40};
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        CHECK(within(i->kind == BW_INK_TEXT ? text_box(i) : path_box(i), page, 0.01));
    }
    ink = fresh();
    bw_draw_scale(ink, BW_YARDS, 25, 500, 300); // too large for five yards
    CHECK_NEAR(path_box(bw_ink_first(ink)).width, 2 * BW_METRES_PER_YARD * 25, 1e-9);
    CHECK(has_text(ink, "4", false) && has_text(ink, "yards", false));
}

/// The trace of a mark with its colours taken out: what a black printer leaves.
static void colourless(const bw_ink *ink, char *out, size_t room) {
    static double copy[1 << 15];
    memcpy(copy, ink, (size_t)ink->used);
    bw_ink *same = (bw_ink *)copy;
    for (const bw_ink_item *i = bw_ink_first(same); i; i = bw_ink_next(same, i)) {
        ((bw_ink_item *)(uintptr_t)i)->role = BW_ROLE_LINE;
    }
    bw_text t = bw_text_in(out, room);
    bw_trace(same, &t);
    CHECK(!t.full);
}

static void duties_and_routes_differ_without_colour(void) {
    static char traces[BW_DUTY_COUNT + 4][8192];
    const bw_mark_size size = bw_marks_small();
    int count = 0;
    for (int d = 0; d < BW_DUTY_COUNT; d++) {
        bw_ink *ink = fresh();
        bw_mark_duty(ink, bw_v(50, 50), 0, size.radius, (bw_duty)d);
        colourless(ink, traces[count++], sizeof traces[0]);
    }
    for (int r = BW_ROUTE_RUN; r <= BW_ROUTE_SHOT; r++) {
        bw_ink *ink = fresh();
        bw_mark_route(ink, (bw_route_kind)r, bw_v(0, 0), bw_v(60, 0), 0, 0, false);
        colourless(ink, traces[count++], sizeof traces[0]);
    }
    for (int a = 0; a < count; a++) {
        for (int b = 0; b < a; b++) {
            CHECK(strcmp(traces[a], traces[b]) != 0);
        }
    }
}

/// A disc's code keeps its size and stays on the disc, however long; its reach holds all of the mark.
static void codes_fit_their_discs(void) {
    static const char *const codes[] = {"M", "TL", "WR", "MID", "WWW"};
    const bw_mark_size sizes[] = {bw_marks_small(), bw_marks_large()};
    for (int s = 0; s < 2; s++) {
        CHECK(sizes[s].type >= 9 && sizes[s].label >= 9);
        for (int c = 0; c < BW_COUNT(codes); c++) {
            for (int duty = BW_NO_DUTY; duty < BW_DUTY_COUNT; duty++) {
                bw_ink *ink = fresh();
                const bw_vec reach = bw_mark_reach(sizes[s], codes[c], duty);
                const bw_box box = {50 - reach.x, 50 - reach.y, 2 * reach.x, 2 * reach.y};
                bw_mark_defender(ink, sizes[s], bw_v(50, 50), codes[c], duty);
                for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
                    if (i->kind == BW_INK_TEXT)
                        CHECK(within(text_box(i), box, 0));
                    else if (i->role != BW_ROLE_PAPER)
                        CHECK(within(path_box(i), box, 0.01));
                }
            }
        }
    }
}

int main(int argc, char **argv) {
    RUN(fields_are_true_to_their_profiles);
    RUN(views_keep_the_scale_and_the_sides);
    RUN(windows_show_everything);
    RUN(the_border_is_a_ruler);
    RUN(the_scale_bar_is_to_scale);
    RUN(duties_and_routes_differ_without_colour);
    RUN(codes_fit_their_discs);
    return test_report(argc, argv);
}
