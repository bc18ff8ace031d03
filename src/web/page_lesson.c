/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the page calls to build, play and call out lessons.
#include "web/export.h"
#include "web/lesson.h"
#include "web/page.h"

static bw_lessons lessons = {.view = {.lesson = -1}};

static bw_board *open_board(void) {
    bw_board *board = bw_page_board();
    return board->open ? board : NULL;
}

BW_EXPORT(bw_page_lessons)
const bw_lesson_view *bw_page_lessons(void) {
    return &lessons.view;
}

BW_EXPORT(bw_page_lesson_name)
const char *bw_page_lesson_name(int index) {
    const bw_board *board = open_board();
    return board && index >= 0 && index < board->scheme.lesson_count
               ? board->scheme.lessons[index].name
               : "";
}

BW_EXPORT(bw_page_lesson_say)
void bw_page_lesson_say(void) {
    const bw_board *board = open_board();
    if (board) bw_lessons_say(&lessons, board);
}

BW_EXPORT(bw_page_lesson_choose)
void bw_page_lesson_choose(int lesson) {
    bw_board *board = open_board();
    if (board) bw_lessons_choose(&lessons, board, lesson);
}

BW_EXPORT(bw_page_lesson_visit)
void bw_page_lesson_visit(int stop) {
    bw_board *board = open_board();
    if (board) bw_lessons_visit(&lessons, board, stop);
}

BW_EXPORT(bw_page_lesson_record)
void bw_page_lesson_record(int record) {
    lessons.view.recording = record != 0 && lessons.view.lesson >= 0;
}

// Edits: 1 when the scheme was changed, which the page then commits.
BW_EXPORT(bw_page_lesson_new)
int bw_page_lesson_new(void) {
    bw_board *board = open_board();
    return board && bw_lessons_new(&lessons, board);
}

BW_EXPORT(bw_page_lesson_rename)
int bw_page_lesson_rename(int length) {
    bw_board *board = open_board();
    if (!board || length < 0 || length > BW_BOARD_INPUT) return 0;
    return bw_lessons_rename(&lessons, board, board->input, (size_t)length);
}

BW_EXPORT(bw_page_lesson_delete)
int bw_page_lesson_delete(void) {
    bw_board *board = open_board();
    return board && bw_lessons_delete(&lessons, board);
}

BW_EXPORT(bw_page_lesson_add)
int bw_page_lesson_add(int by_finger) {
    bw_board *board = open_board();
    return board && bw_lessons_add(&lessons, board, by_finger != 0);
}

BW_EXPORT(bw_page_lesson_drop)
int bw_page_lesson_drop(int stop) {
    bw_board *board = open_board();
    return board && bw_lessons_drop(&lessons, board, stop);
}

BW_EXPORT(bw_page_lesson_shift)
int bw_page_lesson_shift(int stop, int by) {
    bw_board *board = open_board();
    return board && bw_lessons_shift(&lessons, board, stop, by);
}

BW_EXPORT(bw_page_lesson_place)
int bw_page_lesson_place(int stop) {
    bw_board *board = open_board();
    return board && bw_lessons_place(&lessons, board, stop);
}

BW_EXPORT(bw_page_lesson_pause)
int bw_page_lesson_pause(int stop, double seconds) {
    bw_board *board = open_board();
    return board && bw_lessons_pause(&lessons, board, stop, seconds);
}

BW_EXPORT(bw_page_lesson_caption)
int bw_page_lesson_caption(int stop, int length) {
    bw_board *board = open_board();
    if (!board || length < 0 || length > BW_BOARD_INPUT) return 0;
    return bw_lessons_caption(&lessons, board, stop, board->input, (size_t)length);
}

BW_EXPORT(bw_page_lesson_at)
void bw_page_lesson_at(double seconds) {
    bw_board *board = open_board();
    if (board && bw_page_number(seconds)) bw_lessons_at(&lessons, board, seconds);
}

BW_EXPORT(bw_page_lesson_stop)
void bw_page_lesson_stop(void) {
    bw_board *board = open_board();
    if (board) bw_lessons_stop(&lessons, board);
}

BW_EXPORT(bw_page_lesson_call)
void bw_page_lesson_call(int shuffled, int seed) {
    bw_lessons_call(&lessons, shuffled != 0, (uint32_t)seed);
}

BW_EXPORT(bw_page_lesson_next)
void bw_page_lesson_next(void) {
    bw_board *board = open_board();
    if (board) bw_lessons_next(&lessons, board);
}
