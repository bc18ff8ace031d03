/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Looking at an ink list as a reader would: is any text too small, outside its box, or over another?
#ifndef BW_TESTS_DRAW_LAYOUT_H
#define BW_TESTS_DRAW_LAYOUT_H

#include "draw/ink.h"
#include "draw/metrics.h"
#include "draw/view.h"
#include <stdbool.h>
#include <stdio.h>

enum { LAYOUT_TEXTS = 512 };

/// The box a text run fills: from cap height to baseline, so that close lines do not count as over
/// one another.
static inline bw_box layout_box(const bw_ink_item *item) {
    const double *at = bw_ink_numbers(item);
    const double width = bw_text_width(bw_ink_string(item), (size_t)item->text, item->size);
    const double x = item->align == BW_LEFT_ALIGN     ? at[0]
                     : item->align == BW_CENTRE_ALIGN ? at[0] - width / 2
                                                      : at[0] - width;
    return (bw_box){x, at[1] - item->size * BW_CAP_HEIGHT, width, item->size * BW_CAP_HEIGHT};
}

static inline bool layout_over(bw_box a, bw_box b) {
    const double slack = 0.3;
    return a.x + a.width > b.x + slack && b.x + b.width > a.x + slack &&
           a.y + a.height > b.y + slack && b.y + b.height > a.y + slack;
}

/// What a page of text runs comes to.
typedef struct layout {
    int texts;
    double smallest; ///< type size, points
    int outside;     ///< runs that leave the box
    int over;        ///< pairs of runs over one another
    char where[200]; ///< one of the faults
} layout;

static inline void layout_note(layout *l, const char *what, const bw_ink_item *a,
                               const bw_ink_item *b) {
    snprintf(l->where, sizeof l->where, "%s: \"%.*s\" \"%.*s\"", what, (int)a->text,
             bw_ink_string(a), b ? (int)b->text : 0, b ? bw_ink_string(b) : "");
}

/// Looks at every text run of the list against a box of the page.
static inline layout layout_of(const bw_ink *ink, bw_box box) {
    static const bw_ink_item *items[LAYOUT_TEXTS];
    static bw_box boxes[LAYOUT_TEXTS];
    layout l = {.smallest = 1e9};
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_TEXT || item->text == 0 || l.texts == LAYOUT_TEXTS) continue;
        const bw_box b = layout_box(item);
        if (item->size < l.smallest) l.smallest = item->size;
        if (b.x < box.x - 0.5 || b.y < box.y - 0.5 || b.x + b.width > box.x + box.width + 0.5 ||
            b.y + b.height > box.y + box.height + 0.5) {
            l.outside++;
            layout_note(&l, "outside", item, NULL);
        }
        for (int i = 0; i < l.texts; i++) {
            if (!layout_over(b, boxes[i])) continue;
            l.over++;
            layout_note(&l, "over", item, items[i]);
        }
        items[l.texts] = item;
        boxes[l.texts++] = b;
    }
    return l;
}

#endif
