/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/trial.h"

#include "core/replay.h"

enum { WEAK_SHOWN = 5 };

bool bw_is_late(double seconds, double metres) {
    return seconds >= 0.15 && metres >= BW_METRES_PER_YARD;
}

int bw_weak_shown(const bw_trial *trial) {
    int count = 0;
    while (count < WEAK_SHOWN && count < trial->whatif.count &&
           trial->whatif.weak[count].cost >= 0.0005)
        count++;
    return count;
}

bw_effort bw_effort_default(void) {
    return (bw_effort){.seconds = 4, .with_weak = true, .curve = bw_curve_default()};
}

bw_effort bw_effort_standard(void) {
    bw_effort effort = bw_effort_default();
    effort.with_weak = false;
    effort.curve.search.depth = 3;
    effort.curve.typical.rollouts = 24;
    effort.curve.settled_rollouts = 6;
    return effort;
}

size_t bw_trial_size(void) {
    const size_t curve = bw_curve_size(), whatif = bw_whatif_size();
    return curve > whatif ? curve : whatif;
}

/// His legs: his own, or the level's.
static bw_legs legs_of(const bw_break *b, int defender) {
    const bw_legs own = b->def.legs[defender];
    return own.vmax > 0 ? own : b->ground->level->defender;
}

bw_straggler bw_latest(const bw_break *b, const bw_state *s, int holder) {
    double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
    bw_break_stations(b, s, bw_man(s, holder), holder, tx, ty);
    bw_straggler latest = {.man = -1};
    for (int d = 0; d < b->defenders; d++) {
        if (!s->counted[d]) continue; // he is known to be late
        const int i = BW_MAX_ATTACKERS + d;
        const bw_body body = {bw_man(s, i), bw_v(s->u[i], s->v[i])};
        const bw_vec place = bw_v(tx[d], ty[d]);
        const double metres = bw_distance(body.at, place);
        const double seconds = bw_arrive(legs_of(b, d), body, place, BW_HOLD_FROM);
        if (!bw_is_late(seconds, metres) || seconds <= latest.seconds) continue;
        latest = (bw_straggler){.man = d,
                                .stage = s->in,
                                .job = s->job[d],
                                .matched = s->matched,
                                .metres = metres,
                                .seconds = seconds};
    }
    return latest;
}

/// Plays the answer once more to see who is late when each of its plies ends.
static void find_stragglers(bw_trial *trial) {
    const bw_answer *answer = &trial->curve.answer;
    bw_state now = trial->begun.start;
    for (int i = 0; i < answer->count; i++) {
        const bw_ply ply = answer->plies[i].ply;
        bw_state next;
        if (ply.kind == BW_SHOOT)
            bw_play_shot(&trial->begun, &now, &next, NULL, NULL);
        else
            bw_play(&trial->begun, &now, ply, &next, NULL, NULL);
        trial->straggler[i] = bw_latest(&trial->begun, &next, next.holder);
        now = next;
    }
}

static bw_status run(const bw_ground *ground, void *memory, size_t size, bw_trial *trial,
                     bw_text *why) {
    bw_status status = bw_break_begin(ground, &trial->def, &trial->begun, why);
    if (status != BW_OK) return status;
    status = bw_curve_run(&trial->begun, &trial->effort.curve, trial->effort.seconds, memory, size,
                          &trial->curve);
    // A search cut short still has its best line so far; the answer says so.
    if (status != BW_OK && status != BW_LIMIT) return status;
    find_stragglers(trial);
    trial->whatif.count = trial->whatif.fault_count = 0;
    if (!trial->effort.with_weak) return BW_OK;
    return bw_whatif_run(&trial->begun, &trial->curve.forecast, memory, size, &trial->whatif);
}

bw_status bw_trial_run(const bw_ground *ground, void *memory, size_t size, bw_trial *trial) {
    bw_text why = bw_text_in(trial->why, sizeof trial->why);
    trial->status = run(ground, memory, size, trial, &why);
    return trial->status;
}
