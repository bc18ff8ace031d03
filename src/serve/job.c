/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/job.h"

#include "core/text.h"
#include "scheme/caption.h"
#include <stdlib.h>
#include <string.h>

void bw_job_open(bw_job *job) {
    memset(job, 0, sizeof *job);
    pthread_mutex_init(&job->lock, NULL);
}

static void tell(void *self, int done, int count) {
    bw_job *job = self;
    pthread_mutex_lock(&job->lock);
    job->done = done;
    job->count = count;
    pthread_mutex_unlock(&job->lock);
}

static void *run(void *self) {
    bw_job *job = self;
    bw_work *w = job->work;
    char room[BW_MESSAGE_SIZE];
    bw_text why = bw_text_in(room, sizeof room);
    bw_bytes result = {NULL, 0};
    const bw_status status = bw_work_make(w, &job->press, &result, &why);
    pthread_mutex_lock(&job->lock);
    if (status == BW_OK) {
        job->result = result;
        job->state = BW_JOB_DONE;
    } else {
        const bool cancelled = atomic_load(&job->cancel);
        job->state = cancelled ? BW_JOB_CANCELLED : BW_JOB_FAILED;
        bw_text told = bw_text_in(job->why, sizeof job->why);
        if (why.used == 0) bw_put(&why, cancelled ? "cancelled." : "it could not be made.");
        bw_say_first(why.data, &told);
    }
    pthread_mutex_unlock(&job->lock);
    return NULL;
}

/// Clears away the last run, which is not running any more.
static void clear(bw_job *job) {
    if (job->started) pthread_join(job->thread, NULL);
    job->started = false;
    free(job->work);
    free(job->result.data);
    job->work = NULL;
    job->result = (bw_bytes){NULL, 0};
    job->why[0] = '\0';
    job->done = job->count = 0;
    job->state = BW_JOB_NONE;
    atomic_store(&job->cancel, false);
}

static void look(const bw_job *job, bw_job_view *view) {
    *view = (bw_job_view){job->id, job->state, job->done, job->count, job->work->kind, ""};
    bw_copy(view->why, sizeof view->why, job->why);
}

/// With the lock held: the last run's thread does not want it any more once its state is told.
static bool start(bw_job *job, bw_work *work) {
    if (job->state == BW_JOB_RUNNING) return false;
    clear(job);
    work->order.watch = (bw_watcher){tell, job, &job->cancel};
    job->work = work;
    job->state = BW_JOB_RUNNING;
    job->started = pthread_create(&job->thread, NULL, run, job) == 0;
    if (job->started) {
        job->id++;
        return true;
    }
    job->work = NULL;
    job->state = BW_JOB_NONE;
    return false;
}

bool bw_job_start(bw_job *job, bw_work *work, bw_job_view *view) {
    pthread_mutex_lock(&job->lock);
    const bool started = start(job, work);
    if (started) look(job, view);
    pthread_mutex_unlock(&job->lock);
    return started;
}

bool bw_job_look(bw_job *job, int id, bw_job_view *view) {
    pthread_mutex_lock(&job->lock);
    const bool there = id == job->id && job->state != BW_JOB_NONE;
    if (there) look(job, view);
    pthread_mutex_unlock(&job->lock);
    return there;
}

bool bw_job_cancel(bw_job *job, int id) {
    pthread_mutex_lock(&job->lock);
    const bool there = id == job->id && job->state != BW_JOB_NONE;
    if (there) atomic_store(&job->cancel, true);
    pthread_mutex_unlock(&job->lock);
    return there;
}

bool bw_job_result(bw_job *job, int id, bw_bytes *out) {
    pthread_mutex_lock(&job->lock);
    const bool there = id == job->id && job->state == BW_JOB_DONE && job->result.length > 0;
    out->data = there ? malloc(job->result.length) : NULL;
    out->length = out->data ? job->result.length : 0;
    if (out->data) memcpy(out->data, job->result.data, out->length);
    pthread_mutex_unlock(&job->lock);
    return out->data != NULL;
}

void bw_job_close(bw_job *job) {
    atomic_store(&job->cancel, true);
    clear(job);
    bw_press_close(&job->press);
    pthread_mutex_destroy(&job->lock);
}
