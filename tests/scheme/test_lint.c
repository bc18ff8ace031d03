/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The lint: silent on common practice, and each planted fault found in its place.
#include "core/ball.h"
#include "core/field.h"
#include "core/level.h"
#include "core/motion.h"
#include "core/text.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "scheme/lint.h"
#include <ctype.h>
#include <stdlib.h>

static const double yd = BW_METRES_PER_YARD;

enum { HIGH_SCHOOL = 3 };

static bw_finding found[BW_MAX_FINDINGS];
static int found_count;

static bw_scheme *fresh(void) {
    static bw_scheme scheme;
    bw_scheme_fresh(0, HIGH_SCHOOL, &scheme);
    return &scheme;
}

static void lint(const bw_scheme *scheme) {
    found_count = bw_scheme_lint(scheme, found, BW_MAX_FINDINGS);
    CHECK(found_count <= BW_MAX_FINDINGS);
}

static int count(bw_severity severity) {
    int n = 0;
    for (int i = 0; i < found_count; i++)
        n += found[i].severity == severity;
    return n;
}

/// The finding whose sentence has these words, or NULL.
static const bw_finding *with(const char *words) {
    for (int i = 0; i < found_count; i++) {
        if (strstr(found[i].message, words)) return &found[i];
    }
    return NULL;
}

static void expect(const char *words, bw_severity severity, const char *pointer) {
    const bw_finding *f = with(words);
    if (!f) fprintf(stderr, "no finding says \"%s\"\n", words);
    CHECK(f != NULL);
    if (!f) return;
    CHECK_INT(f->severity, severity);
    CHECK_TEXT(f->pointer, pointer);
}

static void pin(bw_scheme *scheme, int stage, const char *landmark, int spot, double x, double y) {
    int l = bw_scheme_landmark(scheme, landmark);
    CHECK(l >= 0);
    if (l < 0) return;
    scheme->stages[stage].pinned[l][spot] = 1;
    scheme->stages[stage].pins[l][spot] = bw_v(x * yd, y * yd);
}

/// The 2-2, on which most faults are planted.
static int box(const bw_scheme *scheme) {
    int stage = bw_scheme_stage(scheme, 4);
    CHECK(stage >= 0);
    return stage;
}

static const char *pointer_of(int stage, const char *rest) {
    static char room[BW_POINTER_SIZE];
    snprintf(room, sizeof room, "/stages/%d%s", stage, rest);
    return room;
}

static void common_practice_has_no_errors(void) {
    for (int level = 0; level < bw_level_count(); level++) {
        static bw_scheme scheme;
        bw_scheme_fresh(0, level, &scheme);
        lint(&scheme);
        CHECK_INT(count(BW_ERROR), 0);
        CHECK(count(BW_WARNING) <= 6);
    }
    lint(fresh());
    CHECK(count(BW_WARNING) <= 2);
}

static void calls_missing_or_said_twice(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    scheme->stages[g].spots[2].call[0] = '\0';
    bw_copy(scheme->stages[g].spots[0].call, BW_NAME_SIZE, "low");
    bw_copy(scheme->stages[g].spots[1].call, BW_NAME_SIZE, "Low");
    lint(scheme);
    expect("has no call, so nobody hears", BW_WARNING, pointer_of(g, "/spots/2/call"));
    expect("both call \"Low\"", BW_WARNING, pointer_of(g, "/spots/1/call"));

    scheme = fresh();
    scheme->stages[0].call[0] = '\0';
    bw_copy(scheme->stages[g + 1].call, BW_NAME_SIZE, scheme->stages[g].call);
    lint(scheme);
    expect("has no call, so nothing tells", BW_NOTE, "/stages/0/call");
    expect("are both called", BW_WARNING, pointer_of(g + 1, "/call"));

    // Nobody hears a space, and a unit's word is no man's.
    scheme = fresh();
    bw_copy(scheme->stages[g].spots[0].call, BW_NAME_SIZE, "  ");
    bw_copy(scheme->stages[g].spots[1].call, BW_NAME_SIZE, "low side");
    bw_copy(scheme->stages[g].spots[2].call, BW_NAME_SIZE, "Lowside ");
    bw_copy(scheme->stages[g].spots[3].call, BW_NAME_SIZE, scheme->stages[g].call);
    lint(scheme);
    expect("has no call, so nobody hears", BW_WARNING, pointer_of(g, "/spots/0/call"));
    expect("both call \"Lowside", BW_WARNING, pointer_of(g, "/spots/2/call"));
    expect("which is the word that calls its stage", BW_WARNING, pointer_of(g, "/spots/3/call"));
}

