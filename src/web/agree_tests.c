/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/agree_tests.h"

#include "core/hash.h"
#include "core/level.h"
#include "core/random.h"
#include "scheme/fresh.h"
#include "web/export.h"
#include "web/tester_say.h"

static bw_tester alone;
static double page[BW_INK_PAGE_BYTES / sizeof(double)];

static int below(bw_random *r, int n) {
    return (int)(bw_random_next(r) % (uint64_t)n);
}

static uint64_t hash_bytes(uint64_t hash, const char *bytes, size_t count) {
    for (size_t i = 0; i < count; i++)
        hash = bw_hash_u64(hash, (unsigned char)bytes[i]);
    return hash;
}

static uint64_t hash_ink(uint64_t hash, const bw_ink *ink) {
    hash = bw_hash_double(bw_hash_double(hash, ink->width), ink->height);
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        hash = bw_hash_u64(hash, (uint64_t)item->kind << 32 | (uint64_t)item->role);
        for (int n = 0; n < item->numbers; n++)
            hash = bw_hash_double(hash, bw_ink_numbers(item)[n]);
        hash = hash_bytes(hash, bw_ink_string(item), (size_t)item->text);
    }
    return hash;
}

/// All texts and figures there are; each list up to its end.
static uint64_t hash_sayings(uint64_t hash, bw_tester *t) {
    for (int i = 0; i < BW_TESTER_SIDES * BW_TEST_WORD_COUNT; i++) {
        for (int index = 0; index < 12; index++) {
            bw_text out = bw_text_in(t->saying, sizeof t->saying);
            bw_tester_say(t, (bw_test_word)(i / 2), i % 2, index, &out);
            hash = hash_bytes(hash, t->saying, out.used);
        }
    }
    for (int i = 0; i < BW_TESTER_SIDES * BW_TEST_FIGURE_COUNT; i++) {
        for (int index = 0; index < 12; index++) {
            const double figure = bw_tester_figure(t, (bw_test_figure)(i / 2), i % 2, index);
            // What is not a number has no one bit pattern.
            hash = figure - figure == 0 ? bw_hash_double(hash, figure) : bw_hash_u64(hash, 1);
        }
    }
    return hash;
}

static void ask(bw_tester *t, bw_random *r) {
    const int defence = 3 + below(r, 3), offence = defence + below(r, 7 - defence);
    bw_tester_usual(t);
    bw_tester_set(t, below(r, 6));
    bw_tester_start(t, below(r, t->side[0].scheme.landmark_count));
    bw_tester_numbers(t, offence, defence);
    bw_tester_late(t, below(r, 3));
    for (int i = 0; i < t->def.late_count; i++)
        bw_tester_late_from(t, i, 5 + 30 * bw_random_unit(r));
    const int seconds = 1 + below(r, 4), seed = 1 + below(r, 999);
    bw_tester_effort(t, seconds, true, seed);
    t->effort.curve.search.depth = 2;
    t->effort.curve.typical.rollouts = 6;
    bw_tester_level(t, 1, below(r, bw_level_count()));
}

static uint64_t run(bw_tester *t, int side, uint64_t hash) {
    if (bw_tester_begin(t, side) != BW_OK)
        return hash_bytes(hash, t->error.message, bw_text_length(t->error.message));
    do {
        if (bw_tester_step(t) != BW_OK) return hash;
        hash = bw_hash_u64(hash, (uint64_t)t->progress.part << 32 | (uint64_t)t->progress.done);
    } while (t->progress.part != BW_TRIAL_DONE);
    return hash;
}

static uint64_t look(bw_tester *t, bw_random *r, uint64_t hash, void *memory, size_t size) {
    const double width = 300 + 400 * bw_random_unit(r);
    bw_tester_draw_curve(t, width, 250, memory, size);
    hash = hash_ink(hash, memory);
    for (int number = -1; number < 2; number++) {
        if (bw_tester_film(t, number & 1, number) != BW_OK) continue;
        const double at = -1 + 6 * bw_random_unit(r);
        bw_tester_draw_film(t, at, width, 400, memory, size);
        hash = hash_ink(hash, memory);
        bw_text out = bw_text_in(t->saying, sizeof t->saying);
        bw_tester_say_moment(t, at, &out);
        bw_tester_say_late(t, at, &out);
        hash = hash_bytes(hash, t->saying, out.used);
    }
    return hash;
}

uint64_t bw_agree_tests(bw_tester *t, uint32_t seed, int trials, void *memory, size_t size) {
    uint64_t hash = BW_HASH_START;
    bw_random r = {seed};
    bw_tester_reset(t);
    for (int i = 0; i < trials; i++) {
        for (int side = 0; side < BW_TESTER_SIDES; side++) {
            bw_tester_forget(t, side);
            bw_scheme_fresh(0, below(&r, 5), &t->side[side].scheme);
            t->side[side].open = true;
            t->side[side].built = false;
        }
        ask(t, &r);
        for (int side = 0; side < BW_TESTER_SIDES; side++)
            hash = run(t, side, hash);
        hash = hash_sayings(hash, t);
        hash = look(t, &r, hash, memory, size);
    }
    return hash;
}

BW_EXPORT(bw_agree_tests_alone)
uint64_t bw_agree_tests_alone(int seed, int trials) {
    return bw_agree_tests(&alone, (uint32_t)seed, trials, page, sizeof page);
}
