/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sets of fonts opened, closed and opened again, alone and on many threads: the letters painted are
/// always the same, in the face that was asked for.
#include "harness.h"
#include "paint/paint.h"

#include <fcntl.h>
#include <pthread.h>
#include <stdlib.h>
#include <unistd.h>

enum { WIDE = 180, TALL = 60, PIXELS = WIDE * TALL, MOST_THREADS = 16, SETS = 12 };

typedef uint32_t picture[PIXELS];

/// What every set has to paint: a line of each face.
static picture wanted;

/// Opens a set, paints the two lines with it and closes it. False when a step failed.
static bool paint_with_a_set(picture out) {
    static const char *const line = "Ball to the low man";
    double memory[512];
    char words[200];
    bw_text why = bw_text_in(words, sizeof words);
    bw_fonts *fonts = bw_fonts_open(&why);
    if (!fonts) return false;
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, WIDE, TALL);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 14, BW_LEFT_ALIGN, 4, 22, line);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 14, BW_LEFT_ALIGN, 4, 48, line);
    memset(out, 0xff, sizeof(picture));
    const bw_status status =
        bw_paint_pixels(ink, fonts, bw_theme_at(BW_THEME_CHART), WIDE, TALL, out, &why);
    bw_fonts_close(fonts);
    return status == BW_OK;
}

static bool same(const picture a, const picture b) {
    return memcmp(a, b, sizeof(picture)) == 0;
}

/// A file opened between two sets moves the numbers of the second's descriptors.
static void a_set_opened_later_has_its_own_faces(void) {
    int between[5];
    for (int i = 0; i < 5; i++) {
        picture again;
        between[i] = open("/dev/null", O_RDONLY);
        CHECK(paint_with_a_set(again));
        CHECK(same(again, wanted));
    }
    for (int i = 0; i < 5; i++)
        close(between[i]);
}

typedef struct worker {
    pthread_t thread;
    pthread_barrier_t *start; ///< so that all open their first sets together
    int failed, different;
} worker;

static void *work(void *self) {
    worker *w = self;
    pthread_barrier_wait(w->start);
    for (int i = 0; i < SETS; i++) {
        picture mine;
        if (!paint_with_a_set(mine))
            w->failed++;
        else if (!same(mine, wanted))
            w->different++;
    }
    return NULL;
}

static void threads_paint_the_same_letters(void) {
    for (int threads = 2; threads <= MOST_THREADS; threads++) {
        worker workers[MOST_THREADS];
        pthread_barrier_t start;
        pthread_barrier_init(&start, NULL, (unsigned)threads);
        for (int i = 0; i < threads; i++) {
            workers[i] = (worker){.start = &start};
            CHECK_INT(pthread_create(&workers[i].thread, NULL, work, &workers[i]), 0);
        }
        for (int i = 0; i < threads; i++) {
            pthread_join(workers[i].thread, NULL);
            CHECK_INT(workers[i].failed, 0);
            CHECK_INT(workers[i].different, 0);
        }
        pthread_barrier_destroy(&start);
    }
}

int main(int argc, char **argv) {
    CHECK(paint_with_a_set(wanted));
    RUN(a_set_opened_later_has_its_own_faces);
    RUN(threads_paint_the_same_letters);
    return test_report(argc, argv);
}
