/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rehearsal on paper: sheets of the script, sheets of the plan, and the games with the cautions.
#include "report/cautions.h"
#include "report/flow.h"
#include "report/pages_part.h"
#include "report/rehearsal_words.h"
#include "scheme/caption.h"
#include "trial/words.h"

enum { LINE = 1600 };

/// Space after each game, and after the last of them.
static const double after_game = 5, after_games = 8;

/// A run of sheets: the script or the plan of one stage.
typedef struct part {
    const bw_rehearsal *r;
    const bw_rehearsal_stage *stage;
    bool plan;
} part;

static void script_piece(const void *self, int i, bw_piece *out) {
    const part *p = self;
    const bw_script *script = &p->stage->script;
    const bw_script_stop *stop = &script->stops[i];
    bw_text t = bw_text_in(out->head, sizeof out->head);
    bw_put_int(&t, i + 1);
    bw_put(&t, ". ");
    char place[BW_NAME_SIZE + 32];
    bw_text name = bw_text_in(place, sizeof place);
    bw_say_ball(script->scheme, script->scheme->landmarks[stop->to].at, &name);
    bw_say_first(place, &t);
    if (stop->rank > 0) {
        t = bw_text_in(out->tag, sizeof out->tag);
        bw_put(&t, "weak ");
        bw_put_int(&t, stop->rank);
    }
    t = bw_text_in(out->body, sizeof out->body);
    bw_say_look(script, i, &t);
}

static void plan_piece(const void *self, int i, bw_piece *out) {
    const part *p = self;
    bw_text t = bw_text_in(out->head, sizeof out->head);
    bw_say_round(p->stage, i, &t);
    t = bw_text_in(out->body, sizeof out->body);
    bw_say_round_men(p->r, p->stage, i, "\n", &t);
}

static bw_flow flow_of(const part *p) {
    return (bw_flow){.count = p->plan ? p->stage->plan.round_count : p->stage->script.stop_count,
                     .piece = p->plan ? plan_piece : script_piece,
                     .self = p};
}

static double put_text(bw_ink *ink, const bw_box *b, double y, double type, const char *line) {
    const double leading = type == BW_TYPE_TEXT ? BW_LEADING : BW_LEADING_SMALL;
    return bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, type, leading, b->x, y, b->width, line);
}

/// What stands over the columns. Returns its height; with ink NULL only measures.
static double put_head(bw_ink *ink, const part *p, const bw_box *b, bool first) {
    char line[LINE];
    const bw_script *script = &p->stage->script;
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, p->plan ? "Practice plan: " : "Practice script: ");
    bw_say_unit_name(script, &t);
    if (!first) bw_put(&t, ", continued");
    if (ink)
        bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16,
                   b->width - BW_ESTIMATE_WIDTH, line);
    double y = b->y + 24;
    if (!first) return 24 + 6;
    t = bw_text_in(line, sizeof line);
    if (p->plan)
        bw_say_plan(p->r, p->stage, &t);
    else
        bw_say_script(script, &t);
    y += put_text(ink, b, y, BW_TYPE_TEXT, line) + 2;
    if (!p->plan) {
        t = bw_text_in(line, sizeof line);
        bw_say_script_length(script, &t);
        y += put_text(ink, b, y, BW_TYPE_TEXT, line) + 2;
        t = bw_text_in(line, sizeof line);
        bw_say_script_time(&t);
        y += put_text(ink, b, y, BW_TYPE_SMALL, line) + 2;
        t = bw_text_in(line, sizeof line);
        bw_put(&t, "Spots: ");
        bw_say_codes(script, &t);
        y += put_text(ink, b, y, BW_TYPE_SMALL, line);
    }
    return y + 10 - b->y;
}

/// The box left for the columns of a sheet.
static bw_box columns_of(const part *p, const bw_box *block, bool first) {
    bw_box box = *block;
    const double head = put_head(NULL, p, block, first);
    const double foot = bw_put_cautions_brief(NULL, p->r->scheme, 0, 0, block->width) + 10;
    box.y += head;
    box.height -= head + foot;
    return box;
}

