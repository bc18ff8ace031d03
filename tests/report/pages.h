/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is asked of every page handed out: legible, inside its margins, no words over others. And the
/// schemes to ask it of.
#ifndef BW_TESTS_REPORT_PAGES_H
#define BW_TESTS_REPORT_PAGES_H

#include "core/level.h"
#include "core/text.h"
#include "report/teach.h"
#include "scheme/fresh.h"
#include "tests/draw/pages.h"

enum { PAGE_TEXTS = 4096 };

/// How a page is judged, points at its final size.
typedef struct page_rule {
    double margin;  ///< nothing nearer to the edge, but the fill of the paper
    double text;    ///< smallest type of regular weight outside charts and feet
    double label;   ///< smallest type anywhere
    double overlap; ///< square points two runs of words may share
    bool codes; ///< the codes on two men's discs may touch: they stand where the scheme puts them
} page_rule;

static inline bool page_inside(const bw_ink *ink, double margin) {
    const bw_box safe = {margin, margin, ink->width - 2 * margin, ink->height - 2 * margin};
    int clips = 0;
    bool fine = true;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        clips += (i->kind == BW_INK_CLIP) - (i->kind == BW_INK_UNCLIP);
        const bool path = i->kind == BW_INK_FILL || i->kind == BW_INK_STROKE;
        bool inside = true;
        if (i->kind == BW_INK_TEXT) inside = within(text_box(i), safe, 0.02);
        if (path && i->numbers && i->role != BW_ROLE_PAGE && clips == 0)
            inside = within(path_box(i), safe, 0.02);
        if (inside) continue;
        fine = false;
        const bw_box at = path ? path_box(i) : text_box(i);
        fprintf(stderr, "outside: %.*s at %.1f %.1f, %.1f x %.1f\n", (int)i->text, bw_ink_string(i),
                at.x, at.y, at.width, at.height);
    }
    return fine;
}

/// Text that is not in a figure, at the foot or of the second rank is at least `text`, everything at least `label`.
static inline bool page_legible(const bw_ink *ink, double text, double label) {
    int depth = 0, small = 0; // small: depth at which a figure or artifact began
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind == BW_INK_OPEN) {
            depth++;
            if (!small && (i->style == BW_TAG_FIGURE || i->style == BW_TAG_ARTIFACT)) small = depth;
        }
        if (i->kind == BW_INK_SHUT && depth-- == small) small = 0;
        if (i->kind != BW_INK_TEXT) continue;
        const bool soft = i->role == BW_ROLE_SOFT_TEXT; // sources, "model estimate"
        if (i->size + 1e-9 >= (small || soft ? label : text)) continue;
        fprintf(stderr, "%.1f pt: %.*s\n", i->size, (int)i->text, bw_ink_string(i));
        return false;
    }
    return depth == 0;
}

static inline bool on_a_disc(const bw_ink_item *run) {
    return run->role == BW_ROLE_DEFENDER_TEXT || run->role == BW_ROLE_DEFENDER;
}

static inline int page_collisions(const bw_ink *ink, const page_rule *rule) {
    static const bw_ink_item *runs[PAGE_TEXTS];
    int count = 0, collisions = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind == BW_INK_TEXT && i->text && count < PAGE_TEXTS) runs[count++] = i;
    }
    for (int a = 0; a < count; a++) {
        for (int b = 0; b < a; b++) {
            if (shared_area(text_box(runs[a]), text_box(runs[b])) <= rule->overlap) continue;
            if (rule->codes && on_a_disc(runs[a]) && on_a_disc(runs[b])) continue;
            collisions++;
            fprintf(stderr, "collision: \"%.*s\" and \"%.*s\"\n", (int)runs[a]->text,
                    bw_ink_string(runs[a]), (int)runs[b]->text, bw_ink_string(runs[b]));
        }
    }
    return collisions;
}