static void men_off_the_field_or_in_the_goal_are_errors(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    scheme->stages[g].spots[2].derived = scheme->stages[g].spots[3].derived = 0;
    scheme->stages[g].spots[2].home = bw_v(-100, 5);
    scheme->stages[g].spots[3].home = bw_v(0, -0.5);
    lint(scheme);
    expect("is off the field.", BW_ERROR, pointer_of(g, "/spots/2/home"));
    expect("is inside the goal.", BW_ERROR, pointer_of(g, "/spots/3/home"));
}

static void pins_well_inside_the_crease_are_doubtful(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    pin(scheme, g, "top", 1, 0.5, 1.5);
    lint(scheme);
    char place[64];
    snprintf(place, sizeof place, "/pins/top/%s", scheme->stages[g].spots[1].id);
    expect("stands well inside the crease", BW_WARNING, pointer_of(g, place));
}

static void a_step_over_the_crease_is_no_fault(void) {
    bw_scheme *scheme = fresh();
    double radius = bw_field_at(scheme->field)->crease;
    pin(scheme, box(scheme), "top", 1, 0, (radius - 0.3) / yd);
    lint(scheme);
    CHECK(with("well inside the crease") == NULL);
}

static void nobody_given_the_crease(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    scheme->stages[g].rule.crease = BW_CREASE_NONE;
    lint(scheme);
    expect("nobody is given the crease", BW_WARNING, pointer_of(g, "/rule/crease"));
}

static void nobody_near_the_crease(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    const double x[4] = {-16, 16, -14, 14}, y[4] = {4, 4, 16, 16};
    for (int s = 0; s < 4; s++)
        pin(scheme, g, "top", s, x[s], y[s]);
    lint(scheme);
    CHECK(with("Nobody has the crease with the ball at top") != NULL);
}

/// The nearest man so far to the side of the crease's front, m, and the others farther off; whether
/// that is found too far.
static bool too_far_from_the_crease(double metres) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    pin(scheme, g, "top", 0, -metres / yd, 4);
    pin(scheme, g, "top", 1, metres / yd, 4);
    pin(scheme, g, "top", 2, -14, 16);
    pin(scheme, g, "top", 3, 14, 16);
    lint(scheme);
    return with("Nobody has the crease with the ball at top") != NULL;
}

static void a_man_has_the_crease_when_his_stick_gets_there(void) {
    const bw_level *level = bw_level_at(HIGH_SCHOOL);
    const bw_scheme *scheme = fresh();
    const bw_vec ball = scheme->landmarks[bw_scheme_landmark(scheme, "top")].at;
    const double flight =
        bw_ball_time(level->pass_speed, BW_BALL_DRAG, bw_distance(ball, bw_v(0, 4 * yd)));
    const double time = level->release + flight + level->shoot - bw_reaction(level, 6.0 / 4);
    const double legs = bw_reach(level->defender, time), stick = level->stick_reach;
    CHECK(legs > 1 && stick > 0.5);
    CHECK(!too_far_from_the_crease(legs));
    CHECK(!too_far_from_the_crease(legs + 0.5 * stick));
    CHECK(!too_far_from_the_crease(legs + 0.99 * stick));
    CHECK(too_far_from_the_crease(legs + stick + 0.15)); // a tenth more is told as equal
}

static void nobody_on_the_ball(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    int top = bw_scheme_landmark(scheme, "top");
    const double x[4] = {-3, 3, -5, 5}, y[4] = {3, 3, 6, 6};
    for (int s = 0; s < 4; s++)
        pin(scheme, g, "top", s, x[s], y[s]);
    lint(scheme);
    const bw_finding *f = with("Nobody is on the ball");
    bool inside = bw_length(scheme->landmarks[top].at) <=
                  scheme->stages[g].rule.pickup + scheme->stages[g].rule.cushion + 1e-9;
    CHECK(inside);
    CHECK(f != NULL);
    if (f) CHECK(strstr(f->message, "yd away") != NULL);
}

