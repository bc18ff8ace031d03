/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/test_json.h"
#include "core/text.h"
#include "file/json_stream.h"
#include "trial/weak_rotations.h"

/// A length in the people's unit, which the key's ending names: "short" gives "short_yd".
static void put_length(bw_json *json, const char *key, double metres, bw_units units) {
    char name[32];
    bw_text t = bw_text_in(name, sizeof name);
    bw_put(&t, key);
    bw_put_char(&t, '_');
    bw_put(&t, bw_unit_short(units));
    bw_json_put_number(json, name, bw_in_unit(units, metres));
}

/// Whole seconds 1 to 10 of a curve.
static void put_curve(bw_json *json, const char *key, const double *worth) {
    bw_json_put_open(json, key, '[');
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        bw_json_number(json, worth[t]);
    bw_json_close(json, ']');
}

static const char *place_id(const bw_ground *ground, int place) {
    return ground->places[place].id;
}

/// Where the ball goes: the receiver's place for a pass, "goal" for a shot, nothing for a hold.
static void put_target(bw_json *json, const bw_ground *ground, const bw_answer_ply *step) {
    switch (step->ply.kind) {
    case BW_SHOOT: bw_json_put_text(json, "to", "goal"); break;
    case BW_PASS:
        bw_json_put_text(json, "to", place_id(ground, bw_ground_nearest(ground, step->to)));
        bw_json_put_number(json, "receiver", step->ply.to + 1);
        break;
    case BW_CARRY: bw_json_put_text(json, "to", place_id(ground, step->ply.to)); break;
    default: break;
    }
}

static const char *spot_id(const bw_ground *ground, int stage, int job, bool matched) {
    const int index = bw_scheme_stage(ground->scheme, stage);
    return matched || index < 0 || job < 0 ? "man" : ground->scheme->stages[index].spots[job].id;
}

static void put_late(bw_json *json, const bw_ground *ground, const char *spot, double seconds,
                     double metres) {
    bw_json_put_text(json, "spot", spot);
    bw_json_put_number(json, "late_s", seconds);
    put_length(json, "away", metres, ground->scheme->units);
}

static void put_answer(bw_json *json, const bw_trial *trial) {
    const bw_ground *ground = trial->begun.ground;
    const bw_answer *a = &trial->curve.answer;
    bw_json_put_open(json, "answer", '[');
    for (int i = 0; i < a->count; i++) {
        const bw_answer_ply *step = &a->plies[i];
        const bw_straggler *man = &trial->straggler[i];
        bw_json_open(json, '{');
        bw_json_put_text(json, "ply", bw_kind_name((bw_kind)step->ply.kind));
        bw_json_put_number(json, "who", step->who + 1);
        put_target(json, ground, step);
        bw_json_put_number(json, "at_s", step->at_s);
        bw_json_put_number(json, "end_s", step->end_s);
        bw_json_put_number(json, "p", step->chance);
        if (step->ply.cutter != BW_NOBODY) {
            bw_json_put_number(json, "cutter", step->ply.cutter + 1);
            bw_json_put_text(json, "cut_to", place_id(ground, step->ply.cut_place));
        }
        if (man->man >= 0) {
            bw_json_put_open(json, "latest", '{');
            put_late(json, ground, spot_id(ground, man->stage, man->job, man->matched),
                     man->seconds, man->metres);
            bw_json_close(json, '}');
        }
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void put_weakest(bw_json *json, const bw_trial *trial) {
    const bw_ground *ground = trial->begun.ground;
    bw_json_put_open(json, "weakest", '[');
    for (int i = 0; i < bw_weak_shown(trial); i++) {
        const bw_rotation *r = &trial->whatif.weak[i];
        bw_json_open(json, '{');
        bw_json_put_text(json, "from", place_id(ground, r->from));
        bw_json_put_text(json, "to", place_id(ground, r->to));
        bw_json_put_number(json, "worth", r->cost);
        bw_json_put_number(json, "thrown", r->use);
        bw_json_put_number(json, "p", r->chance);
        bw_json_put_number(json, "as_it_is", r->moving);
        bw_json_put_number(json, "if_set", r->set);
        bw_json_put_open(json, "late", '[');
        for (int k = 0; k < r->behind_count; k++) {
            const bw_behind *man = &r->behind[k];
            if (!bw_is_late(man->seconds, man->metres)) continue;
            bw_json_open(json, '{');
            put_late(json, ground, spot_id(ground, r->stage, man->spot, r->matched), man->seconds,
                     man->metres);
            bw_json_close(json, '}');
        }
        bw_json_close(json, ']');
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void put_late_men(bw_json *json, const bw_trial *trial) {
    const bw_curve *c = &trial->curve;
    const bw_units units = trial->begun.ground->scheme->units;
    bw_json_key(json, units == BW_METRES ? "late_from_m" : "late_from_yd");
    bw_json_open(json, '[');
    for (int i = 0; i < c->late_count; i++)
        bw_json_number(json, bw_in_unit(units, trial->begun.def.late[i]));
    bw_json_close(json, ']');
    bw_json_put_open(json, "late_s", '[');
    for (int i = 0; i < c->late_count; i++)
        bw_json_number(json, c->late_s[i]);
    bw_json_close(json, ']');
}

static void put_trial(bw_json *json, const bw_trial *trial) {
    const bw_curve *c = &trial->curve;
    bw_json_open(json, '{');
    bw_json_put_number(json, "offence", trial->def.offence);
    bw_json_put_number(json, "defence", trial->def.defence);
    bw_json_put_text(json, "set", trial->def.set);
    bw_json_put_text(json, "start", trial->def.start);
    bw_json_put_text(json, "level", trial->begun.ground->level->id);
    bw_json_put_open(json, "seconds", '[');
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        bw_json_number(json, t);
    bw_json_close(json, ']');
    bw_json_put_number(json, "rollouts", c->forecast.rollouts);
    bw_json_put_number(json, "depth", trial->effort.curve.search.depth);
    put_curve(json, "best", c->best);
    put_curve(json, "typical", c->typical);
    put_curve(json, "typical_error", c->error);
    put_curve(json, "even_numbers", c->settled);
    put_late_men(json, trial);
    bw_json_put_number(json, "even_s", c->even_s);
    bw_json_put_number(json, "plateau", c->plateau);
    bw_json_put_number(json, "time_bought_s", c->bought_s);
    bw_json_put_bool(json, "holds", !c->ever_beaten);
    bw_json_put_number(json, "seconds_missing", c->missing_s);
    bw_json_put_number(json, "answer_for_s", c->answer_s);
    bw_json_put_number(json, "answer_worth", c->answer.worth);
    put_answer(json, trial);
    put_weakest(json, trial);
    bw_json_close(json, '}');
}

void bw_test_json(FILE *out, const bw_report *report) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "units", bw_unit_short(report->ground->scheme->units));
    bw_json_put_number(&json, "seed", (double)report->headline->def.seed);
    bw_json_put_open(&json, "breaks", '[');
    put_trial(&json, report->headline);
    for (int i = 0; i < report->standard_count; i++) {
        const bw_trial *trial = &report->standard[i];
        if (trial->status == BW_OK && trial != report->headline) put_trial(&json, trial);
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}
