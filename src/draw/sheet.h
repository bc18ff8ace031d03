/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sheet: one layout for Letter and A4. Everything stands in the block both papers share, A4's
/// width by Letter's height less 12.7 mm margins, centred on the paper; so the same picture comes out
/// of either.
#ifndef BW_DRAW_SHEET_H
#define BW_DRAW_SHEET_H

#include "core/text.h"
#include "draw/ink.h"
#include "draw/view.h"

typedef enum bw_paper { BW_LETTER, BW_A4, BW_PAPER_COUNT } bw_paper;

/// The shared block, points: A4's width and Letter's height less two margins.
#define BW_MARGIN 36.0
#define BW_BLOCK_WIDTH (210 * 72 / 25.4 - 2 * BW_MARGIN)
#define BW_BLOCK_HEIGHT (792 - 2 * BW_MARGIN)

/// "letter", "a4"
const char *bw_paper_name(bw_paper paper);

/// Type sizes and leading of the house, points.
#define BW_TYPE_TITLE 34.0
#define BW_TYPE_HEAD 18.0
#define BW_TYPE_SUBHEAD 13.0
#define BW_TYPE_TEXT 12.0
#define BW_TYPE_SMALL 10.0
#define BW_TYPE_LABEL 9.0
#define BW_LEADING 15.5       // of text
#define BW_LEADING_SMALL 13.0 // of small text

/// What stands at the foot of a sheet.
typedef struct bw_foot {
    const char *name; ///< scheme (and team): bottom left
    uint32_t keys;    ///< bw_key_entry bits
    bool charts;      ///< the sheet has charts: key, scale and up-field arrow at its foot
    int page, pages;  ///< from 1
    const char *date; ///< before the page's number; NULL or "": none
} bw_foot;

/// A sheet begun: its ink, and the block left for content.
typedef struct bw_sheet {
    bw_ink *ink;
    bw_box block;   ///< between the top margin and the foot
    double scale_y; ///< foot of the scale bar
} bw_sheet;

/// Starts a page: white paper, foot drawn, block returned.
bw_sheet bw_sheet_begin(bw_ink *ink, bw_paper paper, const bw_foot *foot);

/// Paper to be laid out small and enlarged when done: large print, a poster. Points before that.
typedef struct bw_format {
    double width, height; ///< of the paper
    bw_box block;         ///< inside the margins
    double zoom;          ///< 1: as it is
} bw_format;

/// The shared block on this paper, 1/zoom as large.
bw_format bw_format_of(bw_paper paper, double zoom);

/// Any paper, `width` by `height` points when enlarged, inside the usual margins.
bw_format bw_format_poster(double width, double height, double zoom);

/// bw_sheet_begin on such paper. With ink NULL nothing is drawn and only the block found. A narrow
/// block gets its foot in more lines.
bw_sheet bw_sheet_open(bw_ink *ink, const bw_format *format, const bw_foot *foot);

/// Ends a page begun with bw_sheet_open: enlarges it.
void bw_sheet_close(const bw_sheet *sheet, const bw_format *format);

/// Draws the scale bar and the up-field arrow in the line kept for them; `scale` as in the sheet's
/// views, points per metre.
void bw_sheet_scale(const bw_sheet *sheet, bw_units units, double scale);

/// One line of text with its baseline at (x, y), cut with an ellipsis if it is wider than `width`.
void bw_line_of(bw_ink *ink, bw_role role, bw_weight weight, double size, double x, double y,
                double width, const char *text);

/// A heading: the same, marked as such for the outline (BW_TAG_H1 or BW_TAG_H2).
void bw_heading(bw_ink *ink, bw_tag tag, bw_role role, double size, double x, double y,
                double width, const char *text);

/// A paragraph in a column, wrapped; baseline of its first line at y + type size. Returns the height
/// it takes (lines x leading). With ink NULL only measures. At most BW_MAX_LINES lines.
enum { BW_MAX_LINES = 64 };
double bw_paragraph(bw_ink *ink, bw_role role, bw_weight weight, double size, double leading,
                    double x, double y, double width, const char *text);

/// The same with at most `most` lines; what is left over shows as an ellipsis.
double bw_paragraph_of(bw_ink *ink, bw_role role, bw_weight weight, double size, double leading,
                       double x, double y, double width, const char *text, int most);

#endif
