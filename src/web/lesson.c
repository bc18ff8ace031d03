/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which lesson and which stop, and the words about them.
#include "web/lesson.h"

#include "scheme/caption.h"

void bw_lessons_reset(bw_lessons *l) {
    *l = (bw_lessons){.view = {.lesson = -1}};
}

/// The lesson that was chosen, wherever it is now; else the one in its place, or none.
static void follow(bw_lessons *l, const bw_scheme *scheme) {
    bw_lesson_view *view = &l->view;
    int found = view->lesson < scheme->lesson_count ? view->lesson : scheme->lesson_count - 1;
    if (found < 0 && scheme->lesson_count > 0) found = 0;
    const int chosen = bw_scheme_lesson(scheme, l->id);
    if (chosen >= 0) found = chosen;
    view->lesson = found;
    bw_copy(l->id, sizeof l->id, found < 0 ? "" : scheme->lessons[found].id);
    view->stop_count = found < 0 ? 0 : scheme->lessons[found].stop_count;
    if (view->stop >= view->stop_count) view->stop = view->stop_count - 1;
    if (view->stop < 0) view->stop = 0;
    if (found < 0) view->recording = 0;
}

static void say_stop(const bw_scheme *scheme, const bw_walk *walk, int i, const bw_stop *stop,
                     bw_lesson_stop *out) {
    const bw_walk_stop *at = &walk->stops[i];
    out->made = stop->caption[0] == '\0';
    out->pause = stop->pause;
    out->come = at->come * BW_FOLLOW_STEP;
    bw_text place = bw_text_in(out->place, sizeof out->place);
    bw_say_at(scheme, at->ball, &place);
    bw_text caption = bw_text_in(out->caption, sizeof out->caption);
    if (out->made)
        bw_say_unit(scheme, walk->stage, at->station, at->ball, &caption);
    else
        bw_put(&caption, stop->caption);
}

static void say_about(const bw_lesson *lesson, double seconds, bw_text *out) {
    bw_put_int(out, lesson->stop_count);
    bw_put(out, lesson->stop_count == 1 ? " stop with " : " stops with ");
    bw_put_int(out, lesson->defenders);
    bw_put(out, " in, ");
    bw_put_fixed(out, seconds, 0);
    bw_put(out, " s from end to end");
}

void bw_lessons_say(bw_lessons *l, const bw_board *board) {
    const bw_scheme *scheme = &board->scheme;
    bw_lesson_view *view = &l->view;
    follow(l, scheme);
    l->built = false;
    view->name[0] = view->about[0] = view->call[0] = '\0';
    view->seconds = 0;
    if (view->lesson < 0) return;
    const bw_lesson *lesson = &scheme->lessons[view->lesson];
    bw_lessons_build(l, scheme);
    bw_copy(view->name, sizeof view->name, lesson->name);
    bw_copy(view->call, sizeof view->call, scheme->stages[l->walk.stage].call);
    bw_text about = bw_text_in(view->about, sizeof view->about);
    say_about(lesson, view->seconds, &about);
    for (int i = 0; i < lesson->stop_count; i++)
        say_stop(scheme, &l->walk, i, &lesson->stops[i], &view->stops[i]);
}

void bw_lessons_choose(bw_lessons *l, bw_board *board, int lesson) {
    const bw_scheme *scheme = &board->scheme;
    if (lesson < 0 || lesson >= scheme->lesson_count) return;
    l->view.lesson = lesson;
    bw_copy(l->id, sizeof l->id, scheme->lessons[lesson].id);
    l->view.stop = 0;
    l->view.recording = 0;
    l->view.refused[0] = '\0';
    bw_lessons_stop(l, board);
    bw_lessons_visit(l, board, 0);
    bw_board_settle(board);
    bw_lessons_say(l, board);
}

void bw_lessons_visit(bw_lessons *l, bw_board *board, int stop) {
    const bw_lesson *lesson = bw_lessons_chosen(l, board);
    if (!lesson || stop < 0 || stop >= lesson->stop_count) return;
    const int stage = bw_scheme_stage(&board->scheme, lesson->defenders);
    l->view.stop = stop;
    if (l->view.playing) bw_lessons_stop(l, board);
    if (stage != board->stage) bw_board_show(board, stage);
    bw_board_move(board, 0, bw_stop_ball(&board->scheme, &lesson->stops[stop]));
    if (lesson->stops[stop].at_landmark) bw_board_ball_to(board, lesson->stops[stop].landmark);
}
