/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/who.h"
#include "core/sprint.h"
#include "core/text.h"
#include "scheme/margin.h"
#include "trial/standard.h"
#include <stdlib.h>
#include <string.h>

enum { WORTH_DRILLS = 12 };

/// Cost of an idle spot by margin: never the tightest run of a line-up.
#define IDLE_COST (-1000.0)

typedef struct choosing {
    const bw_scheme *scheme;
    int stage;
    const bw_candidate *men;
    int count;
    bool idle[BW_LINEUP_PLACES];
    bw_lineup lineup;
    bw_judge *judge;
    bw_break_def drills[WORTH_DRILLS];
    int drill_count;
    bw_judgement verdict;
    bw_watcher watch;
    int done; ///< plays of all drills, of plays()
} choosing;

/// Late men of the standard break with this stage: those who bring numbers to even.
static int late_men(const bw_scheme *scheme, int stage) {
    const int defence = scheme->stages[stage].defenders;
    const bw_break_def def =
        bw_standard_def(scheme, BW_MAX_ATTACKERS, defence, "2-2-2", scheme->landmarks[0].id);
    const int room = BW_LINEUP_PLACES - defence, even = BW_MAX_ATTACKERS - defence;
    int late = def.late_count < even ? def.late_count : even;
    return late < room ? late : room;
}

int bw_who_places(const bw_scheme *scheme, int stage, char name[BW_LINEUP_PLACES][BW_NAME_SIZE]) {
    const bw_stage *t = &scheme->stages[stage];
    for (int s = 0; s < t->defenders; s++)
        bw_copy(name[s], BW_NAME_SIZE, t->spots[s].name);
    const int late = late_men(scheme, stage);
    for (int i = 0; i < late; i++)
        bw_copy(name[t->defenders + i], BW_NAME_SIZE, scheme->late[i].role);
    return t->defenders + late;
}

void bw_who_codes(const bw_scheme *scheme, int stage, int place,
                  char codes[BW_MAX_SPOTS + 1][BW_ID_SIZE]) {
    const bw_stage *t = &scheme->stages[stage];
    int count = 0;
    if (place < t->defenders) {
        bw_copy(codes[count++], BW_ID_SIZE, t->spots[place].id);
    } else {
        const bw_late *late = &scheme->late[place - t->defenders];
        for (int i = 0; i < late->take_count; i++)
            bw_copy(codes[count++], BW_ID_SIZE, late->takes[i]);
    }
    codes[count][0] = '\0';
}

/// Seconds short in the tightest run; for a late man, seconds slower than the level to his spot.
static void fill_margins(choosing *c) {
    const int spots = c->scheme->stages[c->stage].defenders;
    const bw_legs level = bw_level_at(c->scheme->level)->defender;
    for (int m = 0; m < c->count; m++) {
        bw_margin margin[BW_MAX_SPOTS];
        const bw_legs legs = c->men[m].legs.vmax > 0 ? c->men[m].legs : level;
        bw_margins(c->scheme, c->stage, legs, margin);
        for (int p = 0; p < c->lineup.places; p++) {
            double cost;
            if (p < spots) {
                c->idle[p] = margin[p].rotations == 0; // by the places alone: so for every man
                cost = c->idle[p] ? IDLE_COST : -margin[p].worst;
            } else {
                const double behind = c->scheme->late[p - spots].behind;
                cost = bw_sprint_time(legs, behind) - bw_sprint_time(level, behind);
            }
            c->lineup.cost[m][p] = cost;
        }
    }
}

/// Whether a man's own legs are to be tried in a place.
static bool tried(const choosing *c, int man, int place) {
    return place < BW_MAX_SPOTS && c->men[man].legs.vmax > 0 &&
           c->lineup.cost[man][place] < BW_LINEUP_NEVER;
}

/// How often the drills are played in all: with level legs, each man in each place, those chosen.
static int plays(const choosing *c) {
    int count = 2;
    for (int m = 0; m < c->count; m++) {
        for (int p = 0; p < c->lineup.places; p++)
            count += tried(c, m, p);
    }
    return count;
}

static bw_status play(choosing *c, const bw_legs *legs, double *typical) {
    for (int i = 0; i < c->drill_count; i++)
        memcpy(c->drills[i].legs, legs, sizeof c->drills[i].legs);
    bw_judging how = bw_judging_quick();
    how.rollouts = 24;
    how.depth = 0;
    const bw_status status =
        bw_judge_scheme(c->judge, c->scheme, c->drills, c->drill_count, how, &c->verdict);
    if (status != BW_OK) return status;
    *typical = c->verdict.typical;
    bw_tell(&c->watch, ++c->done, plays(c));
    return BW_OK;
}

/// What one man's legs in one place change, everybody else on the level's.
static bw_status fill_worths(choosing *c, double *level) {
    bw_legs legs[BW_MAX_SPOTS] = {{0, 0}};
    bw_status status = play(c, legs, level);
    for (int m = 0; m < c->count && status == BW_OK; m++) {
        for (int p = 0; p < c->lineup.places && status == BW_OK; p++) {
            double typical = *level;
            if (c->lineup.cost[m][p] >= BW_LINEUP_NEVER) continue;
            if (tried(c, m, p)) {
                legs[p] = c->men[m].legs;
                status = play(c, legs, &typical);
                legs[p] = (bw_legs){0, 0};
            }
            c->lineup.cost[m][p] = typical - *level;
        }
    }
    return status;
}

