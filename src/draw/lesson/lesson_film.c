/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/lesson/lesson_film.h"

#include "core/level.h"
#include "draw/catalogue.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/lesson/lesson_parts.h"
#include "draw/path.h"
#include "draw/sheet.h"
#include "scheme/caption.h"

static const double margin = 14;
static const double chart_tall = 246;
static const double panel_gap = 16;
static const double caption = 13; // type size and leading of the words below the chart
static const double caption_leading = 17;
static const double strip_up = 8; // of the strip of stops above the lower edge
enum { CAPTION_LINES = 3 };

void bw_lesson_film_build(const bw_scheme *scheme, const bw_lesson *lesson, bw_lesson_film *film) {
    film->scheme = scheme;
    film->lesson = lesson;
    film->lines = BW_RUN_SOLID;
    bw_walk_build(scheme, lesson, &film->walk);
    film->keys = BW_KEY_KEEPER | BW_KEY_BALL | BW_KEY_PLACE | BW_KEY_TETHER;
    for (int i = 0; i < film->walk.count; i++) {
        const bw_walk_stop *stop = &film->walk.stops[i];
        if (stop->way == BW_WAY_PASS) film->keys |= BW_KEY_PASS;
        if (stop->way == BW_WAY_CARRY) film->keys |= BW_KEY_CARRY;
        for (int s = 0; s < film->walk.spots; s++)
            film->keys |= (uint32_t)BW_KEY_DUTY_BALL << stop->station[s].duty;
    }
}

double bw_lesson_film_seconds(const bw_lesson_film *film) {
    return BW_FILM_TITLE + bw_walk_seconds(&film->walk) + BW_FILM_END;
}

void bw_lesson_caption(const bw_lesson_film *film, int stop, bw_text *out) {
    const char *own = film->lesson->stops[stop].caption;
    if (own[0])
        bw_put(out, own);
    else
        bw_say_unit(film->scheme, film->walk.stage, film->walk.stops[stop].station,
                    film->walk.stops[stop].ball, out);
}

/// A tick for each stop along the lower edge, and how far the lesson has come.
static void draw_strip(const bw_lesson_film *film, int stop, bw_ink *ink) {
    const double y = BW_FILM_TALL - strip_up, wide = BW_FILM_WIDE - 2 * margin;
    const int steps = film->walk.count - 1;
    bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(ink, bw_v(margin, y), bw_v(margin + wide, y));
    for (int i = 0; i <= steps; i++) {
        const double x = margin + (steps > 0 ? wide * i / steps : 0);
        bw_ink_fill(ink, i <= stop ? BW_ROLE_BALL : BW_ROLE_SOFT_LINE);
        bw_path_circle(ink, bw_v(x, y), i == stop ? 4 : 2.2);
    }
}

static void put_caption(const char *words, double y, bw_ink *ink) {
    bw_paragraph_of(ink, BW_ROLE_TEXT, BW_REGULAR, caption, caption_leading, margin, y,
                    BW_FILM_WIDE - 2 * margin, words, CAPTION_LINES);
}

bw_status bw_lesson_film_page(const bw_lesson_film *film, double seconds, bw_ink *ink) {
    const double into = seconds - BW_FILM_TITLE, all = bw_walk_seconds(&film->walk);
    const bool before = into < 0, after = into >= all;
    char room[BW_FILM_CAPTION];
    bw_text words = bw_text_in(room, sizeof room);
    bw_walk_moment moment;
    bw_walk_at(&film->walk, into, &moment);
    ink->lines = film->lines;
    bw_ink_page(ink, BW_FILM_WIDE, BW_FILM_TALL);
    bw_ink_fill(ink, BW_ROLE_PAGE);
    bw_path_rect(ink, 0, 0, BW_FILM_WIDE, BW_FILM_TALL);

    const bw_window window = bw_window_unit(film->scheme);
    const double wide = bw_min(bw_view_width(window, chart_tall), 0.6 * BW_FILM_WIDE);
    const bw_view view = bw_view_fit(window, margin + BW_BORDER, margin + BW_BORDER, wide);
    bw_lesson_chart(film, &moment, &view, ink);
    const double x = view.box.x + view.box.width + BW_BORDER + panel_gap;
    const bw_box panel = {x, margin, BW_FILM_WIDE - margin - x, chart_tall + 2 * BW_BORDER};
    if (before) {
        bw_lesson_title(film, panel, ink);
        bw_put_plain_sentence(&words, bw_voice_of(film->scheme), &bw_s_film_rings);
    } else if (after) {
        bw_lesson_end(film, panel, ink);
        bw_put_plain_sentence(&words, bw_voice_of(film->scheme), &bw_s_film_times);
    } else {
        bw_lesson_panel(film, &moment, panel, ink);
        bw_lesson_caption(film, moment.stop, &words);
    }
    put_caption(room, margin + 2 * BW_BORDER + chart_tall + 4, ink);
    draw_strip(film, before ? -1 : moment.stop, ink);
    return (bw_status)ink->status;
}
