/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sentences of a review.
#include "core/maths.h"
#include "report/beta.h"
#include "report/review.h"
#include "trial/words.h"

void bw_say_season(const bw_review *r, bw_text *out) {
    int games = 0;
    for (int i = 0; i < r->season->game_count; i++)
        games += r->season->games[i].breaks > 0;
    bw_put_int(out, r->season->all.breaks);
    bw_put(out, r->season->all.breaks == 1 ? " break" : " breaks");
    if (games == 0) return;
    bw_put(out, " in ");
    bw_put_int(out, games);
    bw_put(out, games == 1 ? " game" : " games");
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
    bw_put(out, "the model expected ");
    bw_put_fixed(out, g->expected, 1);
    bw_put(out, g->forecast_breaks == 1 ? " goals in the one it knows" : " goals in the ");
    if (g->forecast_breaks == 1) return;
    bw_put_int(out, g->forecast_breaks);
    if (g->forecast_breaks != g->breaks) bw_put(out, " it knows");
}

void bw_say_leaning(const bw_group *g, bw_text *out) {
    const bw_interval likely = bw_belief_interval(g->leaning);
    bw_put(out, "leaning on the season, about ");
    bw_put_int(out, bw_in_100(bw_belief_mean(g->leaning)));
    bw_put(out, " in 100 (likely ");
    bw_put_int(out, bw_in_100(likely.low));
    bw_put(out, " to ");
    bw_put_int(out, bw_in_100(likely.high));
    bw_put(out, ")");
}

void bw_say_calibration(const bw_review *r, bw_text *out) {
    const bw_calibration *c = &r->season->calibration;
    if (!r->modelled || c->cases == 0) {
        bw_put(out, "No break here has a forecast of the model beside it.");
        return;
    }
    bw_put(out, "The model (typical play, the forecast) expected ");
    bw_put_fixed(out, c->expected, 1);
    bw_put(out, " goals in ");
    bw_put_int(out, c->cases);
    bw_put(out, " breaks, give or take ");
    bw_put_fixed(out, 2 * c->deviation, 1);
    bw_put(out, " by chance; there were ");
    bw_put_int(out, c->happened);
    bw_put(out, ". ");
    if (c->cases < BW_CALIBRATION_LEAST) {
        bw_put(out, "Under 30 breaks nothing more can be told of the model.");
        return;
    }
    const bool off = bw_abs(c->happened - c->expected) > 2 * c->deviation;
    bw_put(out, off ? "That is more than chance: for this team the model's level is off; use it to "
                      "compare, "
                      "not as a rate. "
                    : "That is within chance. ");
    bw_put(out, "Brier score ");
    bw_put_fixed(out, c->brier, 3);
    bw_put(out, " (0 is perfect; always saying the season's own rate gives ");
    bw_put_fixed(out, c->uncertainty, 3);
    bw_put(out, ").");
}

bool bw_say_review_limit(const bw_review *r, int index, bw_text *out) {
    switch (index) {
    case 0:
        bw_put(out, "\"Likely\" is a 95 % interval (Wilson; a difference by Newcombe's method 10): "
                    "the range of true "
                    "rates that could well give such a count. Under ten cases only the count is "
                    "told; under thirty "
                    "the rate is rough.");
        return true;
    case 1:
        bw_put(out, "\"Leaning on the season\" moves a small group toward all of them together, as "
                    "far as its count "
                    "is small: the best guess for its next break, not what happened in it.");
        return true;
    case 2:
        bw_put(out, "A log cannot tell why. Rivals, score, weather, who was on and who wrote it "
                    "down all change from "
                    "game to game; a break that was stopped early may never be written down.");
        return true;
    case 3:
        if (!r->modelled) return false;
        bw_put(out, "The model knows of a break only its numbers and the scheme of its day, and "
                    "forecasts typical "
                    "play within ten seconds. Filled marks are seen in games, hollow ones are the "
                    "model's.");
        return true;
    default: return false;
    }
}
