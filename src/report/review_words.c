/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sentences of a review.
#include "core/maths.h"
#include "report/beta.h"
#include "report/catalogue.h"
#include "report/review.h"
#include "trial/words.h"

/// No scheme is spoken of, and no people.
static const bw_voice voice = {0};

void bw_say_season(const bw_review *r, bw_text *out) {
    int games = 0;
    for (int i = 0; i < r->season->game_count; i++)
        games += r->season->games[i].breaks > 0;
    bw_put_sentence(out, voice, &bw_s_season, bw_as_count("breaks", r->season->all.breaks),
                    bw_as_part("in_games", games > 0 ? &bw_s_season_games : NULL),
                    bw_as_count("games", games));
}

void bw_say_outcomes(const bw_group *g, bw_text *out) {
    bool told[BW_OUTCOME_COUNT] = {false};
    for (int n = 0; n < BW_OUTCOME_COUNT; n++) {
        int most = -1;
        for (int o = 0; o < BW_OUTCOME_COUNT; o++) {
            if (!told[o] && (most < 0 || g->outcome[o] > g->outcome[most])) most = o;
        }
        told[most] = true;
        if (g->outcome[most] == 0) return;
        if (n > 0) bw_put(out, ", ");
        bw_put(out, bw_outcome_words((bw_outcome)most));
        bw_put(out, " ");
        bw_put_int(out, g->outcome[most]);
    }
}

void bw_say_expected(const bw_review *r, const bw_group *g, bw_text *out) {
    if (!r->modelled || g->forecast_breaks == 0) return;
    bw_put_sentence(
        out, voice, g->forecast_breaks == 1 ? &bw_s_expected_one : &bw_s_expected,
        bw_as_number("goals", g->expected, 1), bw_as_count("cases", g->forecast_breaks),
        bw_as_part("known", g->forecast_breaks == g->breaks ? NULL : &bw_s_expected_known));
}

void bw_say_leaning(const bw_group *g, bw_text *out) {
    const bw_interval likely = bw_belief_interval(g->leaning);
    bw_put_sentence(out, voice, &bw_s_leaning, bw_as_in_100("share", bw_belief_mean(g->leaning)),
                    bw_as_in_100("low", likely.low), bw_as_in_100("high", likely.high));
}

void bw_say_calibration(const bw_review *r, bw_text *out) {
    const bw_calibration *c = &r->season->calibration;
    if (!r->modelled || c->cases == 0) {
        bw_put_plain_sentence(out, voice, &bw_s_model_none);
        return;
    }
    const bool off = bw_abs(c->happened - c->expected) > 2 * c->deviation;
    bw_put_sentence(out, voice, &bw_s_model, bw_as_number("goals", c->expected, 1),
                    bw_as_count("cases", c->cases), bw_as_number("doubt", 2 * c->deviation, 1),
                    bw_as_count("happened", c->happened),
                    bw_as_part("verdict", c->cases < BW_CALIBRATION_LEAST ? &bw_s_model_few
                                          : off                           ? &bw_s_model_off
                                                                          : &bw_s_model_near),
                    bw_as_part("brier", &bw_s_model_brier), bw_as_number("score", c->brier, 3),
                    bw_as_number("uncertainty", c->uncertainty, 3));
}

bool bw_say_review_limit(const bw_review *r, int index, bw_text *out) {
    static const bw_sentence *const limits[] = {&bw_s_review_likely, &bw_s_review_leaning,
                                                &bw_s_review_why, &bw_s_review_model};
    const int count = BW_COUNT(limits) - !r->modelled;
    if (index >= count) return false;
    bw_put_plain_sentence(out, voice, limits[index]);
    return true;
}
