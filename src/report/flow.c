/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/flow.h"

#include "draw/metrics.h"
#include "draw/path.h"

static const double gutter = 20, after = 7, pad = 3;
enum { COLUMNS = 2 };

static void put_tag(bw_ink *ink, const char *tag, double right, double base) {
    const double width = bw_width(tag, BW_TYPE_SMALL) + 2 * pad, high = BW_TYPE_SMALL + pad;
    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    bw_ink_stroke(ink, BW_ROLE_LINE, 1);
    bw_path_rect(ink, right - width, base - high + pad / 2, width, high + pad / 2);
    bw_ink_end(ink);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SMALL, BW_RIGHT_ALIGN, right - pad, base, tag);
}

/// One piece; no more lines of its body than fit into `room`. Returns its height.
static double put_piece(bw_ink *ink, const bw_piece *piece, double x, double y, double width,
                        double room) {
    const double tag = piece->tag[0] ? bw_width(piece->tag, BW_TYPE_SMALL) + 2 * pad + 6 : 0;
    if (ink) {
        bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, x, y + BW_TYPE_TEXT, width - tag,
                   piece->head);
        if (tag > 0) put_tag(ink, piece->tag, x + width, y + BW_TYPE_TEXT);
    }
    int most = (int)((room - BW_LEADING) / BW_LEADING);
    if (most < 1) most = 1;
    return BW_LEADING + bw_paragraph_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, x,
                                        y + BW_LEADING, width, piece->body, most);
}

int bw_flow_page(bw_ink *ink, const bw_flow *flow, int first, bw_box box) {
    const double width = (box.width - (COLUMNS - 1) * gutter) / COLUMNS;
    int i = first;
    for (int c = 0; c < COLUMNS; c++) {
        const double x = box.x + c * (width + gutter);
        double y = box.y;
        for (bool top = true; i < flow->count; i++, top = false) {
            bw_piece piece = {.tag = ""};
            flow->piece(flow->self, i, &piece);
            const double left = box.y + box.height - y;
            const double high = put_piece(NULL, &piece, 0, 0, width, 1e6);
            if (high > left && !top) break;
            y += put_piece(ink, &piece, x, y, width, left) + after;
        }
    }
    return i;
}
