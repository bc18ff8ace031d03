/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/tester_say.h"

#include "core/level.h"
#include "trial/compare.h"
#include "trial/limits.h"
#include "trial/sentences.h"
#include "trial/weak_rotations.h"
#include "trial/words.h"

static void say_step(const bw_trial *trial, int index, bw_text *out) {
    if (index >= trial->curve.answer.count) return;
    bw_say_step(trial, index, out);
    bw_put(out, ", ");
    bw_say_step_chance(trial, index, out);
    bw_put(out, ".");
    if (trial->straggler[index].man < 0) return;
    bw_put(out, " ");
    bw_say_straggler(trial, &trial->straggler[index], out);
}

static void say_compare(const bw_tester *t, int index, bw_text *out) {
    static void (*const says[])(const bw_trial *, const bw_trial *, bw_text *) = {
        bw_say_compare, bw_say_compare_plateau, bw_say_compare_best};
    if (!t->side[0].tested || !t->side[1].tested || index >= BW_COUNT(says)) return;
    says[index](&t->side[0].trial, &t->side[1].trial, out);
}

static void say_progress(const bw_tester *t, bw_text *out) {
    static const char *const heads[] = {
        "Typical play: ", "Even numbers: ", "Best play: ", "Rotations: "};
    static const char *const tails[] = {" of ", " of ", " of ", " of "};
    static const char *const units[] = {" rounds of simulated breaks",
                                        " rounds of simulated breaks",
                                        " seconds of the curve searched", " looked into"};
    const bw_trial_progress *p = &t->progress;
    if (p->part == BW_TRIAL_DONE) {
        bw_put(out, "Done");
        return;
    }
    bw_put(out, heads[p->part]);
    bw_put_int(out, p->done);
    bw_put(out, tails[p->part]);
    bw_put_int(out, p->of);
    bw_put(out, units[p->part]);
}

static void say_refusal(const bw_tester *t, bw_text *out) {
    bw_put(out, t->error.message);
    if (!t->error.pointer[0]) return;
    bw_put(out, " (at ");
    bw_put(out, t->error.pointer);
    bw_put(out, ")");
}

static void say_film(const bw_tester *t, bw_text *out) {
    if (t->film_side < 0) return;
    const bw_tester_side *s = &t->side[t->film_side];
    if (t->film_number < 0)
        bw_put(out, "What beats it, step by step");
    else
        bw_say_rotation(&s->ground, &s->trial.whatif.weak[t->film_number], out);
}

/// Texts that need no results.
static bool say_open(const bw_tester *t, bw_test_word word, int side, int index, bw_text *out) {
    const bw_tester_side *s = &t->side[side];
    switch (word) {
    case BW_TEST_WORD_PROGRESS: say_progress(t, out); return true;
    case BW_TEST_WORD_REFUSAL: say_refusal(t, out); return true;
    case BW_TEST_WORD_COMPARE: say_compare(t, index, out); return true;
    case BW_TEST_WORD_FILM: say_film(t, out); return true;
    case BW_TEST_WORD_LEVELS:
        if (index < bw_level_count()) bw_put(out, bw_level_at(index)->name);
        return true;
    case BW_TEST_WORD_LATE_MAN:
        if (s->open && index < BW_MAX_LATE) bw_say_late_man(&s->scheme, index, out);
        return true;
    case BW_TEST_WORD_OWNER:
        if (s->open) bw_say_owner(&s->scheme, out);
        return true;
    case BW_TEST_WORD_LEVEL:
        if (s->open) bw_put(out, bw_level_at(s->level < 0 ? s->scheme.level : s->level)->name);
        return true;
    default: return false;
    }
}

