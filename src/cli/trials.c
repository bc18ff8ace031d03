/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/trials.h"
#include "cli/say.h"
#include <signal.h>
#include <stdio.h>
#include <unistd.h>

enum { INTERRUPTED = 130 };

/// A signal handler can reach nothing but a global.
static atomic_bool interrupted;

static void interrupt(int signal) {
    (void)signal;
    atomic_store(&interrupted, true);
}

int bw_load_ground(const bw_scheme *scheme, const bw_break_request *request, bw_ground *ground) {
    char room[256];
    bw_text why = bw_text_in(room, sizeof room);
    const bw_status status = bw_ground_build(scheme, request->level, ground, &why);
    if (status == BW_OK) return BW_EXIT_OK;
    bw_say_error("%s.", why.data);
    return BW_EXIT_WRONG;
}

static void show_progress(void *self, int done, int count) {
    (void)self;
    fprintf(stderr, "\rTesting breaks: %d of %d", done, count);
    fflush(stderr);
}

static void clear_progress(void) {
    fprintf(stderr, "\r%*s\r", 40, "");
    fflush(stderr);
}

int bw_run_trials(bw_battery *battery) {
    const bool terminal = isatty(STDERR_FILENO) && battery->count > 1;
    struct sigaction act = {.sa_handler = interrupt}, before;
    sigemptyset(&act.sa_mask);
    sigaction(SIGINT, NULL, &before);
    // Who started us to run on through interrupts meant it.
    if (before.sa_handler != SIG_IGN) sigaction(SIGINT, &act, NULL);
    if (terminal) battery->progress = show_progress;
    battery->cancel = &interrupted;
    const bw_status status = bw_battery_run(battery);
    sigaction(SIGINT, &before, NULL);
    if (terminal) clear_progress();

    if (atomic_load(&interrupted)) {
        bw_say("Interrupted.");
        return INTERRUPTED;
    }
    if (status == BW_NO_ROOM) {
        bw_say_error("there is not enough memory to test a break.");
        return BW_EXIT_LIMIT;
    }
    const bw_trial *first = &battery->trials[0];
    if (first->status == BW_OK) return BW_EXIT_OK;
    bw_say_error("%s.", first->why[0] ? first->why : "the break could not be tested");
    return BW_EXIT_WRONG;
}