/// The block of every sheet of a rehearsal, wherever it lies on the paper.
static const bw_box block_size = {0, 0, BW_BLOCK_WIDTH, BW_BLOCK_HEIGHT - 30};

static int sheets_of(const part *p) {
    const bw_flow flow = flow_of(p);
    int sheets = 0, next = 0;
    do {
        next = bw_flow_page(NULL, &flow, next, columns_of(p, &block_size, sheets == 0));
        sheets++;
    } while (next < flow.count);
    return sheets;
}

static void put_part(const part *p, int sheet_number, const bw_sheet *sheet) {
    const bw_flow flow = flow_of(p);
    int next = 0;
    for (int k = 0; k < sheet_number; k++)
        next = bw_flow_page(NULL, &flow, next, columns_of(p, &block_size, k == 0));
    const bool first = sheet_number == 0;
    put_head(sheet->ink, p, &sheet->block, first);
    bw_put_estimate(sheet);
    const bw_box box = columns_of(p, &sheet->block, first);
    bw_put_rule(sheet->ink, sheet, box.y - 4);
    bw_flow_page(sheet->ink, &flow, next, box);
    bw_put_rule(sheet->ink, sheet, box.y + box.height + 4);
    bw_put_cautions_brief(sheet->ink, p->r->scheme, box.x, box.y + box.height + 7, box.width);
}

/// The games, then the cautions in the largest type that leaves room.
static void put_last(const bw_rehearsal *r, const bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width,
               "At the end a game, with one rule changed");
    // The cautions are whole, whatever the names in the games: these have what room is left.
    const double least = bw_put_cautions(NULL, r->scheme, 0, 0, b->width, BW_TYPE_SMALL);
    const double room = (b->height - 24 - after_games - least) / r->stage_count;
    double y = b->y + 24;
    for (int i = 0; i < r->stage_count; i++) {
        bw_text t = bw_text_in(line, sizeof line);
        bw_say_unit_name(&r->stages[i].script, &t);
        bw_put(&t, ". ");
        bw_say_game(&r->stages[i], &t);
        const int most = (int)((room - after_game) / BW_LEADING);
        y += after_game + bw_paragraph_of(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT,
                                          BW_LEADING, b->x, y, b->width, line, most);
    }
    y += after_games;
    static const double types[] = {12, 11, 10};
    for (int i = 0; i < BW_COUNT(types); i++) {
        const double high = bw_put_cautions(NULL, r->scheme, 0, 0, b->width, types[i]);
        if (i + 1 < BW_COUNT(types) && y + high > b->y + b->height) continue;
        bw_put_cautions(sheet->ink, r->scheme, b->x, y, b->width, types[i]);
        return;
    }
}

/// The part page number `page` belongs to and its sheet there; false for the last page.
static bool find_part(const bw_rehearsal *r, int page, part *p, int *sheet) {
    int before = 0;
    for (int i = 0; i < 2 * r->stage_count; i++) {
        *p = (part){r, &r->stages[i / 2], i % 2 == 1};
        const int sheets = sheets_of(p);
        *sheet = page - 1 - before;
        if (*sheet < sheets) return true;
        before += sheets;
    }
    *sheet = page - 1 - before;
    return false;
}

int bw_rehearsal_pages(const bw_rehearsal *r) {
    int count = 1;
    for (int i = 0; i < 2 * r->stage_count; i++) {
        const part p = {r, &r->stages[i / 2], i % 2 == 1};
        count += sheets_of(&p);
    }
    return count;
}

bw_status bw_rehearsal_page(const bw_rehearsal *r, int page, bw_paper paper, bw_ink *ink) {
    const int pages = bw_rehearsal_pages(r);
    if (page < 1 || page > pages) return BW_NOT_FOUND;
    char name[2 * BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_owner(r->scheme, &t);
    const bw_foot foot = {.name = name, .page = page, .pages = pages};
    const bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    part p;
    int number;
    if (find_part(r, page, &p, &number))
        put_part(&p, number, &sheet);
    else
        put_last(r, &sheet);
    return (bw_status)ink->status;
}
