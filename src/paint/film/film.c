/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One pass over the frames for all files. A frame whose ink is that of the one before is not painted
/// again: in a lesson most of the time everyone stands.
#include "paint/film/film.h"
#include "paint/film/film_picture.h"
#include "paint/film/film_stream.h"
#include "paint/whole_file.h"

#include <stdlib.h>
#include <string.h>

const char *bw_film_ending(int kind) {
    static const char *const endings[] = {"mp4", "webm", "gif"};
    return kind >= 0 && kind < BW_FILM_KINDS ? endings[kind] : NULL;
}

/// A film under way.
typedef struct making {
    const bw_film *film;
    bw_film_stream *streams[BW_FILM_KINDS];
    bw_ink *ink[2]; ///< of this frame and of the one before, in turn
    bw_film_picture *picture;
    int width, height;
} making;

static bool cancelled(const bw_film *film) {
    return film->cancel && atomic_load(film->cancel);
}

static bool same_ink(const bw_ink *a, const bw_ink *b) {
    return a->used == b->used && memcmp(a, b, (size_t)a->used) == 0;
}

static bw_status draw(making *m, int frame, bw_ink *ink, bw_text *why) {
    const bw_status status = m->film->page(m->film->self, frame, ink);
    if (status == BW_NO_ROOM) bw_put(why, "A frame has more on it than there is room for.");
    return status;
}

/// Draws a frame and, where it is not the one before again, paints it into the picture.
static bw_status put_picture(making *m, int frame, bw_text *why) {
    const bw_film *film = m->film;
    bw_ink *ink = m->ink[frame & 1];
    bw_status status = draw(m, frame, ink, why);
    if (status != BW_OK) return status;
    if (frame > 0 && same_ink(ink, m->ink[!(frame & 1)])) return BW_OK;
    status = bw_paint_pixels(ink, film->fonts, film->theme, m->width, m->height,
                             bw_film_picture_pixels(m->picture), why);
    return status == BW_OK ? bw_film_picture_take(m->picture, why) : status;
}

static bw_status add_frame(making *m, int frame, bw_text *why) {
    bw_status status = put_picture(m, frame, why);
    for (int kind = 0; kind < BW_FILM_KINDS && status == BW_OK; kind++) {
        if (!m->streams[kind]) continue;
        struct AVFrame *picture = bw_film_picture_frame(m->picture, (bw_film_kind)kind);
        status = bw_film_stream_add(m->streams[kind], picture, why);
    }
    return status;
}

static bw_status open_streams(making *m, bw_text *why) {
    const bw_film *film = m->film;
    bool wanted[BW_FILM_KINDS];
    for (int kind = 0; kind < BW_FILM_KINDS; kind++)
        wanted[kind] = film->paths[kind] != NULL;
    m->picture = bw_film_picture_open(m->width, m->height, film->theme, wanted, why);
    if (!m->picture) return BW_FILE;
    for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
        if (!wanted[kind]) continue;
        const struct AVFrame *first = bw_film_picture_frame(m->picture, (bw_film_kind)kind);
        m->streams[kind] =
            bw_film_stream_open((bw_film_kind)kind, film->paths[kind], first, film->rate, why);
        if (!m->streams[kind]) return BW_FILE;
    }
    return BW_OK;
}

static bw_status add_frames(making *m, bw_text *why) {
    bw_status status = BW_OK;
    for (int i = 0; i < m->film->frames && status == BW_OK; i++) {
        if (cancelled(m->film)) {
            bw_put(why, "The film was cancelled.");
            return BW_LIMIT;
        }
        status = add_frame(m, i, why);
        if (m->film->progress) m->film->progress(m->film->listener, i + 1, m->film->frames);
    }
    return status;
}

/// The picture's height, from the first page's shape, even.
static bw_status measure(making *m, bw_text *why) {
    const bw_status status = draw(m, 0, m->ink[0], why);
    if (status != BW_OK) return status;
    m->width = m->film->width;
    m->height = (int)(m->width * m->ink[0]->height / m->ink[0]->width / 2 + 0.5) * 2;
    return BW_OK;
}

static bw_status make(making *m, bw_text *why) {
    bw_status status = measure(m, why);
    if (status == BW_OK) status = open_streams(m, why);
    if (status == BW_OK) status = add_frames(m, why);
    for (int kind = 0; kind < BW_FILM_KINDS; kind++) {
        if (m->streams[kind]) status = bw_film_stream_close(m->streams[kind], status, why);
    }
    bw_film_picture_close(m->picture);
    return status;
}

static bw_status check(const bw_film *film, bw_text *why) {
    const bool wide = film->width >= BW_FILM_WIDTH_MIN && film->width <= BW_FILM_WIDTH_MAX;
    if (!wide || film->width % 2 != 0) {
        bw_put(why, "A film has to be an even number of pixels wide, between ");
        bw_put_int(why, BW_FILM_WIDTH_MIN);
        bw_put(why, " and ");
        bw_put_int(why, BW_FILM_WIDTH_MAX);
        bw_put(why, ".");
        return BW_BAD_INPUT;
    }
    if (film->rate != 10 && film->rate != 20 && film->rate != 25 && film->rate != 50) {
        bw_put(why, "A film has 10, 20, 25 or 50 pictures a second.");
        return BW_BAD_INPUT;
    }
    return BW_OK;
}

bw_status bw_film_make(const bw_film *film, bw_text *why) {
    BW_ASSERT(film->frames > 0);
    const bw_status status = check(film, why);
    if (status != BW_OK) return status;
    making m = {.film = film};
    void *memory = malloc(2 * (size_t)BW_INK_PAGE_BYTES);
    if (!memory) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    m.ink[0] = bw_ink_in(memory, BW_INK_PAGE_BYTES);
    m.ink[1] = bw_ink_in((char *)memory + BW_INK_PAGE_BYTES, BW_INK_PAGE_BYTES);
    const bw_status made = make(&m, why);
    free(memory);
    return made;
}

bw_status bw_film_captions(const char *path, const char *text, size_t length, bw_text *why) {
    bw_whole_file file;
    bw_status status = bw_whole_open(&file, path, why);
    if (status != BW_OK) return status;
    if (fwrite(text, 1, length, file.stream) != length) {
        bw_put(why, "The captions cannot be written.");
        status = BW_FILE;
    }
    return bw_whole_close(&file, status, why);
}
