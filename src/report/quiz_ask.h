/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which questions a quiz on paper asks: those about the weakest rotations first, the rest drawn by a
/// seed.
#ifndef BW_REPORT_QUIZ_ASK_H
#define BW_REPORT_QUIZ_ASK_H

#include "report/teach.h"

enum { BW_QUIZ_PLACES = 12, BW_QUIZ_WORDS = 8, BW_QUIZ_QUESTIONS = BW_QUIZ_PLACES + BW_QUIZ_WORDS };

typedef enum bw_quiz_kind {
    BW_QUIZ_WHERE, ///< where do you stand?
    BW_QUIZ_DUTY,  ///< what do you do?
    BW_QUIZ_CALL,  ///< what do you call in your place?
    BW_QUIZ_STAGE  ///< what is called when so many are in?
} bw_quiz_kind;

typedef struct bw_question {
    bw_quiz_kind ask;
    int stage, spot, landmark; ///< spot and landmark where the question has them
} bw_question;

/// Fills list[BW_QUIZ_QUESTIONS], the places first; returns how many. No question comes twice. With
/// teach->spot all are his.
int bw_quiz_ask(const bw_teach *teach, bw_question *list);

#endif
