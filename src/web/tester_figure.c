/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The figures that test mode shows beside the chart, one by one.
#include "core/attack_set.h"
#include "draw/view.h"
#include "trial/weak_rotations.h"
#include "web/tester_say.h"

static double none(void) {
    return __builtin_nan("");
}

static int index_of_set(const bw_scheme *scheme, const char *id) {
    for (int i = 0; i < bw_attack_set_count(); i++) {
        if (bw_same(bw_attack_set_at(i)->id, id)) return i;
    }
    for (int i = 0; i < scheme->set_count; i++) {
        if (bw_same(scheme->sets[i].id, id)) return bw_attack_set_count() + i;
    }
    return -1;
}

/// Of the break asked for and of what is under way.
static double of_asked(const bw_tester *t, bw_test_figure figure, int index) {
    const bw_scheme *scheme = &t->side[0].scheme;
    switch (figure) {
    case BW_TEST_ASK_OFFENCE: return t->def.offence;
    case BW_TEST_ASK_DEFENCE: return t->def.defence;
    case BW_TEST_ASK_SET: return index_of_set(scheme, t->def.set);
    case BW_TEST_ASK_START: return bw_scheme_landmark(scheme, t->def.start);
    case BW_TEST_ASK_LATE:
        return index < t->def.late_count ? t->def.late[index] / bw_unit_length(scheme->units)
                                         : none();
    case BW_TEST_PART: return (int)t->progress.part;
    case BW_TEST_PART_DONE: return t->progress.done;
    case BW_TEST_PART_OF: return t->progress.of;
    default: return none();
    }
}

static double of_film(const bw_tester *t, bw_test_figure figure, int index) {
    const bw_sequence sq = bw_tester_sequence(t);
    if (sq.count == 0) return none();
    const double end = sq.frames[sq.count - 1].at_s;
    if (figure == BW_TEST_FILM_AT) return index == 0 ? sq.frames[0].at_s : end;
    if (index > sq.answer->count) return none();
    return index == sq.answer->count ? end : sq.answer->plies[index].at_s;
}

static double of_second(const bw_curve *c, bw_test_figure figure, int second) {
    if (second > BW_MAX_SECONDS) return none();
    switch (figure) {
    case BW_TEST_BEST: return c->best[second];
    case BW_TEST_TYPICAL: return c->typical[second];
    case BW_TEST_ERROR: return c->error[second];
    default: return c->settled[second];
    }
}

static double of_curve(const bw_curve *c, bw_test_figure figure, int index) {
    switch (figure) {
    case BW_TEST_LATE_S: return index < c->late_count ? c->late_s[index] : none();
    case BW_TEST_EVEN_S: return c->even_s;
    case BW_TEST_PLATEAU: return c->plateau;
    case BW_TEST_BOUGHT_S: return c->bought_s;
    case BW_TEST_HOLDS: return c->ever_beaten ? 0 : 1;
    case BW_TEST_MISSING_S: return c->missing_s;
    case BW_TEST_ANSWER_S: return c->answer_s;
    case BW_TEST_ANSWER_WORTH: return c->answer.worth;
    case BW_TEST_ROLLOUTS: return c->forecast.rollouts;
    default: return of_second(c, figure, index);
    }
}

static double of_step(const bw_answer *answer, bw_test_figure figure, int index) {
    if (index >= answer->count) return none();
    const bw_answer_ply *step = &answer->plies[index];
    switch (figure) {
    case BW_TEST_STEP_KIND: return step->ply.kind;
    case BW_TEST_STEP_WHO: return step->who;
    case BW_TEST_STEP_AT: return step->at_s;
    case BW_TEST_STEP_END: return step->end_s;
    default: return step->chance;
    }
}

static double of_weak(const bw_trial *trial, bw_test_figure figure, int index) {
    if (index >= bw_weak_shown(trial)) return none();
    const bw_rotation *r = &trial->whatif.weak[index];
    switch (figure) {
    case BW_TEST_WEAK_COST: return r->cost;
    case BW_TEST_WEAK_USE: return r->use;
    case BW_TEST_WEAK_CHANCE: return r->chance;
    case BW_TEST_WEAK_MOVING: return r->moving;
    default: return r->set;
    }
}

double bw_tester_figure(const bw_tester *t, bw_test_figure figure, int side, int index) {
    if (figure == BW_TEST_FILM_AT || figure == BW_TEST_FILM_STEP) return of_film(t, figure, index);
    if (figure >= BW_TEST_ASK_OFFENCE) return of_asked(t, figure, index);
    const bw_tester_side *s = &t->side[side];
    if (!s->tested) return none();
    if (figure >= BW_TEST_WEAK_COST) return of_weak(&s->trial, figure, index);
    if (figure >= BW_TEST_STEP_KIND) return of_step(&s->trial.curve.answer, figure, index);
    return of_curve(&s->trial.curve, figure, index);
}
