/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The functions that the page calls, on the one board there is in a WebAssembly module. Each checks
/// what it is handed: a page's mistake does nothing rather than harm. Texts cross as bytes of UTF-8 in
/// the input buffer, or as the address of a terminated text.
///
/// Feeding a document: the parser's events in order, each a bw_tree_feed of the input buffer, then bw_page_take.
#ifndef BW_WEB_PAGE_H
#define BW_WEB_PAGE_H

#include "web/board_rule.h"
#include "web/lesson.h"
#include "web/page_list.h"

/// The one board of a module. Not for JavaScript: for the files that export its functions.
bw_board *bw_page_board(void);

const char *bw_page_layout(void);
const bw_board_view *bw_page_view(void);
const bw_finding *bw_page_findings(void);
const bw_error *bw_page_error(void);
const void *bw_page_ink(void);
char *bw_page_input(void);
int bw_page_input_room(void);
const char *bw_page_output(void);

void bw_page_feed(int event, double value);

/// bw_file_kind of a file whose first bytes are in the input buffer; "" when it may be a text.
const char *bw_page_kind(int length);

/// bw_board_take: 0 when the document was taken over.
int bw_page_take(int keep);

/// bw_board_save: bytes at bw_page_output().
int bw_page_save(void);

void bw_page_stage(int stage);
void bw_page_mode(int mode);
void bw_page_mirror(int mirrored);
void bw_page_danger(int danger);
void bw_page_attack(int set, int men);
void bw_page_lines(int lines);
void bw_page_ball_to(int landmark);

// page_design.c: rule, own attackers, zoom.

/// A knob of the rule, NULL past the last one.
const bw_board_knob *bw_page_knob(int index);
void bw_page_turn(int index, double value);
void bw_page_hold(int hold);
void bw_page_crease(int crease);
int bw_page_hold_now(void);
int bw_page_crease_now(void);

void bw_page_add_man(void);
void bw_page_remove_man(int attacker);

/// The set's name is `length` bytes in the input buffer. 1 when it was kept.
int bw_page_keep_set(int length);
int bw_page_drop_set(void);

/// Men moved by hand for now (web/board_aside.h); 1 when it was done, or is so.
int bw_page_call_back(int spot); ///< -1: everybody
int bw_page_home_counts(int spot);
int bw_page_home_here(int spot);
int bw_page_pin_here(int spot, int landmark);
int bw_page_nearest(void); ///< the landmark nearest to the ball

/// Suggested homes (web/board_ghost.h), shown units. bw_page_take_home: 1 when it was done.
void bw_page_suggest(int spot, double x, double y);
void bw_page_put_away(void);
int bw_page_ghost(int spot); ///< 1 when one lies elsewhere than his home in the stage shown
int bw_page_take_home(int spot);

/// Where a yard matters round a home (web/board_soundings.h): home and step in shown units, costs in
/// goals a break; then the picture of a spot, `width` points wide, into the page of ink.
void bw_page_sound_begin(double x, double y, double step, double flat);
void bw_page_sound(int out, int across, double cost);
void bw_page_soundings(int spot, double width);

/// `times` as large, about a point of the page of ink; 0 for the whole field.
void bw_page_zoom(double times, double px, double py);
void bw_page_pan(double dx, double dy);
void bw_page_reveal(int token);

/// Moves a token: to a point of the page of ink; to a place in shown units; by shown units.
void bw_page_drag(int token, double px, double py);
void bw_page_put(int token, double x, double y);
void bw_page_nudge(int token, double dx, double dy);

void bw_page_unpin(int spot);
void bw_page_visit(int finding);
void bw_page_run(double seconds);
void bw_page_settle(void);
void bw_page_say(void);
void bw_page_draw(double width, double height);
void bw_page_draw_part(double width, double height, int parts);
void bw_page_key(double width);

/// bw_board_picture; the edition is `edition` bytes in the input buffer.
void bw_page_picture(double width, int edition);

/// The page of ink as SVG in a theme, at bw_page_output(), with `style` bytes of the input buffer as its
/// style sheet; 0 when there is no room for it.
int bw_page_svg(int theme, int style);

const char *bw_page_name(int list, int index);

/// A theme's colour as 0xRRGGBB, its stroke weight, and its id ("" past the last one).
int bw_page_colour(int theme, int role);
double bw_page_weight(int theme);
const char *bw_page_theme(int theme);

// Lessons (web/lesson.h; page_lesson.c). Edits return 1 when the scheme was changed.
const bw_lesson_view *bw_page_lessons(void);

/// Name of lesson number `index`, "" past the last one.
const char *bw_page_lesson_name(int index);
void bw_page_lesson_say(void);
void bw_page_lesson_choose(int lesson);
void bw_page_lesson_visit(int stop);
void bw_page_lesson_record(int record);
int bw_page_lesson_new(void);
int bw_page_lesson_rename(int length); ///< bytes in the input buffer
int bw_page_lesson_delete(void);
int bw_page_lesson_add(int by_finger);
int bw_page_lesson_drop(int stop);
int bw_page_lesson_shift(int stop, int by);
int bw_page_lesson_place(int stop);
int bw_page_lesson_pause(int stop, double seconds);
int bw_page_lesson_caption(int stop, int length);
void bw_page_lesson_at(double seconds);
void bw_page_lesson_stop(void);
void bw_page_lesson_call(int shuffled, int seed);
void bw_page_lesson_next(void);

// The break being logged (web/log.h; page_log.c). Texts as bytes in the input buffer.
void bw_page_log_clear(void);
void bw_page_log_set(int field, double value);
double bw_page_log_figure(int field);
int bw_page_log_out(int length);
int bw_page_log_note(int length);
const char *bw_page_log_say(void);
const char *bw_page_log_refused(void);
const char *bw_page_log_outcome(int index, int what);
void bw_page_log_draw(double width, double height);
void bw_page_log_shot(double px, double py);

#endif
