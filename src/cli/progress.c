/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/progress.h"
#include "cli/say.h"
#include <stdio.h>
#include <string.h>
#include <unistd.h>

/// What is being done, and how wide the line on the terminal is. There is one terminal.
static const char *doing_now;
static int width;

static bool on_terminal(void) {
    return isatty(STDERR_FILENO);
}

/// Writes over the line before, the rest of which is blanked.
static void show(const char *line) {
    const int length = (int)strlen(line);
    fprintf(stderr, "\r%s%*s", line, width > length ? width - length : 0, "");
    fflush(stderr);
    width = length;
}

static void count(void *self, int done, int of) {
    (void)self;
    char line[80];
    snprintf(line, sizeof line, "%s: %d of %d", doing_now, done, of);
    show(line);
}

void bw_progress_go_on(const char *doing) {
    doing_now = doing;
    if (on_terminal()) show(doing);
}

bw_watcher bw_progress_begin(const char *doing) {
    bw_stop_watch();
    bw_progress_go_on(doing);
    return (bw_watcher){.progress = on_terminal() ? count : NULL, .cancel = bw_stop_flag()};
}

bool bw_progress_end(void) {
    if (on_terminal()) {
        show("");
        fputc('\r', stderr);
    }
    bw_stop_unwatch();
    return atomic_load(bw_stop_flag());
}

int bw_progress_interrupted(void) {
    bw_say("Interrupted.");
    return BW_EXIT_INTERRUPTED;
}
