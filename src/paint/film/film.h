/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages of ink as a film: MP4 (H.264), WebM (VP9) and GIF, any of them from one pass over the frames.
/// Colours are tagged BT.709. The same ink, theme and libav give the same bytes. Every file is whole or
/// not there, also when it is cancelled.
#ifndef BW_PAINT_FILM_FILM_H
#define BW_PAINT_FILM_FILM_H

#include "paint/film/film_kind.h"
#include "paint/paint.h"
#include <stdatomic.h>

/// What to make. Nothing is kept.
typedef struct bw_film {
    int frames; ///< at least 1
    int rate;   ///< frames a second: 10, 20, 25 or 50, of which GIF's hundredths are multiples
    int width;  ///< pixels; a GIF is at most BW_FILM_GIF_WIDTH wide
    /// Draws frame 0 to frames - 1. Called in order, from the thread that called bw_film_make.
    bw_status (*page)(const void *self, int frame, bw_ink *ink);
    const void *self;
    const bw_theme *theme;
    bw_fonts *fonts;
    const char *paths[BW_FILM_KINDS]; ///< NULL: not wanted
    /// Called after each frame; may be NULL.
    void (*progress)(void *listener, int done, int frames);
    void *listener;
    const atomic_bool *cancel; ///< set it from anywhere, a signal handler too; may be NULL
} bw_film;

/// "mp4", "webm", "gif"; NULL past the last.
const char *bw_film_ending(int kind);

/// Makes the film. BW_LIMIT: cancelled, nothing is left behind. BW_BAD_INPUT: a size or rate that cannot
/// be, or a letter the font does not have. BW_FILE: a file could not be written.
bw_status bw_film_make(const bw_film *film, bw_text *why);

/// Writes a film's captions, `length` bytes of WebVTT, whole or not at all.
bw_status bw_film_captions(const char *path, const char *text, size_t length, bw_text *why);

#endif