/// Forbids places a man cannot play, and fixes those the coach has settled. False when two are fixed to
/// one place.
static bool forbid(choosing *c) {
    for (int p = 0; p < c->lineup.places; p++)
        c->lineup.fixed[p] = -1;
    for (int m = 0; m < c->count; m++) {
        for (int p = 0; p < c->lineup.places; p++) {
            if (!c->men[m].may[p] && !c->men[m].fixed[p]) c->lineup.cost[m][p] = BW_LINEUP_NEVER;
            if (!c->men[m].fixed[p]) continue;
            if (c->lineup.fixed[p] >= 0) return false;
            c->lineup.fixed[p] = m;
        }
    }
    return true;
}

static int first_unfilled(const choosing *c) {
    for (int p = 0; p < c->lineup.places; p++) {
        bool somebody = false;
        for (int m = 0; m < c->count; m++)
            somebody |= c->lineup.cost[m][p] < BW_LINEUP_NEVER;
        if (!somebody) return p;
    }
    return -1;
}

/// For each place, who steps in when its man is out of it, and what that changes.
static void weigh_swaps(const choosing *c, bw_lineup_aim aim, const bw_lineup_choice *best,
                        bw_who *out) {
    for (int p = 0; p < c->lineup.places; p++) {
        bw_lineup_choice other;
        out->place[p].second = -1;
        out->place[p].fixed = c->lineup.fixed[p] >= 0;
        if (bw_lineup_without(&c->lineup, aim, best->man[p], p, &other) != BW_OK) continue;
        out->place[p].second = other.man[p];
        out->place[p].swap =
            aim == BW_LINEUP_WORST ? other.worst - best->worst : other.sum - best->sum;
    }
}

static bw_status play_chosen(choosing *c, const bw_lineup_choice *best, bw_who *out) {
    bw_legs legs[BW_MAX_SPOTS] = {{0, 0}};
    for (int p = 0; p < c->lineup.places && p < BW_MAX_SPOTS; p++)
        legs[p] = c->men[best->man[p]].legs;
    return play(c, legs, &out->chosen_typical);
}

static void put_choice(const choosing *c, bw_who_aim aim, const bw_lineup_choice *best,
                       bw_who *out) {
    int counted = 0;
    for (int p = 0; p < out->place_count; p++) {
        bw_who_place *place = &out->place[p];
        place->man = best->man[p];
        place->idle = c->idle[p];
        if (place->idle && aim == BW_WHO_MARGIN) continue;
        place->cost = c->lineup.cost[place->man][p];
        out->worst = counted++ == 0 ? place->cost : bw_max(out->worst, place->cost);
        out->sum += place->cost;
    }
}

static bw_status choose(choosing *c, bw_who_aim aim, bw_who *out, int *unfilled) {
    fill_margins(c);
    if (!forbid(c)) return BW_BAD_INPUT;
    *unfilled = first_unfilled(c);
    if (*unfilled >= 0 || c->count < c->lineup.places) return BW_NOT_FOUND;
    if (aim == BW_WHO_WORTH) {
        const bw_status status = fill_worths(c, &out->level_typical);
        if (status != BW_OK) return status;
    }
    const bw_lineup_aim how = aim == BW_WHO_WORTH ? BW_LINEUP_SUM : BW_LINEUP_WORST;
    bw_lineup_choice best;
    const bw_status status = bw_lineup_best(&c->lineup, how, &best);
    if (status != BW_OK) return status;
    put_choice(c, aim, &best, out);
    weigh_swaps(c, how, &best, out);
    return aim == BW_WHO_WORTH ? play_chosen(c, &best, out) : BW_OK;
}

bw_status bw_who_choose(const bw_scheme *scheme, int stage, const bw_candidate *men, int count,
                        bw_who_aim aim, bw_watcher watch, bw_who *out, int *unfilled) {
    *out = (bw_who){.spots = scheme->stages[stage].defenders};
    *unfilled = -1;
    char name[BW_LINEUP_PLACES][BW_NAME_SIZE];
    out->place_count = bw_who_places(scheme, stage, name);
    for (int p = 0; p < out->place_count; p++)
        bw_copy(out->place[p].name, sizeof out->place[p].name, name[p]);
    choosing *c = calloc(1, sizeof *c);
    if (!c) return BW_NO_ROOM;
    c->scheme = scheme;
    c->watch = watch;
    c->stage = stage;
    c->men = men;
    c->count = count < BW_LINEUP_MEN ? count : BW_LINEUP_MEN;
    c->lineup.men = c->count;
    c->lineup.places = out->place_count;
    c->drill_count = bw_drills(scheme, stage, BW_DRILL_TRAINING, WORTH_DRILLS, 1, c->drills);
    bw_status status = BW_OK;
    if (aim == BW_WHO_WORTH) {
        c->judge = c->drill_count > 0 ? bw_judge_open(scheme, NULL, 0, watch.cancel) : NULL;
        if (!c->judge) status = c->drill_count > 0 ? BW_NO_ROOM : BW_BAD_INPUT;
    }
    if (status == BW_OK) status = choose(c, aim, out, unfilled);
    bw_judge_close(c->judge);
    free(c);
    return status;
}
