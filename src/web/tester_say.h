/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What test mode says and the figures it shows, asked for one by one.
#ifndef BW_WEB_TESTER_SAY_H
#define BW_WEB_TESTER_SAY_H

#include "core/text.h"
#include "web/tester.h"

/// Texts of a side's trial; "" where there is none. Those with an index end with "".
typedef enum bw_test_word {
    BW_TEST_WORD_SITUATION, ///< "6 against 4, attack set 2-2-2, ..."
    BW_TEST_WORD_LATE_MEN,  ///< where they come from
    BW_TEST_WORD_WORTH,     ///< sentences.h, in the report's order
    BW_TEST_WORD_BOUGHT,
    BW_TEST_WORD_PLATEAU,
    BW_TEST_WORD_MISSING,
    BW_TEST_WORD_ANSWER,
    BW_TEST_WORD_FAULTS,
    BW_TEST_WORD_LIMIT,    ///< paragraph by index
    BW_TEST_WORD_STEP,     ///< "2 passes to 4 at left wing, completed 94 in 100. LL is 0.4 s late."
    BW_TEST_WORD_ROTATION, ///< "Top centre to left wing", by index
    BW_TEST_WORD_COST,     ///< what it costs
    BW_TEST_WORD_BEHIND,   ///< who is late in it
    BW_TEST_WORD_RANGE, ///< "26 to 30": typical at second `index`, two standard errors either side
    BW_TEST_WORD_PROGRESS, ///< "Best play: 4 of 10 seconds of the curve"; the running side's
    BW_TEST_WORD_COMPARE,  ///< A and B, by index: within the answer's seconds, plateau, best
    BW_TEST_WORD_LATE_MAN, ///< "first midfielder", of side's scheme by index
    BW_TEST_WORD_OWNER,    ///< scheme and team
    BW_TEST_WORD_LEVEL,    ///< name of the level of a side
    BW_TEST_WORD_LEVELS,   ///< names of all levels by index
    BW_TEST_WORD_FILM,     ///< what the film shows
    BW_TEST_WORD_REFUSAL,  ///< the last one, with its place in the document
    BW_TEST_WORD_COUNT
} bw_test_word;

/// Figures of a side's trial: worths and chances of a goal in one break, seconds; not a number where
/// there is none.
typedef enum bw_test_figure {
    BW_TEST_BEST, ///< by whole second
    BW_TEST_TYPICAL,
    BW_TEST_ERROR,
    BW_TEST_SETTLED,
    BW_TEST_LATE_S, ///< by late man; -1: not within 10 s
    BW_TEST_EVEN_S,
    BW_TEST_PLATEAU,
    BW_TEST_BOUGHT_S,
    BW_TEST_HOLDS, ///< 1: the time bought never runs out
    BW_TEST_MISSING_S,
    BW_TEST_ANSWER_S,
    BW_TEST_ANSWER_WORTH,
    BW_TEST_ROLLOUTS,
    BW_TEST_STEP_KIND, ///< bw_kind, by step of the answer
    BW_TEST_STEP_WHO,  ///< from 0
    BW_TEST_STEP_AT,
    BW_TEST_STEP_END,
    BW_TEST_STEP_CHANCE,
    BW_TEST_WEAK_COST, ///< by weak rotation
    BW_TEST_WEAK_USE,
    BW_TEST_WEAK_CHANCE,
    BW_TEST_WEAK_MOVING,
    BW_TEST_WEAK_SET,
    BW_TEST_FILM_AT,   ///< first and last second of the film
    BW_TEST_FILM_STEP, ///< the second at which step `index` of the film begins; then the film's end
    BW_TEST_ASK_OFFENCE, ///< of the break asked for
    BW_TEST_ASK_DEFENCE,
    BW_TEST_ASK_SET,   ///< index
    BW_TEST_ASK_START, ///< landmark
    BW_TEST_ASK_LATE,  ///< distance of late man `index`, shown units
    BW_TEST_PART,      ///< bw_trial_part of the running trial
    BW_TEST_PART_DONE, ///< of its pieces
    BW_TEST_PART_OF,
    BW_TEST_FIGURE_COUNT
} bw_test_figure;

void bw_tester_say(const bw_tester *t, bw_test_word word, int side, int index, bw_text *out);
double bw_tester_figure(const bw_tester *t, bw_test_figure figure, int side, int index);

/// "2.4 of 6.0 seconds, 2 passes to 4 at left wing": the film at a time.
void bw_tester_say_moment(const bw_tester *t, double at_s, bw_text *out);

/// "Late: LL 0.4 s, TR 0.2 s." or "Nobody is late." at that time; men still on their way are named too.
void bw_tester_say_late(const bw_tester *t, double at_s, bw_text *out);

#endif