/// A page that keeps all the rules.
static inline void check_sheet(const bw_ink *ink, const page_rule *rule) {
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->open, 0);
    CHECK(page_inside(ink, rule->margin));
    CHECK(page_legible(ink, rule->text, rule->label));
    CHECK_INT(page_collisions(ink, rule), 0);
}

static inline void long_words(char *to, size_t room, const char *lead, int number) {
    bw_text t = bw_text_in(to, room);
    bw_put(&t, lead);
    bw_put_int(&t, number);
    while (!t.full)
        bw_put(&t, " Wagga");
}

/// A fresh scheme of any level and field, with words and landmarks drawn anew.
static inline void random_scheme(unsigned long long *state, bw_scheme *scheme) {
    const int level = (int)test_uniform(state, 0, bw_level_count());
    const int field = (int)test_uniform(state, 0, bw_field_count());
    bw_scheme_fresh(field, level, scheme);
    const bool many = test_uniform(state, 0, 1) < 0.4, wordy = test_uniform(state, 0, 1) < 0.4;
    scheme->units = test_uniform(state, 0, 1) < 0.5 ? BW_YARDS : BW_METRES;
    if (many) {
        const bw_field *f = bw_field_at(scheme->field);
        scheme->landmark_count = 20;
        for (int i = 0; i < 20; i++) {
            bw_landmark *l = &scheme->landmarks[i];
            bw_text t = bw_text_in(l->id, sizeof l->id);
            bw_put(&t, "p");
            bw_put_int(&t, i);
            long_words(l->name, wordy ? sizeof l->name : 14, "Place", i);
            l->twin = -1;
            l->at.x = (i % 5 - 2) * 0.2 * f->width + test_uniform(state, -1, 1);
            l->at.y = (i / 5 - 1) * 5.5 + test_uniform(state, -1, 1);
            l->at.y = bw_max(l->at.y, 1 - f->end_line);
        }
        for (int s = 0; s < scheme->stage_count; s++)
            memset(scheme->stages[s].pinned, 0, sizeof scheme->stages[s].pinned);
        scheme->lesson_count = 0;
    }
    if (!wordy) return;
    long_words(scheme->name, sizeof scheme->name, "Name", 1);
    long_words(scheme->team, sizeof scheme->team, "Team", 1);
    long_words(scheme->notes, sizeof scheme->notes, "Notes", 1);
    for (int s = 0; s < scheme->stage_count; s++) {
        bw_stage *stage = &scheme->stages[s];
        long_words(stage->call, sizeof stage->call, "Call", s);
        for (int i = 0; i < stage->defenders; i++) {
            long_words(stage->spots[i].name, sizeof stage->spots[i].name, "Spot", i);
            long_words(stage->spots[i].call, sizeof stage->spots[i].call, "Shout", i);
            bw_copy(stage->spots[i].id, sizeof stage->spots[i].id, "WWW");
            stage->spots[i].id[2] = (char)('0' + i);
        }
    }
}

/// A list as the model would give it, without its seconds: each stage's passes between the first few
/// landmarks, with men late for them.
static inline void made_up_weak(const bw_scheme *scheme, bw_weak_list *list) {
    *list = (bw_weak_list){0};
    for (int s = 0; s < scheme->stage_count && list->count + 2 <= BW_WEAK_LIST; s++) {
        if (scheme->stages[s].match_up) continue;
        for (int k = 0; k < 2; k++) {
            const int a = k, b = k + 3;
            bw_weak *w = &list->weak[list->count++];
            *w = (bw_weak){.stage = s,
                           .from = scheme->landmarks[a].at,
                           .to = scheme->landmarks[b].at,
                           .from_at = a,
                           .to_at = b,
                           .cost = 0.12 / list->count,
                           .men = 2};
            bw_copy(w->from_name, sizeof w->from_name, scheme->landmarks[a].name);
            bw_copy(w->to_name, sizeof w->to_name, scheme->landmarks[b].name);
            w->man[0] = (bw_weak_man){0, 1.4, 6};
            w->man[1] = (bw_weak_man){2, 0.6, 3};
        }
    }
}

#endif
