/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The first page: the idea, for everyone.
#include "core/level.h"
#include "draw/book_words.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "report/catalogue.h"
#include "report/packet_parts.h"
#include "scheme/caption.h"
#include "trial/words.h"

/// The stage the idea is told with: four in, the first there is otherwise.
static int idea_stage(const bw_scheme *scheme) {
    const int four = bw_scheme_stage(scheme, 4);
    return four >= 0 ? four : 0;
}

/// The whole unit at home, as large as what is left of the page allows, within reason.
static void put_chart(bw_paging *p, int stage_index) {
    const bw_scheme *scheme = p->teach->scheme;
    const bw_window window = bw_window_unit(scheme);
    const double left = p->bottom - p->y - 2 * BW_BORDER;
    const double tall = left >= 150 ? bw_min(left, 250) : 250;
    const double wide = bw_min(bw_min(p->width, 370) - 2 * BW_BORDER, bw_view_width(window, tall));
    const double scale = wide / (window.right - window.left);
    const double height = (window.top - window.bottom) * scale + 2 * BW_BORDER;
    bw_paging_room(p, height);
    bw_paging_scale(p, scale);
    if (p->ink) {
        const bw_view here =
            bw_view_fit(window, p->x + (p->width - wide) / 2, p->y + BW_BORDER, wide);
        bw_packet_homes(p, stage_index, &here);
    }
    p->y += height + 14;
}

static void put_idea(bw_paging *p, int stage) {
    char words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put_plain_sentence(&t, bw_voice_of(p->teach->scheme), &bw_s_packet_idea);
    bw_paging_text(p, BW_ROLE_TEXT, 4, words);
    t = bw_text_in(words, sizeof words);
    bw_say_rule(p->teach->scheme, stage, &t);
    for (size_t i = 0; i < t.used; i++) { // its lines become one paragraph
        if (words[i] == '\n') words[i] = i + 1 < t.used ? ' ' : '\0';
    }
    bw_paging_text(p, BW_ROLE_TEXT, 10, words);
}

/// The words that set up each stage, in the order they come.
static void put_calls(bw_paging *p) {
    const bw_scheme *scheme = p->teach->scheme;
    char line[BW_PACKET_LINE];
    bw_paging_heading(p, BW_TAG_H2, BW_TYPE_SUBHEAD, "The calls");
    for (int s = 0; s < scheme->stage_count; s++) {
        const bw_stage *stage = &scheme->stages[s];
        bw_text t = bw_text_in(line, sizeof line);
        if (stage->call[0])
            bw_put_call(&t, stage->call);
        else
            bw_put(&t, "No call yet");
        bw_put(&t, ": ");
        bw_say_stage(stage, &t);
        const size_t before = t.used;
        bw_put(&t, "; ");
        bw_say_completes(scheme, s, &t);
        if (t.used == before + 2) t.used = before;
        t.data[t.used] = '\0';
        bw_put(&t, ".");
        bw_paging_text(p, BW_ROLE_TEXT, 2, line);
    }
    bw_text t = bw_text_in(line, sizeof line);
    bw_put_plain_sentence(&t, bw_voice_of(scheme), &bw_s_packet_everyone_calls);
    bw_paging_text(p, BW_ROLE_TEXT, 8, line);
}

void bw_packet_idea(bw_paging *p) {
    const bw_scheme *scheme = p->teach->scheme;
    const int stage = idea_stage(scheme);
    char line[BW_PACKET_LINE];
    bw_paging_page(p, BW_KEY_DEFENDER | BW_KEY_KEEPER, "The idea", false);
    bw_paging_heading(p, BW_TAG_H1, 26, scheme->name);
    bw_text t = bw_text_in(line, sizeof line);
    if (scheme->team[0]) {
        bw_put(&t, scheme->team);
        bw_put(&t, ". ");
    }
    bw_put(&t, "How we defend when we are short.");
    bw_paging_text(p, BW_ROLE_SOFT_TEXT, 8, line);
    put_idea(p, stage);
    put_chart(p, stage);
    put_calls(p);
    if (scheme->notes[0]) {
        bw_paging_heading(p, BW_TAG_H2, BW_TYPE_SUBHEAD, "From the coach");
        bw_paging_text(p, BW_ROLE_TEXT, 0, scheme->notes);
    }
}
