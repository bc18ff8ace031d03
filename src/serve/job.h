/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One heavy run at a time, on all cores, beside the server: it can be looked at and cancelled. The last
/// one's result stays until the next begins. Any thread may call.
#ifndef BW_SERVE_JOB_H
#define BW_SERVE_JOB_H

#include "serve/work.h"
#include <pthread.h>

typedef enum bw_job_state {
    BW_JOB_NONE,
    BW_JOB_RUNNING,
    BW_JOB_DONE,
    BW_JOB_FAILED,
    BW_JOB_CANCELLED
} bw_job_state;

typedef struct bw_job {
    pthread_mutex_t lock; ///< guards all below but the work, which the thread has while it runs
    pthread_t thread;
    bool started; ///< the thread has to be joined
    int id;       ///< of the last one, from 1
    bw_job_state state;
    int done, count; ///< breaks played
    atomic_bool cancel;
    bw_work *work;
    bw_press press;
    bw_bytes result;
    char why[BW_MESSAGE_SIZE];
} bw_job;

/// What can be told of a job.
typedef struct bw_job_view {
    int id;
    bw_job_state state;
    int done, count;
    const bw_work_kind *kind;
    char why[BW_MESSAGE_SIZE]; ///< one sentence when it failed
} bw_job_view;

void bw_job_open(bw_job *job);

/// Starts a run and takes the work; *view then tells of it. False when another is running, or no thread
/// is to be had: then the work is still the caller's.
bool bw_job_start(bw_job *job, bw_work *work, bw_job_view *view);

/// False when there is no job with this id.
bool bw_job_look(bw_job *job, int id, bw_job_view *view);

/// Asks it to stop, which it does after the break it is at. False when there is none with this id.
bool bw_job_cancel(bw_job *job, int id);

/// A copy of a finished job's result, to be freed. False when it has none or there is no memory.
bool bw_job_result(bw_job *job, int id, bw_bytes *out);

/// Cancels, waits, frees.
void bw_job_close(bw_job *job);

#endif
