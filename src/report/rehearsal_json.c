/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/cautions_json.h"
#include "report/json_out.h"
#include "report/rehearsal_words.h"

static void put_text(bw_json *json, const char *key, const char *text) {
    bw_json_key(json, key);
    bw_json_text(json, text);
}

static void put_number(bw_json *json, const char *key, double value) {
    bw_json_key(json, key);
    bw_json_number(json, value);
}

static void put_bool(bw_json *json, const char *key, bool value) {
    bw_json_key(json, key);
    bw_json_bool(json, value);
}

static void put_seconds(bw_json *json, const double *seconds) {
    static const char *const names[BW_PACE_COUNT] = {"walk", "half", "full"};
    bw_json_key(json, "seconds");
    bw_json_open(json, '{');
    for (int p = 0; p < BW_PACE_COUNT; p++)
        put_number(json, names[p], seconds[p]);
    bw_json_close(json, '}');
}

static void put_stop(bw_json *json, const bw_script *script, const bw_script_stop *stop) {
    const bw_scheme *scheme = script->scheme;
    const bw_spot *spots = scheme->stages[script->stage].spots;
    bw_json_open(json, '{');
    put_text(json, "from", scheme->landmarks[stop->from].id);
    put_text(json, "to", scheme->landmarks[stop->to].id);
    put_number(json, "weak", stop->rank);
    put_number(json, "again", stop->again);
    put_bool(json, "link", stop->link);
    if (stop->on_ball >= 0) {
        put_text(json, "ball", spots[stop->on_ball].id);
        put_text(json, "call", spots[stop->on_ball].call);
    }
    if (stop->crease >= 0) put_text(json, "crease", spots[stop->crease].id);
    put_text(json, "farthest", spots[stop->farthest].id);
    put_number(json, scheme->units == BW_YARDS ? "way_yd" : "way_m",
               stop->metres / bw_unit_length(scheme->units));
    put_seconds(json, stop->seconds);
    bw_json_close(json, '}');
}

static void put_script(bw_json *json, const bw_script *script) {
    const bw_scheme *scheme = script->scheme;
    bw_json_key(json, "script");
    bw_json_open(json, '{');
    put_number(json, "passes", script->stop_count);
    put_number(json, "bound", script->bound);
    put_bool(json, "proven", script->bound == script->stop_count);
    put_number(json, "rotations", script->rotations);
    put_number(json, "wanted", script->wanted);
    put_bool(json, "weighed", script->weighed);
    put_text(json, "start", scheme->landmarks[script->start].id);
    put_seconds(json, script->seconds);
    bw_json_key(json, "weakest");
    bw_json_open(json, '[');
    for (int k = 0; k < script->weak_count; k++) {
        bw_json_open(json, '{');
        put_text(json, "from", scheme->landmarks[script->weak[k][0]].id);
        put_text(json, "to", scheme->landmarks[script->weak[k][1]].id);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_key(json, "stops");
    bw_json_open(json, '[');
    for (int i = 0; i < script->stop_count; i++)
        put_stop(json, script, &script->stops[i]);
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

static void put_player(bw_json *json, const bw_rehearsal *r, int player) {
    bw_json_number(json, player < r->numbered ? r->numbers[player] : player + 1);
}

static void put_goal(bw_json *json, const bw_rehearsal *r, const bw_rehearsal_stage *stage,
                     const bw_round *round, int goal) {
    const bw_spot *spots = r->scheme->stages[stage->script.stage].spots;
    bw_json_open(json, '{');
    bw_json_key(json, "spots");
    bw_json_open(json, '{');
    for (int s = 0; s < stage->def.spots; s++) {
        if (round->spot[goal][s] < 0) continue;
        bw_json_key(json, spots[s].id);
        put_player(json, r, round->spot[goal][s]);
    }
    bw_json_close(json, '}');
    bw_json_key(json, "feed");
    bw_json_open(json, '[');
    for (int f = 0; f < round->feeder_count; f++)
        put_player(json, r, round->feeder[goal][f]);
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

static void put_plan(bw_json *json, const bw_rehearsal *r, const bw_rehearsal_stage *stage) {
    const bw_practice *plan = &stage->plan;
    bw_json_key(json, "plan");
    bw_json_open(json, '{');
    put_number(json, "players", stage->def.players);
    put_number(json, "goals", plan->goals);
    put_number(json, "minutes", stage->def.minutes);
    put_number(json, "used_s", plan->used_s);
    put_number(json, "game_s", plan->game_s);
    put_number(json, "need_s", plan->need_s);
    put_bool(json, "suffices",
             plan->used_s > 0 && plan->game_s > 0 && plan->whole[0] && plan->whole[1] &&
                 plan->whole[2]);
    put_number(json, "fewest_turns", plan->fewest);
    put_number(json, "most_turns", plan->most);
    bw_json_key(json, "rounds");
    bw_json_open(json, '[');
    for (int i = 0; i < plan->round_count; i++) {
        const bw_round *round = &plan->rounds[i];
        bw_json_open(json, '{');
        put_text(json, "pace", bw_pace_name((bw_pace)round->kind));
        put_number(json, "at_s", round->at_s);
        put_number(json, "lasts_s", round->lasts_s);
        put_bool(json, "drink_first", round->drink);
        bw_json_key(json, "goals");
        bw_json_open(json, '[');
        for (int g = 0; g < plan->goals; g++)
            put_goal(json, r, stage, round, g);
        bw_json_close(json, ']');
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

void bw_rehearsal_json(FILE *stream, const bw_rehearsal *r) {
    bw_json json = {.stream = stream};
    bw_json_open(&json, '{');
    put_text(&json, "units", bw_unit_short(r->scheme->units));
    bw_json_key(&json, "stages");
    bw_json_open(&json, '[');
    for (int i = 0; i < r->stage_count; i++) {
        const bw_rehearsal_stage *stage = &r->stages[i];
        char game[640];
        bw_text t = bw_text_in(game, sizeof game);
        bw_say_game(stage, &t);
        bw_json_open(&json, '{');
        put_number(&json, "defenders", stage->def.spots);
        put_text(&json, "shape", r->scheme->stages[stage->script.stage].shape);
        put_script(&json, &stage->script);
        put_plan(&json, r, stage);
        put_text(&json, "game", game);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_cautions(&json, r->scheme);
    bw_json_close(&json, '}');
    bw_json_end(&json);
}
