/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The functions that the hand-out's page calls, on the one hand-out of a module. Places cross the border
/// in units of its chart (draw/hand_chart.h); answers come as JSON at bw_hand_output(), their length in
/// bytes being what the function returns, 0 when it was asked for nonsense.
#ifndef BW_WEB_HAND_PAGE_H
#define BW_WEB_HAND_PAGE_H

#include "core/scheme.h"

/// A man of a frame.
typedef struct bw_hand_man {
    double x, y;
    double needs; ///< seconds before he can be there: what `late` says in words
    int32_t duty; ///< bw_duty
    int32_t reserved;
} bw_hand_man;

/// A moment of a rotation.
typedef struct bw_hand_frame {
    double x, y; ///< of the ball
    int32_t moving;
    int32_t count;
    bw_hand_man men[BW_MAX_SPOTS];
} bw_hand_frame;

/// How these lie in memory (web/abi.h).
const char *bw_hand_page_layout(void);
char *bw_hand_page_input(void);
const char *bw_hand_page_output(void);

/// Feeding the document, as web/page.h has it; take gives 0 when it was taken over.
void bw_hand_page_feed(int event, double value);
int bw_hand_page_take(void);

/// Stages, spots, ball places, and the rotations there are.
int bw_hand_page_about(void);

void bw_hand_page_weak(int stage, int landmark, int spot, double weakness);
void bw_hand_page_pick(int stage, int spot);

/// Cards: how many; name and state of one; putting a state back.
int bw_hand_page_cards(void);
int bw_hand_page_card(int card);
void bw_hand_page_put_card(int card, double ease, int streak, int interval, int due, int answers);

/// A rotation: its seconds, 0 for none; then moments of it.
double bw_hand_page_rotate(int stage, int from, int to);
const bw_hand_frame *bw_hand_page_frame(double seconds);
int bw_hand_page_lateness(int spot);

int bw_hand_page_quiz(int day, int seed);
int bw_hand_page_ask(int number);
int bw_hand_page_answer_place(double px, double py, double finger);
int bw_hand_page_answer_option(int option);

/// "5 of 8", the bias in words, and the code for a document with this hash.
int bw_hand_page_result(unsigned document);

/// A place by numbers, people's unit, to the chart and back: JSON {"x", "y"} and the words of it.
int bw_hand_page_point(double right, double out);
int bw_hand_page_place(double px, double py);

/// Colours for the style sheet: as web/page.h.
int bw_hand_page_colour(int theme, int role);
const char *bw_hand_page_theme(int theme);
const char *bw_hand_page_role(int role);

#endif
