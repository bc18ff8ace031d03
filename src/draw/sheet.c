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

/// The words at the very bottom: whose scheme, whose left, which page.
static void draw_bottom(bw_ink *ink, const bw_foot *foot, bw_box block) {
    static const char sides[] = "Left and right as the defender sees them.";
    const double right = block.x + block.width, bottom = block.y + block.height;
    const double name = (block.width - bw_width(sides, BW_TYPE_LABEL)) / 2 - 10;
    char buffer[48];
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put(&t, "page ");
    bw_put_int(&t, foot->page);
    bw_put(&t, " of ");
    bw_put_int(&t, foot->pages);
    bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN, right, bottom,
                buffer);
    if (foot->charts)
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_CENTRE_ALIGN,
                    block.x + block.width / 2, bottom, sides);
    bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, block.x, bottom, name,
               foot->name);
}

bw_sheet bw_sheet_begin(bw_ink *ink, bw_paper paper, const bw_foot *foot) {
    const double width = papers[paper].width, height = papers[paper].height;
    bw_box block = {0, 0, BW_BLOCK_WIDTH, BW_BLOCK_HEIGHT};
    block.x = (width - block.width) / 2;
    block.y = (height - block.height) / 2;
    bw_ink_page(ink, width, height);
    bw_ink_fill(ink, BW_ROLE_PAGE);
    bw_path_rect(ink, 0, 0, width, height);

    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    draw_bottom(ink, foot, block);
    double y = block.y + block.height - 20; // the foot grows upward from here
    bw_sheet sheet = {ink, block, y};
    if (foot->charts) {
        bw_draw_key(ink, foot->keys & ~BW_KEY_DUTIES, block.x, y - 4);
        y -= 22;
        if (foot->keys & BW_KEY_DUTIES) {
            bw_draw_key(ink, foot->keys & BW_KEY_DUTIES, block.x, y - 4);
            y -= 18;
        }
        bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
        bw_path_segment(ink, bw_v(block.x, y), bw_v(block.x + block.width, y));
    }
    bw_ink_end(ink);
    sheet.block.height = y - 10 - block.y;
    return sheet;
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
