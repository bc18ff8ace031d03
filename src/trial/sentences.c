/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/sentences.h"

#include "scheme/caption.h"
#include "trial/words.h"

void bw_say_worth_now(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    bw_put(out, "Within ");
    bw_put_int(out, c->answer_s);
    bw_put(out, " s typical play scores in about ");
    bw_put_int(out, bw_in_100(c->typical[c->answer_s]));
    bw_put(out, " of 100 such breaks (another run of the model would say ");
    bw_say_range(c->typical[c->answer_s], c->error[c->answer_s], out);
    bw_put(out, "; how far the model itself is off is not known). Best play scores in ");
    bw_put_int(out, bw_in_100(c->best[c->answer_s]));
    bw_put(out, ".");
}

void bw_say_bought(const bw_trial *trial, double margin, bw_text *out) {
    const bw_curve *c = &trial->curve;
    if (!c->ever_beaten) {
        bw_put(out, "All 10 s: typical play never gets ");
        bw_put_int(out, bw_in_100(margin));
        bw_put(out, " goals in 100 above what it would with even numbers.");
        return;
    }
    bw_say_seconds(c->bought_s, out);
    bw_put(out, ": that long typical play stays within ");
    bw_put_int(out, bw_in_100(margin));
    bw_put(out, " goals in 100 of what it would score with even numbers.");
}

void bw_say_plateau(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    bw_put(out, "About ");
    bw_put_int(out, bw_in_100(c->plateau));
    bw_put(out, " in 100, typical, ");
    if (c->even_s < 0) {
        bw_put(out, "after 10 s; numbers are never even.");
    } else if (c->even_s == 0) {
        bw_put(out, "after 1 s; numbers are even from the start.");
    } else {
        bw_put(out, "one second after numbers are even (");
        bw_say_seconds(c->even_s, out);
        bw_put(out, "). The best single figure to compare schemes by.");
    }
}

void bw_say_missing(const bw_trial *trial, bw_text *out) {
    const bw_curve *c = &trial->curve;
    if (c->even_s < 0 && c->ever_beaten) {
        bw_put(out, "Nobody comes to even the numbers, so the scheme must hold by itself.");
        return;
    }
    if (c->missing_s <= 0) {
        bw_put(out, "None: numbers are even before the time bought has run out.");
        return;
    }
    bw_say_seconds(c->missing_s, out);
    bw_put(out, ": numbers are even that much after the time bought has run out.");
}

void bw_say_answer(const bw_trial *trial, bw_text *out) {
    const bw_answer *a = &trial->curve.answer;
    if (a->count == 0) {
        bw_put(out, "The answer: no shot fits into ");
        bw_put_int(out, trial->curve.answer_s);
        bw_put(out, " s.");
        return;
    }
    bw_put(out, "The answer: best play given ");
    bw_put_int(out, trial->curve.answer_s);
    bw_put(out, " s, a goal in ");
    bw_put_int(out, bw_in_100(a->worth));
    bw_put(out, " of 100. The ball gets to the shot in ");
    bw_put_int(out, bw_in_100(a->kept));
    bw_put(out, ".");
    if (a->cut_short) bw_put(out, " The search ended early: there may be a better one.");
}

void bw_say_rotation(const bw_ground *ground, const bw_rotation *r, bw_text *out) {
    char from[BW_NAME_SIZE];
    bw_text t = bw_text_in(from, sizeof from);
    bw_say_node(ground, r->from, &t);
    bw_say_first(from, out);
    bw_put(out, " to ");
    bw_say_node(ground, r->to, out);
}

void bw_say_cost(const bw_rotation *r, bw_text *out) {
    bw_put(out, "Costs about ");
    bw_put_fixed(out, 100 * r->cost, 1);
    bw_put(out, " goals in 100 breaks: thrown ");
    bw_put_int(out, bw_in_100(r->use));
    bw_put(out, " times in 100, then worth ");
    bw_put_int(out, bw_in_100(r->moving));
    bw_put(out, " in 100 as it is and ");
    bw_put_int(out, bw_in_100(r->set));
    bw_put(out, " if all were in place.");
}

void bw_say_behind(const bw_ground *ground, const bw_rotation *r, bw_text *out) {
    int said = 0;
    for (int i = 0; i < r->behind_count && said < 2; i++) {
        const bw_behind *man = &r->behind[i];
        if (!bw_is_late(man->seconds, man->metres)) continue;
        bw_put(out, said == 0 ? "Late: " : ", ");
        bw_say_defender(ground, r->stage, man->spot, r->matched, out);
        bw_put(out, " by ");
        bw_say_seconds(man->seconds, out);
        bw_put(out, " and ");
        bw_say_length(ground->scheme->units, man->metres, out);
        said++;
    }
    if (said > 0) bw_put(out, ".");
}

void bw_say_standard(const bw_ranking *ranking, bw_text *out) {
    bw_put(out, "For each place the ball starts at: the plateau, typical goals in 100 such breaks "
                "one second after numbers are even (give or take ");
    bw_put_int(out, bw_in_100(ranking->noise));
    bw_put(out, "), and the time bought; + means it never runs out within 10 s.");
}

void bw_say_faults(const bw_trial *trial, bw_text *out) {
    const bw_whatif *w = &trial->whatif;
    const bw_ground *ground = trial->begun.ground;
    if (w->fault_count == 0) return;
    bw_put(out,
           "Where the shape itself looks wrong, not the running (the men would do better where "
           "they are than where they belong): ");
    for (int i = 0; i < w->fault_count && i < 3; i++) {
        if (i > 0) bw_put(out, ", ");
        bw_put(out, "ball from ");
        bw_say_node(ground, w->fault[i].from, out);
        bw_put(out, " to ");
        bw_say_node(ground, w->fault[i].to, out);
    }
    bw_put(out, ".");
}
