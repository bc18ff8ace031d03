/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/sentences.h"

#include "trial/catalogue.h"
#include "trial/words.h"

static bw_voice voice_of(const bw_trial *trial) {
    return bw_voice_of(trial->begun.ground->scheme);
}

void bw_say_worth_now(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    const double typical = c->typical[c->answer_s], error = c->error[c->answer_s];
    bw_put_sentence(
        out, voice_of(trial), &bw_s_worth_now, bw_as_count("seconds", c->answer_s),
        bw_as_in_100("typical", typical), bw_as_in_100("low", bw_max(0, typical - 2 * error)),
        bw_as_in_100("high", typical + 2 * error), bw_as_in_100("best", c->best[c->answer_s]));
}

void bw_say_bought(const bw_trial *trial, double margin, bw_text *out) {
    const bw_curve *c = &trial->curve;
    bw_put_sentence(out, voice_of(trial), c->ever_beaten ? &bw_s_bought : &bw_s_bought_all,
                    bw_as_seconds("bought", c->bought_s), bw_as_in_100("margin", margin));
}

void bw_say_plateau(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    bw_put_sentence(out, voice_of(trial),
                    c->even_s < 0    ? &bw_s_plateau_never
                    : c->even_s == 0 ? &bw_s_plateau_start
                                     : &bw_s_plateau,
                    bw_as_in_100("plateau", c->plateau), bw_as_seconds("even", c->even_s));
}

void bw_say_missing(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    bw_put_sentence(out, voice_of(trial),
                    c->even_s < 0 && c->ever_beaten ? &bw_s_missing_nobody
                    : c->missing_s <= 0             ? &bw_s_missing_none
                                                    : &bw_s_missing,
                    bw_as_seconds("missing", c->missing_s));
}

void bw_say_answer(const bw_trial *trial, bw_text *out) {
    const bw_answer *a = &trial->curve.answer;
    bw_put_sentence(out, voice_of(trial), a->count == 0 ? &bw_s_answer_none : &bw_s_answer,
                    bw_as_count("seconds", trial->curve.answer_s), bw_as_in_100("worth", a->worth),
                    bw_as_in_100("kept", a->kept),
                    bw_as_part("short", a->cut_short ? &bw_s_answer_cut_short : NULL));
}

void bw_say_rotation(const bw_ground *ground, const bw_rotation *r, bw_text *out) {
    bw_put_sentence(out, bw_voice_of(ground->scheme), &bw_s_rotation,
                    bw_as_node("from", ground, r->from), bw_as_node("to", ground, r->to));
}

void bw_say_cost(const bw_rotation *r, bw_text *out) {
    bw_put_sentence(out, (bw_voice){0}, &bw_s_rotation_cost, bw_as_number("cost", 100 * r->cost, 1),
                    bw_as_in_100("use", r->use), bw_as_in_100("moving", r->moving),
                    bw_as_in_100("set", r->set));
}

void bw_say_behind(const bw_ground *ground, const bw_rotation *r, bw_text *out) {
    int said = 0;
    for (int i = 0; i < r->behind_count && said < 2; i++) {
        const bw_behind *man = &r->behind[i];
        if (!bw_is_late(man->seconds, man->metres)) continue;
        bw_put_sentence(out, bw_voice_of(ground->scheme),
                        said == 0 ? &bw_s_behind_first : &bw_s_behind_next,
                        bw_as_defender("who", ground, r->stage, man->spot, r->matched),
                        bw_as_seconds("late", man->seconds), bw_as_length("away", man->metres));
        said++;
    }
    if (said > 0) bw_put_char(out, '.');
}

void bw_say_standard(const bw_ranking *ranking, bw_text *out) {
    bw_put_sentence(out, (bw_voice){0}, &bw_s_standard, bw_as_in_100("noise", ranking->noise));
}

void bw_say_faults(const bw_trial *trial, bw_text *out) {
    const bw_whatif *w = &trial->whatif;
    const bw_ground *ground = trial->begun.ground;
    if (w->fault_count == 0) return;
    bw_put_plain_sentence(out, voice_of(trial), &bw_s_faults);
    for (int i = 0; i < w->fault_count && i < 3; i++) {
        if (i > 0) bw_put(out, ", ");
        bw_put_sentence(out, voice_of(trial), &bw_s_fault,
                        bw_as_node("from", ground, w->fault[i].from),
                        bw_as_node("to", ground, w->fault[i].to));
    }
    bw_put_char(out, '.');
}
