/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a tuning has to say: as text, as JSON and on paper, from the same numbers.
#ifndef BW_REPORT_TUNE_REPORT_H
#define BW_REPORT_TUNE_REPORT_H

#include "core/text.h"
#include "draw/sheet.h"
#include "tune/evidence.h"
#include "tune/sense.h"
#include <stdio.h>

typedef struct bw_tune_report {
    const bw_tuning *def;
    const bw_tuned *tuned;
    const bw_evidence *evidence;
    const bw_sense *sense;
    const char *path; ///< where the new scheme was written
} bw_tune_report;

/// Room that is enough for any report's text, bytes.
enum { BW_TUNE_TEXT_BYTES = 32 * 1024 };

void bw_tune_text(const bw_tune_report *r, bw_text *out);
void bw_tune_json(FILE *stream, const bw_tune_report *r);

/// 1 page of changes and evidence, 1 of maps of the homes, 1 of the rule.
int bw_tune_pages(const bw_tune_report *r);
bw_status bw_tune_page(const bw_tune_report *r, int page, bw_paper paper, bw_ink *ink);

/// "13.0 -> 12.4 yd": a knob's old and new value in the people's unit.
void bw_say_turn(const bw_tune_report *r, int knob, bw_text *out);

/// One sentence: whether the gain on held-out breaks is more than chance, best and typical apart.
void bw_say_gain(const bw_tune_report *r, bw_text *out);

/// "Typical play ...: 2.1 fewer goals in 100 breaks (1.4 to 2.8 by seed; chance alone +- 0.9)."
void bw_say_kind(const bw_tune_report *r, bw_drill_kind kind, bool best, bw_text *out);

/// What the new scheme's notes say of how it was made, one line.
void bw_say_why(const bw_tune_report *r, bw_text *out);

/// What the figures leave out, paragraph by paragraph; false past the last.
bool bw_say_tune_limit(const bw_tune_report *r, int index, bw_text *out);

#endif
