/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What several tests ask of a drawn page.
#ifndef BW_TESTS_DRAW_PAGES_H
#define BW_TESTS_DRAW_PAGES_H

#include "draw/ink.h"
#include "draw/metrics.h"
#include "draw/view.h"
#include "file/document.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

/// The file of the tree with this path, from the root in BW_ROOT or the working directory.
static inline const char *tree_path(const char *path) {
    static char buffer[4096];
    const char *root = getenv("BW_ROOT");
    snprintf(buffer, sizeof buffer, "%s/%s", root ? root : ".", path);
    return buffer;
}

/// The demo scheme; the test fails loudly when it cannot be read.
static inline bool load_terns(bw_scheme *scheme) {
    bw_source source;
    bw_error error;
    const bw_status status =
        bw_document_load(tree_path("examples/terns.json"), scheme, &source, &error);
    CHECK_INT(status, BW_OK);
    if (status != BW_OK) {
        fprintf(stderr, "terns.json%s: %s\n", error.pointer, error.message);
        return false;
    }
    bw_source_drop(&source);
    return true;
}

/// The box of a text run: cap height, without what hangs below the line.
static inline bw_box text_box(const bw_ink_item *item) {
    const double *at = bw_ink_numbers(item);
    const double width = bw_text_width(bw_ink_string(item), (size_t)item->text, item->size);
    const double height = item->size * BW_CAP_HEIGHT;
    return (bw_box){at[0] - item->align * width / 2, at[1] - height, width, height};
}

/// The box of a path's points (a curve stays inside the hull of its own).
static inline bw_box path_box(const bw_ink_item *item) {
    static const int values[] = {2, 2, 6, 0};
    const double *n = bw_ink_numbers(item);
    double low[2] = {1e9, 1e9}, high[2] = {-1e9, -1e9};
    for (int i = 0; i < item->numbers;) {
        const int verb = (int)n[i++];
        for (int k = 0; k < values[verb]; k++, i++) {
            low[k & 1] = n[i] < low[k & 1] ? n[i] : low[k & 1];
            high[k & 1] = n[i] > high[k & 1] ? n[i] : high[k & 1];
        }
    }
    return (bw_box){low[0], low[1], high[0] - low[0], high[1] - low[1]};
}

static inline double shared_area(bw_box a, bw_box b) {
    const double x =
        (a.x + a.width < b.x + b.width ? a.x + a.width : b.x + b.width) - (a.x > b.x ? a.x : b.x);
    const double y = (a.y + a.height < b.y + b.height ? a.y + a.height : b.y + b.height) -
                     (a.y > b.y ? a.y : b.y);
    return x > 0 && y > 0 ? x * y : 0;
}

static inline bool within(bw_box a, bw_box b, double slack) {
    return a.x >= b.x - slack && a.y >= b.y - slack && a.x + a.width <= b.x + b.width + slack &&
           a.y + a.height <= b.y + b.height + slack;
}

/// True when some text run of the page is, or with `part` contains, these words.
static inline bool has_text(const bw_ink *ink, const char *words, bool part) {
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        char text[512] = "";
        if (i->kind != BW_INK_TEXT || i->text >= (int)sizeof text) continue;
        memcpy(text, bw_ink_string(i), (size_t)i->text);
        if (part ? strstr(text, words) != NULL : strcmp(text, words) == 0) return true;
    }
    return false;
}

#endif
