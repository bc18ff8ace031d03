/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A season's review for programs.
#include "file/json_stream.h"
#include "report/beta.h"
#include "report/review.h"

static void interval(bw_json *json, const char *key, bw_interval i) {
    bw_json_put_open(json, key, '[');
    bw_json_number(json, i.low);
    bw_json_number(json, i.high);
    bw_json_close(json, ']');
}

/// A rate only where there are ten cases, and never without its interval.
static void put_count(bw_json *json, const char *key, bw_count count) {
    bw_json_put_open(json, key, '{');
    bw_json_put_number(json, "hits", count.hits);
    bw_json_put_number(json, "n", count.cases);
    if (bw_may_say(count.cases) != BW_SAY_COUNTS) {
        bw_json_put_number(json, "rate", bw_rate(count));
        interval(json, "interval_95", bw_rate_interval(count));
    } else {
        bw_json_put_bool(json, "too_few", true);
    }
    bw_json_close(json, '}');
}

static void put_group(bw_json *json, const bw_review *r, const bw_group *g, bool leaning) {
    bw_json_open(json, '{');
    bw_json_put_text(json, "label", g->label);
    bw_json_put_number(json, "breaks", g->breaks);
    put_count(json, "goals", g->goals);
    put_count(json, "shots", g->shots);
    put_count(json, "goals_a_shot", g->on_shot);
    bw_json_put_open(json, "outcomes", '{');
    for (int o = 0; o < BW_OUTCOME_COUNT; o++)
        bw_json_put_number(json, bw_outcome_id((bw_outcome)o), g->outcome[o]);
    bw_json_close(json, '}');
    bw_json_put_number(json, "timed", g->timed);
    if (g->timed > 0) bw_json_put_number(json, "mean_s", g->seconds);
    if (r->modelled && g->forecast_breaks > 0) {
        bw_json_put_number(json, "forecast_breaks", g->forecast_breaks);
        bw_json_put_number(json, "forecast_goals", g->expected);
    }
    if (leaning && g->leaning.a > 0) {
        bw_json_put_number(json, "leaning_rate", bw_belief_mean(g->leaning));
        interval(json, "leaning_95", bw_belief_interval(g->leaning));
    }
    bw_json_close(json, '}');
}

static void put_groups(bw_json *json, const bw_review *r, const char *key, const bw_group *list,
                       int count, bool leaning) {
    bw_json_put_open(json, key, '[');
    for (int i = 0; i < count; i++) {
        if (list[i].breaks > 0) put_group(json, r, &list[i], leaning);
    }
    bw_json_close(json, ']');
}

static void put_change(bw_json *json, const bw_review *r) {
    if (r->before < 0 || r->after < 0) return;
    const bw_group *before = &r->season->revisions[r->before],
                   *after = &r->season->revisions[r->after];
    char line[800];
    bw_json_put_open(json, "change", '{');
    bw_json_put_text(json, "from", before->label);
    bw_json_put_text(json, "to", after->label);
    put_count(json, "before", before->goals);
    put_count(json, "after", after->goals);
    const bool few = before->goals.cases < BW_RATE_COUNTS || after->goals.cases < BW_RATE_COUNTS;
    if (!few) interval(json, "difference_95", bw_rate_difference(after->goals, before->goals));
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_difference(after->goals, before->goals, &t);
    bw_json_put_text(json, "words", line);
    bw_json_close(json, '}');
}

static void put_calibration(bw_json *json, const bw_review *r) {
    const bw_calibration *c = &r->season->calibration;
    if (!r->modelled || c->cases == 0) return;
    bw_json_put_open(json, "model", '{');
    bw_json_put_number(json, "n", c->cases);
    bw_json_put_number(json, "expected_goals", c->expected);
    bw_json_put_number(json, "goals", c->happened);
    bw_json_put_number(json, "deviation", c->deviation);
    if (c->cases >= BW_CALIBRATION_LEAST) {
        bw_json_put_number(json, "brier", c->brier);
        bw_json_put_number(json, "reliability", c->reliability);
        bw_json_put_number(json, "resolution", c->resolution);
        bw_json_put_number(json, "uncertainty", c->uncertainty);
        bw_json_put_number(json, "spiegelhalter_z", c->z);
        bw_json_put_open(json, "bins", '[');
        for (int k = 0; k < BW_CALIBRATION_BINS; k++) {
            if (c->bin[k].count.cases == 0) continue;
            bw_json_open(json, '{');
            bw_json_put_number(json, "forecast", c->bin[k].chance);
            put_count(json, "seen", c->bin[k].count);
            bw_json_close(json, '}');
        }
        bw_json_close(json, ']');
    }
    bw_json_close(json, '}');
}

static void put_named(bw_json *json, const bw_review *r) {
    bw_json_put_open(json, "out_of_place", '[');
    for (int i = 0; i < r->season->named_count; i++) {
        bw_json_open(json, '{');
        bw_json_put_text(json, "who", r->season->named[i].who);
        bw_json_put_number(json, "breaks", r->season->named[i].times);
        bw_json_put_number(json, "goals", r->season->named[i].goals);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

void bw_review_json(FILE *stream, const bw_review *r) {
    bw_json json = bw_json_to(stream);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "team", r->team);
    bw_json_key(&json, "all");
    put_group(&json, r, &r->season->all, false);
    put_groups(&json, r, "by_numbers", r->season->numbers, r->season->number_count, true);
    put_groups(&json, r, "by_stage", r->season->stages, r->season->stage_count, true);
    put_groups(&json, r, "by_shot_place", r->season->places, r->season->place_count, false);
    put_groups(&json, r, "by_game", r->season->games, r->season->game_count, true);
    put_groups(&json, r, "by_revision", r->season->revisions, r->season->revision_count, false);
    put_change(&json, r);
    put_named(&json, r);
    put_calibration(&json, r);
    bw_json_close(&json, '}');
    bw_json_end(&json);
}
