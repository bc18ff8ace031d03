/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is said of a trial, for a women's field and one of the United States: every kind of step, of lateness
/// and of limit.
#include "core/field.h"
#include "scheme/fresh.h"
#include "trial/compare.h"
#include "trial/limits.h"
#include "trial/sentences.h"
#include "trial/words.h"
#include "voice.h"

static const listed catalogue[] = {
#define BW_SENTENCE(id, text) {#id, text},
#include "trial/catalogue.def"
};

static bw_scheme scheme;
static bw_ground ground;
static bw_trial trial;
static char room[2000];
static bw_text out;

static void every_sentence_suits_every_voice(void) {
    check_catalogue(catalogue, BW_COUNT(catalogue));
}

/// A trial with its figures filled in by hand, on the starting scheme without names of late men.
static void fill(const char *field) {
    const bw_field *f = bw_field_find(field);
    CHECK(f != NULL);
    bw_scheme_fresh((int)(f - bw_field_at(0)), 3, &scheme);
    scheme.late_count = 0;
    bw_copy(scheme.landmarks[0].name, sizeof scheme.landmarks[0].name, "up top");
    bw_ground_build(&scheme, bw_level_at(scheme.level), &ground, NULL);
    bw_break_def def = bw_break_default();
    def.late_from_scheme = false;
    def.late_count = 2;
    def.late[0] = 20;
    def.late[1] = 30;
    trial = (bw_trial){.def = def};
    CHECK_INT(bw_break_begin(&ground, &def, &trial.begun, NULL), BW_OK);
    trial.curve.answer_s = 4;
    trial.curve.answer.count = 4;
    trial.whatif.fault_count = 2;
    trial.whatif.fault[1].to = 3;
}

static void suits(void) {
    CHECK(out.used > 0 && !out.full);
    check_suits(room, bw_voice_of(&scheme), "said");
    out = bw_text_in(room, sizeof room);
}

static void say_steps(void) {
    static const int kinds[] = {BW_SHOOT, BW_PASS, BW_CARRY, BW_HOLD};
    for (int k = 0; k < BW_COUNT(kinds); k++) {
        for (int cutter = BW_NOBODY; cutter < 3; cutter++) {
            trial.curve.answer.plies[0].ply = (bw_ply){.kind = (int8_t)kinds[k],
                                                       .to = 2,
                                                       .cutter = (int8_t)cutter,
                                                       .cut_place = (int8_t)(cutter + 2)};
            bw_say_step(&trial, 0, &out);
            suits();
            bw_say_step_chance(&trial, 0, &out);
            suits();
        }
    }
}

static void say_people(void) {
    for (int i = 0; i < 4; i++) {
        bw_straggler man = {.man = i % 2 ? 5 : 0, .stage = 4, .job = i - 1, .matched = i == 3};
        man.seconds = 0.5;
        man.metres = 3;
        bw_say_straggler(&trial, &man, &out);
        suits();
        bw_say_defender(&ground, 4, i - 1, i == 3, &out);
        suits();
    }
    for (int i = 0; i < BW_MAX_LATE; i++) {
        bw_say_late_man(&scheme, i, &out);
        suits();
    }
    bw_say_late_men(&ground, &trial.begun, &out);
    suits();
    const bw_rotation r = {.to = 2,
                           .matched = true,
                           .stage = 6,
                           .behind_count = 2,
                           .behind = {{.seconds = 1, .metres = 4}, {.seconds = 1, .metres = 4}}};
    bw_say_behind(&ground, &r, &out);
    suits();
    bw_say_faults(&trial, &out);
    suits();
}

static void say_all(const char *field) {
    fill(field);
    out = bw_text_in(room, sizeof room);
    say_steps();
    say_people();
    bw_say_break(&ground, &trial.def, &out);
    suits();
    for (int i = 0; bw_say_limit(&trial, i, &out); i++)
        suits();
    bw_say_worth_now(&trial, &out);
    suits();
    bw_say_missing(&trial, &out);
    suits();
    bw_say_compare(&trial, &trial, &out);
    suits();
}

static void a_womens_trial_speaks_of_players(void) {
    say_all("women");
    bw_say_late_man(&scheme, 0, &out);
    CHECK_TEXT(room, "first late player");
}

static void a_trial_of_the_states_is_spelled_so(void) {
    say_all("men-ncaa");
}

static void a_mens_trial_speaks_of_men(void) {
    fill("men-wl");
    out = bw_text_in(room, sizeof room);
    bw_say_defender(&ground, 4, 1, true, &out);
    CHECK_TEXT(room, "man on 2");
    out = bw_text_in(room, sizeof room);
    bw_say_late_men(&ground, &trial.begun, &out);
    CHECK_TEXT(room,
               "First late man (+1) comes from 21.9 yd behind, second late man (+2) from 32.8 yd.");
}

int main(int argc, char **argv) {
    RUN(every_sentence_suits_every_voice);
    RUN(a_womens_trial_speaks_of_players);
    RUN(a_trial_of_the_states_is_spelled_so);
    RUN(a_mens_trial_speaks_of_men);
    return test_report(argc, argv);
}
