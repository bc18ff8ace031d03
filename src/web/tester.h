/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Test mode's whole state: a break asked for, the scheme it is asked of and another to compare with,
/// and the answer as a film. In a worker a trial is run in pieces; the page takes its result over as
/// bytes, for both run the same module, and draws and words it. One block of memory, no allocation.
#ifndef BW_WEB_TESTER_H
#define BW_WEB_TESTER_H

#include "core/replay.h"
#include "draw/playback.h"
#include "scheme/error.h"
#include "scheme/tree.h"
#include "trial/trial.h"

enum {
    BW_TESTER_SIDES = 2,         ///< A, the scheme on the board, and B, what it is compared with
    BW_TESTER_WORK = 384 * 1024, ///< bytes; at least bw_trial_size()
    BW_TESTER_SAYING = 2048      ///< bytes of one text
};

/// A scheme under test with what came of it.
typedef struct bw_tester_side {
    bool open;   ///< a scheme is there
    bool built;  ///< the ground is that of scheme and level
    bool tested; ///< trial holds results
    int level;   ///< index of a level; -1: the scheme's own
    bw_scheme scheme;
    bw_ground ground;
    bw_trial trial;
} bw_tester_side;

typedef struct bw_tester {
    bw_break_def def;
    bw_effort effort;
    bw_tester_side side[BW_TESTER_SIDES];
    int running; ///< side whose trial is under way, -1: none
    bw_trial_progress progress;
    int film_side;   ///< side whose answer is filmed, -1: none
    int film_number; ///< -1: the answer; else the weak rotation with this number
    bw_answer film;
    int lines; ///< bw_lines of the pictures
    int frame_count;
    bw_frame frames[BW_MAX_FRAMES];
    bw_error error; ///< of the last refusal
    char saying[BW_TESTER_SAYING];
    double work[BW_TESTER_WORK / sizeof(double)];
} bw_tester;

/// Nothing open, the usual thoroughness.
void bw_tester_reset(bw_tester *t);

/// Takes over the document fed into `tree` as a side's scheme; its results are forgotten. On a refusal
/// t->error says why and the side is empty.
bw_status bw_tester_take(bw_tester *t, int side, bw_tree *tree);

/// Forgets a side's results.
void bw_tester_forget(bw_tester *t, int side);

/// Another level for a side, -1 the scheme's own.
void bw_tester_level(bw_tester *t, int side, int level);

/// Asks for the break everybody asks about first, of side A's scheme.
void bw_tester_usual(bw_tester *t);

/// Other numbers, with the same set and start and the scheme's late men for them.
void bw_tester_numbers(bw_tester *t, int offence, int defence);

/// The attack set (the built-in ones, then the scheme's own) and the landmark the ball starts at.
void bw_tester_set(bw_tester *t, int set);
void bw_tester_start(bw_tester *t, int landmark);

/// So many late men, 0 to BW_MAX_LATE: each from where the scheme or the last break has him, a new one
/// from 30 yd. Then one's distance, m.
void bw_tester_late(bw_tester *t, int count);
void bw_tester_late_from(bw_tester *t, int index, double metres);

/// The answer for 1 to 10 seconds, from a seed; quick: as each break of the standard set is run.
void bw_tester_effort(bw_tester *t, int seconds, bool quick, int seed);

/// Begins a side's trial; then each step makes a piece of it, until t->progress.part is BW_TRIAL_DONE.
/// A refusal is in t->error. Works in t->work.
bw_status bw_tester_begin(bw_tester *t, int side);
bw_status bw_tester_step(bw_tester *t);

/// After a finished trial's bytes have been put into side's trial: makes it this tester's own. The
/// side's scheme, level and break must be those the trial was run with.
bw_status bw_tester_adopt(bw_tester *t, int side);

/// Makes the film of a side's answer (-1) or of its weak rotation `number`. BW_NOT_FOUND: there is none.
bw_status bw_tester_film(bw_tester *t, int side, int number);

/// The film as a sequence; count 0 when there is none.
bw_sequence bw_tester_sequence(const bw_tester *t);

/// Pictures, each into `memory` as a page of ink no larger than asked for: the curves; the film
/// `at_s` seconds into the break, or all of it when at_s < 0; the film's key.
void bw_tester_draw_curve(const bw_tester *t, double width, double height, void *memory,
                          size_t size);
void bw_tester_draw_film(const bw_tester *t, double at_s, double width, double height, void *memory,
                         size_t size);
void bw_tester_draw_key(const bw_tester *t, double width, void *memory, size_t size);

#endif
