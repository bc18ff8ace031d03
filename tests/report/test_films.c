/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons as films on any number of threads, their captions, and what their pictures hold.
#include "harness.h"
#include "report/films.h"
#include "tests/draw/pages.h"

#include <unistd.h>

static bw_scheme terns;
static char folder[200];
static char paths[BW_MAX_LESSONS][2][300];

static size_t read_all(const char *path, char *data, size_t room) {
    FILE *file = fopen(path, "rb");
    const size_t size = file ? fread(data, 1, room, file) : 0;
    if (file) fclose(file);
    return size;
}

enum { ROOM = 1 << 21 };

/// The lessons as small films on so many threads, as "THREADS-NUMBER" in the folder.
static bw_status film_all(int threads, const bw_lesson *const *lessons, int count,
                          bw_lesson_job *jobs) {
    bw_films films = {.scheme = &terns,
                      .jobs = jobs,
                      .count = count,
                      .width = 160,
                      .theme = bw_theme_at(BW_THEME_CHART),
                      .threads = threads};
    for (int i = 0; i < count; i++) {
        snprintf(paths[i][0], sizeof paths[i][0], "%s/%d-%d.webm", folder, threads, i);
        snprintf(paths[i][1], sizeof paths[i][1], "%s/%d-%d.vtt", folder, threads, i);
        jobs[i] = (bw_lesson_job){.lesson = lessons[i], .captions = paths[i][1]};
        jobs[i].paths[BW_FILM_WEBM] = paths[i][0];
    }
    return bw_films_make(&films);
}

/// The film that the last film_all made of a job, taken from the folder; its length.
static size_t take_film(int job, char *data) {
    const size_t length = read_all(paths[job][0], data, ROOM);
    CHECK(length > 1000 && length < ROOM);
    CHECK_INT(unlink(paths[job][0]), 0);
    CHECK_INT(unlink(paths[job][1]), 0);
    return length;
}

static void threads_change_nothing(void) {
    static char one[BW_MAX_LESSONS][ROOM], three[ROOM];
    const bw_lesson *lessons[BW_MAX_LESSONS];
    bw_lesson_job jobs[BW_MAX_LESSONS];
    size_t length[BW_MAX_LESSONS];
    const int count = terns.lesson_count;
    for (int i = 0; i < count; i++)
        lessons[i] = &terns.lessons[i];
    CHECK_INT(film_all(1, lessons, count, jobs), BW_OK);
    for (int i = 0; i < count; i++) {
        CHECK_INT(jobs[i].status, BW_OK);
        length[i] = take_film(i, one[i]);
    }
    CHECK_INT(film_all(3, lessons, count, jobs), BW_OK);
    for (int i = 0; i < count; i++) {
        CHECK_INT(take_film(i, three), length[i]);
        CHECK(memcmp(one[i], three, length[i]) == 0);
    }
}

/// One short film, as many times over as there are threads: they open fonts, paint and end together.
static void no_number_of_threads_changes_anything(void) {
    static char one[ROOM], other[ROOM];
    static bw_lesson brief;
    const bw_lesson *lessons[BW_MAX_LESSONS];
    bw_lesson_job jobs[BW_MAX_LESSONS];
    brief = terns.lessons[0];
    brief.stop_count = 2;
    for (int i = 0; i < BW_MAX_LESSONS; i++)
        lessons[i] = &brief;
    CHECK_INT(film_all(1, lessons, 1, jobs), BW_OK);
    const size_t length = take_film(0, one);
    for (int threads = 2; threads <= BW_MAX_LESSONS; threads += threads + 1) {
        CHECK_INT(film_all(threads, lessons, threads, jobs), BW_OK);
        for (int i = 0; i < threads; i++) {
            CHECK_INT(take_film(i, other), length);
            CHECK(memcmp(one, other, length) == 0);
        }
    }
}

