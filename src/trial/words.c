/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/words.h"

#include "draw/sequence.h"
#include "scheme/caption.h"
#include "trial/catalogue.h"

/// The places inside that have no landmark of their own.
static const struct {
    const char *id, *name, *where, *toward;
} inside[] = {
    {"crease", "crease", "on the crease", "to the crease"},
    {"slot", "slot", "in the slot", "into the slot"},
    {"hash-left", "left hash", "at the left hash", "to the left hash"},
    {"hash-right", "right hash", "at the right hash", "to the right hash"},
    {"low-left", "low left", "low on the left", "low on the left"},
    {"low-right", "low right", "low on the right", "low on the right"},
};

/// A ball this near a place is there, m.
static const double there = 2.0;

void bw_say_owner(const bw_scheme *scheme, bw_text *out) {
    if (!scheme->team[0]) {
        bw_put(out, scheme->name);
        return;
    }
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_owner, bw_as_word("scheme", scheme->name),
                    bw_as_word("team", scheme->team));
}

void bw_say_break(const bw_ground *ground, const bw_break_def *def, bw_text *out) {
    const bw_scheme *scheme = ground->scheme;
    const int start = bw_scheme_landmark(scheme, def->start);
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_break_in_short,
                    bw_as_part("numbers", &bw_s_numbers), bw_as_count("attackers", def->offence),
                    bw_as_count("defenders", def->defence), bw_as_word("set", def->set),
                    bw_as_at("at", scheme, scheme->landmarks[start].at),
                    bw_as_word("level", ground->level->name));
}

void bw_say_late_man(const bw_scheme *scheme, int index, bw_text *out) {
    static const bw_sentence *const plain[BW_MAX_LATE] = {&bw_s_late_1, &bw_s_late_2, &bw_s_late_3,
                                                          &bw_s_late_4};
    if (index < scheme->late_count && scheme->late[index].role[0])
        bw_put(out, scheme->late[index].role);
    else
        bw_put_plain_sentence(out, bw_voice_of(scheme), plain[index]);
}

void bw_say_late_men(const bw_ground *ground, const bw_break *b, bw_text *out) {
    const bw_voice voice = bw_voice_of(ground->scheme);
    if (b->def.late_count == 0) {
        bw_put_plain_sentence(
            out, voice, b->def.defence < b->def.offence ? &bw_s_late_nobody : &bw_s_late_even);
        return;
    }
    for (int i = 0; i < b->def.late_count; i++) {
        bw_arg role;
        bw_text own = bw_own_word(&role, "role");
        bw_say_late_man(ground->scheme, i, &own);
        bw_put_sentence(out, voice, i == 0 ? &bw_s_late_first : &bw_s_late_next, role,
                        bw_as_count("order", i + 1), bw_as_length("far", b->def.late[i]));
    }
    bw_put_char(out, '.');
}

static int inside_index(const char *id) {
    for (int i = 0; i < BW_COUNT(inside); i++) {
        if (bw_same(inside[i].id, id)) return i;
    }
    return -1;
}

void bw_say_node(const bw_ground *ground, int place, bw_text *out) {
    const bw_node *node = &ground->places[place];
    const int i = node->landmark < 0 ? inside_index(node->id) : -1;
    if (node->landmark >= 0)
        bw_put(out, ground->scheme->landmarks[node->landmark].name);
    else
        bw_put(out, i >= 0 ? inside[i].name : node->id);
}

/// A ball place in a sentence: "at left wing", "on the crease", "at 8.0 yd left, 3.0 yd out".
static void say_spot(const bw_ground *ground, bw_vec at, bw_text *out) {
    const bw_node *node = &ground->places[bw_ground_nearest(ground, at)];
    if (bw_distance(node->at, at) > there) {
        bw_put_sentence(out, bw_voice_of(ground->scheme), &bw_s_spot_elsewhere,
                        bw_as_place("place", ground->scheme->units, at));
        return;
    }
    const int i = node->landmark < 0 ? inside_index(node->id) : -1;
    if (i >= 0)
        bw_put(out, inside[i].where);
    else
        bw_say_at(ground->scheme, node->at, out);
}

static bool begins(const char *text, const char *with) {
    while (*with && *text == *with) {
        text++;
        with++;
    }
    return *with == '\0';
}

/// "to the left wing", "to the hole", "behind the goal", "into the slot": where a run or a carry goes.
static void say_toward(const bw_ground *ground, int place, bw_text *out) {
    const bw_node *node = &ground->places[place];
    const int i = node->landmark < 0 ? inside_index(node->id) : -1;
    if (i >= 0) {
        bw_put(out, inside[i].toward);
        return;
    }
    char at[BW_NAME_SIZE + 32];
    bw_text t = bw_text_in(at, sizeof at);
    bw_say_at(ground->scheme, node->at, &t);
    const char *name = ground->scheme->landmarks[node->landmark].name;
    // A name that tells where by itself takes no "to".
    if (!bw_same(at, name)) bw_put(out, begins(name, "the ") ? "to " : "to the ");
    bw_put(out, name);
}

