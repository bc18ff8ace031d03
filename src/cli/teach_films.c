/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/teach_films.h"

#include "cli/films.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/say.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { PATH_SIZE = 4096, FILM_WIDTH = 1280, FILES = BW_FILM_KINDS + 1 };

/// All lessons' jobs with room for the names of their files.
typedef struct folder {
    bw_lesson_job jobs[BW_MAX_LESSONS];
    char paths[BW_MAX_LESSONS][FILES][PATH_SIZE];
} folder;

/// "films/round.mp4"; NULL when that is too long.
static const char *name_file(char *room, const char *path, const char *lesson, const char *ending) {
    const int length = snprintf(room, PATH_SIZE, "%s/%s.%s", path, lesson, ending);
    return length > 0 && length < PATH_SIZE ? room : NULL;
}

static bool name_files(const bw_teach_job *job, const char *path, folder *f) {
    const bw_scheme *scheme = &job->order.scheme;
    const bool gif = bw_option_given(job->args, "gif");
    bool good = true;
    for (int i = 0; i < scheme->lesson_count; i++) {
        bw_lesson_job *film = &f->jobs[i];
        film->lesson = &scheme->lessons[i];
        const char *id = film->lesson->id;
        for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
            if (kind == BW_FILM_GIF && !gif) continue;
            film->paths[kind] = name_file(f->paths[i][kind], path, id, bw_film_ending(kind));
            good &= film->paths[kind] != NULL;
        }
        film->captions = name_file(f->paths[i][BW_FILM_KINDS], path, id, "vtt");
        good &= film->captions != NULL;
    }
    if (!good) bw_say_error("the name of the folder is too long.");
    return good;
}

static int film(const bw_teach_job *job, const char *path, folder *f) {
    bool made;
    if (!name_files(job, path, f) || bw_out_folder(path, &made) != BW_EXIT_OK) return BW_EXIT_FILE;
    bw_films films = {.scheme = &job->order.scheme,
                      .jobs = f->jobs,
                      .count = job->order.scheme.lesson_count,
                      .width = FILM_WIDTH,
                      .theme = job->theme,
                      .lines = bw_option_lines(job->args)};
    const int code = bw_run_films(&films);
    if (code != BW_EXIT_OK && made) rmdir(path); // stays when a film in it was done
    return code;
}

int bw_teach_films(const bw_teach_job *job, const char *path, int *pages) {
    *pages = 0;
    if (job->order.scheme.lesson_count == 0) {
        *pages = -1;
        return BW_EXIT_OK;
    }
    folder *f = calloc(1, sizeof *f);
    if (!f) return bw_say_no_memory();
    const int code = film(job, path, f);
    free(f);
    return code;
}