/// At the goal-line extended the ball is met close in, yet it is well inside the pickup line.
static void nobody_on_a_low_ball(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    lint(scheme);
    CHECK(with("Nobody is on the ball") == NULL);
    pin(scheme, g, "gr", 1, 3, 3);
    lint(scheme);
    CHECK(with("Nobody is on the ball") != NULL);
}

static void two_men_on_one_job(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    pin(scheme, g, "top", 0, -4, 4);
    pin(scheme, g, "top", 1, -4, 5);
    lint(scheme);
    CHECK(with("do one man's work, 1.0 yd apart with the ball at top") != NULL);

    scheme = fresh();
    bw_vec top = scheme->landmarks[bw_scheme_landmark(scheme, "top")].at;
    pin(scheme, g, "top", 2, top.x / yd - 1, top.y / yd - 1.5);
    pin(scheme, g, "top", 3, top.x / yd + 1, top.y / yd - 1.5);
    lint(scheme);
    CHECK(with("are both on the ball, 2.0 yd apart") != NULL);
}

static void a_gap_too_wide_for_two_men(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    const double x[4] = {-14, 14, -12, 12}, y[4] = {1, 1, 9, 9};
    for (int s = 0; s < 4; s++)
        pin(scheme, g, "top", s, x[s], y[s]);
    lint(scheme);
    const bw_finding *f = with("\" is 24.0 yd with the ball at top");
    CHECK(f != NULL);
    if (!f) return;
    CHECK(strstr(f->message, "the two can close") != NULL);
}

/// The number that stands after `words`, or -1.
static double figure_after(const char *message, const char *words) {
    const char *at = strstr(message, words);
    return at ? strtod(at + strlen(words), NULL) : -1;
}

/// A fault is never told with two figures that read the same.
static void what_is_asked_reads_as_more_than_what_is_had(void) {
    int told = 0;
    for (int i = 0; i < 400; i++) {
        bw_scheme *scheme = fresh();
        int g = box(scheme);
        pin(scheme, g, "gr", 1, 3 - 0.02 * i, 3);
        pin(scheme, g, "top", 0, -3 - 0.03 * i, 4);
        lint(scheme);
        for (int k = 0; k < found_count; k++) {
            double needs = figure_after(found[k].message, " needs ");
            if (needs < 0) continue;
            told++;
            CHECK(needs > figure_after(found[k].message, " and has "));
        }
    }
    CHECK(told > 0);
}

/// Two landmarks next to each other, and one man pinned far apart at them.
static void a_rotation_nobody_can_run(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    pin(scheme, g, "top", 0, -12, 2);
    pin(scheme, g, "tr", 0, 12, 12);
    lint(scheme);
    const bw_finding *f = with("When the ball is passed from top");
    CHECK(f != NULL);
    if (!f) return;
    CHECK(strstr(f->message, scheme->stages[g].spots[0].name) != NULL);
    CHECK(strstr(f->message, " needs ") != NULL);
    char had[64];
    bw_text text = bw_text_in(had, sizeof had);
    bw_put(&text, "and has ");
    bw_put_fixed(&text, bw_level_at(HIGH_SCHOOL)->defender.vmax / yd, 1);
    bw_put(&text, " yd/s");
    CHECK(strstr(f->message, had) != NULL);
}

/// Pins that throw a man from side to side while the ball is carried a few yards and nobody changes
/// his duty.
static void a_carry_that_outruns_a_man(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    bw_landmark *near = &scheme->landmarks[scheme->landmark_count++];
    *near = (bw_landmark){.id = "deep", .name = "deep top", .twin = scheme->landmark_count - 1};
    near->at = bw_add(scheme->landmarks[bw_scheme_landmark(scheme, "top")].at, bw_v(0, 4 * yd));
    pin(scheme, g, "top", 0, -14, 2);
    pin(scheme, g, "deep", 0, -3, 10);
    lint(scheme);
    const bw_finding *f = with("When the ball is carried from ");
    CHECK(f != NULL);
    if (f) CHECK(strstr(f->message, scheme->stages[g].spots[0].name) != NULL);
}

