/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The starting scheme is whole and mirrored on every field, and a file of it reads the same.
#include "harness.h"
#include "invariants.h"
#include "scheme/fresh.h"
#include "scheme_text.h"

static bw_scheme scheme, again;
static bw_error error;

static void whole_on_every_field(void) {
    for (int field = 0; field < bw_field_count(); field++) {
        for (int level = 0; level < bw_level_count(); level++) {
            bw_scheme_fresh(field, level, &scheme);
            const char *fault = scheme_fault(&scheme);
            CHECK_TEXT(fault ? fault : "whole", "whole");
            CHECK_INT(scheme.field, field);
            CHECK_INT(scheme.level, level);
            CHECK_INT(scheme.stage_count, 4);
            for (int g = 0; g < scheme.stage_count; g++)
                CHECK_INT(scheme.stages[g].defenders, 3 + g);
        }
    }
}

/// Every landmark and spot has its exact image: nobody starts with a strong side.
static void everyone_has_a_twin(void) {
    for (int field = 0; field < bw_field_count(); field++) {
        bw_scheme_fresh(field, 0, &scheme);
        for (int i = 0; i < scheme.landmark_count; i++)
            CHECK(scheme.landmarks[i].twin >= 0);
        for (int g = 0; g < scheme.stage_count; g++) {
            for (int s = 0; s < scheme.stages[g].defenders; s++)
                CHECK(scheme.stages[g].spots[s].twin >= 0);
        }
    }
}

/// Low pair 2 to 3 yd above the goal line and 3 to 4 yd outside, top pair about 13 yd from the goal
/// and 5 to 6 yd out: common practice, no source. Three-man triangle, point about 12 yd above the goal
/// line, backs about 2 yd above it: T. Hallissey, "Fast Break Defense", 2016.
static void homes_are_common_practice(void) {
    const double yd = BW_METRES_PER_YARD;
    bw_scheme_fresh(0, 0, &scheme);
    const bw_stage *four = &scheme.stages[1], *three = &scheme.stages[0];
    const bw_vec low = four->spots[bw_stage_spot(four, "LR")].home;
    const bw_vec top = four->spots[bw_stage_spot(four, "TR")].home;
    CHECK(low.y >= 2 * yd && low.y <= 3 * yd && low.x >= 3 * yd && low.x <= 4 * yd);
    CHECK_NEAR(top.y, 13 * yd, 1 * yd);
    CHECK(top.x >= 5 * yd && top.x <= 6 * yd);
    CHECK_NEAR(three->spots[bw_stage_spot(three, "P")].home.y, 12 * yd, 0.5 * yd);
    CHECK_NEAR(three->spots[bw_stage_spot(three, "BR")].home.y, 2 * yd, 0.5 * yd);
}

static void one_stage_alone(void) {
    static const char *const shapes[] = {"1-2", "2-2", "2-1-2", "match-up"};
    for (int i = 0; i < BW_COUNT(shapes); i++) {
        bw_scheme_fresh(0, 0, &scheme);
        CHECK_INT(bw_scheme_only(&scheme, shapes[i]), BW_OK);
        CHECK_INT(scheme.stage_count, 1);
        CHECK_TEXT(scheme.stages[0].shape, shapes[i]);
        const char *fault = scheme_fault(&scheme);
        CHECK_TEXT(fault ? fault : "whole", "whole");
        char *text = text_change(text_of_scheme(&scheme), "", "");
        CHECK_INT(bw_document_parse(text, strlen(text), &again, &error), BW_OK);
        CHECK(text_same(text_of_scheme(&again), text));
        free(text);
    }
    CHECK_INT(bw_scheme_only(&scheme, "3-3"), BW_NOT_FOUND);
}

/// The file that people and the JSON Schema's test see is what the program writes.
static void the_kept_file_is_fresh(void) {
    size_t length;
    char *kept = text_of_file("tests/scheme/valid/fresh.json", &length);
    bw_scheme_fresh(0, bw_level_find("high-school") - bw_level_at(0), &scheme);
    CHECK(text_same(text_of_scheme(&scheme), kept));
    free(kept);
}

int main(int argc, char **argv) {
    RUN(whole_on_every_field);
    RUN(everyone_has_a_twin);
    RUN(homes_are_common_practice);
    RUN(one_stage_alone);
    RUN(the_kept_file_is_fresh);
    return test_report(argc, argv);
}
