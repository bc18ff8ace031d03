/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons as films, one to a thread on all cores. Every film is made alone, so the files are the same
/// for any number of threads; each is whole or not there.
#ifndef BW_REPORT_FILMS_H
#define BW_REPORT_FILMS_H

#include "draw/lesson/lesson_film.h"
#include "paint/film/film.h"
#include "trial/watcher.h"

/// Pictures a second.
enum { BW_LESSON_RATE = 25, BW_FILM_WHY = 400 };

/// One lesson's film: what is wanted of it, and how it went.
typedef struct bw_lesson_job {
    const bw_lesson *lesson;
    const char *paths[BW_FILM_KINDS]; ///< NULL: not wanted
    const char *captions;             ///< path of the WebVTT file; NULL: not wanted
    int frames;                       ///< filled in
    bw_status status;                 ///< filled in; BW_LIMIT: cancelled
    char why[BW_FILM_WHY];            ///< one sentence when it is not BW_OK
} bw_lesson_job;

typedef struct bw_films {
    const bw_scheme *scheme;
    bw_lesson_job *jobs;
    int count;
    int width; ///< pixels, as in bw_film
    const bw_theme *theme;
    bw_lines lines;
    int threads;      ///< at most; 0: one for each core
    bw_watcher watch; ///< told now and then of the frames drawn so far
} bw_films;

/// Makes them all. The first status of a job that is not BW_OK; BW_NO_ROOM: no memory.
bw_status bw_films_make(bw_films *films);

#endif
