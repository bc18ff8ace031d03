/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Practice script and plan for programs.
#include "file/json_stream.h"
#include "report/cautions_json.h"
#include "report/rehearsal_words.h"

static void put_seconds(bw_json *json, const double *seconds) {
    static const char *const names[BW_PACE_COUNT] = {"walk", "half", "full"};
    bw_json_put_open(json, "seconds", '{');
    for (int p = 0; p < BW_PACE_COUNT; p++)
        bw_json_put_number(json, names[p], seconds[p]);
    bw_json_close(json, '}');
}

static void put_stop(bw_json *json, const bw_script *script, const bw_script_stop *stop) {
    const bw_scheme *scheme = script->scheme;
    const bw_spot *spots = scheme->stages[script->stage].spots;
    bw_json_open(json, '{');
    bw_json_put_text(json, "from", scheme->landmarks[stop->from].id);
    bw_json_put_text(json, "to", scheme->landmarks[stop->to].id);
    bw_json_put_number(json, "weak", stop->rank);
    bw_json_put_number(json, "again", stop->again);
    bw_json_put_bool(json, "link", stop->link);
    if (stop->on_ball >= 0) {
        bw_json_put_text(json, "ball", spots[stop->on_ball].id);
        bw_json_put_text(json, "call", spots[stop->on_ball].call);
    }
    if (stop->crease >= 0) bw_json_put_text(json, "crease", spots[stop->crease].id);
    bw_json_put_text(json, "farthest", spots[stop->farthest].id);
    bw_json_put_number(json, scheme->units == BW_YARDS ? "way_yd" : "way_m",
                       stop->metres / bw_unit_length(scheme->units));
    put_seconds(json, stop->seconds);
    bw_json_close(json, '}');
}

static void put_script(bw_json *json, const bw_script *script) {
    const bw_scheme *scheme = script->scheme;
    bw_json_put_open(json, "script", '{');
    bw_json_put_number(json, "passes", script->stop_count);
    bw_json_put_number(json, "bound", script->bound);
    bw_json_put_bool(json, "proven", script->bound == script->stop_count);
    bw_json_put_number(json, "rotations", script->rotations);
    bw_json_put_number(json, "wanted", script->wanted);
    bw_json_put_bool(json, "weighed", script->weighed);
    bw_json_put_text(json, "start", scheme->landmarks[script->start].id);
    put_seconds(json, script->seconds);
    bw_json_put_open(json, "weakest", '[');
    for (int k = 0; k < script->weak_count; k++) {
        bw_json_open(json, '{');
        bw_json_put_text(json, "from", scheme->landmarks[script->weak[k][0]].id);
        bw_json_put_text(json, "to", scheme->landmarks[script->weak[k][1]].id);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_put_open(json, "stops", '[');
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
    bw_json_put_open(json, "spots", '{');
    for (int s = 0; s < stage->def.spots; s++) {
        if (round->spot[goal][s] < 0) continue;
        bw_json_key(json, spots[s].id);
        put_player(json, r, round->spot[goal][s]);
    }
    bw_json_close(json, '}');
    bw_json_put_open(json, "feed", '[');
    for (int f = 0; f < round->feeder_count; f++)
        put_player(json, r, round->feeder[goal][f]);
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

static void put_plan(bw_json *json, const bw_rehearsal *r, const bw_rehearsal_stage *stage) {
    const bw_practice *plan = &stage->plan;
    bw_json_put_open(json, "plan", '{');
    bw_json_put_number(json, "players", stage->def.players);
    bw_json_put_number(json, "goals", plan->goals);
    bw_json_put_number(json, "minutes", stage->def.minutes);
    bw_json_put_number(json, "used_s", plan->used_s);
    bw_json_put_number(json, "game_s", plan->game_s);
    bw_json_put_number(json, "need_s", plan->need_s);
    bw_json_put_bool(json, "suffices",
                     plan->used_s > 0 && plan->game_s > 0 && plan->whole[0] && plan->whole[1] &&
                         plan->whole[2]);
    bw_json_put_number(json, "fewest_turns", plan->fewest);
    bw_json_put_number(json, "most_turns", plan->most);
    bw_json_put_open(json, "rounds", '[');
    for (int i = 0; i < plan->round_count; i++) {
        const bw_round *round = &plan->rounds[i];
        bw_json_open(json, '{');
        bw_json_put_text(json, "pace", bw_pace_name((bw_pace)round->kind));
        bw_json_put_number(json, "at_s", round->at_s);
        bw_json_put_number(json, "lasts_s", round->lasts_s);
        bw_json_put_bool(json, "drink_first", round->drink);
        bw_json_put_open(json, "goals", '[');
        for (int g = 0; g < plan->goals; g++)
            put_goal(json, r, stage, round, g);
        bw_json_close(json, ']');
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

void bw_rehearsal_json(FILE *stream, const bw_rehearsal *r) {
    bw_json json = bw_json_to(stream);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "units", bw_unit_short(r->scheme->units));
    bw_json_put_open(&json, "stages", '[');
    for (int i = 0; i < r->stage_count; i++) {
        const bw_rehearsal_stage *stage = &r->stages[i];
        char game[640];
        bw_text t = bw_text_in(game, sizeof game);
        bw_say_game(stage, &t);
        bw_json_open(&json, '{');
        bw_json_put_number(&json, "defenders", stage->def.spots);
        bw_json_put_text(&json, "shape", r->scheme->stages[stage->script.stage].shape);
        put_script(&json, &stage->script);
        put_plan(&json, r, stage);
        bw_json_put_text(&json, "game", game);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_cautions(&json, r->scheme);
    bw_json_close(&json, '}');
    bw_json_end(&json);
}
