/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The review of a season's breaks: as text, as JSON and on paper, from the same counts. Nothing is said
/// as a bare rate: the count comes first, the interval with it, and under ten cases the count alone.
#ifndef BW_REPORT_REVIEW_H
#define BW_REPORT_REVIEW_H

#include "core/field.h"
#include "draw/sheet.h"
#include "trial/season.h"
#include <stdio.h>

typedef struct bw_review {
    const bw_season *season;
    const bw_entry *entries; ///< for the chart of shots
    int entry_count;
    const char *team;      ///< may be ""
    const bw_field *field; ///< the shots are drawn on
    bw_units units;
    bool modelled;     ///< a model's forecast stands beside what was seen
    const char *level; ///< whose, in words
    int before, after; ///< revisions compared, indices into season->revisions; -1: none
    const char *about; ///< the coach's line on every review; NULL: none
} bw_review;

/// Room that is enough for any review's text, bytes.
enum { BW_REVIEW_BYTES = 64 * 1024 };

void bw_review_text(const bw_review *r, bw_text *out);
void bw_review_json(FILE *stream, const bw_review *r);

/// 3 sheets: the whole and its parts; shots and men; games, the change, and the model beside it.
int bw_review_pages(const bw_review *r);
bw_status bw_review_page(const bw_review *r, int page, bw_paper paper, bw_ink *ink);

/// "121 breaks in 14 games".
void bw_say_season(const bw_review *r, bw_text *out);

/// What ended the breaks, most often first: "goal 31, shot saved 28, ...".
void bw_say_outcomes(const bw_group *g, bw_text *out);

/// Beside a count: "the model expected 12.4 goals in these 58". Nothing when it did not forecast them.
void bw_say_expected(const bw_review *r, const bw_group *g, bw_text *out);

/// How a group leans on the season: "leaning on the season: about 26 in 100 (likely 14 to 40)".
void bw_say_leaning(const bw_group *g, bw_text *out);

/// Whether the model's forecasts fit what was seen, in a sentence or two.
void bw_say_calibration(const bw_review *r, bw_text *out);

/// What a log cannot tell, paragraph by paragraph; false past the last.
bool bw_say_review_limit(const bw_review *r, int index, bw_text *out);

#endif
