/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Paper sizes, the foot of every sheet, and paragraphs.
#include "draw/sheet.h"

#include "draw/chart.h"
#include "draw/key.h"
#include "draw/metrics.h"
#include "draw/path.h"

static const struct {
    const char *name;
    double width, height; // points
} papers[BW_PAPER_COUNT] = {{"letter", 612, 792}, {"a4", 210 * 72 / 25.4, 297 * 72 / 25.4}};

const char *bw_paper_name(bw_paper paper) {
    return papers[paper].name;
}

bw_format bw_format_of(bw_paper paper, double zoom) {
    bw_format f = {.width = papers[paper].width / zoom,
                   .height = papers[paper].height / zoom,
                   .block = {0, 0, BW_BLOCK_WIDTH / zoom, BW_BLOCK_HEIGHT / zoom},
                   .zoom = zoom};
    f.block.x = (f.width - f.block.width) / 2;
    f.block.y = (f.height - f.block.height) / 2;
    return f;
}

bw_format bw_format_poster(double width, double height, double zoom) {
    const double margin = BW_MARGIN / zoom;
    return (bw_format){
        .width = width / zoom,
        .height = height / zoom,
        .block = {margin, margin, width / zoom - 2 * margin, height / zoom - 2 * margin},
        .zoom = zoom};
}

static const char sides[] = "Left and right as the defender sees them.";

/// The words at the very bottom: whose scheme, whose left, which page.
static void draw_bottom(bw_ink *ink, const bw_foot *foot, bw_box block, bool narrow) {
    const double right = block.x + block.width, bottom = block.y + block.height;
    char buffer[80];
    bw_text t = bw_text_in(buffer, sizeof buffer);
    if (foot->date && foot->date[0]) {
        bw_put(&t, foot->date);
        bw_put(&t, ", ");
    }
    bw_put(&t, "page ");
    bw_put_int(&t, foot->page);
    bw_put(&t, " of ");
    bw_put_int(&t, foot->pages);
    bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN, right, bottom,
                buffer);
    if (foot->charts && narrow)
        bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, block.x, bottom - 13,
                   block.width, sides);
    else if (foot->charts)
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_CENTRE_ALIGN,
                    block.x + block.width / 2, bottom, sides);
    const bool beside = foot->charts && !narrow;
    const double name = beside ? (block.width - bw_width(sides, BW_TYPE_LABEL)) / 2 - 10
                               : block.width - bw_width(buffer, BW_TYPE_LABEL) - 10;
    bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, block.x, bottom, name,
               foot->name);
}

/// A row of the key and how far the next stands above it, points.
typedef struct key_row {
    uint32_t keys;
    double step;
} key_row;

/// The rows from below: the first beside the scale bar, the duties in a row of their own. In a narrow
/// block each row holds what fits. Returns how many.
static int key_rows(uint32_t keys, double width, bool narrow, key_row rows[BW_KEY_COUNT]) {
    static const double scale_room = 230; // the longest scale bar, its unit, and the arrow
    rows[0] = (key_row){narrow ? 0 : keys & ~BW_KEY_DUTIES, 22};
    rows[1] = (key_row){keys & BW_KEY_DUTIES, 18};
    if (!narrow) return rows[1].keys ? 2 : 1;
    int count = 1;
    for (int k = 0; k < BW_KEY_COUNT; k++) {
        const uint32_t one = keys & 1u << k;
        if (!one) continue;
        const double room = count == 1 ? width - scale_room : width;
        if (bw_draw_key(NULL, rows[count - 1].keys | one, 0, 0) > room)
            rows[count++] = (key_row){0, 18};
        rows[count - 1].keys |= one;
    }
    return count;
}

bw_sheet bw_sheet_begin(bw_ink *ink, bw_paper paper, const bw_foot *foot) {
    const bw_format format = bw_format_of(paper, 1);
    return bw_sheet_open(ink, &format, foot);
}

