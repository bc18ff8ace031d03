/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/text.h"
#include "report/cards.h"
#include "report/packet.h"
#include "report/quiz_sheet.h"
#include "report/wall.h"
#include "serve/work.h"
#include "team/date.h"

/// One of the things that are handed out.
typedef struct handout {
    const char *what;
    int (*count)(const bw_teach *teach);
    bw_status (*page)(const bw_teach *teach, int page, int pages, bw_ink *ink);
} handout;

typedef struct printing {
    const handout *handout;
    bw_teach teach;
    bw_weak_list weak;
    char date[BW_DATE_SIZE];
    int pages;
} printing;

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const printing *p = self;
    return p->handout->page(&p->teach, number, p->pages, ink);
}

/// The weakest rotations, from one quick break for each stage.
static bw_status find_weak(bw_work *w, bw_weak_list *weak, bw_text *why) {
    weak->count = 0;
    w->battery.ground = &w->ground;
    w->battery.trials = w->trials;
    w->battery.count = bw_weak_trials(&w->scheme, w->def.seed, w->trials);
    const bw_status status = w->battery.count > 0 ? bw_battery_run(&w->battery) : BW_OK;
    if (status == BW_LIMIT) bw_put(why, "Cancelled.");
    if (status == BW_NO_ROOM) bw_put(why, BW_NO_MEMORY_SENTENCE);
    for (int i = 0; i < w->battery.count && status == BW_OK; i++)
        bw_weak_take(&w->ground, &w->trials[i], weak);
    return status;
}

/// A spot that some stage has; everyone's when none was asked for.
static bool find_spot(const bw_work *w, const char **spot) {
    *spot = bw_target_value(&w->target, "spot");
    for (int s = 0; *spot && s < w->scheme.stage_count; s++) {
        if (bw_stage_spot(&w->scheme.stages[s], *spot) >= 0) return true;
    }
    return *spot == NULL;
}

static bw_status print(bw_work *w, const handout *handout, bw_press *press, bw_bytes *result,
                       bw_text *why) {
    printing p = {.handout = handout};
    int large = 0;
    bw_status status = find_weak(w, &p.weak, why);
    if (status != BW_OK) return status;
    bw_today(p.date);
    p.teach = (bw_teach){.scheme = &w->scheme,
                         .weak = &p.weak,
                         .date = p.date,
                         .paper = w->paper,
                         .seed = w->def.seed,
                         .card_width = BW_CARD_WIDTH,
                         .card_height = BW_CARD_HEIGHT};
    if (!find_spot(w, &p.teach.spot) || !bw_target_number(&w->target, "large", 0, 1, 0, &large)) {
        bw_put(why, "No stage has such a spot, or large is not 0 or 1.");
        return BW_BAD_INPUT;
    }
    p.teach.large = large != 0;
    p.pages = handout->count(&p.teach);
    if (p.pages == 0) {
        bw_put(why, "A card of that size does not fit on the paper, or not all ball places on it.");
        return BW_LIMIT;
    }
    char title[BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, w->scheme.name);
    bw_put(&t, ": ");
    bw_put(&t, handout->what);
    const bw_pages pages = {p.pages, title, draw_page, &p};
    return bw_press_pdf(press, &pages, w->theme, result, why);
}

bw_status bw_make_packet(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    static const handout packet = {"packet", bw_packet_pages, bw_packet_page};
    return print(w, &packet, press, result, why);
}

bw_status bw_make_cards(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    static const handout cards = {"pocket cards", bw_cards_pages, bw_cards_page};
    return print(w, &cards, press, result, why);
}

bw_status bw_make_quiz(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    static const handout quiz = {"quiz", bw_quiz_pages, bw_quiz_page};
    return print(w, &quiz, press, result, why);
}

bw_status bw_make_wall(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    static const handout wall = {"wall sheets", bw_wall_pages, bw_wall_page};
    return print(w, &wall, press, result, why);
}
