/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a product is made from, as whoever asks for it says, and the room for making it.
#ifndef BW_REPORT_ORDER_H
#define BW_REPORT_ORDER_H

#include "draw/danger.h"
#include "report/rehearsal.h"
#include "report/review_data.h"
#include "report/strip.h"
#include "report/teach.h"
#include "report/test_set.h"
#include "report/test_text.h"
#include "report/tune_report.h"
#include "team/date.h"
#include "trial/watcher.h"

/// A tuning and what came of it.
typedef struct bw_tune_run {
    bw_tuning def;
    bw_tuned tuned;
    bw_evidence evidence;
    bw_sense sense;
    bw_tune_report report;
} bw_tune_run;

/// What is wanted, and room for making it: one block of some MB. Whoever asks fills in the first part as
/// far as the product looks at it; the rest begins as zeroes.
typedef struct bw_order {
    bw_scheme scheme;
    bw_paper paper;
    bw_lines lines;
    bw_watcher watch; ///< told of pieces of the work
    /// Told which part begins, each of which is then counted on its own; may be NULL.
    void (*doing)(const char *part);
    bw_ground ground;         ///< built, for a product that needs it
    bw_break_def def;         ///< the break that is tested
    int seconds;              ///< for the answer
    bool alone;               ///< without the standard set
    int book_stage;           ///< index of the only one wanted of the book; -1: all of it
    bw_teach teach;           ///< spot, large print, seed and size of card of what is handed out
    bw_tune_run tune;         ///< its def
    bw_team *team;            ///< open, for a review; the asker closes it
    bool modelled;            ///< a review with the model beside it
    bw_units units;           ///< of a review
    int width;                ///< of a review's pictures, points; 0: its JSON is not the board's
    bw_rehearsal rehearsal;   ///< its players, and the stages asked for
    bw_practice_def practice; ///< players, goals and minutes of each stage
    bool plain;               ///< every rotation once

    char title[BW_NAME_SIZE + 40];
    char date[BW_DATE_SIZE];
    bool weighed; ///< the weakest rotations are known
    bw_weak_list weak;
    bw_report report;
    bw_danger danger;
    int before; ///< pages of the book before the first
    int sheets; ///< of what is handed out
    bw_strip strip;
    bw_review_data review;
    bw_error error; ///< of the team file
    const struct bw_product *product;
    bw_trial trials[BW_TEST_MAX];
} bw_order;

#endif
