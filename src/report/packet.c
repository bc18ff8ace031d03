/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The order of the packet, and what several of its pages need.
#include "report/packet.h"

#include "draw/chart.h"
#include "draw/key.h"
#include "draw/scene.h"
#include "report/catalogue.h"
#include "report/packet_parts.h"
#include "scheme/caption.h"

static void walk(bw_paging *p) {
    const bw_teach *teach = p->teach;
    bw_packet_idea(p);
    for (int s = 0; s < teach->scheme->stage_count; s++) {
        const int only = bw_teach_spot(teach, s);
        if (only == -1) {
            bw_packet_stage(p, s);
            bw_packet_rotations(p, s);
        }
        for (int i = 0; i < teach->scheme->stages[s].defenders; i++) {
            if (only == -1 || only == i) bw_packet_spot(p, s, i);
        }
    }
    bw_packet_weak(p);
}

int bw_packet_pages(const bw_teach *teach) {
    return bw_paging_count(teach, walk);
}

bw_status bw_packet_page(const bw_teach *teach, int page, int pages, bw_ink *ink) {
    return bw_paging_draw(teach, walk, page, pages, ink);
}

void bw_put_call(bw_text *out, const char *call) {
    bw_put(out, "\xE2\x80\x9C");
    bw_put(out, call);
    bw_put(out, "\xE2\x80\x9D");
}

void bw_say_weak(const bw_weak *weak, bw_text *out) {
    bw_say_first(weak->from_name, out);
    bw_put(out, " to ");
    bw_put(out, weak->to_name);
}

int bw_packet_columns(const bw_paging *p, double *width) {
    const int columns = p->width > 480 ? 2 : 1;
    *width = (p->width - (columns - 1) * BW_PACKET_GUTTER) / columns;
    return columns;
}

uint32_t bw_packet_run_keys(const bw_stage *stage) {
    uint32_t keys = BW_KEY_DEFENDER | BW_KEY_KEEPER | BW_KEY_BALL | BW_KEY_RUN | BW_KEY_PASS;
    if (stage->rule.hold_behind) keys |= BW_KEY_DUTY_HOLD;
    if (stage->rule.crease != BW_CREASE_NONE) keys |= BW_KEY_DUTY_CREASE;
    keys |= stage->match_up ? BW_KEY_DUTY_MAN : BW_KEY_DUTY_ADJACENT | BW_KEY_DUTY_BACKSIDE;
    return (keys | BW_KEY_DUTY_BALL) & ~(uint32_t)BW_KEY_DEFENDER;
}

double bw_put_column(bw_ink *ink, bw_role role, bw_weight weight, double x, double y, double width,
                     const char *text) {
    return bw_paragraph(ink, role, weight, BW_TYPE_TEXT, BW_LEADING, x, y, width, text);
}

void bw_packet_homes(const bw_paging *p, int stage, const bw_view *view) {
    const bw_scheme *scheme = p->teach->scheme;
    bw_station homes[BW_MAX_SPOTS];
    const bw_scene scene = bw_scene_homes(scheme, stage, homes);
    char figure[2 * BW_NAME_SIZE];
    bw_text t = bw_text_in(figure, sizeof figure);
    bw_put_plain_sentence(&t, bw_voice_of(scheme), &bw_s_figure_homes);
    bw_ink_begin(p->ink, BW_TAG_FIGURE, figure);
    bw_draw_scene(p->ink, &scene, view, bw_marks_large(), false);
    bw_ink_end(p->ink);
}

double bw_put_disc(bw_ink *ink, const char *code, double x, double y) {
    // The paper left free round a disc counts too.
    const double reach = bw_max(16, bw_mark_reach(bw_marks_large(), code, BW_NO_DUTY).x + 1);
    if (ink) bw_mark_defender(ink, bw_marks_large(), bw_v(x + reach, y), code, BW_NO_DUTY);
    return 2 * reach + 10;
}

double bw_packet_scale(const bw_scheme *scheme, double wide) {
    const bw_window window = bw_window_unit(scheme);
    return (wide - 2 * BW_BORDER) / (window.right - window.left);
}

double bw_packet_run(bw_ink *ink, const bw_run_chart *run, double x, double y, double wide) {
    const bw_window window = bw_window_unit(run->scheme);
    const bw_view view = bw_view_fit(window, x + BW_BORDER, y + BW_BORDER, wide - 2 * BW_BORDER);
    const double height = view.box.height + 2 * BW_BORDER;
    if (!ink) return height;
    bw_plan plan;
    bw_station before[BW_MAX_SPOTS], after[BW_MAX_SPOTS];
    bw_vec stood[BW_MAX_SPOTS];
    bw_plan_build(run->scheme, run->stage, &plan);
    bw_where(&plan, run->from, NULL, 0, before);
    bw_where(&plan, run->to, NULL, 0, after);
    for (int s = 0; s < plan.spots; s++)
        stood[s] = before[s].at;
    const bw_scene scene = {.scheme = run->scheme,
                            .stage = run->stage,
                            .stations = after,
                            .duties = true,
                            .from = stood,
                            .ball = &run->to,
                            .ball_from = &run->from};
    bw_draw_scene(ink, &scene, &view, bw_marks_small(), false);
    return height;
}
