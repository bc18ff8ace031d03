/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons edited: a limit that is met is said in a plain sentence.
#include "core/text.h"
#include "web/lesson.h"

/// A finger that comes so near a landmark means it.
static const double finger = 1 * BW_METRES_PER_YARD;
static const double usual_pause = 2; // s

static bool refuse(bw_lessons *l, const char *why) {
    bw_copy(l->view.refused, sizeof l->view.refused, why);
    return false;
}

/// The same of a limit that is met.
static bool refuse_more(bw_lessons *l, const char *of, int most, const char *rest) {
    bw_text out = bw_text_in(l->view.refused, sizeof l->view.refused);
    bw_put(&out, of);
    bw_put(&out, " has room for ");
    bw_put_int(&out, most);
    bw_put(&out, rest);
    return false;
}

static bool done(bw_lessons *l) {
    l->view.refused[0] = '\0';
    l->built = false;
    return true;
}

static bw_lesson *lesson_with(bw_lessons *l, bw_board *board, int stop) {
    bw_lesson *lesson = bw_lessons_chosen(l, board);
    return lesson && stop >= 0 && stop < lesson->stop_count ? lesson : NULL;
}

static bw_stop stop_here(const bw_board *board) {
    const int landmark = bw_board_landmark(board);
    return (bw_stop){.at_landmark = landmark >= 0,
                     .landmark = landmark >= 0 ? landmark : 0,
                     .ball = board->ball,
                     .pause = usual_pause};
}

bool bw_lessons_new(bw_lessons *l, bw_board *board) {
    bw_scheme *scheme = &board->scheme;
    if (scheme->lesson_count == BW_MAX_LESSONS)
        return refuse_more(l, "A scheme", BW_MAX_LESSONS, " lessons; delete one first.");
    bw_lesson *lesson = &scheme->lessons[scheme->lesson_count];
    *lesson = (bw_lesson){.defenders = scheme->stages[board->stage].defenders, .stop_count = 1};
    lesson->stops[0] = stop_here(board);
    int number = scheme->lesson_count;
    do {
        bw_text id = bw_text_in(lesson->id, sizeof lesson->id);
        bw_text name = bw_text_in(lesson->name, sizeof lesson->name);
        number++;
        bw_put(&id, "lesson-");
        bw_put_int(&id, number);
        bw_put(&name, "Lesson ");
        bw_put_int(&name, number);
    } while (bw_scheme_lesson(scheme, lesson->id) >= 0);
    l->view.lesson = scheme->lesson_count++;
    l->view.stop = 0;
    l->view.recording = 0;
    bw_copy(l->id, sizeof l->id, lesson->id);
    return done(l);
}

/// Text of the page's own into a field of the scheme. False when it is too long for it.
static bool take_text(char *to, size_t room, const char *text, size_t length) {
    if (length >= room) return false;
    bw_text out = bw_text_in(to, room);
    bw_put_n(&out, text, length);
    return true;
}

bool bw_lessons_rename(bw_lessons *l, bw_board *board, const char *name, size_t length) {
    bw_lesson *lesson = bw_lessons_chosen(l, board);
    if (!lesson) return false;
    if (!take_text(lesson->name, sizeof lesson->name, name, length))
        return refuse_more(l, "A lesson's name", BW_NAME_SIZE - 1,
                           " letters (fewer with accents).");
    return done(l);
}

bool bw_lessons_delete(bw_lessons *l, bw_board *board) {
    bw_scheme *scheme = &board->scheme;
    if (!bw_lessons_chosen(l, board)) return false;
    scheme->lesson_count--;
    for (int i = l->view.lesson; i < scheme->lesson_count; i++)
        scheme->lessons[i] = scheme->lessons[i + 1];
    l->id[0] = '\0';
    l->view.stop = 0;
    l->view.recording = 0;
    return done(l);
}

/// The ball to the landmark that a finger nearly put it at.
static void snap(bw_board *board) {
    const int nearest = bw_board_nearest(board);
    if (bw_distance(board->scheme.landmarks[nearest].at, board->ball) <= finger)
        bw_board_ball_to(board, nearest);
}

bool bw_lessons_add(bw_lessons *l, bw_board *board, bool by_finger) {
    bw_lesson *lesson = lesson_with(l, board, l->view.stop);
    if (!lesson)
        return refuse(l, "There is no lesson to add a stop to; begin one with New lesson.");
    if (board->scheme.stages[board->stage].defenders != lesson->defenders)
        return refuse(l, "This lesson is walked by another number of defenders; choose its stage "
                         "above, or begin a new lesson for this one.");
    if (by_finger) snap(board);
    const bw_vec last = bw_stop_ball(&board->scheme, &lesson->stops[l->view.stop]);
    if (last.x == board->ball.x && last.y == board->ball.y) {
        l->view.refused[0] = '\0';
        return false;
    }
    if (lesson->stop_count == BW_MAX_STOPS)
        return refuse_more(l, "A lesson", BW_MAX_STOPS,
                           " stops; take one out first, or begin a new lesson.");
    const int at = l->view.stop + 1;
    for (int i = lesson->stop_count++; i > at; i--)
        lesson->stops[i] = lesson->stops[i - 1];
    lesson->stops[at] = stop_here(board);
    l->view.stop = at;
    return done(l);
}

bool bw_lessons_drop(bw_lessons *l, bw_board *board, int stop) {
    bw_lesson *lesson = lesson_with(l, board, stop);
    if (!lesson) return false;
    if (lesson->stop_count == 1)
        return refuse(l, "A lesson has at least one stop; delete the lesson instead.");
    lesson->stop_count--;
    for (int i = stop; i < lesson->stop_count; i++)
        lesson->stops[i] = lesson->stops[i + 1];
    if (l->view.stop > stop || l->view.stop == lesson->stop_count) l->view.stop--;
    return done(l);
}

bool bw_lessons_shift(bw_lessons *l, bw_board *board, int stop, int by) {
    bw_lesson *lesson = lesson_with(l, board, stop);
    if (!lesson || (by != 1 && by != -1)) return false;
    const int other = stop + by;
    if (other < 0 || other >= lesson->stop_count) return false;
    const bw_stop moved = lesson->stops[stop];
    lesson->stops[stop] = lesson->stops[other];
    lesson->stops[other] = moved;
    l->view.stop = other;
    return done(l);
}

bool bw_lessons_place(bw_lessons *l, bw_board *board, int stop) {
    bw_lesson *lesson = lesson_with(l, board, stop);
    if (!lesson) return false;
    const bw_stop here = stop_here(board);
    lesson->stops[stop].at_landmark = here.at_landmark;
    lesson->stops[stop].landmark = here.landmark;
    lesson->stops[stop].ball = here.ball;
    return done(l);
}

bool bw_lessons_pause(bw_lessons *l, bw_board *board, int stop, double seconds) {
    bw_lesson *lesson = lesson_with(l, board, stop);
    if (!lesson) return false;
    if (!(seconds >= 0 && seconds <= 60)) return refuse(l, "A pause is 0 to 60 seconds long.");
    lesson->stops[stop].pause = bw_round_to(seconds, 10);
    return done(l);
}

bool bw_lessons_caption(bw_lessons *l, bw_board *board, int stop, const char *text, size_t length) {
    bw_lesson *lesson = lesson_with(l, board, stop);
    if (!lesson) return false;
    if (!take_text(lesson->stops[stop].caption, sizeof lesson->stops[stop].caption, text, length))
        return refuse_more(l, "A caption", BW_CAPTION_SIZE - 1, " letters (fewer with accents).");
    return done(l);
}
