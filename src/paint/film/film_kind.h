/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The kinds of film there are, and how wide they may be.
#ifndef BW_PAINT_FILM_FILM_KIND_H
#define BW_PAINT_FILM_FILM_KIND_H

typedef enum bw_film_kind { BW_FILM_MP4, BW_FILM_WEBM, BW_FILM_GIF, BW_FILM_KINDS } bw_film_kind;

/// Smallest and largest width; the height follows from the page. Even numbers only.
enum { BW_FILM_WIDTH_MIN = 160, BW_FILM_WIDTH_MAX = 1920, BW_FILM_GIF_WIDTH = 640 };

#endif
