/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Building and walking ink lists. When a record does not fit, the list becomes empty and the need goes
/// on being counted, so a caller learns in one run how much memory the page takes.
#include "draw/ink.h"

#include "core/text.h"

_Static_assert(sizeof(bw_ink_item) == 56, "JavaScript reads this layout");
_Static_assert(sizeof(bw_ink) == 48, "JavaScript reads this layout");

static char *at(bw_ink *ink, int32_t offset) {
    return (char *)ink + offset;
}

/// The next `bytes` of the block, or NULL when there is no room (any more).
static void *take(bw_ink *ink, size_t bytes) {
    if (bytes > (size_t)(INT32_MAX - ink->need)) bytes = (size_t)(INT32_MAX - ink->need);
    ink->need += (int32_t)bytes;
    if (ink->status == BW_OK && ink->need > ink->room) {
        ink->status = BW_NO_ROOM;
        ink->used = (int32_t)sizeof *ink;
        ink->items = 0;
    }
    if (ink->status != BW_OK) return NULL;
    void *place = at(ink, ink->used);
    ink->used = ink->need;
    return place;
}

bw_ink *bw_ink_in(void *memory, size_t size) {
    if (!memory || size < sizeof(bw_ink)) return NULL;
    bw_ink *ink = memory;
    ink->room = size > INT32_MAX ? INT32_MAX : (int32_t)size;
    ink->lines = BW_RUN_SOLID;
    bw_ink_page(ink, 0, 0);
    return ink;
}

void bw_ink_page(bw_ink *ink, double width, double height) {
    *ink = (bw_ink){.room = ink->room,
                    .used = (int32_t)sizeof *ink,
                    .need = (int32_t)sizeof *ink,
                    .status = BW_OK,
                    .lines = ink->lines,
                    .width = width,
                    .height = height};
}

static bw_ink_item *add(bw_ink *ink, bw_ink_kind kind, bw_role role) {
    bw_ink_item *item = take(ink, sizeof *item);
    if (!item) return NULL;
    *item = (bw_ink_item){.kind = (int32_t)kind, .role = (int32_t)role, .bytes = sizeof *item};
    ink->last = (int32_t)((char *)item - (char *)ink);
    ink->items++;
    return item;
}

static void add_numbers(bw_ink *ink, const double *values, int count) {
    double *place = take(ink, (size_t)count * sizeof *place);
    if (!place) return;
    for (int i = 0; i < count; i++) {
        place[i] = values[i];
    }
    bw_ink_item *item = (bw_ink_item *)at(ink, ink->last);
    item->numbers += count;
    item->bytes += count * (int32_t)sizeof *place;
}

static void add_text(bw_ink *ink, const char *text, size_t length) {
    const size_t padded = (length + 7) / 8 * 8;
    char *place = take(ink, padded);
    if (!place) return;
    for (size_t i = 0; i < padded; i++) {
        place[i] = i < length ? text[i] : 0;
    }
    bw_ink_item *item = (bw_ink_item *)at(ink, ink->last);
    item->text = (int32_t)length;
    item->bytes += (int32_t)padded;
}

void bw_ink_fill(bw_ink *ink, bw_role role) {
    add(ink, BW_INK_FILL, role);
}

void bw_ink_stroke(bw_ink *ink, bw_role role, double width) {
    bw_ink_dashed(ink, role, width, 0, 0);
}

void bw_ink_dashed(bw_ink *ink, bw_role role, double width, double on, double off) {
    bw_ink_item *item = add(ink, BW_INK_STROKE, role);
    if (!item) return;
    item->size = width;
    item->dash[0] = on;
    item->dash[1] = off;
    item->style = off > 0 && on > 0 ? BW_CAP_FLAT : BW_CAP_ROUND;
}

void bw_ink_move(bw_ink *ink, double x, double y) {
    add_numbers(ink, (double[]){BW_MOVE, x, y}, 3);
}

void bw_ink_line(bw_ink *ink, double x, double y) {
    add_numbers(ink, (double[]){BW_LINE, x, y}, 3);
}

void bw_ink_curve(bw_ink *ink, double x1, double y1, double x2, double y2, double x, double y) {
    add_numbers(ink, (double[]){BW_CURVE, x1, y1, x2, y2, x, y}, 7);
}

void bw_ink_shut(bw_ink *ink) {
    add_numbers(ink, (double[]){BW_SHUT}, 1);
}

void bw_ink_text_n(bw_ink *ink, bw_role role, bw_weight weight, double size, bw_align align,
                   double x, double y, const char *text, size_t length) {
    bw_ink_item *item = add(ink, BW_INK_TEXT, role);
    if (item) {
        item->size = size;
        item->style = (int32_t)weight;
        item->align = (int32_t)align;
    }
    add_numbers(ink, (double[]){x, y}, 2);
    add_text(ink, text, length);
}

void bw_ink_text(bw_ink *ink, bw_role role, bw_weight weight, double size, bw_align align, double x,
                 double y, const char *text) {
    bw_ink_text_n(ink, role, weight, size, align, x, y, text, bw_text_length(text));
}

void bw_ink_clip(bw_ink *ink, double x, double y, double width, double height) {
    add(ink, BW_INK_CLIP, BW_ROLE_PAGE);
    add_numbers(ink, (double[]){x, y, width, height}, 4);
    ink->open++;
}

void bw_ink_unclip(bw_ink *ink) {
    add(ink, BW_INK_UNCLIP, BW_ROLE_PAGE);
    ink->open--;
}

void bw_ink_begin(bw_ink *ink, bw_tag tag, const char *alt) {
    bw_ink_item *item = add(ink, BW_INK_OPEN, BW_ROLE_PAGE);
    if (item) item->style = (int32_t)tag;
    add_text(ink, alt, bw_text_length(alt));
    ink->open++;
}

void bw_ink_end(bw_ink *ink) {
    add(ink, BW_INK_SHUT, BW_ROLE_PAGE);
    ink->open--;
}

/// A path's verbs stay; everything else among an item's numbers is a length.
static void enlarge_numbers(const bw_ink_item *item, double *n, double factor) {
    static const int values[] = {2, 2, 6, 0};
    const bool path = item->kind == BW_INK_FILL || item->kind == BW_INK_STROKE;
    for (int i = 0; i < item->numbers;) {
        const int count = path ? values[(int)n[i++]] : item->numbers;
        for (int k = 0; k < count; k++)
            n[i++] *= factor;
    }
}

void bw_ink_enlarge(bw_ink *ink, double factor) {
    int32_t place = (int32_t)sizeof *ink;
    for (int32_t i = 0; i < ink->items; i++) {
        bw_ink_item *item = (bw_ink_item *)at(ink, place);
        enlarge_numbers(item, (double *)(item + 1), factor);
        item->size *= factor;
        item->dash[0] *= factor;
        item->dash[1] *= factor;
        place += item->bytes;
    }
    ink->width *= factor;
    ink->height *= factor;
}

const bw_ink_item *bw_ink_first(const bw_ink *ink) {
    if (ink->items == 0) return NULL;
    return (const bw_ink_item *)((const char *)ink + sizeof *ink);
}

const bw_ink_item *bw_ink_next(const bw_ink *ink, const bw_ink_item *item) {
    const char *next = (const char *)item + item->bytes;
    return next < (const char *)ink + ink->used ? (const bw_ink_item *)next : NULL;
}

const double *bw_ink_numbers(const bw_ink_item *item) {
    return (const double *)(item + 1);
}

const char *bw_ink_string(const bw_ink_item *item) {
    return (const char *)(bw_ink_numbers(item) + item->numbers);
}
