/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What stands beside the chart: the title before, who does what while it runs, who was last after.
#include "core/level.h"
#include "draw/key.h"
#include "draw/lesson/lesson_parts.h"
#include "draw/metrics.h"
#include "draw/sheet.h"
#include "scheme/caption.h"

static const double head = 15; // type sizes
static const double big_head = 22;
static const double text = 11;
static const double leading = 16;
static const double code_room = 34; // left of a man's duty
enum { WORST = 4 };                 // lines of the end card

static const bw_stage *stage_of(const bw_lesson_film *film) {
    return &film->scheme->stages[film->walk.stage];
}

static double line(bw_ink *ink, bw_role role, bw_weight weight, double size, bw_box box, double y,
                   const char *words) {
    bw_line_of(ink, role, weight, size, box.x, y + size, box.width, words);
    return y + size + (leading - text);
}

/// "4 defenders, 2-2. The call: Harbour."
static void say_stage(const bw_lesson_film *film, bw_text *out) {
    const bw_stage *stage = stage_of(film);
    bw_put_int(out, stage->defenders);
    bw_put(out, " defenders, ");
    bw_put(out, stage->shape);
    if (stage->call[0]) {
        bw_put(out, ". The call: ");
        bw_put(out, stage->call);
    }
    bw_put_char(out, '.');
}

/// "Stop 3 of 9": where the ball is, or is going.
static void say_stop(const bw_lesson_film *film, const bw_walk_moment *moment, bw_text *out) {
    bw_put(out, moment->way == BW_WAY_PASS    ? "Pass to stop "
                : moment->way == BW_WAY_CARRY ? "Carry to stop "
                                              : "Stop ");
    bw_put_int(out, moment->stop + 1);
    bw_put(out, " of ");
    bw_put_int(out, film->walk.count);
}

/// One man a line: code, duty, and how late he is.
static double put_men(const bw_lesson_film *film, const bw_walk_moment *moment, bw_box box,
                      double y, bw_ink *ink) {
    const bw_stage *stage = stage_of(film);
    for (int s = 0; s < stage->defenders; s++) {
        const bw_walker *man = &moment->men[s];
        const double base = y + leading * s + text;
        bw_line_of(ink, BW_ROLE_DEFENDER, BW_BOLD, text, box.x, base, code_room,
                   stage->spots[s].id);
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, text, box.x + code_room, base,
                   box.width - code_room, bw_duty_name(man->station.duty));
        if (!bw_walker_late(man)) continue;
        char words[32];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put_fixed(&t, man->late, 1);
        bw_put(&t, " s late");
        bw_ink_text(ink, BW_ROLE_ACCENT, BW_BOLD, text, BW_RIGHT_ALIGN, box.x + box.width, base,
                    words);
    }
    return y + leading * stage->defenders;
}

void bw_lesson_panel(const bw_lesson_film *film, const bw_walk_moment *moment, bw_box box,
                     bw_ink *ink) {
    char words[160];
    double y = line(ink, BW_ROLE_TEXT, BW_BOLD, head, box, box.y, film->lesson->name);
    bw_text t = bw_text_in(words, sizeof words);
    say_stage(film, &t);
    y = line(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, text, box, y, words);
    t = bw_text_in(words, sizeof words);
    say_stop(film, moment, &t);
    y = line(ink, BW_ROLE_BALL, BW_BOLD, text, box, y, words);
    put_men(film, moment, box, y + 6, ink);
    const double tall = bw_draw_key_rows(NULL, film->keys, 0, 0, box.width);
    bw_draw_key_rows(ink, film->keys, box.x, box.y + box.height - tall, box.width);
}

void bw_lesson_title(const bw_lesson_film *film, bw_box box, bw_ink *ink) {
    char words[160];
    double y = box.y + 24;
    y = line(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, head, box, y,
             film->scheme->team[0] ? film->scheme->team : film->scheme->name);
    y += bw_paragraph(ink, BW_ROLE_TEXT, BW_BOLD, big_head, big_head + 5, box.x, y + 8, box.width,
                      film->lesson->name) +
         16;
    bw_text t = bw_text_in(words, sizeof words);
    say_stage(film, &t);
    y = line(ink, BW_ROLE_TEXT, BW_REGULAR, text, box, y, words);
    t = bw_text_in(words, sizeof words);
    bw_put_int(&t, film->walk.count);
    bw_put(&t, film->walk.count == 1 ? " stop, " : " stops, ");
    bw_put_fixed(&t, bw_walk_seconds(&film->walk), 0);
    bw_put(&t, " seconds at true speed.");
    y = line(ink, BW_ROLE_TEXT, BW_REGULAR, text, box, y, words);
    t = bw_text_in(words, sizeof words);
    bw_put(&t, "Legs, reactions and passes: ");
    bw_put(&t, bw_level_at(film->scheme->level)->name);
    bw_put_char(&t, '.');
    line(ink, BW_ROLE_TEXT, BW_REGULAR, text, box, y, words);
}

/// The man who is last at a stop, when the ball has just come.
typedef struct lag {
    int stop, spot;
    double late;
} lag;

static lag last_at(const bw_walk *walk, int stop) {
    bw_walk_moment moment;
    lag worst = {stop, 0, 0};
    bw_walk_at(walk, walk->stops[stop].come * BW_FOLLOW_STEP, &moment);
    for (int s = 0; s < walk->spots && moment.stop == stop; s++) {
        if (bw_walker_late(&moment.men[s]) && moment.men[s].late > worst.late)
            worst = (lag){stop, s, moment.men[s].late};
    }
    return worst;
}

/// The stops with the latest men, the latest first; returns how many there are.
static int worst_of(const bw_walk *walk, lag list[WORST]) {
    int count = 0;
    for (int i = 1; i < walk->count; i++) {
        lag here = last_at(walk, i);
        if (here.late == 0) continue;
        for (int k = 0; k < count; k++) {
            if (here.late <= list[k].late) continue;
            const lag other = list[k];
            list[k] = here;
            here = other;
        }
        if (count < WORST) list[count++] = here;
    }
    return count;
}

void bw_lesson_end(const bw_lesson_film *film, bw_box box, bw_ink *ink) {
    lag list[WORST];
    const int count = worst_of(&film->walk, list);
    double y = line(ink, BW_ROLE_TEXT, BW_BOLD, head, box, box.y + 24,
                    count > 0 ? "Who is last to be there" : "Everyone is there with the ball") +
               6;
    for (int i = 0; i < count; i++) {
        const bw_walk_stop *stop = &film->walk.stops[list[i].stop];
        char words[160];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put(&t, "Stop ");
        bw_put_int(&t, list[i].stop + 1);
        bw_put(&t, ", ball ");
        bw_say_at(film->scheme, stop->ball, &t);
        y = line(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, text, box, y, words);
        t = bw_text_in(words, sizeof words);
        bw_put(&t, stage_of(film)->spots[list[i].spot].id);
        bw_put(&t, ": ");
        bw_put_fixed(&t, list[i].late, 1);
        bw_put(&t, " s after the ball");
        y = line(ink, BW_ROLE_ACCENT, BW_BOLD, text, box, y, words) + 6;
    }
}
