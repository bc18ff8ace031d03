/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One video file being written with libav. Private to this room.
#ifndef BW_PAINT_FILM_FILM_STREAM_H
#define BW_PAINT_FILM_FILM_STREAM_H

#include "core/base.h"
#include "core/text.h"
#include "paint/film/film_kind.h"

struct AVFrame;
typedef struct bw_film_stream bw_film_stream;

/// For pictures like `first`, `rate` a second. NULL with one sentence in *why when it cannot be opened.
bw_film_stream *bw_film_stream_open(bw_film_kind kind, const char *path,
                                    const struct AVFrame *first, int rate, bw_text *why);

/// Adds a picture.
bw_status bw_film_stream_add(bw_film_stream *stream, struct AVFrame *frame, bw_text *why);

/// Writes what is left and frees the stream. `status` other than BW_OK drops the file.
bw_status bw_film_stream_close(bw_film_stream *stream, bw_status status, bw_text *why);

#endif
