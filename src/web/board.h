/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board's whole state: one scheme on a chart, the ball and the attackers where the coach put
/// them, and the unit running after the ball at its real speed. The page only passes on what fingers
/// do and paints what comes back: every position, word and picture is made here.
///
/// Places cross the border as `bw_vec` metres inside and in the people's unit (yards or metres) where
/// a function says "shown". One block of memory, no allocation; the caller owns it.
#ifndef BW_WEB_BOARD_H
#define BW_WEB_BOARD_H

#include "web/board_edit.h"
#include "web/board_run.h"

/// Everything closed, edits mirrored.
void bw_board_reset(bw_board *board);

/// Takes over the document fed into board->tree. On a refusal board->error says why and what was open
/// stays open. Keeps the stage (by its number of defenders), the ball and the attackers when `keep`.
bw_status bw_board_take(bw_board *board, bool keep);

/// Writes the canonical document into board->output; its length in bytes.
int bw_board_save(bw_board *board);

/// Shows a stage, 0 <= index < stage_count; the men stand where they belong.
void bw_board_show(bw_board *board, int stage);

void bw_board_set_mode(bw_board *board, bw_board_mode mode);

/// Moves a token to a place in metres, held on the field and rounded to a tenth of the shown unit.
/// A defender is moved for now alone when nobody edits, the goalkeeper never.
void bw_board_move(bw_board *board, int token, bw_vec at);

/// Moves a token to a point of the page of ink, held inside the picture with its whole mark.
void bw_board_drag(bw_board *board, int token, bw_vec point);

/// Moves a token by metres; the ball of the mode Pins to the next landmark that way, if there is one.
void bw_board_nudge(bw_board *board, int token, bw_vec by);

/// Where the goalkeeper stands: in the mouth, for the ball where it is.
bw_vec bw_board_keeper(const bw_board *board);

/// Ball to landmark number `landmark`.
void bw_board_ball_to(bw_board *board, int landmark);

/// The first `men` attackers of a set: an index into the built-in sets, then the scheme's own; -1
/// takes them all away.
void bw_board_attack(bw_board *board, int set, int men);

/// One attacker more, where there is most room. No more than BW_MAX_ATTACKERS.
void bw_board_add_man(bw_board *board);

/// Takes one away; those after him move up a number.
void bw_board_remove_man(bw_board *board, int attacker);

/// Keeps the attackers as they stand as a set of the scheme, with an id out of its name. False
/// when they cannot be kept, or with a name that is empty or too long.
bool bw_board_keep_set(bw_board *board, const char *name);

/// They stand as the coach put them, are enough for a set, and the scheme has room for one more.
bool bw_board_can_keep(const bw_board *board);

/// Takes the set that the attackers came from out of the scheme, when it is one of its own; the men
/// stay where they are.
bool bw_board_drop_set(bw_board *board);

/// Id of set number `index`, "" past the last one.
const char *bw_board_set_id(const bw_board *board, int index);

/// Goes to what a finding is about: its stage, and its landmark when it names one.
void bw_board_visit(bw_board *board, int finding);

/// Makes the field larger by a factor (1 to 4 in all); what lies at this page point stays there.
void bw_board_zoom(bw_board *board, double times, bw_vec point);

/// Moves the field on the page by points, as far as it goes.
void bw_board_pan(bw_board *board, bw_vec by);

/// Moves the field so that a token is in the picture.
void bw_board_reveal(bw_board *board, int token);

/// The part of the field that is shown.
bw_window bw_board_window(const bw_board *board);

/// The point of the picture nearest to a page point, so far from its edge that a mark is whole there.
bw_vec bw_board_inside(const bw_board *board, bw_vec point);

/// True for a page point outside the picture, as last drawn.
bool bw_board_away(const bw_board *board, bw_vec point);

/// Fills view.token and the words from the state.
void bw_board_say(bw_board *board);

/// Draws the chart, at most `width` by `height` points, with its marks into board->page, and sets
/// view.width, view.height and the tokens' page points.
void bw_board_draw(bw_board *board, double width, double height);

/// The same with its top left corner at (x, y) of a page that is begun.
void bw_board_draw_at(bw_board *board, bw_ink *ink, double x, double y, double width, double height,
                      int parts);

/// The same, only some of it.
enum { BW_PART_GROUND = 1, BW_PART_MARKS = 2 };
void bw_board_draw_part(bw_board *board, double width, double height, int parts);

/// The chart as a picture that explains itself, `width` points wide, into board->page: scheme and team, stage
/// with its call, where the ball is, chart, key, unit, and `edition`, a line saying of when it is ("": none).
void bw_board_picture(bw_board *board, double width, const char *edition);

/// The key of what the chart shows from the corner (x, y) down; its height, points.
double bw_board_put_key(const bw_board *board, bw_ink *ink, double x, double y, double width);

/// Draws the key of what the chart shows, `width` points wide, into board->page; the page's height is
/// in the ink.
void bw_board_key(bw_board *board, double width);

#endif
