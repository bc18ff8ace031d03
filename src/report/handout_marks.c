/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the pictures of the hand-out share: the chart once, each spot's mark once for each duty.
#include "draw/hand_chart.h"
#include "draw/key.h"
#include "draw/path.h"
#include "draw/svg.h"
#include "report/handout_parts.h"
#include "report/sample_danger.h"

static void begin(const bw_handout_job *job, const char *id) {
    bw_put(job->out, "<g id=\"");
    bw_put(job->out, id);
    bw_put(job->out, "\">");
}

/// The ink as the piece that was begun.
static void end(const bw_handout_job *job) {
    bw_svg_pieces(job->ink, job->out);
    bw_put(job->out, "</g>\n");
}

/// Whether an earlier stage, or an earlier spot of this one, has the same code.
static bool seen_before(const bw_scheme *scheme, int stage, int spot) {
    const char *id = scheme->stages[stage].spots[spot].id;
    for (int s = 0; s < stage; s++) {
        if (bw_stage_spot(&scheme->stages[s], id) >= 0) return true;
    }
    return false;
}

/// One mark for each duty: what is put at "m-LL-0".
static void put_spot(const bw_handout_job *job, const char *code) {
    for (int duty = 0; duty < BW_DUTY_COUNT; duty++) {
        char id[BW_ID_SIZE + 8];
        bw_text t = bw_text_in(id, sizeof id);
        bw_put(&t, "m-");
        bw_put(&t, code);
        bw_put_char(&t, '-');
        bw_put_int(&t, duty);
        begin(job, id);
        bw_ink_page(job->ink, BW_HAND_WIDTH, BW_HAND_WIDTH);
        bw_mark_defender(job->ink, bw_hand_marks(), bw_v(0, 0), code, duty);
        end(job);
    }
}

void bw_handout_marks(const bw_handout_job *job) {
    const bw_scheme *scheme = job->teach->scheme;
    const bw_view view = bw_hand_view(scheme);
    const bw_danger danger = bw_sample_danger(scheme, view.window);
    begin(job, "chart");
    bw_draw_hand_chart(job->ink, scheme, &danger);
    end(job);
    begin(job, "ball");
    bw_ink_page(job->ink, BW_HAND_WIDTH, BW_HAND_WIDTH);
    bw_ink_fill(job->ink, BW_ROLE_PAPER);
    bw_path_circle(job->ink, bw_v(0, 0), 7.4);
    bw_ink_fill(job->ink, BW_ROLE_BALL);
    bw_path_circle(job->ink, bw_v(0, 0), 3.6);
    bw_ink_stroke(job->ink, BW_ROLE_BALL, 1.4);
    bw_path_circle(job->ink, bw_v(0, 0), 6);
    end(job);
    for (int s = 0; s < scheme->stage_count; s++) {
        for (int k = 0; k < scheme->stages[s].defenders; k++) {
            if (!seen_before(scheme, s, k)) put_spot(job, scheme->stages[s].spots[k].id);
        }
    }
}

void bw_handout_key(const bw_handout_job *job) {
    static const uint32_t keys =
        BW_KEY_DEFENDER | BW_KEY_KEEPER | BW_KEY_BALL | BW_KEY_PLACE | BW_KEY_PASS | BW_KEY_DUTIES;
    bw_ink *ink = job->ink;
    const double height = bw_draw_key_rows(NULL, keys, 0, 0, BW_HAND_WIDTH);
    bw_ink_page(ink, BW_HAND_WIDTH, height);
    bw_draw_key_rows(ink, keys, 0, 0, BW_HAND_WIDTH);
    bw_put(job->out,
           "<svg class=\"key\" role=\"img\" aria-label=\"Key: defender, goalkeeper, ball, "
           "ball place, and the rings that tell a defender's duty\" viewBox=\"0 0 ");
    bw_put_number(job->out, BW_HAND_WIDTH, 0);
    bw_put_char(job->out, ' ');
    bw_put_number(job->out, height, 1);
    bw_put(job->out, "\">");
    bw_svg_pieces(ink, job->out);
    bw_put(job->out, "</svg>\n");
}
