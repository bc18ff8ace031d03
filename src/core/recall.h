/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a quiz asks next, and what an answer is worth. A card is one thing to know: where to stand, what to do
/// or what to call for one place of the ball. When it comes back follows SM-2 (P. A. Wozniak, "Optimization
/// of Learning", Poznan 1990, 3.2), in this reading: the interval grows by the ease it had before the
/// answer, fractions of a day are rounded up, and a lapse starts again at one day without changing the
/// ease. Chosen over algorithms with fitted weights because those are fitted to vocabulary and need
/// hundreds of answers of each person; all of them are a default here, not evidence.
///
/// The weakest rotations come first, and more often: their cards begin with less ease.
#ifndef BW_CORE_RECALL_H
#define BW_CORE_RECALL_H

#include "core/scheme.h"
#include "core/shape.h"

enum { BW_MAX_CARDS = 320 };

/// One thing to know and how well it is known.
typedef struct bw_card {
    double
        weakness; ///< 0 to 1: the model's cost of this rotation as a share of the costliest one's
    double ease;  ///< by which the interval grows, at least 1.3
    int streak;   ///< good answers in a row
    int interval; ///< days
    int due;      ///< day number from which it is asked again; 0: never asked
    int answers;  ///< in all
} bw_card;

/// A card never asked: ease 2.5 without weakness, 1.3 with all of it.
bw_card bw_card_new(double weakness);

/// Takes an answer of quality 0 (nothing) to 5 (perfect) on a day (any count of days, rising).
void bw_card_answer(bw_card *card, int quality, int day);

/// The quality of an answer that got `marks` of 1: 5 for all of them, 3 from half of them on.
int bw_recall_quality(double marks);

/// The cards to ask on a day, into out[most]: those due or new first, the weakest before the others,
/// then by ease; cards alike in the seed's order; when they run out, those next due. Returns how many,
/// each at most once. O(count * most).
int bw_recall_pick(const bw_card *cards, int count, int day, uint64_t seed, int most, int *out);

typedef enum bw_verdict {
    BW_VERDICT_RIGHT, ///< within the tolerance
    BW_VERDICT_SWAP,  ///< in a team-mate's place with whom he may swap: right too
    BW_VERDICT_NEAR,  ///< some marks
    BW_VERDICT_OFF    ///< none
} bw_verdict;

/// A question "where do you stand?" with all it takes to judge an answer.
typedef struct bw_where_asked {
    int count, spot;                  ///< men, and he
    bw_station station[BW_MAX_SPOTS]; ///< where they belong
    bw_vec home[BW_MAX_SPOTS];        ///< where they come from
    double tolerance[BW_MAX_SPOTS];   ///< m, > 0, in the direction of the answer (core/tolerance.h)
    double finger;                    ///< half a finger's width at the scale of the screen, m
} bw_where_asked;

typedef struct bw_mark_given {
    bw_verdict verdict;
    double marks; ///< 0 to 1
    bw_vec error; ///< answer minus place, m: kept as x and y; in a swap, of the team-mate's place
    double distance;  ///< its length, m
    double tolerance; ///< m, within which he had all marks; never below the finger
    int mate;         ///< with whom he swapped, or -1
} bw_mark_given;

/// Full marks within the tolerance, falling smoothly to none at twice that.
double bw_recall_marks(double distance, double tolerance);

/// Whether two men may take each other's place: neither way of sharing the two runs out has a longer
/// longest run than the one ordered, give or take a yard.
bool bw_recall_may_swap(const bw_where_asked *asked, int a, int b);

/// What an answer is worth. The place alone counts: finger, keys and names score the same.
bw_mark_given bw_recall_score(const bw_where_asked *asked, bw_vec answer);

/// Errors over tries, as x and y.
typedef struct bw_tally {
    int tries;
    bw_vec sum;     ///< m
    double squares; ///< of lengths, m2
} bw_tally;

void bw_tally_add(bw_tally *tally, bw_vec error);

/// The mean error, m: where he stands beside his places. Zero without a try.
bw_vec bw_tally_bias(const bw_tally *tally);

/// How far his answers lie around that mean: root of the mean square distance, m.
double bw_tally_spread(const bw_tally *tally);

#endif
