/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's own page: only what he has to know, said to him.
#include "draw/book_words.h"
#include "draw/key.h"
#include "draw/landmark_order.h"
#include "report/catalogue.h"
#include "report/own_cell.h"
#include "report/packet_parts.h"
#include "scheme/caption.h"

static const double row_gap = 8;

static bw_arg as_place(const char *name, const bw_scheme *scheme, bw_vec at) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_teach_place(scheme, at, &own);
    return arg;
}

static void say_head(const bw_scheme *scheme, const bw_stage *stage, int s, bw_text *out) {
    const bw_spot *spot = &stage->spots[s];
    const bool man = stage->match_up;
    bw_put_sentence(out, bw_voice_of(scheme), man ? &bw_s_spot_man : &bw_s_spot_place,
                    bw_as_part("on_call", !stage->call[0] ? NULL
                                          : man           ? &bw_s_spot_on_call
                                                          : &bw_s_spot_go),
                    bw_as_word("stage_call", stage->call), as_place("place", scheme, spot->home),
                    bw_as_part("calling", !spot->call[0] ? NULL
                                          : man          ? &bw_s_spot_call_man
                                                         : &bw_s_spot_call_place),
                    bw_as_word("call", spot->call));
}

static void put_head(bw_paging *p, const char *title, int stage_index, int s) {
    const bw_scheme *scheme = p->teach->scheme;
    const bw_stage *stage = &scheme->stages[stage_index];
    char line[BW_PACKET_LINE];
    const double beside = bw_put_disc(p->ink, stage->spots[s].id, p->x, p->y + 13);
    if (p->ink)
        bw_heading(p->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, p->x + beside,
                   p->y + BW_TYPE_HEAD + 1, p->width - beside, title);
    p->y += BW_TYPE_HEAD + 13;
    bw_text t = bw_text_in(line, sizeof line);
    say_head(scheme, stage, s, &t);
    bw_paging_text(p, BW_ROLE_TEXT, 9, line);
}

/// What the model says he is late for; nothing when he is not.
static void say_late(const bw_teach *teach, int stage, int s, bw_text *out) {
    int said = 0;
    for (int i = 0; i < teach->weak->count && said < 2; i++) {
        const bw_weak *weak = &teach->weak->weak[i];
        for (int k = 0; k < weak->men && weak->stage == stage; k++) {
            if (weak->man[k].spot != s) continue;
            bw_put_sentence(out, bw_voice_of(teach->scheme),
                            said++ ? &bw_s_spot_late_next : &bw_s_spot_late,
                            bw_as_word("from", weak->from_name), bw_as_word("to", weak->to_name),
                            bw_as_number("late", weak->man[k].seconds, 1));
        }
    }
    if (said) bw_put(out, ".");
}

/// The rows of cells; `late` stands in the free half of the last row when there is one. Returns whether
/// it does.
static bool put_cells(bw_paging *p, int stage, int spot, const char *late) {
    const bw_scheme *scheme = p->teach->scheme;
    int order[2 * BW_MAX_LANDMARKS];
    const int count = bw_landmark_order(scheme, order);
    bw_plan plan;
    bw_plan_build(scheme, stage, &plan);
    double width;
    const int columns = bw_packet_columns(p, &width);
    const double step = width + BW_PACKET_GUTTER;
    bool said = false;
    for (int i = 0; i < count; i += columns) {
        bw_own_cell cells[2];
        double height = 0;
        const int here = count - i < columns ? count - i : columns;
        for (int c = 0; c < here; c++) {
            bw_own_cell_fill(scheme, &plan, stage, spot, order[i + c], &cells[c]);
            height = bw_max(height, bw_own_cell_put(NULL, &cells[c], 0, 0, width));
        }
        if (here < columns) {
            said = true;
            height = bw_max(height,
                            bw_put_column(NULL, BW_ROLE_TEXT, BW_REGULAR, 0, 0, width, late) - 3);
        }
        bw_paging_room(p, height);
        for (int c = 0; c < here && p->ink; c++)
            bw_own_cell_put(p->ink, &cells[c], p->x + c * step, p->y, width);
        if (here < columns && p->ink && late[0])
            bw_put_column(p->ink, BW_ROLE_TEXT, BW_REGULAR, p->x + here * step, p->y - 3, width,
                          late);
        bw_paging_scale(p, bw_own_cell_scale(scheme));
        p->y += height + row_gap;
    }
    return said;
}

void bw_packet_spot(bw_paging *p, int stage_index, int s) {
    const bw_stage *stage = &p->teach->scheme->stages[stage_index];
    char title[3 * BW_NAME_SIZE], late[BW_PACKET_LINE];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, "You are ");
    bw_put(&t, stage->spots[s].name);
    bw_put(&t, ". ");
    bw_say_stage(stage, &t);
    bw_paging_page(p, BW_KEY_YOU | BW_KEY_MATE | BW_KEY_BALL | BW_KEY_FROM_HOME, title, false);
    put_head(p, title, stage_index, s);
    t = bw_text_in(late, sizeof late);
    say_late(p->teach, stage_index, s, &t);
    const bool said = put_cells(p, stage_index, s, late);
    if (!said && late[0]) bw_paging_text(p, BW_ROLE_TEXT, 0, late);
}
