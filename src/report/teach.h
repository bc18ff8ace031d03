/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What everything that is handed out is made from: packet, cards, wall sheets, quiz.
#ifndef BW_REPORT_TEACH_H
#define BW_REPORT_TEACH_H

#include "core/text.h"
#include "draw/sheet.h"
#include "trial/weak_rotations.h"

/// How much larger the large-print edition is: text 16 pt, labels 12 pt.
#define BW_LARGE_PRINT (4.0 / 3)

typedef struct bw_teach {
    const bw_scheme *scheme;
    const bw_weak_list *weak; ///< may be empty
    const char *date;         ///< as the footer has it, "2026-04-18"; "" for none
    bw_paper paper;
    bool large;       ///< the large-print edition
    const char *spot; ///< only this spot's pages, of every stage that has it; NULL: everyone's
    uint64_t seed;    ///< order of the quiz
    double card_width, card_height; ///< points
} bw_teach;

/// Index in the stage of the spot this is for, when it is for one: spot s is wanted when this is -1 or
/// s. -2: the stage does not have it.
int bw_teach_spot(const bw_teach *teach, int stage);

/// The paper all flowing pages stand on.
bw_format bw_teach_format(const bw_teach *teach);

/// A place as bw_say_place says it, with no line's end between a figure and its unit.
void bw_teach_place(const bw_scheme *scheme, bw_vec at, bw_text *out);

#endif
