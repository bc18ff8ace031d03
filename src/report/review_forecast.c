/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/review_forecast.h"

#include "core/scheme.h"
#include "team/revisions.h"
#include "tune/judge.h"
#include <stdlib.h>

enum { MOST_KINDS = 96, DRILLS = 6 };

/// A kind of break the model has played.
typedef struct kind {
    int64_t revision;
    int offence, defence;
    double chance; ///< negative: it cannot be played
} kind;

typedef struct player {
    bw_team *team;
    bw_watcher watch;
    bw_scheme scheme;
    bw_judge *judge; ///< of `scheme`
    int64_t revision;
    bool open;
    bw_judgement verdict;
    kind kinds[MOST_KINDS];
    int kind_count;
} player;

/// The scheme of a revision made ready, the newest when there is none of this number.
static bool open_revision(player *p, int64_t revision) {
    if (p->open && p->revision == revision) return p->judge != NULL;
    bw_judge_close(p->judge);
    p->judge = NULL;
    p->open = true;
    p->revision = revision;
    bw_error error;
    bw_status status = bw_team_scheme(p->team, revision, &p->scheme, NULL, &error);
    if (status != BW_OK && revision != 0)
        status = bw_team_scheme(p->team, 0, &p->scheme, NULL, &error);
    if (status == BW_OK) p->judge = bw_judge_open(&p->scheme, NULL, 0, p->watch.cancel);
    return p->judge != NULL;
}

static double play(player *p, const kind *k) {
    if (k->offence <= k->defence || !open_revision(p, k->revision)) return -1;
    const int stage = bw_scheme_stage(&p->scheme, k->defence);
    if (stage < 0) return -1;
    bw_break_def drills[BW_MAX_DRILLS], some[DRILLS];
    const int all = bw_drills_for(&p->scheme, stage, k->offence, drills);
    int count = 0;
    // Spread over the whole list: every set, every kind of start.
    for (int i = 0; i < DRILLS && i < all; i++)
        some[count++] = drills[(2 * i + 1) * all / (2 * (all < DRILLS ? all : DRILLS))];
    if (count == 0) return -1;
    const bw_judging how = {.seconds = 10, .rollouts = 12, .look_ahead = -1, .depth = 0};
    if (bw_judge_scheme(p->judge, &p->scheme, some, count, how, &p->verdict) != BW_OK) return -1;
    return p->verdict.typical;
}

/// The kind a break is of, listed when it is new; NULL when there is no room for one more.
static kind *kind_of(player *p, const bw_entry *e) {
    for (int i = 0; i < p->kind_count; i++) {
        kind *k = &p->kinds[i];
        if (k->revision == e->revision && k->offence == e->offence && k->defence == e->defence)
            return k;
    }
    if (p->kind_count == MOST_KINDS) return NULL;
    kind *k = &p->kinds[p->kind_count++];
    *k = (kind){e->revision, e->offence, e->defence, -1};
    return k;
}

bw_status bw_forecast_breaks(bw_team *team, const bw_entry *entries, int count, bw_watcher watch,
                             double *forecast) {
    player *p = calloc(1, sizeof *p);
    if (!p) return BW_NO_ROOM;
    p->team = team;
    p->watch = watch;
    for (int i = 0; i < count; i++)
        kind_of(p, &entries[i]);
    for (int k = 0; k < p->kind_count && !bw_cancelled(&watch); k++) {
        p->kinds[k].chance = play(p, &p->kinds[k]);
        bw_tell(&watch, k + 1, p->kind_count);
    }
    for (int i = 0; i < count; i++) {
        const kind *k = kind_of(p, &entries[i]);
        forecast[i] = k ? k->chance : -1;
    }
    bw_judge_close(p->judge);
    free(p);
    return bw_cancelled(&watch) ? BW_LIMIT : BW_OK;
}
