/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The picture book of a scheme: a cover with the named ball places and the calls, the shapes at a
/// glance, then for each stage who does what and a chart for every landmark, the lessons, the notes.
#ifndef BW_DRAW_BOOK_H
#define BW_DRAW_BOOK_H

#include "core/scheme.h"
#include "draw/danger.h"
#include "draw/ink.h"
#include "draw/sheet.h"

/// Pages the book of a valid scheme has, at least 2.
int bw_book_pages(const bw_scheme *scheme);

/// Draws page 1 to bw_book_pages() into `ink`, replacing what was there. BW_NOT_FOUND: no such page;
/// BW_NO_ROOM: ink->need tells how many bytes it takes. Uses about 12 kB of stack.
bw_status bw_book_page(const bw_scheme *scheme, int page, bw_paper paper, bw_ink *ink);

/// The same with the danger of a shot on the cover's chart: a surface of chances covering the field in
/// front of the goal, NULL for none.
bw_status bw_book_page_with(const bw_scheme *scheme, int page, bw_paper paper,
                            const bw_danger *danger, bw_ink *ink);

/// The first page of a stage (an index in scheme->stages), or of a lesson.
int bw_book_stage_page(const bw_scheme *scheme, int stage);
int bw_book_lesson_page(const bw_scheme *scheme, int lesson);

#endif
