/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ink list: one page as a flat list of fills, strokes and text runs, with nothing left to decide.
/// Everything that draws ends here; every painter (paper, screen, trace) only walks it. A list is one
/// block of the caller's memory without a pointer in it, so it can be copied, hashed and read from
/// JavaScript as it stands.
///
/// Layout: a bw_ink head, then records. A record is a bw_ink_item head, then `numbers` doubles, then
/// `text` bytes of UTF-8 (no terminator) padded with zeros to a multiple of 8. The next record starts
/// `bytes` after this one. Lengths are points (1/72 inch), x to the right, y down from the top left.
///
/// A path is its numbers: a verb (0 move, 1 line, 2 curve, 3 close) followed by that verb's points
/// (1, 1, 3 or 0 pairs). Circles and arcs are cubic curves by the time they are here.
#ifndef BW_DRAW_INK_H
#define BW_DRAW_INK_H

#include "core/base.h"
#include "core/vec.h"
#include "draw/role.h"

/// Enough for any page this program makes (the fullest needs about a third).
enum { BW_INK_PAGE_BYTES = 512 * 1024 };

typedef enum bw_ink_kind {
    BW_INK_FILL, ///< numbers: a path, filled by the non-zero rule
    BW_INK_STROKE, ///< numbers: a path; `size` wide, joins round, `style` a bw_cap, dashed if dash[1] > 0
    BW_INK_TEXT,   ///< numbers: x y of the baseline; `size` type size, `style` bw_weight, `align`
    BW_INK_CLIP,   ///< numbers: x y width height; holds until the matching UNCLIP; may nest
    BW_INK_UNCLIP, ///< ends the innermost CLIP
    BW_INK_OPEN, ///< begins a piece of the document's structure: `style` a bw_tag, text its alt text
    BW_INK_SHUT  ///< ends the innermost OPEN
} bw_ink_kind;

typedef enum bw_cap { BW_CAP_FLAT, BW_CAP_ROUND } bw_cap;
typedef enum bw_weight { BW_REGULAR, BW_BOLD } bw_weight;
typedef enum bw_align { BW_LEFT_ALIGN, BW_CENTRE_ALIGN, BW_RIGHT_ALIGN } bw_align;
typedef enum bw_verb { BW_MOVE, BW_LINE, BW_CURVE, BW_SHUT } bw_verb;

/// Pieces of a document. A heading's text also names its place in the outline.
typedef enum bw_tag { BW_TAG_H1, BW_TAG_H2, BW_TAG_P, BW_TAG_FIGURE, BW_TAG_ARTIFACT } bw_tag;

/// Which of the two habits draws runs and passes: trades and countries differ.
typedef enum bw_lines {
    BW_RUN_SOLID, ///< runs solid, passes dashed: the usual one here
    BW_PASS_SOLID ///< the other way round
} bw_lines;

typedef struct bw_ink_item {
    int32_t kind;    ///< bw_ink_kind
    int32_t role;    ///< bw_role: the colour's meaning; a theme gives the colour
    int32_t bytes;   ///< of the whole record, a multiple of 8
    int32_t numbers; ///< doubles after this head
    int32_t text;    ///< bytes of text after the doubles
    int32_t style;   ///< bw_cap, bw_weight or bw_tag, by kind
    int32_t align;   ///< bw_align
    int32_t reserved;
    double size;    ///< stroke width or type size, points
    double dash[2]; ///< points on and off; off 0 is solid; on 0 with round caps is a row of dots
} bw_ink_item;

typedef struct bw_ink {
    int32_t room;   ///< bytes of the block, this head included
    int32_t used;   ///< bytes filled, this head included
    int32_t need;   ///< bytes the whole page would take; more than `room` when it did not fit
    int32_t items;  ///< records
    int32_t status; ///< bw_status: BW_OK, or BW_NO_ROOM and then the list is empty
    int32_t open;   ///< CLIP and OPEN not yet ended
    int32_t last;   ///< offset of the record being built
    int32_t lines; ///< bw_lines: every run and pass of the page follows it; stays from page to page
    double width;  ///< page, points
    double height;
} bw_ink;

/// Starts an empty list in `memory` (aligned for a double), NULL if it cannot hold even the head.
bw_ink *bw_ink_in(void *memory, size_t size);

/// Empties the list for a page of this size. The habit of lines stays.
void bw_ink_page(bw_ink *ink, double width, double height);

/// Begins a path; line, move, curve and close build it; it ends where the next item begins.
void bw_ink_fill(bw_ink *ink, bw_role role);
void bw_ink_stroke(bw_ink *ink, bw_role role, double width);
void bw_ink_dashed(bw_ink *ink, bw_role role, double width, double on, double off);

void bw_ink_move(bw_ink *ink, double x, double y);
void bw_ink_line(bw_ink *ink, double x, double y);
void bw_ink_curve(bw_ink *ink, double x1, double y1, double x2, double y2, double x, double y);
void bw_ink_shut(bw_ink *ink);

/// One line of text with its baseline at (x, y).
void bw_ink_text(bw_ink *ink, bw_role role, bw_weight weight, double size, bw_align align, double x,
                 double y, const char *text);
void bw_ink_text_n(bw_ink *ink, bw_role role, bw_weight weight, double size, bw_align align,
                   double x, double y, const char *text, size_t length);

/// Makes the finished page and everything on it `factor` times as large: large print, a poster.
void bw_ink_enlarge(bw_ink *ink, double factor);

void bw_ink_clip(bw_ink *ink, double x, double y, double width, double height);
void bw_ink_unclip(bw_ink *ink);
void bw_ink_begin(bw_ink *ink, bw_tag tag, const char *alt);
void bw_ink_end(bw_ink *ink);

/// Walking: the first record, and the one after `item`; NULL at the end.
const bw_ink_item *bw_ink_first(const bw_ink *ink);
const bw_ink_item *bw_ink_next(const bw_ink *ink, const bw_ink_item *item);
const double *bw_ink_numbers(const bw_ink_item *item);
const char *bw_ink_string(const bw_ink_item *item); ///< item->text bytes, not terminated

#endif
