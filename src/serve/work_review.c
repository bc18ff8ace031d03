/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The review with the model beside it, for the page and on paper.
#include "report/review_board.h"
#include "report/review_data.h"
#include "serve/work.h"
#include <stdlib.h>

static bw_status load(bw_work *w, bw_review_data *data, bw_text *why) {
    bw_team *team;
    bw_error error;
    bw_status status = bw_team_open(w->team, BW_TEAM_READ, &team, &error);
    if (status == BW_OK) {
        status = bw_review_load(team, !w->seen_only, BW_YARDS, w->battery.watch, data, &error);
        bw_team_close(team);
    }
    if (status == BW_OK) return BW_OK;
    bw_put(why, "The team file: ");
    bw_put(why, error.message);
    bw_put_char(why, '.');
    return status;
}

static bw_status write_board(const bw_work *w, const bw_review_data *data, bw_bytes *result,
                             bw_text *why) {
    FILE *out = open_memstream(&result->data, &result->length);
    const bool made = out && bw_review_board(out, &data->review, w->width);
    if (out && fclose(out) == 0 && made) return BW_OK;
    if (out) free(result->data);
    *result = (bw_bytes){NULL, 0};
    bw_put(why, BW_NO_MEMORY_SENTENCE);
    return BW_NO_ROOM;
}

typedef struct printing {
    const bw_review *review;
    bw_paper paper;
} printing;

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const printing *p = self;
    return bw_review_page(p->review, number, p->paper, ink);
}

static bw_status with_data(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    bw_review_data *data = calloc(1, sizeof *data);
    if (!data) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    bw_status status = load(w, data, why);
    if (status == BW_OK && press) {
        const printing p = {&data->review, w->paper};
        const bw_pages pages = {bw_review_pages(p.review), "Review of the season's breaks",
                                draw_page, &p};
        status = bw_press_pdf(press, &pages, w->theme, result, why);
    } else if (status == BW_OK) {
        status = write_board(w, data, result, why);
    }
    bw_review_drop(data);
    free(data);
    return status;
}

bw_status bw_make_review(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    (void)press;
    return with_data(w, NULL, result, why);
}

bw_status bw_make_review_pages(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    return with_data(w, press, result, why);
}