static void cancelled_films_are_not_there(void) {
    bw_lesson_job job = {.lesson = &terns.lessons[0]};
    atomic_bool cancel = true;
    snprintf(paths[0][0], sizeof paths[0][0], "%s/c.mp4", folder);
    job.paths[BW_FILM_MP4] = paths[0][0];
    bw_films films = {.scheme = &terns,
                      .jobs = &job,
                      .count = 1,
                      .width = 160,
                      .theme = bw_theme_at(BW_THEME_CHART),
                      .watch = {NULL, NULL, &cancel}};
    CHECK_INT(bw_films_make(&films), BW_LIMIT);
    CHECK(access(paths[0][0], F_OK) != 0);
}

/// Cues follow each other without a gap from the title card to the end card, and a stop's own words
/// stand in its own cue, with the signs of markup written by name.
static void captions_follow_the_lesson(void) {
    static bw_lesson_film film;
    static char text[BW_FILM_CAPTIONS];
    bw_lesson *lesson = &terns.lessons[1];
    bw_copy(lesson->stops[2].caption, sizeof lesson->stops[2].caption, "2 < 3 & \"go\" --> now");
    bw_lesson_film_build(&terns, lesson, &film);
    bw_text out = bw_text_in(text, sizeof text);
    bw_lesson_film_captions(&film, &out);
    CHECK(strncmp(text, "WEBVTT\n\n1\n00:00:02.500 --> ", 27) == 0);
    CHECK(strstr(text, "\n2 &lt; 3 &amp; \"go\" --&gt; now\n") != NULL);
    double last = BW_FILM_TITLE;
    int cues = 0;
    for (const char *at = text; (at = strstr(at, " --> ")); at += 5) {
        int h[2], m[2];
        double s[2];
        CHECK_INT(
            sscanf(at - 12, "%d:%d:%lf --> %d:%d:%lf", &h[0], &m[0], &s[0], &h[1], &m[1], &s[1]),
            6);
        CHECK_NEAR(h[0] * 3600 + m[0] * 60 + s[0], last, 0.0011);
        last = h[1] * 3600 + m[1] * 60 + s[1];
        cues++;
    }
    CHECK_INT(cues, lesson->stop_count);
    CHECK_NEAR(last, bw_lesson_film_seconds(&film) - BW_FILM_END, 0.0011);
}

/// Every picture fits its memory, stays inside its edges, and stands still when nobody moves.
static void pictures_stay_inside(void) {
    static bw_lesson_film film;
    static double memory[2][BW_INK_PAGE_BYTES / sizeof(double)];
    for (int l = 0; l < terns.lesson_count; l++) {
        bw_lesson_film_build(&terns, &terns.lessons[l], &film);
        for (double t = 0; t < bw_lesson_film_seconds(&film); t += 0.31) {
            bw_ink *ink = bw_ink_in(memory[0], sizeof memory[0]);
            CHECK_INT(bw_lesson_film_page(&film, t, ink), BW_OK);
            CHECK_INT(ink->open, 0);
            for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
                if (i->kind != BW_INK_TEXT) continue;
                const bw_box box = text_box(i);
                CHECK(box.x >= 2 && box.x + box.width <= BW_FILM_WIDE - 2);
                CHECK(box.y >= 2 && box.y + box.height <= BW_FILM_TALL - 2);
                CHECK(i->size >= 9); // 19 pixels of 720
            }
        }
        bw_ink *title = bw_ink_in(memory[0], sizeof memory[0]);
        bw_ink *later = bw_ink_in(memory[1], sizeof memory[1]);
        bw_lesson_film_page(&film, 0.2, title);
        bw_lesson_film_page(&film, 1.9, later);
        CHECK_INT(title->used, later->used);
        CHECK(memcmp(title, later, (size_t)title->used) == 0);
    }
}

int main(int argc, char **argv) {
    snprintf(folder, sizeof folder, "/tmp/bw-films-XXXXXX");
    CHECK(mkdtemp(folder) != NULL);
    if (load_terns(&terns)) {
        for (int l = 0; l < terns.lesson_count; l++) {
            for (int i = 0; i < terns.lessons[l].stop_count; i++)
                terns.lessons[l].stops[i].pause = 0.4;
        }
        RUN(threads_change_nothing);
        RUN(no_number_of_threads_changes_anything);
        RUN(cancelled_films_are_not_there);
        RUN(captions_follow_the_lesson);
        RUN(pictures_stay_inside);
    }
    rmdir(folder);
    return test_report(argc, argv);
}
