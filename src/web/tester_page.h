/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The functions of test mode that the page and its worker call, on the one tester of a module. Each
/// checks what it is handed, as those of web/page.h do, whose feed, ink and input they share.
///
/// A run: feed a document, bw_page_test_take, ask for a break, bw_page_test_begin, then
/// bw_page_test_step until it returns 0. The trial's bytes at bw_page_test_result may then be carried
/// to another instance of the same module, into the same place, and adopted there.
#ifndef BW_WEB_TESTER_PAGE_H
#define BW_WEB_TESTER_PAGE_H

#include "web/tester.h"

void bw_page_test_reset(void);

/// Takes the fed document as side 0 or 1: 0 when it was taken.
int bw_page_test_take(int side);
void bw_page_test_forget(int side);
void bw_page_test_level(int side, int level);

void bw_page_test_usual(void);
void bw_page_test_numbers(int offence, int defence);
void bw_page_test_set(int set);
void bw_page_test_start(int landmark);
void bw_page_test_late(int count);

/// In shown units.
void bw_page_test_late_from(int index, double distance);
void bw_page_test_effort(int seconds, int quick, int seed);

/// 0 when the trial is under way.
int bw_page_test_begin(int side);

/// 1: there is more to do; 0: done; -1: refused.
int bw_page_test_step(void);

void *bw_page_test_result(int side);
int bw_page_test_result_size(void);
int bw_page_test_adopt(int side);

/// 0 when there is a film.
int bw_page_test_film(int side, int number);

const char *bw_page_test_say(int word, int side, int index);
double bw_page_test_figure(int figure, int side, int index);
const char *bw_page_test_moment(double at_s);
const char *bw_page_test_lateness(double at_s);

/// Into the page of ink at bw_page_ink.
void bw_page_test_draw_curve(double width, double height);
void bw_page_test_draw_film(double at_s, double width, double height);
void bw_page_test_draw_key(double width);

#endif
