/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/battery.h"

#include <pthread.h>
#include <stdatomic.h>
#include <stdlib.h>
#include <unistd.h>

enum { MOST_THREADS = 64 };

/// What the threads share. The next trial is taken by counting up; who takes which does not matter.
typedef struct pool {
    bw_battery *battery;
    atomic_int next;
    pthread_mutex_t lock;
    pthread_cond_t finished;
    int done;    ///< trials, guarded by lock
    int running; ///< threads, guarded by lock
} pool;

typedef struct worker {
    pool *pool;
    void *memory;
    pthread_t thread;
} worker;

/// Piece by piece, so that cancelling is met within a trial too, which may take seconds.
static void run(const bw_battery *battery, void *memory, bw_trial *trial) {
    bw_trial_progress progress = {BW_TRIAL_TYPICAL, 0, 0};
    bw_status status = BW_OK;
    bool begun = false;
    while (status == BW_OK && progress.part != BW_TRIAL_DONE) {
        if (bw_cancelled(&battery->watch))
            status = trial->status = BW_LIMIT;
        else if (begun)
            status = bw_trial_step(memory, &progress);
        else
            status = bw_trial_begin(battery->ground, memory, bw_trial_size(), trial);
        begun = true;
    }
}

static void *work(void *self) {
    const worker *me = self;
    pool *p = me->pool;
    bw_battery *battery = p->battery;
    for (;;) {
        const int i = atomic_fetch_add(&p->next, 1);
        if (i >= battery->count) break;
        bw_trial *trial = &battery->trials[i];
        run(battery, me->memory, trial);
        pthread_mutex_lock(&p->lock);
        p->done++;
        pthread_cond_signal(&p->finished);
        pthread_mutex_unlock(&p->lock);
    }
    pthread_mutex_lock(&p->lock);
    p->running--;
    pthread_cond_signal(&p->finished);
    pthread_mutex_unlock(&p->lock);
    return NULL;
}

/// Threads worth having: no more than asked for, than there are cores, trials, or memory.
static int thread_count(const bw_battery *battery) {
    long most = battery->threads > 0 ? battery->threads : sysconf(_SC_NPROCESSORS_ONLN);
    const long fit = (long)(BW_BATTERY_BYTES / bw_trial_size());
    if (most > fit) most = fit;
    if (most > battery->count) most = battery->count;
    if (most > MOST_THREADS) most = MOST_THREADS;
    return most < 1 ? 1 : (int)most;
}

/// Starts as many workers as there is memory and thread for; returns how many run.
static int start(pool *p, worker *workers, int wanted) {
    int count = 0;
    while (count < wanted) {
        worker *w = &workers[count];
        *w = (worker){.pool = p, .memory = malloc(bw_trial_size())};
        if (!w->memory) break;
        pthread_mutex_lock(&p->lock);
        p->running++;
        pthread_mutex_unlock(&p->lock);
        if (pthread_create(&w->thread, NULL, work, w) != 0) {
            free(w->memory);
            pthread_mutex_lock(&p->lock);
            p->running--;
            pthread_mutex_unlock(&p->lock);
            break;
        }
        count++;
    }
    return count;
}

/// Reports each finished trial until all threads are through.
static void watch(pool *p) {
    int told = 0;
    pthread_mutex_lock(&p->lock);
    while (p->running > 0 || told < p->done) {
        if (told == p->done) pthread_cond_wait(&p->finished, &p->lock);
        const int done = p->done;
        pthread_mutex_unlock(&p->lock);
        if (done > told) bw_tell(&p->battery->watch, done, p->battery->count);
        told = done;
        pthread_mutex_lock(&p->lock);
    }
    pthread_mutex_unlock(&p->lock);
}

bw_status bw_battery_run(bw_battery *battery) {
    pool p = {.battery = battery};
    worker workers[MOST_THREADS];
    pthread_mutex_init(&p.lock, NULL);
    pthread_cond_init(&p.finished, NULL);
    const int count = start(&p, workers, thread_count(battery));
    watch(&p);
    for (int i = 0; i < count; i++) {
        pthread_join(workers[i].thread, NULL);
        free(workers[i].memory);
    }
    pthread_cond_destroy(&p.finished);
    pthread_mutex_destroy(&p.lock);
    if (count == 0) return BW_NO_ROOM;
    return bw_cancelled(&battery->watch) ? BW_LIMIT : BW_OK;
}
