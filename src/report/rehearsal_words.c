/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/rehearsal_words.h"

#include "report/catalogue.h"
#include "scheme/caption.h"
#include "trial/words.h"

static const bw_stage *stage_of(const bw_script *script) {
    return &script->scheme->stages[script->stage];
}

static const char *spot_id(const bw_script *script, int spot) {
    return stage_of(script)->spots[spot].id;
}

static bw_voice voice_of(const bw_script *script) {
    return bw_voice_of(script->scheme);
}

static bw_vec place_of(const bw_script *script, int landmark) {
    return script->scheme->landmarks[landmark].at;
}

void bw_say_unit_name(const bw_script *script, bw_text *out) {
    const bw_stage *stage = stage_of(script);
    bw_put(out, stage->shape);
    if (!stage->call[0]) return;
    bw_put(out, ", ");
    bw_put(out, stage->call);
}

void bw_say_script(const bw_script *script, bw_text *out) {
    const int more = script->stop_count - script->wanted;
    bw_put_sentence(out, voice_of(script), &bw_s_script, bw_as_count("passes", script->stop_count),
                    bw_as_count("rotations", script->rotations),
                    bw_as_part("weakest", script->weak_count > 0 ? &bw_s_script_weakest : NULL),
                    bw_as_count("weak", script->weak_count),
                    bw_as_ball("start", script->scheme, place_of(script, script->start)),
                    bw_as_part("only", more > 0 ? &bw_s_script_only : NULL),
                    bw_as_count("more", more),
                    bw_as_part("proof", script->bound == script->stop_count ? &bw_s_script_proven
                                                                            : &bw_s_script_bound),
                    bw_as_count("bound", script->bound),
                    bw_as_part("which", script->weak_count > 0 ? &bw_s_script_estimate
                                        : script->weighed      ? &bw_s_script_none_weak
                                                               : &bw_s_script_not_asked));
}

/// "1:05", minutes and seconds.
static void say_clock(double seconds, bw_text *out) {
    const int whole = (int)(seconds + 0.5);
    bw_put_int(out, whole / 60);
    bw_put(out, whole % 60 < 10 ? ":0" : ":");
    bw_put_int(out, whole % 60);
}

static bw_arg as_clock(const char *name, double seconds) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    say_clock(seconds, &own);
    return arg;
}

void bw_say_script_length(const bw_script *script, bw_text *out) {
    bw_put_sentence(out, voice_of(script), &bw_s_script_length,
                    as_clock("walk", script->seconds[BW_WALK]),
                    as_clock("half", script->seconds[BW_HALF_SPEED]),
                    as_clock("full", script->seconds[BW_FULL_SPEED]));
}

void bw_say_codes(const bw_script *script, bw_text *out) {
    const bw_stage *stage = stage_of(script);
    for (int s = 0; s < stage->defenders; s++) {
        if (s > 0) bw_put(out, ", ");
        bw_put(out, stage->spots[s].id);
        bw_put(out, " ");
        bw_put(out, stage->spots[s].name);
    }
}

void bw_say_look(const bw_script *script, int i, bw_text *out) {
    const bw_script_stop *stop = &script->stops[i];
    const bool taken = stop->on_ball >= 0, crease = stop->crease >= 0;
    const char *call = taken ? stage_of(script)->spots[stop->on_ball].call : "";
    const bool far = !(stop->metres < BW_METRES_PER_YARD);
    bw_put_sentence(
        out, voice_of(script), &bw_s_look,
        bw_as_part("on_ball", taken ? &bw_s_look_ball : &bw_s_look_hold),
        bw_as_word("taker", taken ? spot_id(script, stop->on_ball) : ""),
        bw_as_part("calling", call[0] ? &bw_s_look_call : NULL), bw_as_word("call", call),
        bw_as_part("on_crease", crease ? &bw_s_look_crease : NULL),
        bw_as_word("crease", crease ? spot_id(script, stop->crease) : ""),
        bw_as_part("way", far ? &bw_s_look_way : NULL),
        bw_as_word("farthest", spot_id(script, stop->farthest)), bw_as_length("far", stop->metres));
}

/// A player's number.
static void say_player(const bw_rehearsal *r, int player, bw_text *out) {
    bw_put_int(out, player < r->numbered ? r->numbers[player] : player + 1);
}

/// At which paces everyone has a turn, in words.
static void put_whole(const bw_practice *plan, bw_text *out) {
    int count = 0, said = 0;
    for (int p = 0; p < BW_PACE_COUNT; p++)
        count += plan->whole[p];
    for (int p = 0; p < BW_PACE_COUNT; p++) {
        if (!plan->whole[p]) continue;
        if (said > 0) bw_put(out, said + 1 == count ? " and " : ", ");
        bw_put(out,
               p == BW_WALK ? "at a walk" : (p == BW_HALF_SPEED ? "at half" : "at full speed"));
        said++;
    }
    if (plan->whole[BW_HALF_SPEED] && !plan->whole[BW_FULL_SPEED]) bw_put(out, " speed");
}

static bw_arg as_whole(const char *name, const bw_practice *plan) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    put_whole(plan, &own);
    return arg;
}

