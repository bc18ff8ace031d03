/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Field profiles as data: complete, consistent, findable. The published figures themselves are
/// checked in tests/outside/test_fields_published.c.
#include "core/base.h"
#include "core/field.h"

#include "harness.h"

static bool says(const char *text, const char *word) {
    return strstr(text, word) != NULL;
}

static void every_profile_is_complete(void) {
    CHECK(bw_field_count() >= 7);
    for (int i = 0; i < bw_field_count(); i++) {
        const bw_field *f = bw_field_at(i);
        CHECK(f->id[0] && f->name[0] && f->date[0]);
        CHECK(strlen(f->source) > 40);
        CHECK(f->length > 0 && f->width > 0 && f->end_line > 0 && f->midline > 0);
        CHECK(f->crease > 0 && f->goal > 0 && f->goal_depth > 0);
    }
}

static void identifiers_find_their_profile(void) {
    for (int i = 0; i < bw_field_count(); i++) {
        CHECK(bw_field_find(bw_field_at(i)->id) == bw_field_at(i));
        for (int k = 0; k < i; k++)
            CHECK(strcmp(bw_field_at(i)->id, bw_field_at(k)->id) != 0);
    }
    CHECK(bw_field_find("boys-nfh") == NULL);
    CHECK(bw_field_find("boys-nfhs-unifie") == NULL);
    CHECK(bw_field_find("") == NULL);
}

/// The halves of every field meet at the midline, and every mark lies where it can be drawn.
static void marks_lie_on_the_field(void) {
    for (int i = 0; i < bw_field_count(); i++) {
        const bw_field *f = bw_field_at(i);
        CHECK_NEAR(f->end_line + f->midline, f->length / 2, 1e-12);
        CHECK(f->crease < f->end_line && f->crease < f->width / 2);
        CHECK(f->goal / 2 < f->crease && f->goal_depth < f->crease);
        CHECK(f->restraining < f->midline);
        CHECK(f->box_half < f->width / 2 && f->alley_half < f->width / 2);
        CHECK(f->goal_mouth == 0 || (f->goal_mouth > f->goal / 2 && f->goal_mouth < f->crease));
        CHECK((f->arc == 0) == (f->fan == 0));
        CHECK(f->arc == 0 || (f->crease < f->arc && f->arc < f->fan && f->fan < f->midline));
    }
}

/// A code that prints no figure must not look as if it did.
static void what_is_assumed_says_so(void) {
    static const char *const assumed[] = {"boys-nfhs-unified", "men-wl", "sixes", "youth-small"};
    for (int i = 0; i < 4; i++)
        CHECK(says(bw_field_find(assumed[i])->source, "assumed"));
}

static void boundary_lines_are_on_the_field(void) {
    for (int i = 0; i < bw_field_count(); i++) {
        const bw_field *f = bw_field_at(i);
        const double half = f->width / 2;
        CHECK(bw_field_contains(f, bw_v(0, 0)));
        CHECK(bw_field_contains(f, bw_v(half, f->midline)));
        CHECK(bw_field_contains(f, bw_v(-half, -f->end_line)));
        CHECK(!bw_field_contains(f, bw_v(nextafter(half, 99), 0)));
        CHECK(!bw_field_contains(f, bw_v(-nextafter(half, 99), 0)));
        CHECK(!bw_field_contains(f, bw_v(0, nextafter(f->midline, 99))));
        CHECK(!bw_field_contains(f, bw_v(0, -nextafter(f->end_line, 99))));
        CHECK(!bw_field_contains(f, bw_v(NAN, 0)));
        CHECK(!bw_field_contains(f, bw_v(0, NAN)));
        CHECK(!bw_field_contains(f, bw_v(0, INFINITY)));
    }
}

/// Clamping lands on the field, leaves what is on it alone, is the nearest of random points on it,
/// and mirrors exactly.
static void clamping(void) {
    unsigned long long seed = 31;
    for (int i = 0; i < 20000; i++) {
        const bw_field *f = bw_field_at(i % bw_field_count());
        const double x = test_uniform(&seed, -80, 80);
        const double y = test_uniform(&seed, -80, 80);
        const bw_vec p = bw_v(x, y);
        const bw_vec q = bw_field_clamp(f, p);
        CHECK(bw_field_contains(f, q));
        if (bw_field_contains(f, p)) CHECK(q.x == p.x && q.y == p.y);
        const double other_x = test_uniform(&seed, -0.5, 0.5) * f->width;
        const double other_y = test_uniform(&seed, -f->end_line, f->midline);
        CHECK(bw_distance(p, q) <= bw_distance(p, bw_v(other_x, other_y)));
        const bw_vec mirror = bw_field_clamp(f, bw_mirror(p));
        CHECK_SAME(mirror.x, -q.x);
        CHECK_SAME(mirror.y, q.y);
    }
}

int main(int argc, char **argv) {
    RUN(every_profile_is_complete);
    RUN(identifiers_find_their_profile);
    RUN(marks_lie_on_the_field);
    RUN(what_is_assumed_says_so);
    RUN(boundary_lines_are_on_the_field);
    RUN(clamping);
    return test_report(argc, argv);
}