static void lengths_follow_the_unit(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    pin(scheme, g, "top", 0, -4, 4);
    pin(scheme, g, "top", 1, -4, 5);
    scheme->units = BW_METRES;
    lint(scheme);
    CHECK(with("0.9 m apart") != NULL);
    for (int i = 0; i < found_count; i++)
        CHECK(strstr(found[i].message, " yd") == NULL);
}

static void a_derived_pin_points_at_the_one_given(void) {
    bw_scheme *scheme = fresh();
    int g = box(scheme);
    int right = bw_scheme_landmark(scheme, "tr");
    CHECK(right >= 0);
    if (right < 0) return;
    int left = scheme->landmarks[right].twin;
    CHECK(left >= 0);
    for (int s = 0; s < 2; s++) {
        int twin = scheme->stages[g].spots[s].twin;
        bw_vec at = bw_v(-4 * yd + (s ? 0.5 : 0), 5 * yd);
        scheme->stages[g].pinned[right][s] = 1;
        scheme->stages[g].pins[right][s] = at;
        scheme->stages[g].pinned[left][twin] = 2;
        scheme->stages[g].pins[left][twin] = bw_mirror(at);
    }
    lint(scheme);
    const bw_finding *f = with("do one man's work");
    CHECK(f != NULL);
    if (!f) return;
    char place[64];
    snprintf(place, sizeof place, "/stages/%d/pins/tr/", g);
    CHECK(strncmp(f->pointer, place, strlen(place)) == 0);
    CHECK(strstr(f->message, "; the other side is the same.") != NULL);
    for (int i = 0, n = 0; i < found_count; i++) {
        n += strstr(found[i].message, "do one man's work") != NULL;
        CHECK(n <= 1);
    }
}

static void late_men_need_something_to_take(void) {
    bw_scheme *scheme = fresh();
    scheme->late_count = 1;
    scheme->late[0].take_count = 1;
    bw_copy(scheme->late[0].takes[0], BW_ID_SIZE, "ZZZ");
    lint(scheme);
    expect("takes no spot that it has", BW_WARNING, "/late/0/takes");
}

static void captions_are_short_and_plain(void) {
    static const char *const fine[] = {"", "Wait. Let him come to you.",
                                       "Nobody chases. Port low and starboard low hold.",
                                       "Message the sagebrush: sage, saga, transit."};
    bw_scheme *scheme = fresh();
    scheme->lesson_count = 1;
    bw_lesson *lesson = &scheme->lessons[0];
    *lesson = (bw_lesson){.name = "Walk", .defenders = 4, .stop_count = 2};
    lint(scheme);
    const int before = found_count;
    for (int i = 0; i < BW_COUNT(fine); i++) {
        bw_copy(lesson->stops[1].caption, sizeof lesson->stops[1].caption, fine[i]);
        lint(scheme);
        CHECK_INT(found_count, before);
    }
    bw_copy(lesson->stops[1].caption, sizeof lesson->stops[1].caption,
            "Now the low left man has to go all the way across to the other side at once.");
    lint(scheme);
    expect("has 18 words in one sentence; 14", BW_NOTE, "/lessons/0/stops/1/caption");
    bw_copy(lesson->stops[0].caption, sizeof lesson->stops[0].caption,
            "One two three four five. One two three four five. One two three four five. One two "
            "three four five. One two three four five. One two three four.");
    lint(scheme);
    expect("has 29 words; 28", BW_NOTE, "/lessons/0/stops/0/caption");
    lesson->stops[0].caption[0] = '\0';
    bw_copy(lesson->stops[1].caption, sizeof lesson->stops[1].caption,
            "Low left, sagging, is free.");
    lint(scheme);
    expect("a word that new players do not know", BW_NOTE, "/lessons/0/stops/1/caption");
    bw_copy(lesson->stops[1].caption, sizeof lesson->stops[1].caption, "ROTATE now.");
    lint(scheme);
    expect("a word that new players do not know", BW_NOTE, "/lessons/0/stops/1/caption");
    CHECK(strstr(with("do not know")->remedy, "move") != NULL);
}

