/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/films.h"

#include <pthread.h>
#include <stdlib.h>
#include <time.h>
#include <unistd.h>

enum { MOST_THREADS = 16 };

/// What the threads share.
typedef struct pool {
    bw_films *films;
    bw_lesson_film *made;      ///< each job's film, ready
    int order[BW_MAX_LESSONS]; ///< of the jobs, the longest film first
    atomic_int next;           ///< in order[]
    atomic_int frames;         ///< done
    pthread_mutex_t lock;
    pthread_cond_t ended;
    int running; ///< threads, guarded by lock
} pool;

static bw_status draw_page(const void *self, int frame, bw_ink *ink) {
    return bw_lesson_film_page(self, (double)frame / BW_LESSON_RATE, ink);
}

static void count_frame(void *self, int done, int frames) {
    (void)done;
    (void)frames;
    atomic_fetch_add(&((pool *)self)->frames, 1);
}

static bool wants_film(const bw_lesson_job *job) {
    for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
        if (job->paths[kind]) return true;
    }
    return false;
}

static bw_status save_captions(const bw_lesson_film *film, const char *path, bw_text *why) {
    char *memory = malloc(BW_FILM_CAPTIONS);
    if (!memory) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    bw_text text = bw_text_in(memory, BW_FILM_CAPTIONS);
    bw_lesson_film_captions(film, &text);
    const bw_status status = bw_film_captions(path, text.data, text.used, why);
    free(memory);
    return status;
}

static void make(pool *p, int index, bw_fonts *fonts) {
    const bw_films *films = p->films;
    bw_lesson_job *job = &films->jobs[index];
    bw_text why = bw_text_in(job->why, sizeof job->why);
    bw_film film = {.frames = job->frames,
                    .rate = BW_LESSON_RATE,
                    .width = films->width,
                    .page = draw_page,
                    .self = &p->made[index],
                    .theme = films->theme,
                    .fonts = fonts,
                    .progress = count_frame,
                    .listener = p,
                    .cancel = films->watch.cancel};
    for (int kind = 0; kind < BW_FILM_KINDS; kind++)
        film.paths[kind] = job->paths[kind];
    job->status = wants_film(job) ? bw_film_make(&film, &why) : BW_OK;
    if (job->status == BW_OK && job->captions)
        job->status = save_captions(&p->made[index], job->captions, &why);
}

static void *work(void *self) {
    pool *p = self;
    char words[BW_FILM_WHY];
    bw_text why = bw_text_in(words, sizeof words);
    bw_fonts *fonts = bw_fonts_open(&why);
    for (int i; (i = atomic_fetch_add(&p->next, 1)) < p->films->count;) {
        bw_lesson_job *job = &p->films->jobs[p->order[i]];
        if (fonts) {
            make(p, p->order[i], fonts);
        } else {
            job->status = BW_FILE;
            bw_copy(job->why, sizeof job->why, words);
        }
    }
    if (fonts) bw_fonts_close(fonts);
    pthread_mutex_lock(&p->lock);
    p->running--;
    pthread_cond_signal(&p->ended);
    pthread_mutex_unlock(&p->lock);
    return NULL;
}

/// Makes every job's film ready; returns the frames of all.
static int prepare(pool *p) {
    int all = 0;
    for (int i = 0; i < p->films->count; i++) {
        bw_lesson_job *job = &p->films->jobs[i];
        bw_lesson_film_build(p->films->scheme, job->lesson, &p->made[i]);
        p->made[i].lines = p->films->lines;
        job->frames = (int)(bw_lesson_film_seconds(&p->made[i]) * BW_LESSON_RATE + 0.5);
        job->status = BW_NO_ROOM;
        all += wants_film(job) ? job->frames : 0;
        int place = i;
        for (; place > 0 && p->films->jobs[p->order[place - 1]].frames < job->frames; place--)
            p->order[place] = p->order[place - 1];
        p->order[place] = i;
    }
    return all;
}

/// Reports until all threads are through.
static void watch(pool *p, int all) {
    const bw_films *films = p->films;
    pthread_mutex_lock(&p->lock);
    while (p->running > 0) {
        struct timespec soon;
        clock_gettime(CLOCK_REALTIME, &soon);
        soon.tv_nsec += 200000000;
        soon.tv_sec += soon.tv_nsec / 1000000000;
        soon.tv_nsec %= 1000000000;
        pthread_cond_timedwait(&p->ended, &p->lock, &soon);
        bw_tell(&films->watch, atomic_load(&p->frames), all);
    }
    pthread_mutex_unlock(&p->lock);
}

static int run(pool *p, int all) {
    pthread_t threads[MOST_THREADS];
    long wanted = p->films->threads > 0 ? p->films->threads : sysconf(_SC_NPROCESSORS_ONLN);
    if (wanted > p->films->count) wanted = p->films->count;
    if (wanted > MOST_THREADS) wanted = MOST_THREADS;
    int count = 0;
    while (count < wanted || count == 0) {
        pthread_mutex_lock(&p->lock);
        p->running++;
        pthread_mutex_unlock(&p->lock);
        if (pthread_create(&threads[count], NULL, work, p) == 0) {
            count++;
            continue;
        }
        pthread_mutex_lock(&p->lock);
        p->running--;
        pthread_mutex_unlock(&p->lock);
        break;
    }
    watch(p, all);
    for (int i = 0; i < count; i++)
        pthread_join(threads[i], NULL);
    return count;
}

bw_status bw_films_make(bw_films *films) {
    BW_ASSERT(films->count >= 0 && films->count <= BW_MAX_LESSONS);
    if (films->count == 0) return BW_OK;
    pool p = {.films = films, .made = malloc(sizeof *p.made * (size_t)films->count)};
    if (!p.made) return BW_NO_ROOM;
    pthread_mutex_init(&p.lock, NULL);
    pthread_cond_init(&p.ended, NULL);
    const int threads = run(&p, prepare(&p));
    pthread_cond_destroy(&p.ended);
    pthread_mutex_destroy(&p.lock);
    free(p.made);
    if (threads == 0) return BW_NO_ROOM;
    for (int i = 0; i < films->count; i++) {
        if (films->jobs[i].status != BW_OK) return films->jobs[i].status;
    }
    return BW_OK;
}
