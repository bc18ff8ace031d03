/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Walking the ink with cairo and pango.
#include "paint/cairo_page.h"

#include "paint/fonts_pango.h"

enum { MAX_DEPTH = 16, ALT_SIZE = 1024 };

/// What a page needs while it is painted.
typedef struct painter {
    cairo_t *cr;
    const bw_theme *theme;
    bw_fonts *fonts;
    PangoLayout *layout;
    const bw_structure *structure;
    int depth;
    bw_tag tags[MAX_DEPTH];
    bw_text *why;
} painter;

static void set_colour(const painter *p, int32_t role) {
    const uint32_t c = p->theme->colour[role];
    cairo_set_source_rgb(p->cr, (c >> 16 & 255) / 255.0, (c >> 8 & 255) / 255.0, (c & 255) / 255.0);
}

static void set_path(cairo_t *cr, const bw_ink_item *item) {
    const double *n = bw_ink_numbers(item), *end = n + item->numbers;
    cairo_new_path(cr);
    while (n < end) {
        switch ((bw_verb)*n++) {
        case BW_MOVE:
            cairo_move_to(cr, n[0], n[1]);
            n += 2;
            break;
        case BW_LINE:
            cairo_line_to(cr, n[0], n[1]);
            n += 2;
            break;
        case BW_CURVE:
            cairo_curve_to(cr, n[0], n[1], n[2], n[3], n[4], n[5]);
            n += 6;
            break;
        case BW_SHUT: cairo_close_path(cr); break;
        }
    }
}

static void stroke(const painter *p, const bw_ink_item *item) {
    cairo_t *cr = p->cr;
    set_path(cr, item);
    set_colour(p, item->role);
    cairo_set_line_width(cr, item->size * p->theme->weight);
    cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_cap(cr,
                       item->style == BW_CAP_ROUND ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_dash(cr, item->dash, item->dash[1] > 0 ? 2 : 0, 0);
    cairo_stroke(cr);
}

static bw_status text(const painter *p, const bw_ink_item *item) {
    const double *at = bw_ink_numbers(item);
    PangoFontDescription *face = p->fonts->faces[item->style == BW_BOLD];
    pango_font_description_set_absolute_size(face, item->size * PANGO_SCALE);
    pango_layout_set_font_description(p->layout, face);
    pango_layout_set_text(p->layout, bw_ink_string(item), item->text);
    if (pango_layout_get_unknown_glyphs_count(p->layout) > 0) {
        bw_put(p->why, "The font B612 has no letter for something in \xE2\x80\x9C");
        bw_put_n(p->why, bw_ink_string(item), (size_t)item->text);
        bw_put(p->why, "\xE2\x80\x9D; Latin letters, digits and common signs can be printed.");
        return BW_BAD_INPUT;
    }
    PangoLayoutLine *line = pango_layout_get_line_readonly(p->layout, 0);
    PangoRectangle logical;
    pango_layout_line_get_extents(line, NULL, &logical);
    const double width = (double)logical.width / PANGO_SCALE;
    const double shift = item->align * width / 2; // left 0, centre half, right all of it
    set_colour(p, item->role);
    cairo_move_to(p->cr, at[0] - shift, at[1]);
    pango_cairo_show_layout_line(p->cr, line);
    return BW_OK;
}

static void open(painter *p, const bw_ink_item *item) {
    char alt[ALT_SIZE];
    bw_text t = bw_text_in(alt, sizeof alt);
    bw_put_n(&t, bw_ink_string(item), (size_t)item->text);
    if (p->depth < MAX_DEPTH) p->tags[p->depth] = (bw_tag)item->style;
    p->depth++;
    if (p->structure) p->structure->open(p->structure->self, p->cr, (bw_tag)item->style, alt);
}

static void shut(painter *p) {
    p->depth--;
    if (p->structure && p->depth < MAX_DEPTH)
        p->structure->shut(p->structure->self, p->cr, p->tags[p->depth]);
}

static bw_status paint(painter *p, const bw_ink_item *item) {
    const double *n = bw_ink_numbers(item);
    switch ((bw_ink_kind)item->kind) {
    case BW_INK_FILL:
        set_path(p->cr, item);
        set_colour(p, item->role);
        cairo_fill(p->cr);
        break;
    case BW_INK_STROKE: stroke(p, item); break;
    case BW_INK_TEXT: return text(p, item);
    case BW_INK_CLIP:
        cairo_save(p->cr);
        cairo_rectangle(p->cr, n[0], n[1], n[2], n[3]);
        cairo_clip(p->cr);
        break;
    case BW_INK_UNCLIP: cairo_restore(p->cr); break;
    case BW_INK_OPEN: open(p, item); break;
    case BW_INK_SHUT: shut(p); break;
    }
    return BW_OK;
}

/// A layout that sets text by the font's own outlines, the same at every resolution.
static PangoLayout *make_layout(cairo_t *cr, const bw_fonts *fonts, const bw_theme *theme) {
    PangoContext *context = pango_font_map_create_context(fonts->map);
    cairo_font_options_t *options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options,
                                     theme->crisp ? CAIRO_ANTIALIAS_NONE : CAIRO_ANTIALIAS_GRAY);
    pango_cairo_update_context(cr, context);
    pango_cairo_context_set_font_options(context, options);
    pango_cairo_context_set_resolution(context, 72);
    pango_context_set_round_glyph_positions(context, FALSE);
    PangoLayout *layout = pango_layout_new(context);
    pango_layout_set_single_paragraph_mode(layout, TRUE);
    cairo_font_options_destroy(options);
    g_object_unref(context);
    return layout;
}

bw_status bw_cairo_page(cairo_t *cr, const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme,
                        const bw_structure *structure, bw_text *why) {
    if (ink->status != BW_OK) {
        bw_put(why, "The page did not fit the memory set aside for it.");
        return BW_NO_ROOM;
    }
    BW_ASSERT(ink->open == 0);
    if (theme->crisp) cairo_set_antialias(cr, CAIRO_ANTIALIAS_NONE);
    painter p = {.cr = cr, .theme = theme, .fonts = fonts, .structure = structure, .why = why};
    p.layout = make_layout(cr, fonts, theme);
    bw_status status = BW_OK;
    for (const bw_ink_item *i = bw_ink_first(ink); i && status == BW_OK; i = bw_ink_next(ink, i)) {
        status = paint(&p, i);
    }
    g_object_unref(p.layout);
    if (status == BW_OK && cairo_status(cr) != CAIRO_STATUS_SUCCESS) {
        bw_put(why, "The page could not be painted: ");
        bw_put(why, cairo_status_to_string(cairo_status(cr)));
        bw_put(why, ".");
        status = BW_FILE;
    }
    return status;
}