static void landmarks_on_top_of_each_other(void) {
    bw_scheme *scheme = fresh();
    int l = scheme->landmark_count++;
    scheme->landmarks[l] = (bw_landmark){.id = "again", .name = "again", .twin = -1};
    scheme->landmarks[l].at = bw_add(scheme->landmarks[0].at, bw_v(0.3, 0));
    lint(scheme);
    char place[64];
    snprintf(place, sizeof place, "/landmarks/%d", l);
    expect("too near to tell one from the other", BW_WARNING, place);
}

/// A scheme with many faults.
static const bw_scheme *faulty(unsigned long long seed) {
    bw_scheme *scheme = fresh();
    unsigned long long random = seed;
    for (int g = 0; g < scheme->stage_count; g++) {
        bw_stage *stage = &scheme->stages[g];
        for (int k = 0; k < 10; k++) {
            int l = (int)(test_random(&random) % (unsigned)scheme->landmark_count);
            int s = (int)(test_random(&random) % (unsigned)stage->defenders);
            stage->pinned[l][s] = 1;
            stage->pins[l][s] = bw_v(test_uniform(&random, -12, 12), test_uniform(&random, 0, 14));
        }
        stage->spots[0].call[0] = '\0';
    }
    return scheme;
}

static void sentences_are_whole(void) {
    for (unsigned seed = 1; seed <= 30; seed++) {
        lint(faulty(seed));
        CHECK(found_count > 4);
        for (int i = 0; i < found_count; i++) {
            const char *texts[] = {found[i].message, found[i].remedy};
            for (int k = 0; k < 2; k++) {
                size_t n = strlen(texts[k]);
                CHECK(n > 10 && n < BW_MESSAGE_SIZE - 1);
                CHECK(isupper((unsigned char)texts[k][0]) || isdigit((unsigned char)texts[k][0]));
                CHECK(n > 0 && texts[k][n - 1] == '.');
                CHECK(strstr(texts[k], "  ") == NULL);
                CHECK(strstr(texts[k], "inf") == NULL && strstr(texts[k], "nan") == NULL);
            }
            CHECK(found[i].pointer[0] == '/');
        }
    }
}

static void room_only_limits_what_is_kept(void) {
    const bw_scheme *scheme = faulty(77);
    lint(scheme);
    for (int room = 0; room < found_count; room++) {
        static bw_finding few[BW_MAX_FINDINGS];
        CHECK_INT(bw_scheme_lint(scheme, few, room), found_count);
        for (int i = 0; i < room; i++)
            CHECK_TEXT(few[i].message, found[i].message);
    }
}

static void the_mirror_image_has_as_many_faults(void) {
    for (unsigned seed = 1; seed <= 30; seed++) {
        const bw_scheme *scheme = faulty(seed);
        static bw_scheme image;
        bw_scheme_mirror(scheme, &image);
        lint(scheme);
        int all = found_count, warnings = count(BW_WARNING);
        lint(&image);
        CHECK_INT(found_count, all);
        CHECK_INT(count(BW_WARNING), warnings);
    }
}

int main(int argc, char **argv) {
    RUN(common_practice_has_no_errors);
    RUN(calls_missing_or_said_twice);
    RUN(men_off_the_field_or_in_the_goal_are_errors);
    RUN(pins_well_inside_the_crease_are_doubtful);
    RUN(a_step_over_the_crease_is_no_fault);
    RUN(nobody_given_the_crease);
    RUN(nobody_near_the_crease);
    RUN(a_man_has_the_crease_when_his_stick_gets_there);
    RUN(nobody_on_the_ball);
    RUN(nobody_on_a_low_ball);
    RUN(two_men_on_one_job);
    RUN(a_gap_too_wide_for_two_men);
    RUN(what_is_asked_reads_as_more_than_what_is_had);
    RUN(a_rotation_nobody_can_run);
    RUN(a_carry_that_outruns_a_man);
    RUN(lengths_follow_the_unit);
    RUN(a_derived_pin_points_at_the_one_given);
    RUN(late_men_need_something_to_take);
    RUN(captions_are_short_and_plain);
    RUN(landmarks_on_top_of_each_other);
    RUN(sentences_are_whole);
    RUN(room_only_limits_what_is_kept);
    RUN(the_mirror_image_has_as_many_faults);
    return test_report(argc, argv);
}
