/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/hand_chart.h"

#include "draw/chart.h"
#include "draw/keeper.h"
#include "draw/path.h"

static const double place_mark = 1.8; // radius of a ball place's dot
static const double foot = 24;        // below the chart, for the scale

bw_view bw_hand_view(const bw_scheme *scheme) {
    return bw_view_fit(bw_window_unit(scheme), BW_BORDER + 0.5, BW_BORDER + 0.5,
                       BW_HAND_WIDTH - 2 * BW_BORDER - 1);
}

double bw_hand_height(const bw_view *view) {
    return view->box.height + 2 * BW_BORDER + 1 + foot;
}

bw_mark_size bw_hand_marks(void) {
    return (bw_mark_size){.radius = 10.5, .type = 12, .label = 10};
}

void bw_draw_hand_chart(bw_ink *ink, const bw_scheme *scheme, const bw_danger *danger) {
    const bw_view view = bw_hand_view(scheme);
    const bw_field *field = bw_field_at(scheme->field);
    const bw_box *box = &view.box;
    bw_ink_page(ink, BW_HAND_WIDTH, bw_hand_height(&view));
    bw_draw_paper(ink, &view);
    if (danger) {
        bw_labels labels;
        bw_labels_begin_chart(&labels, &view);
        bw_ink_clip(ink, box->x, box->y, box->width, box->height);
        bw_draw_danger(ink, danger, &labels, scheme->units, &view);
        bw_ink_unclip(ink);
    }
    bw_draw_field(ink, field, scheme->units, &view);
    bw_ink_fill(ink, BW_ROLE_SOFT_LINE);
    for (int l = 0; l < scheme->landmark_count; l++)
        bw_path_circle(ink, bw_view_point(&view, scheme->landmarks[l].at), place_mark);
    bw_mark_keeper(ink, bw_hand_marks(), bw_keeper_point(&view, field, bw_hand_marks(), 0));
    bw_draw_border(ink, scheme->units, &view, false);
    bw_draw_scale(ink, scheme->units, view.scale, BW_HAND_WIDTH - 8, bw_hand_height(&view) - 2);
}
