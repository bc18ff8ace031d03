/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/trial.h"

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

/// A trial under way.
typedef struct trial_work {
    bw_trial *trial;
    size_t room; ///< bytes from scratch on
    bw_trial_progress at;
    double scratch[1]; ///< the rest goes to the curve, then to the rotations
} trial_work;

size_t bw_trial_size(void) {
    const size_t curve = bw_curve_size(), whatif = bw_whatif_size();
    return sizeof(trial_work) + (curve > whatif ? curve : whatif);
}

bw_straggler bw_latest(const bw_break *b, const bw_state *s, int holder) {
    double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
    bw_break_stations(b, s, bw_man(s, holder), holder, tx, ty);
    bw_straggler latest = {.man = -1};
    for (int d = 0; d < b->defenders; d++) {
        if (!s->counted[d]) continue; // he is known to be late
        const bw_vec place = bw_v(tx[d], ty[d]);
        const double metres = bw_distance(bw_man(s, BW_MAX_ATTACKERS + d), place);
        const double seconds = bw_seconds_to(b, s, d, place);
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

bw_status bw_trial_begin(const bw_ground *ground, void *memory, size_t size, bw_trial *trial) {
    bw_text why = bw_text_in(trial->why, sizeof trial->why);
    trial->whatif.count = trial->whatif.fault_count = 0;
    trial->status = bw_break_begin(ground, &trial->def, &trial->begun, &why);
    if (trial->status != BW_OK) return trial->status;
    if (size < bw_trial_size()) return trial->status = BW_NO_ROOM;
    trial_work *w = memory;
    w->trial = trial;
    w->room = size - offsetof(trial_work, scratch);
    w->at = (bw_trial_progress){BW_TRIAL_TYPICAL, 0, BW_BUNDLES};
    trial->status = bw_curve_begin(&trial->begun, &trial->effort.curve, trial->effort.seconds,
                                   w->scratch, w->room, &trial->curve);
    return trial->status;
}

/// The curve is whole: on to the rotations.
static bw_status begin_weak(trial_work *w) {
    bw_trial *trial = w->trial;
    find_stragglers(trial);
    w->at = (bw_trial_progress){BW_TRIAL_WEAK, 0, 0};
    if (!trial->effort.with_weak) return BW_OK;
    const bw_status status = bw_whatif_begin(&trial->begun, &trial->curve.forecast, w->scratch,
                                             w->room, &trial->whatif, &w->at.of);
    const int most = trial->effort.weak_most;
    if (most > 0 && w->at.of > most) w->at.of = most;
    return status;
}

static bw_status step_curve(trial_work *w) {
    static const bw_trial_part parts[] = {BW_TRIAL_TYPICAL, BW_TRIAL_EVEN, BW_TRIAL_BEST};
    bw_curve_progress now;
    const bw_status status = bw_curve_step(w->scratch, &now);
    // A search cut short still has its best line so far; the answer says so.
    if (status != BW_OK && status != BW_LIMIT) return status;
    if (now.part == BW_CURVE_DONE) return begin_weak(w);
    w->at = (bw_trial_progress){parts[now.part], now.done, now.of};
    return BW_OK;
}

static bw_status step(trial_work *w) {
    bw_status status = BW_OK;
    if (w->at.part == BW_TRIAL_DONE) return BW_OK;
    if (w->at.part == BW_TRIAL_WEAK) {
        status = bw_whatif_step(w->scratch);
        w->at.done++;
    } else {
        status = step_curve(w);
    }
    if (w->at.part == BW_TRIAL_WEAK && w->at.done == w->at.of)
        w->at = (bw_trial_progress){BW_TRIAL_DONE, 0, 0};
    return status;
}

bw_status bw_trial_step(void *memory, bw_trial_progress *progress) {
    trial_work *w = memory;
    w->trial->status = step(w);
    *progress = w->at;
    return w->trial->status;
}

bw_status bw_trial_run(const bw_ground *ground, void *memory, size_t size, bw_trial *trial) {
    bw_trial_progress progress = {BW_TRIAL_TYPICAL, 0, 0};
    bw_status status = bw_trial_begin(ground, memory, size, trial);
    while (status == BW_OK && progress.part != BW_TRIAL_DONE)
        status = bw_trial_step(memory, &progress);
    return status;
}
