/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A rehearsal: for each stage the script and the plan, then a game with one rule changed and the
/// cautions. As text, as JSON and on paper; all three say the same.
#ifndef BW_REPORT_REHEARSAL_H
#define BW_REPORT_REHEARSAL_H

#include "core/practice.h"
#include "draw/sheet.h"
#include "trial/script.h"
#include <stdio.h>

typedef struct bw_rehearsal_stage {
    bw_script script;
    bw_practice_def def;
    bw_practice plan;
} bw_rehearsal_stage;

typedef struct bw_rehearsal {
    const bw_scheme *scheme;
    int numbered;                     ///< players known by jersey number: the first so many
    int numbers[BW_PRACTICE_PLAYERS]; ///< theirs; the others go by their place in the row
    int stage_count;
    bw_rehearsal_stage stages[BW_MAX_STAGES];
} bw_rehearsal;

/// Upper bound of bw_rehearsal_text, bytes.
enum { BW_REHEARSAL_BYTES = 400000 };

void bw_rehearsal_text(const bw_rehearsal *r, bw_text *out);
void bw_rehearsal_json(FILE *stream, const bw_rehearsal *r);

/// Sheets: each stage's script and plan, as many as they take, and one for the games and the cautions.
int bw_rehearsal_pages(const bw_rehearsal *r);

/// Draws page 1 to bw_rehearsal_pages(). BW_NOT_FOUND: no such page; BW_NO_ROOM as bw_book_page.
bw_status bw_rehearsal_page(const bw_rehearsal *r, int page, bw_paper paper, bw_ink *ink);

#endif
