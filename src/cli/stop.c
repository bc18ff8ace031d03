/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/stop.h"

#include "core/base.h"
#include <signal.h>

static const int signals[] = {SIGINT, SIGTERM};

/// A signal handler can reach nothing but a global.
static atomic_bool stopped;

static struct sigaction before[BW_COUNT(signals)];
static int watchers;

static void stop(int signal) {
    (void)signal;
    atomic_store(&stopped, true);
}

void bw_stop_watch(void) {
    if (watchers++) return;
    struct sigaction act = {.sa_handler = stop, .sa_flags = SA_RESTART};
    sigemptyset(&act.sa_mask);
    for (int i = 0; i < BW_COUNT(signals); i++) {
        sigaction(signals[i], NULL, &before[i]);
        if (before[i].sa_handler != SIG_IGN) sigaction(signals[i], &act, NULL);
    }
}

void bw_stop_unwatch(void) {
    if (--watchers) return;
    for (int i = 0; i < BW_COUNT(signals); i++)
        sigaction(signals[i], &before[i], NULL);
}

atomic_bool *bw_stop_flag(void) {
    return &stopped;
}