static bw_arg as_toward(const char *name, const bw_ground *ground, int place) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    say_toward(ground, place, &own);
    return arg;
}

static bw_arg as_spot(const char *name, const bw_ground *ground, bw_vec at) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    say_spot(ground, at, &own);
    return arg;
}

bw_arg bw_as_node(const char *name, const bw_ground *ground, int place) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_node(ground, place, &own);
    return arg;
}

/// A receiver's own cut is said in place of where he catches.
static bool cuts_to_catch(const bw_ply *ply) {
    return ply->kind == BW_PASS && ply->cutter == ply->to;
}

static const bw_sentence *step_of(const bw_ply *ply) {
    switch (ply->kind) {
    case BW_SHOOT: return &bw_s_step_shot;
    case BW_PASS: return cuts_to_catch(ply) ? &bw_s_step_pass_to_cutter : &bw_s_step_pass;
    case BW_CARRY: return &bw_s_step_carry;
    default: return &bw_s_step_hold;
    }
}

void bw_say_step(const bw_trial *trial, int i, bw_text *out) {
    const bw_answer *answer = &trial->curve.answer;
    const bw_answer_ply *step = &answer->plies[i];
    const bw_ply *ply = &step->ply;
    const bw_ground *ground = trial->begun.ground;
    const bool cut = ply->cutter != BW_NOBODY;
    bw_put_sentence(
        out, bw_voice_of(ground->scheme), step_of(ply), bw_as_count("who", step->who + 1),
        bw_as_count("to", ply->to + 1), as_spot("spot", ground, step->to),
        bw_as_place("place", ground->scheme->units, answer->shot.at),
        ply->kind == BW_CARRY ? as_toward("toward", ground, ply->to) : bw_as_part("toward", NULL),
        bw_as_part("cut", !cut                 ? NULL
                          : cuts_to_catch(ply) ? &bw_s_cut_catching
                                               : &bw_s_cut_other),
        bw_as_count("cutter", ply->cutter + 1),
        cut ? as_toward("cut_toward", ground, ply->cut_place) : bw_as_part("cut_toward", NULL));
}

void bw_say_step_chance(const bw_trial *trial, int i, bw_text *out) {
    const bw_answer_ply *step = &trial->curve.answer.plies[i];
    static const bw_sentence *const kinds[] = {&bw_s_chance_scores, &bw_s_chance_completed,
                                               &bw_s_chance_kept, &bw_s_chance_kept};
    bw_put_sentence(out, (bw_voice){0}, kinds[step->ply.kind],
                    bw_as_in_100("chance", step->chance));
}

void bw_say_defender(const bw_ground *ground, int stage, int job, bool matched, bw_text *out) {
    const bw_voice voice = bw_voice_of(ground->scheme);
    const int index = bw_scheme_stage(ground->scheme, stage);
    if (matched)
        bw_put_sentence(out, voice, &bw_s_job_man, bw_as_count("attacker", job + 1));
    else if (index < 0 || job < 0)
        bw_put_plain_sentence(out, voice, &bw_s_job_late);
    else
        bw_put(out, ground->scheme->stages[index].spots[job].name);
}

bw_arg bw_as_defender(const char *name, const bw_ground *ground, int stage, int job, bool matched) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_defender(ground, stage, job, matched, &own);
    return arg;
}

void bw_say_straggler(const bw_trial *trial, const bw_straggler *man, bw_text *out) {
    if (man->man < 0) return;
    const bw_ground *ground = trial->begun.ground;
    const char *code = bw_defender_code(&trial->begun, man->man);
    const int stage = bw_scheme_stage(ground->scheme, man->stage);
    const bool own = !man->matched && stage >= 0 && man->job >= 0 &&
                     bw_same(ground->scheme->stages[stage].spots[man->job].id, code);
    bw_put_sentence(out, bw_voice_of(ground->scheme), &bw_s_straggler, bw_as_word("code", code),
                    bw_as_seconds("late", man->seconds), bw_as_length("away", man->metres),
                    bw_as_part("doing", man->matched ? &bw_s_straggler_on
                                        : own        ? NULL
                                                     : &bw_s_straggler_as),
                    bw_as_count("attacker", man->job + 1),
                    bw_as_defender("job", ground, man->stage, man->job, false));
}

void bw_say_range(double worth, double error, bw_text *out) {
    bw_put_sentence(out, (bw_voice){0}, &bw_s_range,
                    bw_as_in_100("low", bw_max(0, worth - 2 * error)),
                    bw_as_in_100("high", worth + 2 * error));
}
