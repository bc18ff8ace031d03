/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A tuning for programs.
#include "core/level.h"
#include "file/json_stream.h"
#include "report/tune_report.h"

static double shown(const bw_tune_report *r, const bw_knob *knob, double value) {
    return bw_knob_is_length(knob) ? value / bw_unit_length(r->def->scheme->units) : value;
}

/// Whose: a spot and his mirror image, by id; nobody's for a number of the rule.
static void put_spots(bw_json *json, const bw_stage *stage, int spot, int twin) {
    bw_json_put_open(json, "spots", '[');
    if (spot >= 0) bw_json_text(json, stage->spots[spot].id);
    if (spot >= 0 && twin >= 0 && twin != spot) bw_json_text(json, stage->spots[twin].id);
    bw_json_close(json, ']');
}

static void put_changes(bw_json *json, const bw_tune_report *r) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_json_put_open(json, "numbers", '[');
    for (int k = 0; k < r->tuned->knob_count; k++) {
        const bw_knob *knob = &r->tuned->knobs[k];
        char name[3 * BW_NAME_SIZE];
        bw_text t = bw_text_in(name, sizeof name);
        bw_knob_name(stage, knob, &t);
        bw_json_open(json, '{');
        bw_json_put_text(json, "what", name);
        bw_json_put_text(json, "key", bw_knob_key(knob->kind));
        put_spots(json, stage, knob->spot, knob->twin);
        bw_json_put_text(json, "unit",
                         bw_knob_is_length(knob) ? bw_unit_short(r->def->scheme->units) : "");
        bw_json_put_number(json, "before", shown(r, knob, knob->now));
        bw_json_put_number(json, "after", shown(r, knob, r->tuned->at[k]));
        bw_json_put_number(json, "practice", shown(r, knob, knob->practice));
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void put_homes(bw_json *json, const bw_tune_report *r) {
    const bw_stage *before = &r->def->scheme->stages[r->def->stage];
    const bw_stage *after = &r->tuned->scheme.stages[r->def->stage];
    const double unit = bw_unit_length(r->def->scheme->units);
    bw_json_put_open(json, "homes", '[');
    for (int s = 0; s < before->defenders; s++) {
        bw_json_open(json, '{');
        bw_json_put_text(json, "spot", before->spots[s].id);
        bw_json_put_number(json, "x", before->spots[s].home.x / unit);
        bw_json_put_number(json, "y", before->spots[s].home.y / unit);
        bw_json_put_number(json, "new_x", after->spots[s].home.x / unit);
        bw_json_put_number(json, "new_y", after->spots[s].home.y / unit);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void put_gain(bw_json *json, const bw_tune_report *r, bw_drill_kind kind, bool best) {
    const bw_gain *g = best ? &r->evidence->best[kind] : &r->evidence->typical[kind];
    char words[200];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_kind(r, kind, best, &t);
    bw_json_key(json, best ? "best" : "typical");
    bw_json_open(json, '{');
    bw_json_put_number(json, "before", g->before);
    bw_json_put_number(json, "after", g->after);
    bw_json_put_number(json, "gain", g->gain);
    bw_json_put_number(json, "least_by_seed", g->low);
    bw_json_put_number(json, "most_by_seed", g->high);
    bw_json_put_number(json, "standard_error", g->error);
    bw_json_put_bool(json, "more_than_chance", bw_gain_is_real(g));
    bw_json_put_text(json, "in_100_breaks", words);
    bw_json_close(json, '}');
}

static void put_evidence(bw_json *json, const bw_tune_report *r) {
    bw_json_put_open(json, "goals_a_break", '[');
    for (int kind = 0; kind < BW_DRILL_KINDS; kind++) {
        if (r->evidence->drills[kind] == 0) continue;
        bw_json_open(json, '{');
        bw_json_put_text(json, "on", bw_drill_name((bw_drill_kind)kind));
        bw_json_put_bool(json, "held_out", kind != BW_DRILL_TRAINING);
        if (kind == BW_DRILL_LEVEL)
            bw_json_put_text(json, "level", bw_level_at(r->evidence->level)->id);
        bw_json_put_number(json, "breaks", r->evidence->drills[kind]);
        bw_json_put_number(json, "seeds", r->evidence->seeds);
        put_gain(json, r, (bw_drill_kind)kind, false);
        put_gain(json, r, (bw_drill_kind)kind, true);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void put_map(bw_json *json, const bw_tune_report *r, const bw_sense_map *map) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_json_open(json, '{');
    bw_json_put_text(json, "spot", stage->spots[map->spot].id);
    put_spots(json, stage, map->spot, map->twin);
    bw_json_put_open(json, "cost_by_out_then_right", '[');
    for (int out = 0; out < BW_SENSE_SIDE; out++) {
        bw_json_open(json, '[');
        for (int across = 0; across < BW_SENSE_SIDE; across++) {
            if (map->there[out][across])
                bw_json_number(json, map->cost[out][across]);
            else
                bw_json_null(json);
        }
        bw_json_close(json, ']');
    }
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

/// What the figures leave out.
static void put_limits(bw_json *json, const bw_tune_report *r) {
    char words[600];
    bw_json_put_open(json, "limits", '[');
    for (int i = 0;; i++) {
        bw_text t = bw_text_in(words, sizeof words);
        if (!bw_say_tune_limit(r, i, &t)) break;
        bw_json_text(json, words);
    }
    bw_json_close(json, ']');
}

void bw_tune_json(FILE *stream, const bw_tune_report *r) {
    bw_json json = bw_json_to(stream);
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    char line[512];
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "units", bw_unit_short(r->def->scheme->units));
    bw_json_put_number(&json, "defenders", stage->defenders);
    bw_json_put_text(&json, "shape", stage->shape);
    bw_json_put_number(&json, "seed", (double)(r->def->seed & 0xffffffffu));
    bw_json_put_number(&json, "candidates", r->tuned->tried);
    bw_json_put_number(&json, "training_breaks", r->tuned->drill_count);
    if (r->path) bw_json_put_text(&json, "file", r->path);
    put_changes(&json, r);
    put_homes(&json, r);
    put_evidence(&json, r);
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_gain(r, &t);
    bw_json_put_text(&json, "verdict", line);
    put_limits(&json, r);
    bw_json_put_number(&json, "pull_before", r->tuned->pull_before);
    bw_json_put_number(&json, "pull_after", r->tuned->pull_after);
    bw_json_put_open(&json, "precision", '{');
    bw_json_put_number(&json, "step", r->sense->step / bw_unit_length(r->def->scheme->units));
    bw_json_put_number(&json, "chance", r->sense->flat);
    bw_json_put_open(&json, "homes", '[');
    for (int i = 0; i < r->sense->map_count; i++)
        put_map(&json, r, &r->sense->maps[i]);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}
