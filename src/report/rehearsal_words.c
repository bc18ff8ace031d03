/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/rehearsal_words.h"

#include "scheme/caption.h"
#include "trial/words.h"

static const bw_stage *stage_of(const bw_script *script) {
    return &script->scheme->stages[script->stage];
}

static const char *spot_id(const bw_script *script, int spot) {
    return stage_of(script)->spots[spot].id;
}

static void put_counted(bw_text *out, int count, const char *one, const char *many) {
    bw_put_int(out, count);
    bw_put(out, count == 1 ? one : many);
}

void bw_say_unit_name(const bw_script *script, bw_text *out) {
    const bw_stage *stage = stage_of(script);
    bw_put(out, stage->shape);
    if (!stage->call[0]) return;
    bw_put(out, ", ");
    bw_put(out, stage->call);
}

void bw_say_script(const bw_script *script, bw_text *out) {
    const bw_scheme *scheme = script->scheme;
    put_counted(out, script->stop_count, " pass goes", " passes go");
    bw_put(out, " through all ");
    put_counted(out, script->rotations, " rotation", " rotations");
    if (script->weak_count > 0) {
        bw_put(out, ", the ");
        put_counted(out, script->weak_count, " weakest", " weakest");
        bw_put(out, " two or three times");
    }
    bw_put(out, ", from ");
    bw_say_ball(scheme, scheme->landmarks[script->start].at, out);
    bw_put(out, " and back there");
    if (script->stop_count > script->wanted) {
        bw_put(out, "; ");
        put_counted(out, script->stop_count - script->wanted, " pass", " passes");
        bw_put(out, " only to bring the ball where it is needed");
    }
    bw_put(out, ".");
    if (script->bound == script->stop_count) {
        bw_put(out, " No closed script is shorter: proven.");
    } else {
        bw_put(out, " No closed script has fewer than ");
        bw_put_int(out, script->bound);
        bw_put(out, "; a shorter one than this was not found.");
    }
    if (script->weak_count > 0)
        bw_put(out, " Which are weak is the model's estimate: \"weak 1\" costs most.");
    else if (script->weighed)
        bw_put(out, " The model finds no rotation weak.");
    else
        bw_put(out, " Which are weak was not asked.");
}

/// "1:05", minutes and seconds.
static void say_clock(double seconds, bw_text *out) {
    const int whole = (int)(seconds + 0.5);
    bw_put_int(out, whole / 60);
    bw_put(out, whole % 60 < 10 ? ":0" : ":");
    bw_put_int(out, whole % 60);
}

void bw_say_script_length(const bw_script *script, bw_text *out) {
    bw_put(out, "Once through, as the model has it: ");
    for (int p = 0; p < BW_PACE_COUNT; p++) {
        say_clock(script->seconds[p], out);
        bw_put(out, " min at ");
        bw_put(out, p == BW_WALK ? "a walk" : bw_pace_name((bw_pace)p));
        bw_put(out, p + 1 < BW_PACE_COUNT ? ", " : ".");
    }
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
    if (stop->on_ball >= 0) {
        const bw_spot *spot = &stage_of(script)->spots[stop->on_ball];
        bw_put(out, spot->id);
        bw_put(out, " takes the ball");
        if (spot->call[0]) {
            bw_put(out, ": \"");
            bw_put(out, spot->call);
            bw_put(out, "\"");
        }
        bw_put(out, ".");
    } else {
        bw_put(out, "The low pair hold.");
    }
    if (stop->crease >= 0) {
        bw_put(out, " ");
        bw_put(out, spot_id(script, stop->crease));
        bw_put(out, " has the crease.");
    }
    if (stop->metres < BW_METRES_PER_YARD) return;
    bw_put(out, " Longest way: ");
    bw_put(out, spot_id(script, stop->farthest));
    bw_put(out, ", ");
    bw_say_length(script->scheme->units, stop->metres, out);
    bw_put(out, ".");
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

static void put_turns(const bw_practice *plan, bw_text *out) {
    bw_put_int(out, plan->fewest);
    if (plan->most > plan->fewest) {
        bw_put(out, " or ");
        bw_put_int(out, plan->most);
    }
    bw_put(out, plan->most == 1 ? " turn" : " turns");
}

static void put_minutes(double seconds, bw_text *out) {
    const int whole = (int)(seconds / 60);
    bw_put_int(out, seconds > whole * 60 ? whole + 1 : whole);
    bw_put(out, " min");
}

void bw_say_plan(const bw_rehearsal *r, const bw_rehearsal_stage *stage, bw_text *out) {
    (void)r;
    const bw_practice *plan = &stage->plan;
    const bool all = plan->whole[0] && plan->whole[1] && plan->whole[2] && plan->game_s > 0;
    put_counted(out, stage->def.players, " player", " players");
    bw_put(out, ", ");
    put_counted(out, plan->goals, " goal", " goals");
    bw_put(out, ", ");
    bw_put_fixed(out, stage->def.minutes, 0);
    bw_put(out, " min. ");
    if (plan->round_count == 0) {
        bw_put(out, "Not even once through fits.");
    } else {
        bw_put(out, "Everyone has ");
        put_turns(plan, out);
        bw_put(out, " at the spots");
        if (plan->whole[0] || plan->whole[1] || plan->whole[2]) {
            bw_put(out, ", at least one ");
            put_whole(plan, out);
        }
        bw_put(out, ".");
    }
    if (stage->def.players < stage->def.spots) {
        bw_put(out, " Fewer players than spots: a cone stands where nobody does.");
    }
    if (all) return;
    bw_put(out, " The time does not suffice for walk, half and full speed and a game for all: that "
                "takes ");
    put_minutes(plan->need_s, out);
    bw_put(out, plan->goals < BW_PRACTICE_GOALS ? ", or more goals or a shorter script." : ".");
}

void bw_say_round(const bw_rehearsal_stage *stage, int i, bw_text *out) {
    const bw_round *round = &stage->plan.rounds[i];
    bw_put(out, "Round ");
    bw_put_int(out, i + 1);
    bw_put(out, ", ");
    bw_put(out, bw_pace_name((bw_pace)round->kind));
    bw_put(out, ", at ");
    say_clock(round->at_s, out);
    bw_put(out, " for ");
    say_clock(round->lasts_s, out);
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
    const int offence = defence < BW_MAX_ATTACKERS ? defence + 1 : defence;
    if (stage->plan.game_s > 0) {
        put_minutes(stage->plan.game_s - 59, out);
        bw_put(out, ": ");
    }
    bw_put_int(out, offence);
    bw_put(out, " against ");
    bw_put_int(out, defence);
    bw_put(out, " and a goalkeeper, one goal, ball from the coach ");
    bw_say_at(scheme, scheme->landmarks[script->start].at, out);
    bw_put(out,
           "; a stop or a clear is a point for the defence, then the next men come in. One rule "
           "is changed: ");
    if (script->weak_count == 0) {
        bw_put(out, "the offence must pass three times before it shoots.");
        return;
    }
    bw_put(out, "a goal right after a pass from ");
    bw_say_ball(scheme, scheme->landmarks[script->weak[0][0]].at, out);
    bw_put(out, " to ");
    bw_say_ball(scheme, scheme->landmarks[script->weak[0][1]].at, out);
    bw_put(out, " counts two, for that is the weakest rotation.");
}
