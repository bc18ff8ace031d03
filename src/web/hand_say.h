/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the hand-out's page is told, as JSON.
#ifndef BW_WEB_HAND_SAY_H
#define BW_WEB_HAND_SAY_H

#include "web/hand.h"

/// {"stages": [{"defenders", "rotations": [[from, to], ...], "spots": [...]}], "places": [...], "unit"}
void bw_hand_say_about(const bw_hand *hand, bw_text *out);

/// {"key", "ease", "streak", "interval", "due", "answers"}
void bw_hand_say_card(bw_hand *hand, int card, bw_text *out);

/// {"words"}: when the ball is there and how late a spot is, or (spot -1) who is latest.
void bw_hand_say_lateness(const bw_hand *hand, int spot, bw_text *out);

/// {"kind", "stage", "spot", "landmark", "words", "options", "names": [{"name", "x", "y"}]}: names are the
/// places that can be answered by name.
void bw_hand_say_question(const bw_hand *hand, bw_text *out);

/// {"right", "marks", "words", "answer", "why", "x", "y", "tapX", "tapY", "tolerance", "mate", "errorX",
/// "errorY"}: the errors in metres.
void bw_hand_say_place_mark(const bw_hand *hand, bw_vec at, const bw_mark_given *mark,
                            bw_text *out);

/// {"right", "words", "answer", "why", "option"}
void bw_hand_say_option_mark(const bw_hand *hand, bool right, bw_text *out);

/// {"asked", "right", "words", "code"}
void bw_hand_say_result(const bw_hand *hand, uint32_t document, bw_text *out);

/// {"x", "y", "right", "out", "words"}: a place, on the chart, in numbers and in words.
void bw_hand_say_place(const bw_hand *hand, bw_vec at, bw_text *out);

#endif
