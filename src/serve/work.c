/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/work.h"

#include "core/field.h"
#include "core/text.h"
#include "draw/book.h"
#include "file/document.h"
#include "report/pages.h"
#include "report/review_board.h"
#include "report/sample_danger.h"
#include "report/strip.h"
#include "report/test_json.h"
#include <stdio.h>
#include <stdlib.h>

/// Plays the breaks; the first must have a result.
static bw_status play(bw_work *w, bool alone, bw_text *why) {
    w->battery.ground = &w->ground;
    w->battery.trials = w->trials;
    w->battery.count = bw_test_set(&w->scheme, &w->def, w->seconds, alone, w->trials);
    const bw_status status = bw_battery_run(&w->battery);
    if (status == BW_LIMIT) bw_put(why, "Cancelled.");
    if (status == BW_NO_ROOM) bw_put(why, BW_NO_MEMORY_SENTENCE);
    if (status != BW_OK) return status;
    w->report = (bw_report){.ground = &w->ground,
                            .headline = w->trials,
                            .standard = w->trials,
                            .standard_count = w->battery.count > 1 ? w->battery.count : 0};
    if (w->trials[0].status != BW_OK) {
        bw_put(why, w->trials[0].why[0] ? w->trials[0].why : "the break could not be tested");
        bw_put_char(why, '.');
    }
    return w->trials[0].status;
}

static bw_status make_test(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    (void)press;
    const bw_status status = play(w, w->alone, why);
    if (status != BW_OK) return status;
    FILE *out = open_memstream(&result->data, &result->length);
    if (out) bw_test_json(out, &w->report);
    if (out && fclose(out) == 0) return BW_OK;
    bw_put(why, BW_NO_MEMORY_SENTENCE);
    return BW_NO_ROOM;
}

static bw_status report_page(const void *self, int number, bw_ink *ink) {
    const bw_work *w = self;
    return bw_report_page(&w->report, number, w->paper, ink);
}

static bw_status make_report(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    const bw_status status = play(w, w->alone, why);
    if (status != BW_OK) return status;
    char title[BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, w->scheme.name);
    bw_put(&t, ": what a break is worth");
    const bw_pages pages = {bw_report_pages(&w->report), title, report_page, w};
    return bw_press_pdf(press, &pages, w->theme, result, why);
}

typedef struct book {
    const bw_work *work;
    bw_danger danger;
} book;

static bw_status book_page(const void *self, int number, bw_ink *ink) {
    const book *b = self;
    return bw_book_page_with(&b->work->scheme, number, b->work->paper, &b->danger, ink);
}

static bw_status make_book(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    const bw_field *field = bw_field_at(w->scheme.field);
    const bw_window half = {-field->width / 2, field->width / 2, -field->end_line, field->midline};
    const book b = {w, bw_sample_danger(&w->scheme, half)};
    const bw_pages pages = {bw_book_pages(&w->scheme), w->scheme.name, book_page, &b};
    return bw_press_pdf(press, &pages, w->theme, result, why);
}

typedef struct answer {
    bw_strip strip;
    bw_paper paper;
} answer;

static bw_status strip_page(const void *self, int number, bw_ink *ink) {
    const answer *a = self;
    return bw_strip_page(&a->strip, number, a->paper, ink);
}

static bw_status make_strip(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    bw_status status = play(w, true, why);
    if (status != BW_OK) return status;
    answer *a = calloc(1, sizeof *a);
    if (!a) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    a->paper = w->paper;
    status = bw_strip_build(&w->trials[0], &a->strip);
    if (status != BW_OK) {
        bw_put(why, "No shot fits into the time, so there is nothing to draw; give more seconds.");
    } else {
        const bw_pages pages = {bw_strip_pages(&a->strip), w->scheme.name, strip_page, a};
        status = bw_press_pdf(press, &pages, w->theme, result, why);
    }
    free(a);
    return status;
}

static const char json[] = "application/json", pdf[] = "application/pdf";

