/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The server's job that makes one lesson's film.
#include "core/text.h"
#include "report/films.h"
#include "serve/work.h"

enum { WIDTH = 1280 }; // pixels: sharp on a tablet, and small enough to send

bw_status bw_make_film(bw_work *w, bw_bytes *result, bw_text *why) {
    const bw_scheme *scheme = &w->order.scheme;
    const char *id = bw_target_value(&w->target, "lesson"); // the first when none is named
    const int index = id ? bw_scheme_lesson(scheme, id) : 0;
    bw_lesson_job lesson = {.lesson = &scheme->lessons[index < 0 ? 0 : index]};
    if (index < 0 || scheme->lesson_count == 0) {
        bw_put(why, "The scheme has no such lesson.");
        return BW_NOT_FOUND;
    }
    bw_scratch scratch;
    bw_status status = bw_scratch_open(&scratch, "lesson.mp4", why);
    if (status != BW_OK) return status;
    lesson.paths[BW_FILM_MP4] = scratch.path;
    bw_films films = {.scheme = scheme,
                      .jobs = &lesson,
                      .count = 1,
                      .width = WIDTH,
                      .theme = w->theme,
                      .watch = w->order.watch};
    status = bw_films_make(&films);
    if (status != BW_OK) bw_put(why, lesson.why[0] ? lesson.why : "The film could not be made.");
    if (status == BW_OK && !bw_scratch_take(&scratch, result)) {
        bw_put(why, "The finished film could not be read back.");
        status = BW_FILE;
    }
    bw_scratch_close(&scratch);
    return status;
}
