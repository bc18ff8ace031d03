/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What players answered in quizzes, as the result codes their hand-outs show. What a code says is read
/// elsewhere; here it is kept once per player.
#ifndef BW_TEAM_QUIZ_H
#define BW_TEAM_QUIZ_H

#include "team/team.h"
#include <stdbool.h>

enum { BW_QUIZ_CODE_SIZE = 512 }; ///< bytes of a result code, terminator included

typedef struct bw_quiz_result {
    int jersey;
    int64_t time; ///< UTC seconds when it came in; 0: unknown
    char code[BW_QUIZ_CODE_SIZE];
} bw_quiz_result;

/// Keeps a result; the same code of the same player again is not kept twice. *fresh may be NULL.
bw_status bw_team_add_quiz(bw_team *team, const bw_quiz_result *result, bool *fresh,
                           bw_error *error);

/// Results of a player, or of everyone when jersey is negative, in the order in which they came. The
/// caller frees *list.
bw_status bw_team_quizzes(bw_team *team, int jersey, bw_quiz_result **list, int *count,
                          bw_error *error);

#endif
