/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson made ready to be filmed, and how large its picture is.
#ifndef BW_DRAW_LESSON_LESSON_READY_H
#define BW_DRAW_LESSON_LESSON_READY_H

#include "core/walk.h"
#include "draw/ink.h"

/// The picture's size, points: 16 to 9.
#define BW_FILM_WIDE 600.0
#define BW_FILM_TALL 337.5

/// A lesson made ready. About 25 kB; `scheme` and `lesson` must outlive it.
typedef struct bw_lesson_film {
    const bw_scheme *scheme;
    const bw_lesson *lesson;
    bw_walk walk;
    uint32_t keys;  ///< what its pictures have
    bw_lines lines; ///< solid runs unless the caller changes it
} bw_lesson_film;

#endif
