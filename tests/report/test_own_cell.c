/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's chart and words: the mirrored scheme's are the mirror image, mark for mark.
#include "core/shape.h"
#include "harness.h"
#include "report/own_cell.h"
#include "tests/draw/pages.h"

static bw_scheme terns, mirrored;
static double memory[2][BW_INK_PAGE_BYTES / sizeof(double)];

static const double wide = 251;

/// Left for right and right for left.
static void exchange(char *text) {
    char out[256] = "";
    size_t n = 0;
    for (const char *p = text; *p && n + 6 < sizeof out;) {
        if (strncmp(p, "left", 4) == 0) {
            n += (size_t)sprintf(out + n, "right");
            p += 4;
        } else if (strncmp(p, "right", 5) == 0) {
            n += (size_t)sprintf(out + n, "left");
            p += 5;
        } else {
            out[n++] = *p++;
        }
    }
    out[n] = '\0';
    strcpy(text, out);
}

static bw_ink *draw(const bw_own_cell *cell, int which) {
    bw_ink *ink = bw_ink_in(memory[which], sizeof memory[which]);
    bw_ink_page(ink, 612, 792);
    bw_own_cell_put(ink, cell, 0, 0, wide);
    return ink;
}

/// Whether `ink` has a path of this kind in this box.
static bool has_path(const bw_ink *ink, const bw_ink_item *like, bw_box box) {
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != like->kind || i->role != like->role || i->size != like->size) continue;
        if (i->numbers != like->numbers) continue;
        const bw_box b = path_box(i);
        if (fabs(b.x - box.x) + fabs(b.y - box.y) + fabs(b.width - box.width) +
                fabs(b.height - box.height) <
            1e-6)
            return true;
    }
    return false;
}

/// Middle of the chart: of its paper, the first thing drawn.
static double middle_of(const bw_ink *ink) {
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != BW_INK_FILL) continue;
        const bw_box b = path_box(i);
        return b.x + b.width / 2;
    }
    return 0;
}

static void check_cell(int stage, int spot, int landmark) {
    bw_plan plan;
    bw_own_cell one, two;
    bw_plan_build(&terns, stage, &plan);
    bw_own_cell_fill(&terns, &plan, stage, spot, landmark, &one);
    bw_plan_build(&mirrored, stage, &plan);
    bw_own_cell_fill(&mirrored, &plan, stage, spot, landmark, &two);
    CHECK_TEXT(one.job, two.job);
    exchange(two.place);
    CHECK_TEXT(one.place, two.place);
    CHECK_SAME(one.ball.x, -two.ball.x);

    const bw_ink *a = draw(&one, 0), *b = draw(&two, 1);
    const double middle = middle_of(a);
    CHECK_INT(a->items, b->items);
    for (const bw_ink_item *i = bw_ink_first(a); i; i = bw_ink_next(a, i)) {
        if (i->kind != BW_INK_FILL && i->kind != BW_INK_STROKE) continue;
        // The border's ladder and the graticule count from one side: decoration.
        if (i->role == BW_ROLE_GRID || (i->kind == BW_INK_FILL && i->role == BW_ROLE_LINE))
            continue;
        bw_box box = path_box(i);
        box.x = 2 * middle - box.x - box.width;
        const bool found = has_path(b, i, box);
        CHECK(found);
        if (!found)
            fprintf(stderr, "no image of %s at %.2f %.2f, %.2f x %.2f\n",
                    bw_role_name((bw_role)i->role), box.x, box.y, box.width, box.height);
    }
}

static void the_mirrored_schemes_cell_is_the_mirror_image(void) {
    bw_scheme_mirror(&terns, &mirrored);
    for (int s = 0; s < terns.stage_count; s++) {
        for (int i = 0; i < terns.stages[s].defenders; i++) {
            for (int l = 0; l < terns.landmark_count; l++)
                check_cell(s, i, l);
        }
    }
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) RUN(the_mirrored_schemes_cell_is_the_mirror_image);
    return test_report(argc, argv);
}
