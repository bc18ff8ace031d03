/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pieces of the hand-out, each put where the page's template names it. Private to this room.
#ifndef BW_REPORT_HANDOUT_PARTS_H
#define BW_REPORT_HANDOUT_PARTS_H

#include "report/teach.h"

typedef struct bw_handout_job {
    const bw_teach *teach;
    bw_ink *ink;
    bw_text *out;
    bw_plan plan[BW_MAX_STAGES];
} bw_handout_job;

/// The chart and the marks that all pictures use, once.
void bw_handout_marks(const bw_handout_job *job);

/// Every mark with its meaning.
void bw_handout_key(const bw_handout_job *job);

/// Each stage, each place of the ball: the picture, the caption, each spot's job.
void bw_handout_stages(const bw_handout_job *job);

/// The quiz's questions with their answers folded up under them.
void bw_handout_answers(const bw_handout_job *job);

/// Scheme and weakest rotations for the page's program.
void bw_handout_data(const bw_handout_job *job);

#endif
