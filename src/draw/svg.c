/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Ink to SVG. A clip is a nested <svg>, which cuts off what lies outside it without needing an
/// identifier, so that many pictures can stand in one page.
#include "draw/svg.h"

static void put_hundredth(bw_text *out, double x) {
    bw_put_number(out, x, 2);
}

static void put_attribute(bw_text *out, const char *name, double value) {
    bw_put_char(out, ' ');
    bw_put(out, name);
    bw_put(out, "=\"");
    put_hundredth(out, value);
    bw_put_char(out, '"');
}

static void put_colour(bw_text *out, uint32_t colour) {
    static const char digits[] = "0123456789abcdef";
    bw_put_char(out, '#');
    for (int shift = 20; shift >= 0; shift -= 4) {
        bw_put_char(out, digits[colour >> shift & 15]);
    }
}

/// The colour of a role as an attribute: the theme's own, or without a theme a class that a style sheet
/// colours.
static void put_paint(bw_text *out, const char *what, int role, const bw_theme *theme) {
    if (theme) {
        bw_put_char(out, ' ');
        bw_put(out, what);
        bw_put(out, "=\"");
        put_colour(out, theme->colour[role]);
    } else {
        bw_put(out, " class=\"");
        bw_put_char(out, what[0]);
        bw_put_char(out, '-');
        bw_put(out, bw_role_name((bw_role)role));
    }
    bw_put_char(out, '"');
}

/// Text of an element or an attribute; control characters, which XML forbids, become spaces.
static void put_escaped(bw_text *out, const char *s, int32_t length) {
    for (int32_t i = 0; i < length; i++) {
        switch (s[i]) {
        case '&': bw_put(out, "&amp;"); break;
        case '<': bw_put(out, "&lt;"); break;
        case '>': bw_put(out, "&gt;"); break;
        case '"': bw_put(out, "&quot;"); break;
        default: bw_put_char(out, (unsigned char)s[i] < 0x20 ? ' ' : s[i]);
        }
    }
}

static void put_path(bw_text *out, const bw_ink_item *item) {
    static const char letters[] = "MLCZ";
    static const int values[] = {2, 2, 6, 0};
    const double *n = bw_ink_numbers(item);
    bw_put(out, " d=\"");
    for (int i = 0; i < item->numbers;) {
        const int verb = (int)n[i++];
        bw_put_char(out, letters[verb]);
        for (int k = 0; k < values[verb]; k++) {
            if (k) bw_put_char(out, ' ');
            put_hundredth(out, n[i++]);
        }
    }
    bw_put(out, "\"/>\n");
}

static void put_stroke(bw_text *out, const bw_ink_item *item, const bw_theme *theme) {
    bw_put(out, "<path fill=\"none\"");
    put_paint(out, "stroke", item->role, theme);
    put_attribute(out, "stroke-width", item->size * (theme ? theme->weight : 1));
    bw_put(out, " stroke-linejoin=\"round\"");
    if (item->style == BW_CAP_ROUND) bw_put(out, " stroke-linecap=\"round\"");
    if (item->dash[1] > 0) {
        bw_put(out, " stroke-dasharray=\"");
        put_hundredth(out, item->dash[0]);
        bw_put_char(out, ' ');
        put_hundredth(out, item->dash[1]);
        bw_put_char(out, '"');
    }
    put_path(out, item);
}

static void put_text(bw_text *out, const bw_ink_item *item, const bw_theme *theme) {
    static const char *const anchors[] = {"start", "middle", "end"};
    const double *n = bw_ink_numbers(item);
    bw_put(out, "<text");
    put_attribute(out, "x", n[0]);
    put_attribute(out, "y", n[1]);
    put_attribute(out, "font-size", item->size);
    if (item->style == BW_BOLD) bw_put(out, " font-weight=\"700\"");
    if (item->align != BW_LEFT_ALIGN) {
        bw_put(out, " text-anchor=\"");
        bw_put(out, anchors[item->align]);
        bw_put_char(out, '"');
    }
    put_paint(out, "fill", item->role, theme);
    bw_put_char(out, '>');
    put_escaped(out, bw_ink_string(item), item->text);
    bw_put(out, "</text>\n");
}

static void put_open(bw_text *out, const bw_ink_item *item) {
    static const char *const roles[] = {" role=\"heading\" aria-level=\"1\"",
                                        " role=\"heading\" aria-level=\"2\"", "", " role=\"img\"",
                                        " aria-hidden=\"true\""};
    bw_put(out, "<g");
    bw_put(out, roles[item->style]);
    if (item->style == BW_TAG_FIGURE) {
        bw_put(out, " aria-label=\"");
        put_escaped(out, bw_ink_string(item), item->text);
        bw_put_char(out, '"');
    }
    bw_put(out, ">\n");
}

static void put_clip(bw_text *out, const bw_ink_item *item) {
    static const char *const names[] = {"x", "y", "width", "height"};
    const double *n = bw_ink_numbers(item);
    bw_put(out, "<svg");
    for (int i = 0; i < 4; i++) {
        put_attribute(out, names[i], n[i]);
    }
    bw_put(out, " viewBox=\"");
    for (int i = 0; i < 4; i++) {
        if (i) bw_put_char(out, ' ');
        put_hundredth(out, n[i]);
    }
    bw_put(out, "\">\n");
}

static void put_item(bw_text *out, const bw_ink_item *item, const bw_theme *theme) {
    switch ((bw_ink_kind)item->kind) {
    case BW_INK_FILL:
        bw_put(out, "<path");
        put_paint(out, "fill", item->role, theme);
        put_path(out, item);
        break;
    case BW_INK_STROKE: put_stroke(out, item, theme); break;
    case BW_INK_TEXT: put_text(out, item, theme); break;
    case BW_INK_CLIP: put_clip(out, item); break;
    case BW_INK_UNCLIP: bw_put(out, "</svg>\n"); break;
    case BW_INK_OPEN: put_open(out, item); break;
    case BW_INK_SHUT: bw_put(out, "</g>\n"); break;
    }
}

static void put_items(bw_text *out, const bw_ink *ink, const bw_theme *theme) {
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        put_item(out, item, theme);
    }
}

void bw_svg(const bw_ink *ink, const bw_theme *theme, const char *style, bw_text *out) {
    bw_put(out, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    put_hundredth(out, ink->width);
    bw_put_char(out, ' ');
    put_hundredth(out, ink->height);
    bw_put_char(out, '"');
    put_attribute(out, "width", ink->width * 4 / 3); // points to CSS pixels
    put_attribute(out, "height", ink->height * 4 / 3);
    bw_put(out, " font-family=\"" BW_SVG_FAMILY ", sans-serif\">\n");
    if (style && style[0]) {
        bw_put(out, "<style>");
        bw_put(out, style);
        bw_put(out, "</style>\n");
    }
    put_items(out, ink, theme);
    bw_put(out, "</svg>\n");
}

void bw_svg_pieces(const bw_ink *ink, bw_text *out) {
    put_items(out, ink, NULL);
}
