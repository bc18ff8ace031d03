/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/draw_answer.h"
#include "cli/pages.h"
#include "cli/say.h"
#include "cli/trials.h"
#include "report/strip.h"
#include <stdlib.h>

typedef struct job {
    bw_ground ground;
    bw_trial trial;
    bw_strip strip;
    bw_paper paper;
} job;

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const job *j = self;
    return bw_strip_page(&j->strip, number, j->paper, ink);
}

static int run(const bw_args *args, const bw_scheme *scheme, job *j) {
    bw_break_request request;
    int code = bw_load_break(args, scheme, &request);
    if (code == BW_EXIT_OK) code = bw_load_ground(scheme, &request, &j->ground);
    if (code != BW_EXIT_OK) return code;
    j->trial.def = request.def;
    j->trial.effort = bw_effort_default();
    j->trial.effort.seconds = request.seconds;
    j->trial.effort.with_weak = false;
    bw_battery battery = {.ground = &j->ground, .trials = &j->trial, .count = 1};
    code = bw_run_trials(&battery);
    if (code != BW_EXIT_OK) return code;
    if (bw_strip_build(&j->trial, &j->strip) != BW_OK) {
        bw_say_error("no shot fits into %d s, so there is nothing to draw; give --seconds more.",
                     request.seconds);
        return BW_EXIT_WRONG;
    }
    const bw_pages pages = {bw_strip_pages(&j->strip), scheme->name, draw_page, j};
    return bw_paint_pages(args, &pages);
}

int bw_draw_answer(const bw_args *args, const bw_scheme *scheme, bw_paper paper) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    j->paper = paper;
    const int code = run(args, scheme, j);
    free(j);
    return code;
}
