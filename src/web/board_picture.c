/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The chart as a picture that leaves the page: it says by itself what it is of, and of when.
#include "draw/path.h"
#include "draw/sheet.h"

#include "web/board.h"

static const double margin = 18;     // points round everything
static const double gap = 8;         // between chart and words
static const double tallest = 1.3;   // of the chart, in widths
static const double title_size = 15; // of what is shown
static const double name_size = 11;  // of the scheme, and of the foot
static const double leading = 1.35;  // in type sizes

static void say_scheme(const bw_scheme *scheme, bw_text *out) {
    bw_put(out, scheme->name);
    if (!*scheme->team) return;
    bw_put(out, ", ");
    bw_put(out, scheme->team);
}

static void say_stage(const bw_board *board, bw_text *out) {
    bw_put_int(out, board->scheme.stages[board->stage].defenders);
    bw_put(out, " in: ");
    bw_put(out, board->view.title);
}

static void say_foot(const bw_board *board, const char *edition, bw_text *out) {
    bw_put(out, "Distances in ");
    bw_put(out, bw_unit_long(board->scheme.units));
    bw_put(out, " from the middle of the goal line.");
    if (!*edition) return;
    bw_put_char(out, ' ');
    bw_put(out, edition);
}

void bw_board_picture(bw_board *board, double width, const char *edition) {
    if (!board->open) return;
    char name[2 * BW_NAME_SIZE + 4], stage[200], foot[300];
    bw_text name_text = bw_text_in(name, sizeof name), stage_text = bw_text_in(stage, sizeof stage);
    bw_text foot_text = bw_text_in(foot, sizeof foot);
    say_scheme(&board->scheme, &name_text);
    say_stage(board, &stage_text);
    say_foot(board, edition, &foot_text);
    const double across = width - 2 * margin;
    bw_ink *ink = bw_ink_in(board->page, sizeof board->page);
    ink->lines = board->lines;
    bw_ink_page(ink, width, 1);
    double y = margin + name_size;
    bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, name_size, margin, y, across, name);
    y += 4;
    y += bw_paragraph(ink, BW_ROLE_TEXT, BW_BOLD, title_size, leading * title_size, margin, y,
                      across, stage);
    y += gap;
    bw_board_draw_at(board, ink, margin, y, across, tallest * across,
                     BW_PART_GROUND | BW_PART_MARKS);
    y += board->view.height + gap;
    y += bw_board_put_key(board, ink, margin, y, across);
    y += gap / 2;
    y += bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, name_size, leading * name_size, margin, y,
                      across, foot);
    ink->height = y + margin;
}
