/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/paging.h"

#include "draw/metrics.h"
#include "trial/words.h"

static const char estimate_words[] = "model estimate";

static void paging_begin(bw_paging *p, const bw_teach *teach, int wanted, int pages, bw_ink *out) {
    *p = (bw_paging){.teach = teach,
                     .format = bw_teach_format(teach),
                     .out = out,
                     .wanted = wanted,
                     .pages = pages};
    bw_text t = bw_text_in(p->foot, sizeof p->foot);
    bw_say_owner(teach->scheme, &t);
}

static void paging_end(bw_paging *p) {
    if (p->ink) bw_sheet_close(&p->sheet, &p->format);
    p->ink = NULL;
}

static void put_estimate(const bw_paging *p) {
    if (!p->ink) return;
    bw_ink_begin(p->ink, BW_TAG_ARTIFACT, "");
    bw_ink_text(p->ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN,
                p->x + p->width, p->y + 9, estimate_words);
    bw_ink_end(p->ink);
}

static void next_page(bw_paging *p) {
    paging_end(p);
    p->page++;
    p->scaled = false;
    p->ink = p->page == p->wanted ? p->out : NULL;
    const bw_foot foot = {.name = p->foot,
                          .keys = p->keys,
                          .charts = p->charts,
                          .date = p->teach->date,
                          .page = p->page,
                          .pages = p->pages};
    p->sheet = bw_sheet_open(p->ink, &p->format, &foot);
    p->x = p->sheet.block.x;
    p->width = p->sheet.block.width;
    p->y = p->sheet.block.y;
    p->bottom = p->sheet.block.y + p->sheet.block.height;
    if (p->estimate) put_estimate(p);
}

/// What is left of a heading's line beside "model estimate".
static double head_width(const bw_paging *p) {
    const bool beside = p->estimate && p->y == p->sheet.block.y;
    return p->width - (beside ? bw_width(estimate_words, BW_TYPE_LABEL) + 12 : 0);
}

void bw_paging_page(bw_paging *p, uint32_t keys, const char *head, bool estimate) {
    p->keys = keys;
    p->charts = keys != 0;
    p->head = head;
    p->estimate = estimate;
    next_page(p);
}

/// The page that carries a piece on says what it carries on.
static void carry_on(bw_paging *p) {
    char line[3 * BW_NAME_SIZE];
    next_page(p);
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, p->head);
    bw_put(&t, ", continued");
    if (p->ink)
        bw_line_of(p->ink, BW_ROLE_SOFT_TEXT, BW_BOLD, BW_TYPE_TEXT, p->x, p->y + BW_TYPE_TEXT,
                   head_width(p), line);
    p->y += 28;
}

void bw_paging_room(bw_paging *p, double height) {
    if (p->y + height > p->bottom + 0.01) carry_on(p);
}

void bw_paging_heading(bw_paging *p, bw_tag tag, double size, const char *text) {
    bw_paging_room(p, size + 8 + 2 * BW_LEADING);
    if (p->ink) bw_heading(p->ink, tag, BW_ROLE_TEXT, size, p->x, p->y + size, head_width(p), text);
    p->y += size + 8;
}

void bw_paging_text(bw_paging *p, bw_role role, double after, const char *text) {
    bw_span lines[BW_MAX_LINES];
    int count = bw_wrap(text, BW_TYPE_TEXT, p->width, lines, BW_MAX_LINES);
    if (count > BW_MAX_LINES) count = BW_MAX_LINES;
    for (int i = 0; i < count;) {
        bw_paging_room(p, (count - i > 1 ? 2 : 1) * BW_LEADING);
        if (p->ink) bw_ink_begin(p->ink, BW_TAG_P, "");
        while (i < count && p->y + BW_LEADING <= p->bottom + 0.01) {
            if (p->ink && lines[i].length > 0)
                bw_ink_text_n(p->ink, role, BW_REGULAR, BW_TYPE_TEXT, BW_LEFT_ALIGN, p->x,
                              p->y + BW_TYPE_TEXT, text + lines[i].start, (size_t)lines[i].length);
            p->y += BW_LEADING;
            i++;
        }
        if (p->ink) bw_ink_end(p->ink);
    }
    p->y += after;
}

void bw_paging_scale(bw_paging *p, double scale) {
    if (!p->ink || p->scaled) return;
    bw_sheet_scale(&p->sheet, p->teach->scheme->units, scale);
    p->scaled = true;
}

int bw_paging_count(const bw_teach *teach, bw_paging_walk *walk) {
    bw_paging p;
    paging_begin(&p, teach, 0, 0, NULL);
    walk(&p);
    paging_end(&p);
    return p.page;
}

bw_status bw_paging_draw(const bw_teach *teach, bw_paging_walk *walk, int page, int pages,
                         bw_ink *ink) {
    bw_paging p;
    if (page < 1 || page > pages) return BW_NOT_FOUND;
    paging_begin(&p, teach, page, pages, ink);
    walk(&p);
    paging_end(&p);
    return (bw_status)ink->status;
}
