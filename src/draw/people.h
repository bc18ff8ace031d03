/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The people and the ball of one chart, and the one way in which they are painted: on the board, in books,
/// in answers and in lessons.
#ifndef BW_DRAW_PEOPLE_H
#define BW_DRAW_PEOPLE_H

#include "draw/keeper.h"
#include "draw/label.h"

typedef struct bw_chart_man {
    bw_vec at;        ///< page point
    const char *code; ///< on his disc; kept by pointer until he is painted
    int duty;         ///< bw_duty or BW_NO_DUTY
    bool pinned;      ///< he has a flag
} bw_chart_man;

/// Begun as {.size = ..., .keeper = ...}; all places are page points.
typedef struct bw_chart_people {
    bw_mark_size size;
    bw_vec keeper;
    bool keeper_below; ///< under an attacker who runs past him, not over him
    int attacker_count, defender_count;
    bw_vec attackers[BW_MAX_ATTACKERS]; ///< numbered from 1
    bw_chart_man defenders[BW_MAX_SPOTS];
    bool has_ball;
    bw_vec ball;
    double ring, ring_width; ///< radius and width of a wide ring round the ball; 0: none
} bw_chart_people;

void bw_people_attacker(bw_chart_people *people, bw_vec at);
void bw_people_defender(bw_chart_people *people, bw_chart_man man);
void bw_people_ball(bw_chart_people *people, bw_vec at);

/// Keeps labels off attackers and defenders.
void bw_people_avoid(const bw_chart_people *people, bw_labels *labels);

/// Paints them far to near: attackers, goalkeeper, defenders, ball.
void bw_draw_people(bw_ink *ink, const bw_chart_people *people);

#endif
