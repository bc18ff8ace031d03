/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/judge.h"
#include "core/typical.h"
#include <pthread.h>
#include <stdlib.h>
#include <unistd.h>

enum { MOST_THREADS = 32 };

struct bw_judge {
    bw_level level, quick; ///< the level, and the same without thinking ahead
    bw_ground ground;
    pthread_mutex_t lock;
    pthread_cond_t work, idle;
    pthread_t thread[MOST_THREADS];
    int threads;
    const atomic_bool *cancel;

    // The question at hand, guarded by the lock but for what only the asking thread writes between two.
    const bw_break_def *drills;
    bw_judging how;
    bw_judgement *verdict;
    int next, finished, count;
    bw_status status;
    bool closing;
    uint64_t done;
};

bw_judging bw_judging_quick(void) {
    return (bw_judging){.seconds = 6, .rollouts = 12, .look_ahead = 0, .depth = 2};
}

bw_judging bw_judging_full(void) {
    return (bw_judging){.seconds = 6, .rollouts = 24, .look_ahead = -1, .depth = 3};
}

static size_t scratch_size(void) {
    const size_t a = bw_search_size(), b = bw_typical_size();
    return a > b ? a : b;
}

static bool cancelled(const bw_judge *j) {
    return j->cancel && atomic_load(j->cancel);
}

static bw_status judge_one(const bw_judge *j, int i, void *scratch) {
    bw_break b;
    bw_status status = bw_break_begin(&j->ground, &j->drills[i], &b, NULL);
    if (status != BW_OK) return BW_BAD_INPUT;
    bw_typical_def typical = bw_typical_default();
    typical.rollouts = j->how.rollouts;
    typical.seconds = j->how.seconds;
    bw_forecast forecast;
    status = bw_typical_begin(&b, &b.start, &typical, scratch, scratch_size(), &forecast);
    if (status != BW_OK) return status;
    do {
        if (cancelled(j)) return BW_LIMIT;
    } while (bw_typical_step(scratch));
    if (cancelled(j)) return BW_LIMIT;
    bw_search_def search = bw_search_default();
    search.seconds = j->how.seconds;
    search.depth = j->how.depth;
    bw_answer answer;
    status = bw_best(&b, &search, scratch, scratch_size(), &answer);
    if (status != BW_OK && status != BW_LIMIT) return status;
    j->verdict->typical_each[i] = forecast.worth[(int)j->how.seconds];
    j->verdict->best_each[i] = answer.worth;
    return BW_OK;
}

static void *work(void *self) {
    bw_judge *j = self;
    void *scratch = malloc(scratch_size());
    pthread_mutex_lock(&j->lock);
    while (!j->closing) {
        if (j->next >= j->count) {
            pthread_cond_wait(&j->work, &j->lock);
            continue;
        }
        const int i = j->next++;
        pthread_mutex_unlock(&j->lock);
        const bw_status status = scratch ? judge_one(j, i, scratch) : BW_NO_ROOM;
        pthread_mutex_lock(&j->lock);
        if (status != BW_OK) j->status = status;
        j->finished++;
        j->done += status == BW_OK;
        if (j->finished == j->count) pthread_cond_signal(&j->idle);
    }
    pthread_mutex_unlock(&j->lock);
    free(scratch);
    return NULL;
}

bw_judge *bw_judge_open(const bw_scheme *scheme, const bw_level *level, int threads,
                        const atomic_bool *cancel) {
    bw_judge *j = calloc(1, sizeof *j);
    if (!j) return NULL;
    j->level = level ? *level : *bw_level_at(scheme->level);
    j->quick = j->level;
    j->cancel = cancel;
    if (bw_ground_build(scheme, &j->level, &j->ground, NULL) != BW_OK) {
        free(j);
        return NULL;
    }
    pthread_mutex_init(&j->lock, NULL);
    pthread_cond_init(&j->work, NULL);
    pthread_cond_init(&j->idle, NULL);
    long wanted = threads > 0 ? threads : sysconf(_SC_NPROCESSORS_ONLN);
    if (wanted > MOST_THREADS) wanted = MOST_THREADS;
    while (j->threads < wanted) {
        if (pthread_create(&j->thread[j->threads], NULL, work, j) != 0) break;
        j->threads++;
    }
    if (j->threads > 0) return j;
    bw_judge_close(j);
    return NULL;
}

void bw_judge_close(bw_judge *j) {
    if (!j) return;
    pthread_mutex_lock(&j->lock);
    j->closing = true;
    pthread_cond_broadcast(&j->work);
    pthread_mutex_unlock(&j->lock);
    for (int i = 0; i < j->threads; i++)
        pthread_join(j->thread[i], NULL);
    pthread_cond_destroy(&j->idle);
    pthread_cond_destroy(&j->work);
    pthread_mutex_destroy(&j->lock);
    free(j);
}

bw_status bw_judge_scheme(bw_judge *j, const bw_scheme *scheme, const bw_break_def *drills,
                          int count, bw_judging how, bw_judgement *verdict) {
    BW_ASSERT(count >= 1 && count <= BW_MAX_DRILLS);
    pthread_mutex_lock(&j->lock);
    // Nobody works between two questions, so the ground may be turned under them.
    j->ground.scheme = scheme;
    for (int s = 0; s < scheme->stage_count; s++)
        bw_plan_build(scheme, s, &j->ground.plans[scheme->stages[s].defenders]);
    j->quick.look_ahead = how.look_ahead >= 0 ? how.look_ahead : j->level.look_ahead;
    j->ground.level = &j->quick;
    j->drills = drills;
    j->how = how;
    j->verdict = verdict;
    j->status = BW_OK;
    j->next = j->finished = 0;
    j->count = count;
    pthread_cond_broadcast(&j->work);
    while (j->finished < count)
        pthread_cond_wait(&j->idle, &j->lock);
    j->count = j->next = 0;
    const bw_status status = j->status;
    pthread_mutex_unlock(&j->lock);
    verdict->count = count;
    verdict->typical = verdict->best = 0;
    if (status != BW_OK) return status;
    for (int i = 0; i < count; i++) {
        verdict->typical += verdict->typical_each[i] / count;
        verdict->best += verdict->best_each[i] / count;
    }
    return BW_OK;
}

uint64_t bw_judge_done(const bw_judge *judge) {
    return judge->done;
}