bw_sheet bw_sheet_open(bw_ink *ink, const bw_format *format, const bw_foot *foot) {
    const bw_box block = format->block;
    const bool narrow = block.width < BW_BLOCK_WIDTH - 1;
    key_row rows[BW_KEY_COUNT];
    const int count = foot->charts ? key_rows(foot->keys, block.width, narrow, rows) : 0;
    double y = block.y + block.height - (narrow && foot->charts ? 33 : 20); // grows upward
    bw_sheet sheet = {ink, block, y};
    if (ink) {
        bw_ink_page(ink, format->width, format->height);
        bw_ink_fill(ink, BW_ROLE_PAGE);
        bw_path_rect(ink, 0, 0, format->width, format->height);
        bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
        draw_bottom(ink, foot, block, narrow);
    }
    for (int i = 0; i < count; i++) {
        if (ink) bw_draw_key(ink, rows[i].keys, block.x, y - 4);
        y -= rows[i].step;
    }
    if (ink && foot->charts) {
        bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
        bw_path_segment(ink, bw_v(block.x, y), bw_v(block.x + block.width, y));
    }
    if (ink) bw_ink_end(ink);
    sheet.block.height = y - 10 - block.y;
    return sheet;
}

void bw_sheet_close(const bw_sheet *sheet, const bw_format *format) {
    if (format->zoom != 1) bw_ink_enlarge(sheet->ink, format->zoom);
}

void bw_sheet_scale(const bw_sheet *sheet, bw_units units, double scale) {
    bw_ink_begin(sheet->ink, BW_TAG_ARTIFACT, "");
    bw_draw_scale(sheet->ink, units, scale, sheet->block.x + sheet->block.width, sheet->scale_y);
    bw_ink_end(sheet->ink);
}

void bw_line_of(bw_ink *ink, bw_role role, bw_weight weight, double size, double x, double y,
                double width, const char *text) {
    static const char dots[] = "\xE2\x80\xA6";
    char buffer[BW_CAPTION_SIZE + 4];
    bw_span line;
    if (bw_width(text, size) <= width) {
        bw_ink_text(ink, role, weight, size, BW_LEFT_ALIGN, x, y, text);
        return;
    }
    bw_wrap(text, size, width - bw_width(dots, size), &line, 1);
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_n(&t, text + line.start, (size_t)line.length);
    bw_put(&t, dots);
    bw_ink_text(ink, role, weight, size, BW_LEFT_ALIGN, x, y, buffer);
}

void bw_heading(bw_ink *ink, bw_tag tag, bw_role role, double size, double x, double y,
                double width, const char *text) {
    bw_ink_begin(ink, tag, text);
    bw_line_of(ink, role, BW_BOLD, size, x, y, width, text);
    bw_ink_end(ink);
}

double bw_paragraph(bw_ink *ink, bw_role role, bw_weight weight, double size, double leading,
                    double x, double y, double width, const char *text) {
    return bw_paragraph_of(ink, role, weight, size, leading, x, y, width, text, BW_MAX_LINES);
}

double bw_paragraph_of(bw_ink *ink, bw_role role, bw_weight weight, double size, double leading,
                       double x, double y, double width, const char *text, int most) {
    bw_span lines[BW_MAX_LINES];
    const int all = bw_wrap(text, size, width, lines, BW_MAX_LINES);
    const int count = all > most ? most : all;
    if (!ink) return count * leading;
    bw_ink_begin(ink, BW_TAG_P, "");
    for (int i = 0; i < count; i++) {
        const char *line = text + lines[i].start;
        const double base = y + size + i * leading;
        if (i == count - 1 && all > count)
            bw_line_of(ink, role, weight, size, x, base, width, line);
        else if (lines[i].length > 0)
            bw_ink_text_n(ink, role, weight, size, BW_LEFT_ALIGN, x, base, line,
                          (size_t)lines[i].length);
    }
    bw_ink_end(ink);
    return count * leading;
}
