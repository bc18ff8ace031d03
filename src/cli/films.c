/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/films.h"

#include "cli/progress.h"
#include "cli/say.h"

int bw_run_films(bw_films *films) {
    films->watch = bw_progress_begin("Filming, pictures drawn");
    const bw_status status = bw_films_make(films);
    if (bw_progress_end()) return bw_progress_interrupted();
    if (status == BW_OK) return BW_EXIT_OK;
    for (int i = 0; i < films->count; i++) {
        if (films->jobs[i].status == BW_OK || !films->jobs[i].why[0]) continue;
        bw_say_error("%s", films->jobs[i].why);
        return bw_exit_code(films->jobs[i].status);
    }
    bw_say_no_memory();
    return bw_exit_code(status);
}
