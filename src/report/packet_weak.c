/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The last pages: the weakest rotations and what to do about them.
#include "draw/book_words.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "report/catalogue.h"
#include "report/cautions.h"
#include "report/packet_parts.h"
#include "scheme/caption.h"
#include "trial/words.h"

enum { SHOWN = 4, SHOWN_EACH = 2 }; // rotations, and of one stage

static const double chart_wide = 185;
static const double chart_gap = 14;

static void say_late(const bw_scheme *scheme, const bw_weak *weak, bw_text *out) {
    const bw_stage *stage = &scheme->stages[weak->stage];
    for (int i = 0; i < weak->men; i++)
        bw_put_sentence(out, bw_voice_of(scheme),
                        i == 0               ? &bw_s_weak_late
                        : i == weak->men - 1 ? &bw_s_weak_late_last
                                             : &bw_s_weak_late_next,
                        bw_as_word("spot", stage->spots[weak->man[i].spot].name),
                        bw_as_seconds("late", weak->man[i].seconds));
    if (weak->men) bw_put(out, ". ");
}

/// What it costs, who is late, and what to do: start sooner, and make the coach's eye look at the right
/// man.
static void say_about(const bw_scheme *scheme, const bw_weak *weak, bw_text *out) {
    const bw_stage *stage = &scheme->stages[weak->stage];
    const bw_voice voice = bw_voice_of(scheme);
    const double cost = 100 * weak->cost;
    bw_put_sentence(out, voice, &bw_s_weak_cost, bw_as_number("cost", cost, cost < 9.5 ? 1 : 0));
    say_late(scheme, weak, out);
    if (weak->men)
        bw_put_sentence(out, voice, &bw_s_weak_go,
                        bw_as_word("spot", stage->spots[weak->man[0].spot].name));
    bw_put_plain_sentence(out, voice, &bw_s_weak_walk);
}

static double put_words(bw_ink *ink, const bw_scheme *scheme, const bw_weak *weak, int number,
                        double x, double y, double width) {
    char words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put_int(&t, number);
    bw_put(&t, ". ");
    bw_say_weak(weak, &t);
    double at = y - 3;
    at += bw_put_column(ink, BW_ROLE_TEXT, BW_BOLD, x, at, width, words);
    t = bw_text_in(words, sizeof words);
    bw_say_stage(&scheme->stages[weak->stage], &t);
    at += bw_put_column(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, x, at, width, words) + 2;
    t = bw_text_in(words, sizeof words);
    say_about(scheme, weak, &t);
    at += bw_put_column(ink, BW_ROLE_TEXT, BW_REGULAR, x, at, width, words);
    return at - y;
}

/// Chart and words side by side; one below the other where the page is narrow. Returns the height.
static double put_weak(bw_ink *ink, const bw_scheme *scheme, const bw_weak *weak, int number,
                       double x, double y, double width) {
    const bw_run_chart run = {scheme, weak->stage, weak->from, weak->to};
    const bool beside = width > 480;
    const double words_x = beside ? x + chart_wide + chart_gap : x;
    const double chart = bw_packet_run(NULL, &run, 0, 0, chart_wide);
    if (ink) {
        bw_ink_begin(ink, BW_TAG_FIGURE, weak->to_name);
        bw_packet_run(ink, &run, x, y, chart_wide);
        bw_ink_end(ink);
    }
    const double words = put_words(ink, scheme, weak, number, words_x, beside ? y : y + chart + 8,
                                   width - (words_x - x));
    return beside ? bw_max(chart, words) : chart + 8 + words;
}

/// The cautions: below the rest or on a page of their own, as their block where it can hold it, else one
/// below the other.
static void put_cautions(bw_paging *p) {
    const bw_scheme *scheme = p->teach->scheme;
    const double height = bw_put_cautions(NULL, scheme, 0, 0, p->width, BW_TYPE_TEXT);
    const bool narrow = p->width < 480; // its topics and sources would meet
    p->y += 8;
    if (p->y + height > p->bottom) bw_paging_page(p, 0, "Cautions", false);
    if (!narrow && p->y + height <= p->bottom) {
        if (p->ink) bw_put_cautions(p->ink, scheme, p->x, p->y, p->width, BW_TYPE_TEXT);
        p->y += height;
        return;
    }
    bw_paging_heading(p, BW_TAG_H2, BW_TYPE_SUBHEAD, "Cautions");
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution caution = bw_caution_for(scheme, i);
        char words[BW_PACKET_LINE];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put(&t, caution.topic);
        bw_put(&t, ". ");
        bw_put(&t, caution.text);
        bw_put(&t, " (");
        bw_put(&t, caution.source);
        bw_put(&t, ")");
        bw_paging_text(p, BW_ROLE_TEXT, 4, words);
    }
    bw_paging_text(p, BW_ROLE_TEXT, 4, bw_cautions_defer());
}

/// Whether it is on this paper: everyone's has all, a player's own what he is late for.
static bool wanted(const bw_teach *teach, const bw_weak *weak) {
    const int only = bw_teach_spot(teach, weak->stage);
    if (only == -1) return true;
    for (int i = 0; i < weak->men; i++) {
        if (weak->man[i].spot == only) return true;
    }
    return false;
}

void bw_packet_weak(bw_paging *p) {
    const bw_teach *teach = p->teach;
    const bw_scheme *scheme = teach->scheme;
    int shown = 0, of_stage[BW_MAX_STAGES] = {0};
    uint32_t keys = 0;
    for (int i = 0; i < teach->weak->count; i++)
        keys |= bw_packet_run_keys(&scheme->stages[teach->weak->weak[i].stage]);
    for (int i = 0; i < teach->weak->count && shown < SHOWN; i++) {
        const bw_weak *weak = &teach->weak->weak[i];
        if (!wanted(teach, weak) || of_stage[weak->stage] == SHOWN_EACH) continue;
        of_stage[weak->stage]++;
        if (shown == 0) {
            static const char title[] = "What to rehearse first";
            bw_paging_page(p, keys, title, true);
            bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, title);
            bw_paging_text(
                p, BW_ROLE_TEXT, 10,
                "Where being late costs us most, by the model's estimate: breaks played on the "
                "computer, in which nobody comes back to help. Trust it to tell which comes first, "
                "not how many goals it is.");
        }
        shown++;
        bw_paging_room(p, put_weak(NULL, scheme, weak, shown, 0, 0, p->width));
        if (p->ink) put_weak(p->ink, scheme, weak, shown, p->x, p->y, p->width);
        bw_paging_scale(p, bw_packet_scale(scheme, chart_wide));
        p->y += put_weak(NULL, scheme, weak, shown, 0, 0, p->width) + 14;
    }
    if (shown) put_cautions(p);
}