void bw_tester_say(const bw_tester *t, bw_test_word word, int side, int index, bw_text *out) {
    const bw_tester_side *s = &t->side[side];
    const bw_trial *trial = &s->trial;
    if (say_open(t, word, side, index, out) || !s->tested) return;
    switch (word) {
    case BW_TEST_WORD_SITUATION: bw_say_break(&s->ground, &trial->def, out); break;
    case BW_TEST_WORD_LATE_MEN: bw_say_late_men(&s->ground, &trial->begun, out); break;
    case BW_TEST_WORD_WORTH: bw_say_worth_now(trial, out); break;
    case BW_TEST_WORD_BOUGHT: bw_say_bought(trial, trial->effort.curve.margin, out); break;
    case BW_TEST_WORD_PLATEAU: bw_say_plateau(trial, out); break;
    case BW_TEST_WORD_MISSING: bw_say_missing(trial, out); break;
    case BW_TEST_WORD_ANSWER: bw_say_answer(trial, out); break;
    case BW_TEST_WORD_FAULTS: bw_say_faults(trial, out); break;
    case BW_TEST_WORD_LIMIT: bw_say_limit(trial, index, out); break;
    case BW_TEST_WORD_STEP: say_step(trial, index, out); break;
    case BW_TEST_WORD_ROTATION:
        if (index < bw_weak_shown(trial))
            bw_say_rotation(&s->ground, &trial->whatif.weak[index], out);
        break;
    case BW_TEST_WORD_COST:
        if (index < bw_weak_shown(trial)) bw_say_cost(&trial->whatif.weak[index], out);
        break;
    case BW_TEST_WORD_RANGE:
        if (index <= BW_MAX_SECONDS)
            bw_say_range(trial->curve.typical[index], trial->curve.error[index], out);
        break;
    case BW_TEST_WORD_BEHIND:
        if (index < bw_weak_shown(trial))
            bw_say_behind(&s->ground, &trial->whatif.weak[index], out);
        break;
    default: break;
    }
}

static void say_seconds_of(double at_s, double of_s, bw_text *out) {
    bw_put_fixed(out, at_s, 1);
    bw_put(out, " of ");
    bw_put_fixed(out, of_s, 1);
    bw_put(out, " seconds, ");
}

void bw_tester_say_moment(const bw_tester *t, double at_s, bw_text *out) {
    const bw_sequence sq = bw_tester_sequence(t);
    if (sq.count == 0) return;
    const bw_frame now = bw_frame_at(&sq, at_s);
    say_seconds_of(now.at_s, sq.frames[sq.count - 1].at_s, out);
    const bw_tester_side *s = &t->side[t->film_side];
    if (t->film_number >= 0) {
        bw_put(out, "ball from ");
        bw_say_node(&s->ground, s->trial.whatif.weak[t->film_number].from, out);
        bw_put(out, " to ");
        bw_say_node(&s->ground, s->trial.whatif.weak[t->film_number].to, out);
    } else {
        bw_say_step(&s->trial, now.ply, out);
    }
}

/// " +1 and +2 are still on their way back.", or nothing.
static void say_coming(const bw_sequence *sq, const bw_frame *now, bw_text *out) {
    int said = 0;
    for (int d = 0; d < sq->b->defenders; d++) {
        if (now->in[d]) continue;
        bw_put(out, said++ == 0 ? " " : " and ");
        bw_put(out, bw_defender_code(sq->b, d));
    }
    if (said > 0)
        bw_put(out, said == 1 ? " is still on the way back." : " are still on the way back.");
}

void bw_tester_say_late(const bw_tester *t, double at_s, bw_text *out) {
    const bw_sequence sq = bw_tester_sequence(t);
    if (sq.count == 0) return;
    const bw_frame now = bw_frame_at(&sq, at_s);
    int said = 0;
    for (int d = 0; d < sq.b->defenders; d++) {
        const double metres = bw_distance(now.defenders[d], now.place[d]);
        if (!now.in[d] || !bw_is_late(now.late[d], metres)) continue;
        bw_put(out, said++ == 0 ? "Late: " : ", ");
        bw_put(out, bw_defender_code(sq.b, d));
        bw_put(out, " ");
        bw_say_seconds(now.late[d], out);
    }
    bw_put(out, said > 0 ? "." : "Nobody is late.");
    say_coming(&sq, &now, out);
}
