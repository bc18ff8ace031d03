/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/tester.h"

#include "core/attack_set.h"
#include "core/level.h"
#include "core/text.h"
#include "scheme/read.h"
#include "scheme/tree_build.h"
#include "trial/standard.h"
#include "trial/weak_rotations.h"

/// A late man nobody has a distance for, m.
static const double usual_late = 30 * BW_METRES_PER_YARD;

void bw_tester_reset(bw_tester *t) {
    BW_ASSERT(bw_trial_size() <= sizeof t->work);
    for (int i = 0; i < BW_TESTER_SIDES; i++) {
        bw_tester_side *side = &t->side[i];
        side->open = side->built = side->tested = false;
        side->level = -1;
    }
    t->def = bw_break_default();
    t->effort = bw_effort_default();
    t->running = t->film_side = -1;
    t->frame_count = 0;
    t->progress = (bw_trial_progress){BW_TRIAL_TYPICAL, 0, 0};
    t->error.status = BW_OK;
    t->error.pointer[0] = t->error.message[0] = '\0';
}

void bw_tester_forget(bw_tester *t, int side) {
    t->side[side].tested = false;
    if (t->running == side) t->running = -1;
    if (t->film_side != side) return;
    t->film_side = -1;
    t->frame_count = 0;
}

bw_status bw_tester_take(bw_tester *t, int side, bw_tree *tree) {
    bw_tester_side *s = &t->side[side];
    bw_tester_forget(t, side);
    s->built = s->open = false;
    if (!bw_tree_finish(tree)) {
        t->error = tree->error;
        return t->error.status;
    }
    const bw_status status = bw_scheme_read(tree, &s->scheme, &t->error);
    s->open = status == BW_OK;
    return status;
}

void bw_tester_level(bw_tester *t, int side, int level) {
    bw_tester_side *s = &t->side[side];
    if (s->level == level) return;
    s->level = level;
    s->built = false;
    bw_tester_forget(t, side);
}

void bw_tester_usual(bw_tester *t) {
    const uint64_t seed = t->def.seed;
    t->def = bw_standard_break(&t->side[0].scheme);
    t->def.seed = seed;
}

void bw_tester_numbers(bw_tester *t, int offence, int defence) {
    const bw_break_def was = t->def;
    t->def = bw_standard_def(&t->side[0].scheme, offence, defence, was.set, was.start);
    t->def.seed = was.seed;
}

static const char *set_id(const bw_scheme *scheme, int index) {
    if (index < bw_attack_set_count()) return bw_attack_set_at(index)->id;
    index -= bw_attack_set_count();
    return index < scheme->set_count ? scheme->sets[index].id : NULL;
}

void bw_tester_set(bw_tester *t, int set) {
    const char *id = set >= 0 ? set_id(&t->side[0].scheme, set) : NULL;
    if (id) bw_copy(t->def.set, sizeof t->def.set, id);
}

void bw_tester_start(bw_tester *t, int landmark) {
    const bw_scheme *scheme = &t->side[0].scheme;
    if (landmark < 0 || landmark >= scheme->landmark_count) return;
    bw_copy(t->def.start, sizeof t->def.start, scheme->landmarks[landmark].id);
}

void bw_tester_late(bw_tester *t, int count) {
    const bw_scheme *scheme = &t->side[0].scheme;
    if (count < 0 || count > BW_MAX_LATE) return;
    for (int i = t->def.late_count; i < count; i++)
        t->def.late[i] = i < scheme->late_count ? scheme->late[i].behind : usual_late;
    t->def.late_count = count;
}

void bw_tester_late_from(bw_tester *t, int index, double metres) {
    if (index >= 0 && index < t->def.late_count) t->def.late[index] = metres;
}

void bw_tester_effort(bw_tester *t, int seconds, bool quick, int seed) {
    t->effort = quick ? bw_effort_standard() : bw_effort_default();
    t->effort.with_weak = true;
    t->effort.seconds = seconds;
    t->def.seed = (uint64_t)seed;
}

static void refuse(bw_tester *t, bw_status status, const char *why) {
    t->error.status = status;
    t->error.pointer[0] = '\0';
    bw_copy(t->error.message, sizeof t->error.message, why);
}

static bw_status build(bw_tester *t, bw_tester_side *s) {
    if (!s->open) {
        refuse(t, BW_NOT_FOUND, "there is no scheme to test");
        return BW_NOT_FOUND;
    }
    if (s->built) return BW_OK;
    char room[256];
    bw_text why = bw_text_in(room, sizeof room);
    const bw_level *level = s->level < 0 ? NULL : bw_level_at(s->level);
    const bw_status status = bw_ground_build(&s->scheme, level, &s->ground, &why);
    s->built = status == BW_OK;
    if (!s->built) refuse(t, status, room);
    return status;
}

bw_status bw_tester_begin(bw_tester *t, int side) {
    bw_tester_side *s = &t->side[side];
    bw_tester_forget(t, side);
    bw_status status = build(t, s);
    if (status != BW_OK) return status;
    s->trial.def = t->def;
    s->trial.effort = t->effort;
    status = bw_trial_begin(&s->ground, t->work, sizeof t->work, &s->trial);
    t->progress = (bw_trial_progress){BW_TRIAL_TYPICAL, 0, BW_BUNDLES};
    if (status == BW_OK)
        t->running = side;
    else
        refuse(t, status, s->trial.why);
    return status;
}

bw_status bw_tester_step(bw_tester *t) {
    if (t->running < 0) return BW_NOT_FOUND;
    bw_tester_side *s = &t->side[t->running];
    const bw_status status = bw_trial_step(t->work, &t->progress);
    if (status != BW_OK) {
        refuse(t, status, "the break could not be tested");
        t->running = -1;
    } else if (t->progress.part == BW_TRIAL_DONE) {
        s->tested = true;
        t->running = -1;
    }
    return status;
}

bw_status bw_tester_adopt(bw_tester *t, int side) {
    bw_tester_side *s = &t->side[side];
    const bw_status status = build(t, s);
    if (status != BW_OK) return status;
    s->trial.begun.ground = &s->ground;
    s->tested = s->trial.status == BW_OK;
    return s->trial.status;
}

bw_status bw_tester_film(bw_tester *t, int side, int number) {
    const bw_trial *trial = &t->side[side].trial;
    t->film_side = -1;
    t->frame_count = 0;
    if (!t->side[side].tested || number >= bw_weak_shown(trial)) return BW_NOT_FOUND;
    if (number < 0 && trial->curve.answer.count == 0) return BW_NOT_FOUND;
    t->film = trial->curve.answer;
    const bw_status status =
        number < 0 ? bw_replay(&trial->begun, &t->film, t->frames, BW_MAX_FRAMES, &t->frame_count)
                   : bw_replay_rotation(&trial->begun, &trial->whatif.weak[number], &t->film,
                                        t->frames, BW_MAX_FRAMES, &t->frame_count);
    if (status != BW_OK) return status;
    t->film_side = side;
    t->film_number = number;
    return BW_OK;
}

bw_sequence bw_tester_sequence(const bw_tester *t) {
    if (t->film_side < 0) return (bw_sequence){0};
    return (bw_sequence){&t->side[t->film_side].trial.begun, &t->film, t->frames, t->frame_count};
}
