/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which plies there are from a state.
#include "core/play.h"
#include "core/play_part.h"

/// A cut is worth beginning when the place is better by this much (goals, with time and room).
#define CUT_GAIN 0.05
/// A man this far from his place, m, may go to it.
#define OFF_PLACE 1.5
/// Passes shorter than this are no passes, m.
#define SHORTEST_PASS 1.5
/// Carries kept a ply.
#define MOST_CARRIES 16

typedef struct cut {
    double gain;
    int8_t who, place;
} cut;

const char *bw_kind_name(bw_kind kind) {
    static const char *const names[BW_KIND_COUNT] = {"shoot", "pass", "carry", "hold"};
    BW_ASSERT(kind < BW_KIND_COUNT);
    return names[kind];
}

static bool may_go(const bw_ground *g, const bw_state *s, int a, int place) {
    const int at = s->place[a];
    if (at != place) return g->graph.linked[at][place];
    return bw_length2(bw_sub(bw_man(s, a), g->places[place].at)) > OFF_PLACE * OFF_PLACE;
}

/// The cuts that gain most, by worth of the place times how open it is now; by rising man and place.
static int find_cuts(const bw_break *b, const bw_state *s, cut *best) {
    const bw_ground *g = b->ground;
    int count = 0;
    for (int a = 0; a < b->attackers; a++) {
        if (a == s->holder || s->moving[a]) continue;
        const double now = bw_shot_worth(&g->shot, bw_man(s, a));
        for (int p = 0; p < g->place_count; p++) {
            const double gain = g->worth[p] - now;
            if (gain < CUT_GAIN || !may_go(g, s, a, p)) continue;
            if (count == BW_MAX_CUTS && gain <= best[BW_MAX_CUTS - 1].gain) continue;
            const double score = gain * bw_shot_open(b, s, g->places[p].at);
            int k = count < BW_MAX_CUTS ? count++ : BW_MAX_CUTS;
            if (k == BW_MAX_CUTS) {
                if (score <= best[k - 1].gain) continue;
                k--;
            }
            for (; k > 0 && score > best[k - 1].gain; k--)
                best[k] = best[k - 1];
            best[k] = (cut){score, (int8_t)a, (int8_t)p};
        }
    }
    for (int i = 1; i < count; i++) {
        const cut c = best[i];
        int k = i;
        for (; k > 0 && (best[k - 1].who > c.who ||
                         (best[k - 1].who == c.who && best[k - 1].place > c.place));
             k--)
            best[k] = best[k - 1];
        best[k] = c;
    }
    return count;
}

static int with_cuts(bw_ply ply, const cut *cuts, int count, bw_ply *list) {
    list[0] = ply;
    for (int i = 0; i < count; i++) {
        list[i + 1] = ply;
        list[i + 1].cutter = cuts[i].who;
        list[i + 1].cut_place = cuts[i].place;
    }
    return count + 1;
}

static int list_plies(const bw_break *b, const bw_state *s, const cut *cuts, int cut_count,
                      bw_ply *list) {
    const bw_ground *g = b->ground;
    const int a = s->holder;
    bw_ply ply = {BW_SHOOT, BW_NOBODY, BW_NOBODY, BW_NOBODY};
    int n = 0;
    if (bw_shot_worth(&g->shot, bw_man(s, a)) > 0) list[n++] = ply;
    ply.kind = BW_PASS;
    for (int j = 0; j < b->attackers; j++) {
        const double d = bw_distance(bw_man(s, a), bw_man(s, j));
        if (j == a || d < SHORTEST_PASS || d > BW_LONGEST_PASS) continue;
        ply.to = (int8_t)j;
        n += with_cuts(ply, cuts, cut_count, list + n);
    }
    ply.kind = BW_CARRY;
    for (int p = 0, carries = 0; p < g->place_count && carries < MOST_CARRIES; p++) {
        if (!may_go(g, s, a, p)) continue;
        ply.to = (int8_t)p;
        carries++;
        n += with_cuts(ply, cuts, cut_count, list + n);
    }
    ply.kind = BW_HOLD;
    ply.to = BW_NOBODY;
    n += with_cuts(ply, cuts, cut_count, list + n);
    BW_ASSERT(n <= BW_MAX_PLIES);
    return n;
}

int bw_plies(const bw_break *b, const bw_state *s, bw_ply *list) {
    cut cuts[BW_MAX_CUTS];
    const int count = find_cuts(b, s, cuts);
    return list_plies(b, s, cuts, count, list);
}

int bw_plies_uncut(const bw_break *b, const bw_state *s, bw_ply *list) {
    return list_plies(b, s, NULL, 0, list);
}
