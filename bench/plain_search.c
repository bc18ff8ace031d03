/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/plain_search.h"

typedef struct rules {
    const bw_break *b;
    int end; ///< tick at which time is up
    uint64_t played;
} rules;

static void take(plain_line *best, double worth, bw_ply first, const plain_line *rest) {
    best->worth = worth;
    best->plies[0] = first;
    for (int i = 0; i < rest->count; i++)
        best->plies[i + 1] = rest->plies[i];
    best->count = rest->count + 1;
}

/// Plies come by rising rank, so among equal lines the first found is the one to keep.
static plain_line best_from(rules *r, const bw_state *from, int depth) {
    plain_line best = {0};
    if (from->tick + r->b->ground->shoot > r->end) return best;
    bw_ply plies[BW_MAX_PLIES];
    const int count = bw_plies(r->b, from, plies);
    for (int i = 0; i < count; i++) {
        if (plies[i].kind == BW_SHOOT) {
            const bw_shot_terms t = bw_play_shot(r->b, from, NULL, NULL, NULL);
            const double worth = t.place * t.left;
            r->played++;
            if (worth > best.worth) take(&best, worth, plies[i], &(plain_line){0});
        } else if (depth > 0) {
            bw_state to;
            const double kept = bw_play(r->b, from, plies[i], &to, NULL, NULL);
            r->played++;
            const plain_line rest = best_from(r, &to, depth - 1);
            const double worth = kept * rest.worth;
            if (worth > best.worth) take(&best, worth, plies[i], &rest);
        }
    }
    return best;
}

void plain_search(const bw_break *b, int depth, double seconds, plain_line *out) {
    BW_ASSERT(depth >= 0 && depth <= BW_DEEPEST);
    rules r = {.b = b, .end = (int)(bw_clamp(seconds, 0, BW_MAX_SECONDS) / BW_TICK + 0.5)};
    *out = best_from(&r, &b->start, depth);
    out->played = r.played;
}

bool plain_agrees(const plain_line *plain, const bw_answer *answer) {
    if (plain->worth != answer->worth || plain->count != answer->count) return false;
    for (int i = 0; i < plain->count; i++) {
        if (bw_ply_rank(plain->plies[i]) != bw_ply_rank(answer->plies[i].ply)) return false;
    }
    return true;
}
