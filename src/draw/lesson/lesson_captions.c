/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The captions as WebVTT: times as hours, minutes, seconds and thousandths; in a cue's text the signs
/// & < > are written by name.
#include "draw/lesson/lesson_film.h"

static void put_two(bw_text *out, int n) {
    bw_put_char(out, (char)('0' + n / 10 % 10));
    bw_put_char(out, (char)('0' + n % 10));
}

static void put_time(bw_text *out, double seconds) {
    const int thousandths = (int)bw_floor(seconds * 1000 + 0.5), whole = thousandths / 1000;
    put_two(out, whole / 3600);
    bw_put_char(out, ':');
    put_two(out, whole / 60 % 60);
    bw_put_char(out, ':');
    put_two(out, whole % 60);
    bw_put_char(out, '.');
    bw_put_char(out, (char)('0' + thousandths / 100 % 10));
    put_two(out, thousandths % 100);
}

static void put_escaped(bw_text *out, const char *words) {
    for (; *words; words++) {
        if (*words == '&')
            bw_put(out, "&amp;");
        else if (*words == '<')
            bw_put(out, "&lt;");
        else if (*words == '>')
            bw_put(out, "&gt;");
        else
            bw_put_char(out, *words);
    }
}

void bw_lesson_film_captions(const bw_lesson_film *film, bw_text *out) {
    bw_put(out, "WEBVTT\n");
    for (int i = 0; i < film->walk.count; i++) {
        const bw_walk_stop *stop = &film->walk.stops[i];
        if (stop->gone == stop->left) continue;
        char room[BW_FILM_CAPTION];
        bw_text words = bw_text_in(room, sizeof room);
        bw_lesson_caption(film, i, &words);
        bw_put_char(out, '\n');
        bw_put_int(out, i + 1);
        bw_put_char(out, '\n');
        put_time(out, BW_FILM_TITLE + stop->left * BW_FOLLOW_STEP);
        bw_put(out, " --> ");
        put_time(out, BW_FILM_TITLE + stop->gone * BW_FOLLOW_STEP);
        bw_put_char(out, '\n');
        put_escaped(out, room);
        bw_put_char(out, '\n');
    }
}
