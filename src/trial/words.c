/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/words.h"

#include "draw/sequence.h"
#include "scheme/caption.h"

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
    bw_put(out, scheme->name);
    if (!scheme->team[0]) return;
    bw_put(out, ", ");
    bw_put(out, scheme->team);
}

void bw_say_numbers(const bw_break_def *def, bw_text *out) {
    bw_put_int(out, def->offence);
    bw_put(out, " against ");
    bw_put_int(out, def->defence);
}

void bw_say_break(const bw_ground *ground, const bw_break_def *def, bw_text *out) {
    const bw_scheme *scheme = ground->scheme;
    const int start = bw_scheme_landmark(scheme, def->start);
    bw_say_numbers(def, out);
    bw_put(out, ", attack set ");
    bw_put(out, def->set);
    bw_put(out, ", ball ");
    bw_say_at(scheme, scheme->landmarks[start].at, out);
    bw_put(out, ", ");
    bw_put(out, ground->level->name);
    bw_put(out, ".");
}

void bw_say_late_man(const bw_scheme *scheme, int index, bw_text *out) {
    static const char *const plain[BW_MAX_LATE] = {"first late man", "second late man",
                                                   "third late man", "fourth late man"};
    const bool named = index < scheme->late_count && scheme->late[index].role[0];
    bw_put(out, named ? scheme->late[index].role : plain[index]);
}

void bw_say_late_men(const bw_ground *ground, const bw_break *b, bw_text *out) {
    if (b->def.late_count == 0) {
        bw_put(out, b->def.defence < b->def.offence ? "Nobody comes back to help."
                                                    : "Numbers are even from the start.");
        return;
    }
    for (int i = 0; i < b->def.late_count; i++) {
        char name[BW_NAME_SIZE];
        bw_text t = bw_text_in(name, sizeof name);
        bw_say_late_man(ground->scheme, i, &t);
        if (i == 0)
            bw_say_first(name, out);
        else
            bw_put(out, name);
        bw_put(out, " (+");
        bw_put_int(out, i + 1);
        bw_put(out, i == 0 ? ") comes from " : ") from ");
        bw_say_length(ground->scheme->units, b->def.late[i], out);
        if (i == 0) bw_put(out, " behind");
        bw_put(out, i + 1 < b->def.late_count ? ", " : ".");
    }
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

void bw_say_spot(const bw_ground *ground, bw_vec at, bw_text *out) {
    const bw_node *node = &ground->places[bw_ground_nearest(ground, at)];
    if (bw_distance(node->at, at) > there) {
        bw_put(out, "at ");
        bw_say_place(ground->scheme->units, at, out);
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

/// A cut begun with a ply; the receiver's own is told in place of where he catches.
static void say_cut(const bw_trial *trial, const bw_ply *ply, bw_text *out) {
    if (ply->cutter == BW_NOBODY) return;
    if (ply->kind == BW_PASS && ply->cutter == ply->to) {
        bw_put(out, ", who cuts ");
    } else {
        bw_put(out, "; ");
        bw_put_int(out, ply->cutter + 1);
        bw_put(out, " cuts ");
    }
    say_toward(trial->begun.ground, ply->cut_place, out);
}

void bw_say_step(const bw_trial *trial, int i, bw_text *out) {
    const bw_answer_ply *step = &trial->curve.answer.plies[i];
    const bw_ground *ground = trial->begun.ground;
    bw_put_int(out, step->who + 1);
    switch (step->ply.kind) {
    case BW_SHOOT:
        bw_put(out, " shoots from ");
        bw_say_place(ground->scheme->units, trial->curve.answer.shot.at, out);
        break;
    case BW_PASS:
        bw_put(out, " passes to ");
        bw_put_int(out, step->ply.to + 1);
        if (step->ply.cutter == step->ply.to) break;
        bw_put(out, " ");
        bw_say_spot(ground, step->to, out);
        break;
    case BW_CARRY:
        bw_put(out, " carries ");
        say_toward(ground, step->ply.to, out);
        break;
    default: bw_put(out, " holds the ball");
    }
    say_cut(trial, &step->ply, out);
}

void bw_say_step_chance(const bw_trial *trial, int i, bw_text *out) {
    const bw_answer_ply *step = &trial->curve.answer.plies[i];
    static const char *const verbs[] = {"scores ", "completed ", "kept ", "kept "};
    bw_put(out, verbs[step->ply.kind]);
    bw_say_in_100(step->chance, out);
}

void bw_say_defender(const bw_ground *ground, int stage, int job, bool matched, bw_text *out) {
    if (matched) {
        bw_put(out, "man on ");
        bw_put_int(out, job + 1);
        return;
    }
    const int index = bw_scheme_stage(ground->scheme, stage);
    if (index < 0 || job < 0)
        bw_put(out, "a late man");
    else
        bw_put(out, ground->scheme->stages[index].spots[job].name);
}

void bw_say_straggler(const bw_trial *trial, const bw_straggler *man, bw_text *out) {
    if (man->man < 0) return;
    const bw_ground *ground = trial->begun.ground;
    const char *code = bw_defender_code(&trial->begun, man->man);
    const int stage = bw_scheme_stage(ground->scheme, man->stage);
    const bool own = !man->matched && stage >= 0 &&
                     bw_same(ground->scheme->stages[stage].spots[man->job].id, code);
    bw_put(out, code);
    bw_put(out, " is ");
    bw_say_seconds(man->seconds, out);
    bw_put(out, " late");
    if (man->matched) {
        bw_put(out, " on ");
        bw_put_int(out, man->job + 1);
    } else if (!own) {
        bw_put(out, " as ");
        bw_say_defender(ground, man->stage, man->job, false, out);
    }
    bw_put(out, ", ");
    bw_say_length(ground->scheme->units, man->metres, out);
    bw_put(out, " away.");
}

void bw_say_range(double worth, double error, bw_text *out) {
    int low = bw_in_100(bw_max(0, worth - 2 * error)), high = bw_in_100(worth + 2 * error);
    bw_put_int(out, low);
    bw_put(out, " to ");
    bw_put_int(out, high);
}
