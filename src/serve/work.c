/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/work.h"

#include "core/text.h"
#include "file/document.h"
#include "report/cards.h"
#include "report/review_board.h"
#include <stdlib.h>

static const char json[] = "application/json", pdf[] = "application/pdf";

static const bw_work_kind kinds[] = {
    {"test", "test", json, "json"},         {"book", "book", pdf, "pdf"},
    {"report", "test", pdf, "pdf"},         {"strip", "strip", pdf, "pdf"},
    {"packet", "packet", pdf, "pdf"},       {"cards", "cards", pdf, "pdf"},
    {"quiz", "quiz", pdf, "pdf"},           {"wall", "wall", pdf, "pdf"},
    {"film", NULL, "video/mp4", "mp4"},     {"tune", "tune", json, "json"},
    {"tune-sheets", "tune", pdf, "pdf"},    {"review", "review", json, "json"},
    {"review-pages", "review", pdf, "pdf"},
};

const bw_work_kind *bw_work_kind_at(int index) {
    return index >= 0 && index < BW_COUNT(kinds) ? &kinds[index] : NULL;
}

static const bw_work_kind *find_kind(const char *id) {
    for (int i = 0; id && i < BW_COUNT(kinds); i++) {
        if (bw_same(kinds[i].id, id)) return &kinds[i];
    }
    return NULL;
}

bw_status bw_work_json(const bw_document *document, bw_bytes *result) {
    FILE *out = open_memstream(&result->data, &result->length);
    const bool made = out && document->json(document->self, out);
    if (out && fclose(out) == 0 && made) return BW_OK;
    if (out) free(result->data);
    *result = (bw_bytes){NULL, 0};
    return BW_NO_ROOM;
}

/// The pages as the bytes of a PDF.
static bw_status print(const bw_pages *pages, bw_press *press, const bw_theme *theme, bw_bytes *out,
                       bw_text *why) {
    bw_scratch scratch;
    bw_status status = bw_press_open(press, why);
    if (status == BW_OK) status = bw_scratch_open(&scratch, "pages.pdf", why);
    if (status != BW_OK) return status;
    status = bw_pages_pdf(pages, scratch.path, press, theme, why);
    if (status == BW_OK && !bw_scratch_take(&scratch, out)) {
        bw_put(why, "The finished pages could not be read back.");
        status = BW_FILE;
    }
    bw_scratch_close(&scratch);
    return status;
}

static bw_status make(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    bw_document document;
    bw_status status =
        bw_product_open(bw_product_find(w->kind->product), &w->order, &document, why);
    if (status != BW_OK) return status;
    if (w->kind->type == pdf)
        status = print(&document.pages, press, w->theme, result, why);
    else if ((status = bw_work_json(&document, result)) != BW_OK)
        bw_put(why, BW_NO_MEMORY_SENTENCE);
    bw_document_close(&document);
    return status;
}

bw_status bw_work_make(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    if (!w->kind->product) return bw_make_film(w, result, why);
    if (!(bw_product_find(w->kind->product)->needs & BW_NEED_TEAM))
        return make(w, press, result, why);
    bw_status status = bw_team_open(w->team, BW_TEAM_READ, &w->order.team, &w->order.error);
    if (status != BW_OK) {
        bw_put(why, "the team file: ");
        bw_put(why, w->order.error.message);
        bw_put_char(why, '.');
        return status;
    }
    status = make(w, press, result, why);
    bw_team_close(w->order.team);
    return status;
}

bw_status bw_work_refuse(bw_error *error, const char *what, const char *name, const char *rest) {
    *error = (bw_error){.status = BW_BAD_INPUT};
    bw_text t = bw_text_in(error->message, sizeof error->message);
    bw_put(&t, what);
    bw_put(&t, name);
    bw_put(&t, rest);
    return BW_BAD_INPUT;
}

/// A review needs no scheme: the team file has them all.
static bw_status read_review(const bw_target *target, bw_work *w, bw_error *error) {
    int seen = 0;
    if (!w->team) return bw_work_refuse(error, "The board was opened without a team file", "", "");
    if (!bw_target_number(target, "seen", 0, 1, 0, &seen) ||
        !bw_target_number(target, "width", BW_REVIEW_NARROW, BW_REVIEW_WIDE, BW_REVIEW_WIDE,
                          &w->order.width))
        return bw_work_refuse(error, "width is from 300 to 640, and seen is 0 or 1", "", "");
    w->order.modelled = seen == 0;
    w->order.units = BW_YARDS;
    return bw_work_read_look(target, w, error);
}

/// Whose copy it is: of a spot that some stage has, everyone's when none is asked for.
static bw_status read_copy(const bw_target *target, bw_work *w, bw_error *error) {
    bw_teach *teach = &w->order.teach;
    int large = 0;
    teach->seed = w->order.def.seed;
    teach->card_width = BW_CARD_WIDTH;
    teach->card_height = BW_CARD_HEIGHT;
    teach->spot = bw_target_value(&w->target, "spot");
    bool there = teach->spot == NULL;
    for (int s = 0; !there && s < w->order.scheme.stage_count; s++)
        there = bw_stage_spot(&w->order.scheme.stages[s], teach->spot) >= 0;
    if (!there || !bw_target_number(target, "large", 0, 1, 0, &large))
        return bw_work_refuse(error, "No stage has such a spot, or large is not 0 or 1", "", "");
    teach->large = large != 0;
    return BW_OK;
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
    const char *product = w->kind->product ? w->kind->product : "";
    if (bw_same(product, "review")) return read_review(target, w, error);
    w->order.book_stage = -1;
    bw_status status = bw_document_parse(body, length, &w->order.scheme, error);
    if (status == BW_OK) status = bw_work_read_order(w, error);
    if (status == BW_OK) status = read_copy(target, w, error);
    if (status != BW_OK) return status;
    bw_text why = bw_text_in(error->message, sizeof error->message);
    status = bw_ground_build(&w->order.scheme, w->level, &w->order.ground, &why);
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