/// Begun minutes.
static int minutes(double seconds) {
    const int whole = (int)(seconds / 60);
    return seconds > whole * 60 ? whole + 1 : whole;
}

void bw_say_plan(const bw_rehearsal *r, const bw_rehearsal_stage *stage, bw_text *out) {
    (void)r;
    const bw_practice *plan = &stage->plan;
    const bool any = plan->whole[0] || plan->whole[1] || plan->whole[2];
    const bool all = plan->whole[0] && plan->whole[1] && plan->whole[2] && plan->game_s > 0;
    const bool cones = stage->def.players < stage->def.spots;
    bw_put_sentence(
        out, voice_of(&stage->script), &bw_s_plan, bw_as_count("players", stage->def.players),
        bw_as_count("goals", plan->goals), bw_as_number("minutes", stage->def.minutes, 0),
        bw_as_part("turns", plan->round_count == 0 ? &bw_s_plan_none : &bw_s_plan_turns),
        bw_as_count("fewest", plan->fewest),
        bw_as_part("or_most", plan->most > plan->fewest ? &bw_s_plan_or_most : NULL),
        bw_as_count("most", plan->most), bw_as_part("whole", any ? &bw_s_plan_whole : NULL),
        as_whole("paces", plan), bw_as_part("cones", cones ? &bw_s_plan_cones : NULL),
        bw_as_part("need", all ? NULL : &bw_s_plan_need),
        bw_as_count("needed", minutes(plan->need_s)),
        bw_as_part("or_else", plan->goals < BW_PRACTICE_GOALS ? &bw_s_plan_or_else : NULL));
}

void bw_say_round(const bw_rehearsal_stage *stage, int i, bw_text *out) {
    const bw_round *round = &stage->plan.rounds[i];
    bw_put_sentence(out, voice_of(&stage->script), &bw_s_round, bw_as_count("round", i + 1),
                    bw_as_word("pace", bw_pace_name((bw_pace)round->kind)),
                    as_clock("at", round->at_s), as_clock("lasts", round->lasts_s));
}

static void put_unit(const bw_rehearsal *r, const bw_rehearsal_stage *stage, const bw_round *round,
                     int goal, bool *busy, bw_text *out) {
    for (int s = 0; s < stage->def.spots; s++) {
        const int who = round->spot[goal][s];
        if (s > 0) bw_put(out, ", ");
        bw_put(out, spot_id(&stage->script, s));
        bw_put(out, " ");
        if (who < 0) {
            bw_put(out, "cone");
            continue;
        }
        say_player(r, who, out);
        busy[who] = true;
    }
    bw_put(out, ". ");
    for (int f = 0; f < round->feeder_count; f++) {
        bw_put(out, f == 0 ? "Feed: " : ", ");
        say_player(r, round->feeder[goal][f], out);
        busy[round->feeder[goal][f]] = true;
    }
    static const char *const coach[] = {"The coach moves the ball.", " and the coach."};
    bw_put(out, round->feeder_count < 2 ? coach[round->feeder_count] : ".");
}

void bw_say_round_men(const bw_rehearsal *r, const bw_rehearsal_stage *stage, int i,
                      const char *between, bw_text *out) {
    const bw_round *round = &stage->plan.rounds[i];
    bool busy[BW_PRACTICE_PLAYERS] = {false};
    if (round->drink) bw_put(out, "Water first. ");
    for (int g = 0; g < stage->plan.goals; g++) {
        if (g > 0) bw_put(out, between);
        if (stage->plan.goals > 1) {
            bw_put(out, "Goal ");
            bw_put_int(out, g + 1);
            bw_put(out, ": ");
        }
        put_unit(r, stage, round, g, busy, out);
    }
    bool any = false;
    for (int p = 0; p < stage->def.players; p++) {
        if (busy[p]) continue;
        if (!any) bw_put(out, between);
        bw_put(out, any ? ", " : "Wait: ");
        say_player(r, p, out);
        any = true;
    }
    if (any) bw_put(out, ".");
}

void bw_say_game(const bw_rehearsal_stage *stage, bw_text *out) {
    const bw_script *script = &stage->script;
    const bw_scheme *scheme = script->scheme;
    const int defence = stage->def.spots;
    const int *weakest = script->weak[0];
    const bool weak = script->weak_count > 0, timed = stage->plan.game_s > 0;
    bw_put_sentence(
        out, voice_of(script), &bw_s_game, bw_as_part("time", timed ? &bw_s_game_time : NULL),
        bw_as_count("game", timed ? minutes(stage->plan.game_s - 59) : 0),
        bw_as_count("attackers", defence < BW_MAX_ATTACKERS ? defence + 1 : defence),
        bw_as_count("defenders", defence), bw_as_at("at", scheme, place_of(script, script->start)),
        bw_as_part("rule", weak ? &bw_s_game_two : &bw_s_game_three),
        bw_as_ball("from", scheme, place_of(script, weak ? weakest[0] : 0)),
        bw_as_ball("to", scheme, place_of(script, weak ? weakest[1] : 0)));
}
