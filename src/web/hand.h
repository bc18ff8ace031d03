/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The hand-out's program: one scheme, the spot a player picked in each stage, a rotation running, a quiz
/// under way. The page only passes on taps and shows what comes back; every place, word and mark is made
/// here. One block of memory, no allocation; the caller owns it.
#ifndef BW_WEB_HAND_H
#define BW_WEB_HAND_H

#include "core/quiz_code.h"
#include "core/recall.h"
#include "core/tolerance.h"
#include "core/walk.h"
#include "draw/view.h"
#include "scheme/error.h"
#include "scheme/tree.h"

enum {
    BW_HAND_QUESTIONS = 8, ///< of one quiz
    BW_HAND_OPTIONS = 8,   ///< most words to choose between
    BW_HAND_OUTPUT = 32 * 1024
};

typedef enum bw_ask_kind {
    BW_ASK_WHERE, ///< a place on the field
    BW_ASK_DUTY,  ///< what he does there: one of the duties
    BW_ASK_STAGE, ///< which word calls the stage
    BW_ASK_CALL   ///< which word he calls in his place
} bw_ask_kind;

typedef struct bw_hand_ask {
    bw_ask_kind kind;
    int stage, spot;
    int landmark; ///< -1 for the calls
} bw_hand_ask;

typedef struct bw_hand {
    bool open, ready; ///< a scheme is there; its tolerances are made
    bw_scheme scheme, reading;
    bw_view chart;
    bw_tolerances model;
    bw_walk walk;
    bool walking;
    int spot[BW_MAX_STAGES]; ///< the player's own, or -1
    /// Of a rotation to this landmark, as bw_card has it, by stage, landmark and spot.
    double weakness[BW_MAX_STAGES][BW_MAX_LANDMARKS][BW_MAX_SPOTS];

    int count; ///< cards
    bw_hand_ask ask[BW_MAX_CARDS];
    bw_card card[BW_MAX_CARDS];

    int day; ///< of the quiz under way
    int asked, right, now;
    int order[BW_HAND_QUESTIONS]; ///< cards
    bool answered;                ///< the question shown
    bw_tally tally;
    int option_count, option_right;
    const char *option[BW_HAND_OPTIONS];
    char duty_order[BW_DUTY_COUNT][BW_NAME_SIZE]; ///< what duties are called where they are options

    bw_error error;
    bw_tree tree;
    char input[BW_DOCUMENT_BYTES];
    char output[BW_HAND_OUTPUT];
    char key[64];
} bw_hand;

/// Takes over the document fed into hand->tree; forgets spots and quiz.
bw_status bw_hand_take(bw_hand *hand);

/// Picks the spot of a stage, -1 for none, and makes the cards anew: all unasked.
void bw_hand_pick(bw_hand *hand, int stage, int spot);

/// Tells how weak a rotation to a landmark is for a spot, 0 to 1; for the cards made afterwards.
void bw_hand_weak(bw_hand *hand, int stage, int landmark, int spot, double weakness);

/// A card's name in what the page keeps: "4.LL.gr.where".
const char *bw_hand_key(bw_hand *hand, int card);

/// Puts back what was kept of a card; nonsense is left out.
void bw_hand_put_card(bw_hand *hand, int card, double ease, int streak, int interval, int due,
                      int answers);

/// Begins a quiz on a day; returns how many questions it has, at most BW_HAND_QUESTIONS.
int bw_hand_quiz(bw_hand *hand, int day, uint64_t seed);

/// Shows question `number` from 0: bw_hand.now, and its options.
void bw_hand_show(bw_hand *hand, int number);

/// Answers the question shown with a place, m; `finger` is half a finger's width, m. Once only.
bw_mark_given bw_hand_answer_place(bw_hand *hand, bw_vec at, double finger);

/// Answers it with an option. True when it is the right one.
bool bw_hand_answer_option(bw_hand *hand, int option);

/// The card of the question shown and where everyone belongs in it.
const bw_hand_ask *bw_hand_asked(const bw_hand *hand);
void bw_hand_stations(const bw_hand *hand, int stage, bw_vec ball, bw_station *out);

/// The ball going from one landmark to another, met by the unit: makes hand->walk ready.
bool bw_hand_rotation(bw_hand *hand, int stage, int from, int to);

#endif
