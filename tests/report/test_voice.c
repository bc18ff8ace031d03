/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A test's whole text, for a women's field and one of the United States, and this room's catalogue.
#include "core/field.h"
#include "report/battery.h"
#include "report/test_text.h"
#include "scheme/fresh.h"
#include "trial/standard.h"
#include "voice.h"

static const listed catalogue[] = {
#define BW_SENTENCE(id, text) {#id, text},
#include "report/catalogue.def"
};

static bw_scheme scheme;
static bw_ground ground;
static bw_trial trials[2];
static char text[BW_REPORT_BYTES];

static void every_sentence_suits_every_voice(void) {
    check_catalogue(catalogue, BW_COUNT(catalogue));
}

static void check_text(const char *field) {
    const bw_field *f = bw_field_find(field);
    bw_scheme_fresh((int)(f - bw_field_at(0)), 3, &scheme);
    bw_copy(scheme.landmarks[0].name, sizeof scheme.landmarks[0].name, "up top");
    bw_ground_build(&scheme, bw_level_at(scheme.level), &ground, NULL);
    for (int i = 0; i < 2; i++) {
        bw_trial *t = &trials[i];
        t->def = bw_standard_def(&scheme, 6, 4, "2-2-2", i == 0 ? "top" : "x");
        t->effort = bw_effort_default();
        t->effort.curve.search.depth = 2;
        t->effort.curve.typical.rollouts = 1;
        t->effort.with_weak = i == 0;
    }
    bw_battery battery = {.ground = &ground, .trials = trials, .count = 2};
    CHECK_INT(bw_battery_run(&battery), BW_OK);
    for (int i = 0; i < 2; i++) {
        const bw_report report = {
            .ground = &ground, .headline = &trials[i], .standard = trials, .standard_count = 2};
        bw_text t = bw_text_in(text, sizeof text);
        bw_report_text(&report, &t);
        CHECK(t.used > 1000 && !t.full);
        check_suits(text, bw_voice_of(&scheme), field);
    }
}

static void the_text_of_a_test_suits_the_field(void) {
    check_text("women");
    check_text("men-ncaa");
}

int main(int argc, char **argv) {
    RUN(every_sentence_suits_every_voice);
    RUN(the_text_of_a_test_suits_the_field);
    return test_report(argc, argv);
}
