/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/draw_film.h"

#include "cli/films.h"
#include "cli/pages.h"
#include "cli/say.h"
#include "cli/stop.h"
#include "file/json_stream.h"
#include <string.h>

static const char *lesson_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    return index < scheme->lesson_count ? scheme->lessons[index].id : NULL;
}

static const bw_lesson *find_lesson(const bw_scheme *scheme, const char *id) {
    const int lesson = bw_scheme_lesson(scheme, id);
    if (lesson >= 0) return &scheme->lessons[lesson];
    const char *near = bw_nearest_word(id, lesson_id, scheme);
    if (near)
        bw_say_error("there is no lesson \"%s\"; did you mean \"%s\"?", id, near);
    else if (scheme->lesson_count > 0)
        bw_say_error("there is no lesson \"%s\"; the first one is \"%s\".", id,
                     scheme->lessons[0].id);
    else
        bw_say_error("the scheme has no lessons; breakwater new makes a scheme with one.");
    return NULL;
}

/// Puts the path where the ending of its name says. False when it says nothing.
static bool set_path(const char *path, bw_lesson_job *job) {
    const char *dot = strrchr(path, '.');
    const char *ending = dot && !strchr(dot, '/') ? dot + 1 : "";
    if (strcmp(ending, "vtt") == 0) job->captions = path;
    for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
        if (strcmp(ending, bw_film_ending(kind)) == 0) job->paths[kind] = path;
    }
    return job->captions || job->paths[BW_FILM_MP4] || job->paths[BW_FILM_WEBM] ||
           job->paths[BW_FILM_GIF];
}

static void report(const bw_args *args, const bw_lesson_job *job, const char *path) {
    const double seconds = (double)job->frames / BW_LESSON_RATE;
    bw_say("Wrote %s: %.0f s.", path, seconds);
    if (!bw_option_given(args, "json")) return;
    bw_json json = bw_json_to(stdout);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "seconds", seconds);
    bw_json_put_open(&json, "files", '[');
    bw_json_text(&json, path);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

int bw_draw_film(const bw_args *args, const bw_scheme *scheme) {
    const char *path = bw_option_text(args, "output");
    bw_lesson_job job = {.status = BW_OK};
    int width = 1280;
    if (!path || !set_path(path, &job))
        return bw_usage(args->verb, "say where the film goes: -o with a file whose name ends in "
                                    ".mp4, .webm, .gif, or .vtt for its captions.");
    if (!bw_option_int(args, "width", BW_FILM_WIDTH_MIN, BW_FILM_WIDTH_MAX, &width))
        return BW_EXIT_USAGE;
    job.lesson = find_lesson(scheme, bw_option_text(args, "film"));
    if (!job.lesson) return BW_EXIT_WRONG;
    bw_films films = {.scheme = scheme,
                      .jobs = &job,
                      .count = 1,
                      .width = width,
                      .theme = bw_theme_find(bw_option_text(args, "theme")),
                      .lines = bw_option_lines(args)};
    const int code = bw_run_films(&films);
    if (code == BW_EXIT_OK) report(args, &job, path);
    return code;
}
