/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/tester_page.h"

#include "core/level.h"
#include "web/export.h"
#include "web/page.h"
#include "web/tester_say.h"

static bw_tester tester;

static bool is_side(int side) {
    return side >= 0 && side < BW_TESTER_SIDES;
}

/// There is a scheme to ask about.
static bool open(void) {
    return tester.side[0].open;
}

BW_EXPORT(bw_page_test_reset)
void bw_page_test_reset(void) {
    bw_tester_reset(&tester);
}

BW_EXPORT(bw_page_test_take)
int bw_page_test_take(int side) {
    if (!is_side(side)) return BW_BAD_INPUT;
    return (int)bw_tester_take(&tester, side, &bw_page_board()->tree);
}

BW_EXPORT(bw_page_test_forget)
void bw_page_test_forget(int side) {
    if (is_side(side)) bw_tester_forget(&tester, side);
}

BW_EXPORT(bw_page_test_level)
void bw_page_test_level(int side, int level) {
    if (is_side(side) && level >= -1 && level < bw_level_count())
        bw_tester_level(&tester, side, level);
}

BW_EXPORT(bw_page_test_usual)
void bw_page_test_usual(void) {
    if (open()) bw_tester_usual(&tester);
}

BW_EXPORT(bw_page_test_numbers)
void bw_page_test_numbers(int offence, int defence) {
    const bool sane = defence >= 3 && defence <= offence && offence <= BW_MAX_ATTACKERS;
    if (open() && sane) bw_tester_numbers(&tester, offence, defence);
}

BW_EXPORT(bw_page_test_set)
void bw_page_test_set(int set) {
    if (open()) bw_tester_set(&tester, set);
}

BW_EXPORT(bw_page_test_start)
void bw_page_test_start(int landmark) {
    if (open()) bw_tester_start(&tester, landmark);
}

BW_EXPORT(bw_page_test_late)
void bw_page_test_late(int count) {
    if (open()) bw_tester_late(&tester, count);
}

BW_EXPORT(bw_page_test_late_from)
void bw_page_test_late_from(int index, double distance) {
    if (open() && bw_page_number(distance))
        bw_tester_late_from(&tester, index, distance * bw_unit_length(tester.side[0].scheme.units));
}

BW_EXPORT(bw_page_test_effort)
void bw_page_test_effort(int seconds, int quick, int seed) {
    if (seconds >= 1 && seconds <= BW_MAX_SECONDS && seed >= 1)
        bw_tester_effort(&tester, seconds, quick != 0, seed);
}

BW_EXPORT(bw_page_test_begin)
int bw_page_test_begin(int side) {
    if (!is_side(side)) return BW_BAD_INPUT;
    return (int)bw_tester_begin(&tester, side);
}

BW_EXPORT(bw_page_test_step)
int bw_page_test_step(void) {
    if (bw_tester_step(&tester) != BW_OK) return -1;
    return tester.running >= 0;
}

BW_EXPORT(bw_page_test_result)
void *bw_page_test_result(int side) {
    return &tester.side[is_side(side) ? side : 0].trial;
}

BW_EXPORT(bw_page_test_result_size)
int bw_page_test_result_size(void) {
    return sizeof tester.side[0].trial;
}

BW_EXPORT(bw_page_test_adopt)
int bw_page_test_adopt(int side) {
    if (!is_side(side)) return BW_BAD_INPUT;
    return (int)bw_tester_adopt(&tester, side);
}

BW_EXPORT(bw_page_test_film)
int bw_page_test_film(int side, int number) {
    if (!is_side(side) || number < -1) return BW_BAD_INPUT;
    return (int)bw_tester_film(&tester, side, number);
}

static bw_text begin_saying(void) {
    return bw_text_in(tester.saying, sizeof tester.saying);
}

BW_EXPORT(bw_page_test_say)
const char *bw_page_test_say(int word, int side, int index) {
    bw_text out = begin_saying();
    if (word >= 0 && word < BW_TEST_WORD_COUNT && is_side(side) && index >= 0)
        bw_tester_say(&tester, (bw_test_word)word, side, index, &out);
    return tester.saying;
}

BW_EXPORT(bw_page_test_figure)
double bw_page_test_figure(int figure, int side, int index) {
    const bool there = figure >= 0 && figure < BW_TEST_FIGURE_COUNT && is_side(side) && index >= 0;
    return there ? bw_tester_figure(&tester, (bw_test_figure)figure, side, index)
                 : __builtin_nan("");
}

BW_EXPORT(bw_page_test_moment)
const char *bw_page_test_moment(double at_s) {
    bw_text out = begin_saying();
    if (bw_page_number(at_s)) bw_tester_say_moment(&tester, at_s, &out);
    return tester.saying;
}

BW_EXPORT(bw_page_test_lateness)
const char *bw_page_test_lateness(double at_s) {
    bw_text out = begin_saying();
    if (bw_page_number(at_s)) bw_tester_say_late(&tester, at_s, &out);
    return tester.saying;
}

BW_EXPORT(bw_page_test_draw_curve)
void bw_page_test_draw_curve(double width, double height) {
    bw_board *board = bw_page_board();
    if (bw_page_number(width) && bw_page_number(height))
        bw_tester_draw_curve(&tester, width, height, board->page, sizeof board->page);
}

BW_EXPORT(bw_page_test_draw_film)
void bw_page_test_draw_film(double at_s, double width, double height) {
    bw_board *board = bw_page_board();
    tester.lines = board->lines;
    if (bw_page_number(at_s) && bw_page_number(width) && bw_page_number(height))
        bw_tester_draw_film(&tester, at_s, width, height, board->page, sizeof board->page);
}

BW_EXPORT(bw_page_test_draw_key)
void bw_page_test_draw_key(double width) {
    bw_board *board = bw_page_board();
    tester.lines = board->lines;
    if (bw_page_number(width)) bw_tester_draw_key(&tester, width, board->page, sizeof board->page);
}
