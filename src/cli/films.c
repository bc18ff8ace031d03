/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/films.h"

#include "cli/say.h"
#include "cli/stop.h"
#include <stdio.h>
#include <unistd.h>

static void show_progress(void *self, int done, int frames) {
    (void)self;
    if (frames > 0) fprintf(stderr, "\rFilming: %d %%  ", done * 100 / frames);
    fflush(stderr);
}

int bw_run_films(bw_films *films) {
    const bool terminal = isatty(STDERR_FILENO);
    if (terminal) films->progress = show_progress;
    films->cancel = bw_stop_flag();
    bw_stop_watch();
    const bw_status status = bw_films_make(films);
    bw_stop_unwatch();
    if (terminal) fprintf(stderr, "\r%*s\r", 20, "");
    if (atomic_load(bw_stop_flag())) return BW_EXIT_INTERRUPTED;
    if (status == BW_OK) return BW_EXIT_OK;
    for (int i = 0; i < films->count; i++) {
        if (films->jobs[i].status == BW_OK || !films->jobs[i].why[0]) continue;
        bw_say_error("%s", films->jobs[i].why);
        return bw_exit_code(films->jobs[i].status);
    }
    bw_say_no_memory();
    return bw_exit_code(status);
}
