/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The room's sentences for those they are said to: no men's words on a women's field, no British spelling
/// on a field of the United States.
#include "core/field.h"
#include "core/recall.h"
#include "scheme/caption.h"
#include "scheme/fresh.h"
#include "scheme/lint.h"
#include "scheme/quiz_words.h"
#include "voice.h"

static const listed catalogue[] = {
#define BW_SENTENCE(id, text) {#id, text},
#include "scheme/catalogue.def"
};

static char room[4000];

static void every_sentence_suits_every_voice(void) {
    check_catalogue(catalogue, BW_COUNT(catalogue));
}

/// The starting scheme on a field, the one name of it that is spelled in two ways left out.
static bw_scheme on_field(const char *field) {
    bw_scheme scheme;
    const bw_field *f = bw_field_find(field);
    CHECK(f != NULL);
    bw_scheme_fresh((int)(f - bw_field_at(0)), 3, &scheme);
    bw_copy(scheme.landmarks[0].name, sizeof scheme.landmarks[0].name, "up top");
    return scheme;
}

/// Everything that can be amiss at once: calls that are missing or the same, men off the field, in the crease
/// and on top of each other, jargon.
static void spoil(bw_scheme *scheme, int how) {
    bw_lesson *lesson = &scheme->lessons[0];
    for (int i = 0; i < scheme->stage_count; i++) {
        bw_stage *stage = &scheme->stages[i];
        stage->call[0] = '\0';
        stage->rule.crease = how == 1 ? BW_CREASE_NONE : stage->rule.crease;
        for (int s = 0; s < stage->defenders; s++) {
            bw_spot *spot = &stage->spots[s];
            if (how == 0) spot->call[0] = '\0';
            if (how == 1) bw_copy(spot->call, sizeof spot->call, "same");
            spot->derived = 0;
            if (how == 2) spot->home = bw_v(0, s % 2 ? 1 : 500);
            if (how == 3) spot->home = bw_v(20, s);
        }
    }
    if (how == 3) scheme->landmarks[1].at = scheme->landmarks[2].at;
    bw_copy(lesson->stops[0].caption, sizeof lesson->stops[0].caption,
            how % 2 ? "The trailer is here" : "Hedge to the ball");
    for (int i = 0; how == 1 && i < 30; i++)
        bw_copy(lesson->stops[1].caption + 2 * i, 3, "a ");
}

/// Findings said, for the number of those looked at.
static int check_findings(const char *field) {
    int found = 0;
    for (int how = 0; how < 4; how++) {
        static bw_finding findings[BW_MAX_FINDINGS];
        bw_scheme scheme = on_field(field);
        spoil(&scheme, how);
        const int count = bw_scheme_lint(&scheme, findings, BW_MAX_FINDINGS);
        for (int i = 0; i < count && i < BW_MAX_FINDINGS; i++, found++) {
            check_suits(findings[i].message, bw_voice_of(&scheme), field);
            check_suits(findings[i].remedy, bw_voice_of(&scheme), field);
        }
    }
    return found;
}

static void findings_suit_the_field(void) {
    CHECK(check_findings("women") > 40);
    CHECK(check_findings("men-ncaa") > 40);
}

static void check_words(const bw_scheme *scheme, bw_text *t) {
    CHECK(t->used > 0);
    check_suits(room, bw_voice_of(scheme), "said");
    *t = bw_text_in(room, sizeof room);
}

/// All that is said of a spot with the ball at a landmark: caption, job, question, answer, reason.
static void check_spot(const bw_scheme *scheme, int stage, int landmark, int spot,
                       const bw_station *stations) {
    const bw_vec ball = scheme->landmarks[landmark].at;
    bw_text t = bw_text_in(room, sizeof room);
    bw_say_job(scheme, stage, spot, &stations[spot], &t);
    check_words(scheme, &t);
    bw_say_you(scheme, stage, spot, &stations[spot], ball, &t);
    check_words(scheme, &t);
    bw_ask_where(scheme, stage, spot, ball, &t);
    check_words(scheme, &t);
    bw_answer_where(scheme, stage, spot, &stations[spot], ball, &t);
    check_words(scheme, &t);
    bw_say_reason(scheme, stage, spot, &stations[spot], landmark, &t);
    check_words(scheme, &t);
    bw_say_order(bw_voice_of(scheme), stations[spot].duty, &t);
    check_words(scheme, &t);
}

static void check_captions(const char *field) {
    const bw_scheme scheme = on_field(field);
    for (int i = 0; i < scheme.stage_count; i++) {
        bw_plan plan;
        bw_plan_build(&scheme, i, &plan);
        for (int l = 0; l < scheme.landmark_count; l++) {
            bw_station stations[BW_MAX_SPOTS];
            bw_text t = bw_text_in(room, sizeof room);
            bw_where(&plan, scheme.landmarks[l].at, NULL, 0, stations);
            for (int s = 0; scheme.stages[i].match_up && s < scheme.stages[i].defenders; s++)
                stations[s].duty = BW_DUTY_MAN;
            bw_say_unit(&scheme, i, stations, scheme.landmarks[l].at, &t);
            check_words(&scheme, &t);
            for (int s = 0; s < scheme.stages[i].defenders; s++)
                check_spot(&scheme, i, l, s, stations);
        }
    }
}

static void captions_and_questions_suit_the_field(void) {
    check_captions("women");
    check_captions("boys-nfhs");
}

static void marks_suit_the_field(void) {
    const bw_scheme scheme = on_field("women");
    for (int v = BW_VERDICT_RIGHT; v <= BW_VERDICT_OFF; v++) {
        bw_text t = bw_text_in(room, sizeof room);
        const bw_mark_given given = {
            .verdict = (bw_verdict)v, .mate = 1, .distance = 2, .error = {3, -1}};
        bw_say_mark(&scheme, 0, &given, &t);
        check_words(&scheme, &t);
    }
}

/// What a defender does is still said to men as ever.
static void men_are_men(void) {
    const bw_scheme scheme = on_field("men-wl");
    bw_text t = bw_text_in(room, sizeof room);
    bw_say_order(bw_voice_of(&scheme), BW_DUTY_MAN, &t);
    CHECK_TEXT(room, "Take your man");
}

int main(int argc, char **argv) {
    RUN(every_sentence_suits_every_voice);
    RUN(findings_suit_the_field);
    RUN(captions_and_questions_suit_the_field);
    RUN(marks_suit_the_field);
    RUN(men_are_men);
    return test_report(argc, argv);
}
