/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a player is told about his answers: which way he was off, why he belongs there, how he leans.
#include "core/shape.h"
#include "harness.h"
#include "scheme/caption.h"
#include "scheme/fresh.h"
#include "scheme/quiz_words.h"
#include <string.h>

static const double yd = BW_METRES_PER_YARD;

static bw_scheme scheme;
static char room[600];

static bw_text fresh_text(void) {
    room[0] = '\0';
    return bw_text_in(room, sizeof room);
}

static const char *offset(double x, double y) {
    bw_text out = fresh_text();
    bw_say_offset(BW_YARDS, bw_v(x * yd, y * yd), &out);
    return room;
}

static void the_way_off_is_told_by_its_sides(void) {
    CHECK_TEXT(offset(0.4, -0.4), "");
    CHECK_TEXT(offset(2, 0.4), "2.0 yd too far right");
    CHECK_TEXT(offset(-2, 0), "2.0 yd too far left");
    CHECK_TEXT(offset(0, 3), "3.0 yd too far out");
    CHECK_TEXT(offset(0, -3), "3.0 yd too deep");
    CHECK_TEXT(offset(-2, 3), "2.0 yd too far left and 3.0 yd too far out");
}

static const char *mark(bw_mark_given given) {
    bw_text out = fresh_text();
    bw_say_mark(&scheme, 1, &given, &out);
    return room;
}

static void an_answer_is_told_what_it_was(void) {
    const bw_vec off = bw_v(2 * yd, 0);
    CHECK(strstr(mark((bw_mark_given){.verdict = BW_VERDICT_RIGHT, .distance = yd, .mate = -1}),
                 "1.0 yd"));
    CHECK(strstr(mark((bw_mark_given){.verdict = BW_VERDICT_SWAP, .mate = 2}),
                 scheme.stages[1].spots[2].name));
    char near[sizeof room];
    bw_mark_given given = {
        .verdict = BW_VERDICT_NEAR, .error = off, .distance = 2 * yd, .mate = -1};
    strcpy(near, mark(given));
    CHECK(strstr(near, "2.0 yd too far right"));
    given.verdict = BW_VERDICT_OFF;
    CHECK(strstr(mark(given), "2.0 yd too far right"));
    CHECK(strcmp(near, room) != 0);
    // Too little aside and too little along to name a side: how far it is all the same.
    given.error = bw_v(0.4 * yd, 0.4 * yd);
    given.distance = 0.6 * yd;
    CHECK(strstr(mark(given), "0.6 yd off"));
}

static const char *bias(const bw_tally *tally) {
    bw_text out = fresh_text();
    bw_say_bias(BW_YARDS, tally, &out);
    return room;
}

static void a_lean_is_told_after_three_places(void) {
    bw_tally tally = {0};
    for (int i = 0; i < BW_TRIES_FOR_BIAS; i++) {
        CHECK(!strstr(bias(&tally), "yd"));
        bw_tally_add(&tally, bw_v(0, -2 * yd));
    }
    CHECK(strstr(bias(&tally), "2.0 yd too deep"));
    // Two answers off to either side are no lean, but they scatter.
    tally = (bw_tally){0};
    for (int i = 0; i < 4; i++)
        bw_tally_add(&tally, bw_v((i & 1 ? 2 : -2) * yd, 0));
    CHECK(!strstr(bias(&tally), "too") && strstr(room, "yd"));
}

static const char *reason(int stage, int spot, const bw_station *station, int landmark) {
    bw_text out = fresh_text();
    bw_say_reason(&scheme, stage, spot, station, landmark, &out);
    return room;
}

/// One sentence for each duty of a stage, no two alike; and a place set by hand has a reason of its own.
static void every_duty_has_its_reason(void) {
    for (int s = 0; s < scheme.stage_count; s++) {
        char said[BW_DUTY_COUNT][sizeof room] = {{0}};
        bw_plan plan;
        bw_plan_build(&scheme, s, &plan);
        for (int l = 0; l < scheme.landmark_count; l++) {
            bw_station station[BW_MAX_SPOTS];
            bw_where(&plan, scheme.landmarks[l].at, NULL, 0, station);
            for (int k = 0; k < plan.spots; k++) {
                const char *why = reason(s, k, &station[k], l);
                CHECK(strchr(why, '.') == why + strlen(why) - 1);
                char *before = said[station[k].duty];
                CHECK(!before[0] || strcmp(before, why) == 0);
                strcpy(before, why);
            }
        }
        for (int a = 0; a < BW_DUTY_COUNT; a++) {
            for (int b = 0; b < a; b++)
                CHECK(!said[a][0] || strcmp(said[a], said[b]) != 0);
        }
    }
    char ruled[sizeof room];
    const bw_station here = {.duty = BW_DUTY_BALL};
    strcpy(ruled, reason(1, 0, &here, 0));
    static bw_scheme pinned;
    pinned = scheme;
    scheme.stages[1].pinned[0][0] = 1;
    CHECK(strcmp(reason(1, 0, &here, 0), ruled) != 0);
    scheme = pinned;
}

static void an_answer_names_place_and_job(void) {
    bw_plan plan;
    bw_plan_build(&scheme, 1, &plan);
    bw_station station[BW_MAX_SPOTS];
    const bw_vec ball = scheme.landmarks[0].at;
    bw_where(&plan, ball, NULL, 0, station);
    for (int s = 0; s < plan.spots; s++) {
        char place[80], job[300];
        bw_text t = bw_text_in(place, sizeof place);
        bw_say_place(scheme.units, station[s].at, &t);
        t = bw_text_in(job, sizeof job);
        bw_say_your_job(&scheme, 1, s, &station[s], ball, &t);
        bw_text out = fresh_text();
        bw_answer_where(&scheme, 1, s, &station[s], ball, &out);
        CHECK(strstr(room, place) && strstr(room, job + 1)); // the job begins with a capital
        out = fresh_text();
        bw_ask_where(&scheme, 1, s, ball, &out);
        CHECK(strstr(room, scheme.stages[1].spots[s].name) && strchr(room, '?'));
    }
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    RUN(the_way_off_is_told_by_its_sides);
    RUN(an_answer_is_told_what_it_was);
    RUN(a_lean_is_told_after_three_places);
    RUN(every_duty_has_its_reason);
    RUN(an_answer_names_place_and_job);
    return test_report(argc, argv);
}
