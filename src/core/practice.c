/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/practice.h"

/// A plan being laid out.
typedef struct planner {
    const bw_practice_def *def;
    bw_practice *plan;
    int places;   ///< filled in a round
    int next;     ///< who takes the first of the next round
    double at;    ///< time used
    double dry;   ///< time since the last drink
    double live;  ///< full speed so far
    double until; ///< rounds must end by then
} planner;

/// Rounds of a kind, or 1 to show it to all.
typedef struct share {
    int walk, half, full;
} share;

static int shared_goals(const bw_practice_def *def) {
    int goals = def->goals;
    // A goal's unit is worth having with two who move the ball.
    while (goals > 1 && goals * (def->spots + 2) > def->players)
        goals--;
    return goals;
}

static double cost_of(const planner *p, int kind, bool *drink) {
    const double lap = p->def->lap_s[kind] + BW_PRACTICE_CHANGE;
    *drink = p->dry > 0 && p->dry + lap > BW_PRACTICE_DRY;
    return lap + (*drink ? BW_PRACTICE_DRINK : 0);
}

/// Of those not at a spot the one who has fed least so far, lowest number on a tie.
static int least_fed(const planner *p, const bool *busy) {
    int best = BW_PRACTICE_NOBODY;
    for (int i = 0; i < p->def->players; i++) {
        if (!busy[i] && (best < 0 || p->plan->feeds[i] < p->plan->feeds[best])) best = i;
    }
    return best;
}

static void fill(planner *p, bw_round *r) {
    bw_practice *plan = p->plan;
    const int players = p->def->players, spots = p->def->spots;
    bool busy[BW_PRACTICE_PLAYERS] = {false};
    for (int g = 0; g < plan->goals; g++) {
        for (int s = 0; s < BW_MAX_SPOTS; s++)
            r->spot[g][s] = BW_PRACTICE_NOBODY;
    }
    for (int k = 0; k < p->places; k++) {
        const int who = (p->next + k) % players;
        // Where some spots stay empty, they are others each time.
        const int shift = p->places < spots ? plan->round_count : 0;
        r->spot[k / spots][(k + shift) % spots] = (int8_t)who;
        busy[who] = true;
        plan->turns[who]++;
    }
    p->next = (p->next + p->places) % players;
    r->feeder_count = (players - p->places) / plan->goals;
    if (r->feeder_count > BW_PRACTICE_FEEDERS) r->feeder_count = BW_PRACTICE_FEEDERS;
    for (int f = 0; f < r->feeder_count; f++) {
        for (int g = 0; g < plan->goals; g++) {
            const int who = least_fed(p, busy);
            int k = f;
            for (; k > 0 && r->feeder[g][k - 1] > who; k--)
                r->feeder[g][k] = r->feeder[g][k - 1];
            r->feeder[g][k] = (int8_t)who;
            busy[who] = true;
            plan->feeds[who]++;
        }
    }
}

/// One more round if it fits.
static bool add(planner *p, int kind) {
    bool drink;
    const double cost = cost_of(p, kind, &drink), lap = p->def->lap_s[kind];
    if (p->plan->round_count == BW_PRACTICE_ROUNDS || p->at + cost > p->until) return false;
    if (kind == BW_ROUND_FULL && p->live + lap > BW_PRACTICE_LIVE) return false;
    bw_round *r = &p->plan->rounds[p->plan->round_count];
    *r = (bw_round){.kind = kind, .drink = drink, .lasts_s = lap};
    r->at_s = p->at + (drink ? BW_PRACTICE_DRINK : 0);
    p->dry = (drink ? 0 : p->dry) + lap + BW_PRACTICE_CHANGE;
    fill(p, r);
    p->plan->round_count++;
    p->at += cost;
    if (kind == BW_ROUND_FULL) p->live += lap;
    return true;
}

