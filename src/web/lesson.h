/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons on the board: built by putting the ball where it goes, played as the film plays them
/// (core/walk.h), and called out on the field. The lessons themselves are the scheme's; what is kept
/// here is which one is chosen, where in it we are, and the words about it.
///
/// A function that edits returns true when the scheme was changed, which the page then commits like
/// every edit; else view.refused says in one sentence why not.
#ifndef BW_WEB_LESSON_H
#define BW_WEB_LESSON_H

#include "core/random.h"
#include "core/walk.h"
#include "web/board.h"

/// One stop in words.
typedef struct bw_lesson_stop {
    int32_t made; ///< 1: the caption is made from the duties
    int32_t reserved;
    double pause;                  ///< seconds to stand here
    double come;                   ///< seconds from the start until the ball is here
    char place[BW_NAME_SIZE + 32]; ///< "on the left wing"
    char caption[BW_BOARD_SAYING];
} bw_lesson_stop;

/// What the page reads about the lessons.
typedef struct bw_lesson_view {
    int32_t lesson; ///< the chosen one, -1 when there is none
    int32_t stop;   ///< the chosen one
    int32_t stop_count;
    int32_t recording; ///< 1: every place the ball is put becomes a stop
    int32_t playing;   ///< 1: the board shows a moment of the lesson
    int32_t reserved;
    double seconds;                ///< the whole lesson lasts
    double at;                     ///< the moment shown
    char name[BW_NAME_SIZE];       ///< of the chosen lesson
    char about[160];               ///< "9 stops with 4 in, 34 s"
    char now[160];                 ///< "12.4 of 34.0 seconds, pass to the left wing"
    char caption[BW_BOARD_SAYING]; ///< of the stop the ball is at, or going to
    char refused[200];             ///< why the last edit was not made, "" when it was
    char spot[BW_NAME_SIZE + 32];  ///< the caller's next place: "left wing"
    char call[BW_NAME_SIZE];       ///< what the stage calls
    bw_lesson_stop stops[BW_MAX_STOPS];
} bw_lesson_view;

typedef struct bw_lessons {
    bw_lesson_view view;
    char id[BW_ID_SIZE]; ///< of the chosen lesson: an edit may move the others
    bool built;          ///< walk is of the scheme as it is
    bw_walk walk;
    bw_random random; ///< the caller's: each round is shuffled anew
    bool shuffled;
    int next, order[BW_MAX_STOPS]; ///< the place in this round that is called next
} bw_lessons;

/// Nothing chosen.
void bw_lessons_reset(bw_lessons *l);

/// After anything that may have changed the scheme: the same lesson stays chosen if it is still there,
/// and the words are made anew.
void bw_lessons_say(bw_lessons *l, const bw_board *board);

/// Chooses a lesson and shows its stage, with the ball at its first stop.
void bw_lessons_choose(bw_lessons *l, bw_board *board, int lesson);

/// Chooses a stop; the ball goes there and the unit runs.
void bw_lessons_visit(bw_lessons *l, bw_board *board, int stop);

// Edits (lesson_edit.c).

/// Begins a lesson for the stage that is shown, with the ball's place as its first stop. What is
/// put after that is recorded when the coach says so.
bool bw_lessons_new(bw_lessons *l, bw_board *board);
bool bw_lessons_rename(bw_lessons *l, bw_board *board, const char *name, size_t length);
bool bw_lessons_delete(bw_lessons *l, bw_board *board);

/// The ball's place becomes a stop after the chosen one; a ball that a finger put within a yard of a
/// landmark is put at it (`by_finger`). Nothing when it is where the chosen stop is.
bool bw_lessons_add(bw_lessons *l, bw_board *board, bool by_finger);

bool bw_lessons_drop(bw_lessons *l, bw_board *board, int stop);

/// Exchanges a stop with the one before (-1) or after (+1).
bool bw_lessons_shift(bw_lessons *l, bw_board *board, int stop, int by);

/// The stop is where the ball is now.
bool bw_lessons_place(bw_lessons *l, bw_board *board, int stop);

/// Seconds to stand at a stop; what no file may say is refused when it is committed.
bool bw_lessons_pause(bw_lessons *l, bw_board *board, int stop, double seconds);

/// An empty caption is made from the duties.
bool bw_lessons_caption(bw_lessons *l, bw_board *board, int stop, const char *text, size_t length);

// Playing and calling (lesson_play.c).

/// Makes the walk of the chosen lesson ready, when it is not.
void bw_lessons_build(bw_lessons *l, const bw_scheme *scheme);

/// The board shows the chosen lesson at `seconds` from its start.
void bw_lessons_at(bw_lessons *l, bw_board *board, double seconds);

/// The board is the coach's again; from where they are the men run on to where they belong.
void bw_lessons_stop(bw_lessons *l, bw_board *board);

/// Begins calling the chosen lesson's places, in order or shuffled by a seed.
void bw_lessons_call(bw_lessons *l, bool shuffled, uint32_t seed);

/// The next place into view.spot; the ball goes there. Never the same place twice running when there
/// are two.
void bw_lessons_next(bw_lessons *l, bw_board *board);

/// The chosen lesson, or NULL. Private to the lessons' own files.
static inline bw_lesson *bw_lessons_chosen(bw_lessons *l, bw_board *board) {
    const bool there = l->view.lesson >= 0 && l->view.lesson < board->scheme.lesson_count;
    return there ? &board->scheme.lessons[l->view.lesson] : NULL;
}

#endif