static const bw_work_kind kinds[] = {
    {"test", json, "json", NULL, make_test, false},
    {"book", pdf, "pdf", NULL, make_book, false},
    {"report", pdf, "pdf", NULL, make_report, false},
    {"strip", pdf, "pdf", NULL, make_strip, false},
    {"packet", pdf, "pdf", NULL, bw_make_packet, false},
    {"cards", pdf, "pdf", NULL, bw_make_cards, false},
    {"quiz", pdf, "pdf", NULL, bw_make_quiz, false},
    {"wall", pdf, "pdf", NULL, bw_make_wall, false},
    {"film", "video/mp4", "mp4", NULL, bw_make_film, false},
    {"tune", json, "json", bw_work_read_tuning, bw_make_tuning, false},
    {"tune-sheets", pdf, "pdf", bw_work_read_tuning, bw_make_tuning_sheets, false},
    {"review", json, "json", NULL, bw_make_review, true},
    {"review-pages", pdf, "pdf", NULL, bw_make_review_pages, true},
};

bw_status bw_work_refuse(bw_error *error, const char *what, const char *name, const char *rest) {
    *error = (bw_error){.status = BW_BAD_INPUT};
    bw_text t = bw_text_in(error->message, sizeof error->message);
    bw_put(&t, what);
    bw_put(&t, name);
    bw_put(&t, rest);
    return BW_BAD_INPUT;
}

const bw_work_kind *bw_work_kind_at(int index) {
    return index >= 0 && index < BW_COUNT(kinds) ? &kinds[index] : NULL;
}

static const bw_work_kind *find_kind(const char *id) {
    for (int i = 0; id && i < BW_COUNT(kinds); i++) {
        if (bw_same(kinds[i].id, id)) return &kinds[i];
    }
    return NULL;
}

/// A review needs no scheme: the team file has them all.
static bw_status read_review(const bw_target *target, bw_work *w, bw_error *error) {
    int seen = 0;
    if (!w->team) {
        *error = (bw_error){.status = BW_BAD_INPUT,
                            .message = "The board was opened without a team file"};
        return BW_BAD_INPUT;
    }
    if (!bw_target_number(target, "seen", 0, 1, 0, &seen) ||
        !bw_target_number(target, "width", BW_REVIEW_NARROW, BW_REVIEW_WIDE, BW_REVIEW_WIDE,
                          &w->width)) {
        *error = (bw_error){.status = BW_BAD_INPUT,
                            .message = "width is from 300 to 640, and seen is 0 or 1"};
        return BW_BAD_INPUT;
    }
    w->seen_only = seen != 0;
    return bw_work_read_look(target, w, error);
}

static bw_status read_into(const bw_target *target, const char *body, size_t length, bw_work *w,
                           bw_error *error) {
    w->target = *target;
    w->kind = find_kind(bw_target_value(target, "kind"));
    if (!w->kind) {
        *error = (bw_error){.status = BW_BAD_INPUT};
        bw_text t = bw_text_in(error->message, sizeof error->message);
        bw_put(&t, "Say what to make: kind is one of");
        for (int i = 0; i < BW_COUNT(kinds); i++) {
            bw_put(&t, i > 0 ? ", " : " ");
            bw_put(&t, kinds[i].id);
        }
        return BW_BAD_INPUT;
    }
    if (w->kind->of_team) return read_review(target, w, error);
    bw_status status = bw_document_parse(body, length, &w->scheme, error);
    if (status == BW_OK) status = bw_work_read_break(target, w, error);
    if (status == BW_OK && w->kind->read) status = w->kind->read(w, error);
    if (status != BW_OK) return status;
    bw_text why = bw_text_in(error->message, sizeof error->message);
    status = bw_ground_build(&w->scheme, w->level, &w->ground, &why);
    error->status = status;
    return status;
}

bw_status bw_work_read(const bw_target *target, const char *team, const char *body, size_t length,
                       bw_work **out, bw_error *error) {
    *error = (bw_error){.status = BW_OK};
    *out = calloc(1, sizeof **out);
    if (!*out) {
        *error = (bw_error){.status = BW_NO_ROOM, .message = BW_NO_MEMORY_SENTENCE};
        return BW_NO_ROOM;
    }
    (*out)->team = team;
    const bw_status status = read_into(target, body, length, *out, error);
    if (status != BW_OK) {
        free(*out);
        *out = NULL;
    }
    return status;
}
