/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A painted picture in the forms encoders take, each made once however many files want it. Private to
/// this room.
#ifndef BW_PAINT_FILM_FILM_PICTURE_H
#define BW_PAINT_FILM_FILM_PICTURE_H

#include "paint/film/film_kind.h"
#include "paint/paint.h"

struct AVFrame;
typedef struct bw_film_picture bw_film_picture;

/// For pictures `width` by `height`, both even, in the theme's colours; `wanted` says which kinds of
/// film there will be. NULL when there is no memory or no libav, which is said in *why.
bw_film_picture *bw_film_picture_open(int width, int height, const bw_theme *theme,
                                      const bool wanted[BW_FILM_KINDS], bw_text *why);
void bw_film_picture_close(bw_film_picture *picture);

/// The pixels to paint on, 0x00RRGGBB.
uint32_t *bw_film_picture_pixels(bw_film_picture *picture);

/// Takes over what was painted. BW_NO_ROOM: no memory, said in *why.
bw_status bw_film_picture_take(bw_film_picture *picture, bw_text *why);

/// What was taken over last, for a kind that is wanted. Its time is for the caller to set.
struct AVFrame *bw_film_picture_frame(bw_film_picture *picture, bw_film_kind kind);

#endif