static bool add_all(planner *p, share s) {
    const int count[BW_ROUND_KINDS] = {s.walk, s.half, s.full};
    for (int kind = 0; kind < BW_ROUND_KINDS; kind++) {
        for (int i = 0; i < count[kind]; i++) {
            if (!add(p, kind)) return false;
        }
        p->plan->whole[kind] = count[kind] >= p->plan->cycle;
    }
    return true;
}

static planner begin(const bw_practice_def *def, bw_practice *plan, double until) {
    *plan = (bw_practice){.goals = shared_goals(def)};
    planner p = {.def = def, .plan = plan, .until = until};
    p.places = plan->goals * def->spots;
    if (p.places > def->players) p.places = def->players;
    plan->cycle = (def->players + p.places - 1) / p.places;
    return p;
}

/// The richest share that fits: all paces for all; the walk only shown; two paces; one pace; or
/// nothing yet.
static planner best_share(const bw_practice_def *def, bw_practice *plan, double until) {
    begin(def, plan, until);
    const int c = plan->cycle;
    const share shares[] = {{c, c, c}, {1, c, c}, {1, c, 0}, {1, 0, c}, {0, c, 0}, {0, 0, c}};
    for (int i = 0; i < BW_COUNT(shares); i++) {
        planner p = begin(def, plan, until);
        if (add_all(&p, shares[i])) return p;
    }
    return begin(def, plan, until);
}

/// Everyone once at each pace: what that takes in all.
static double needed(const bw_practice_def *def, int cycle) {
    double sum = 0, dry = 0;
    for (int kind = 0; kind < BW_ROUND_KINDS; kind++) {
        for (int i = 0; i < cycle; i++) {
            const double lap = def->lap_s[kind] + BW_PRACTICE_CHANGE;
            const bool drink = dry > 0 && dry + lap > BW_PRACTICE_DRY;
            sum += lap + (drink ? BW_PRACTICE_DRINK : 0);
            dry = lap + (drink ? 0 : dry);
        }
    }
    return sum + BW_PRACTICE_GAME;
}

static void count_turns(const bw_practice_def *def, bw_practice *plan) {
    plan->fewest = plan->most = plan->turns[0];
    for (int i = 1; i < def->players; i++) {
        if (plan->turns[i] < plan->fewest) plan->fewest = plan->turns[i];
        if (plan->turns[i] > plan->most) plan->most = plan->turns[i];
    }
}

static bool in_range(const bw_practice_def *def) {
    for (int kind = 0; kind < BW_ROUND_KINDS; kind++) {
        if (!(def->lap_s[kind] > 0)) return false;
    }
    return def->players >= 4 && def->players <= BW_PRACTICE_PLAYERS && def->spots >= 1 &&
           def->spots <= BW_MAX_SPOTS && def->goals >= 1 && def->goals <= BW_PRACTICE_GOALS &&
           def->minutes > 0;
}

bw_status bw_practice_plan(const bw_practice_def *def, bw_practice *plan) {
    *plan = (bw_practice){0};
    if (!in_range(def)) return BW_BAD_INPUT;
    const double all = def->minutes * 60;
    // The game comes off first when there is time for one at all.
    const double game = all >= 3 * BW_PRACTICE_GAME ? BW_PRACTICE_GAME : 0;
    planner p = best_share(def, plan, all - game);
    // Nothing whole: as much as fits, at the calmest pace that fits at all. Else more at full speed.
    if (plan->round_count == 0) {
        for (int kind = 0; kind < BW_ROUND_KINDS && plan->round_count == 0; kind++) {
            while (add(&p, kind))
                ;
        }
    } else {
        while (add(&p, BW_ROUND_FULL))
            ;
    }
    plan->used_s = p.at;
    plan->need_s = needed(def, plan->cycle);
    plan->game_s = all - p.at >= BW_PRACTICE_GAME ? all - p.at : 0;
    count_turns(def, plan);
    return BW_OK;
}
