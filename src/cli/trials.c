/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/trials.h"
#include "cli/progress.h"
#include "cli/say.h"
#include <stdlib.h>

int bw_load_ground(const bw_scheme *scheme, const bw_break_request *request, bw_ground *ground) {
    char room[256];
    bw_text why = bw_text_in(room, sizeof room);
    const bw_status status = bw_ground_build(scheme, request->level, ground, &why);
    if (status == BW_OK) return BW_EXIT_OK;
    bw_say_error("%s.", why.data);
    return BW_EXIT_WRONG;
}

/// Runs the battery on all cores. BW_EXIT_OK, whatever came of each trial; 130 when interrupted, or the
/// code after saying why.
static int run_battery(bw_battery *battery) {
    battery->watch = bw_progress_begin("Testing breaks");
    const bw_status status = bw_battery_run(battery);
    if (bw_progress_end()) return bw_progress_interrupted();
    if (status != BW_NO_ROOM) return BW_EXIT_OK;
    return bw_say_no_memory();
}

int bw_run_trials(bw_battery *battery) {
    const int code = run_battery(battery);
    if (code != BW_EXIT_OK) return code;
    const bw_trial *first = &battery->trials[0];
    if (first->status == BW_OK) return BW_EXIT_OK;
    bw_say_error("%s.", first->why[0] ? first->why : "the break could not be tested");
    return BW_EXIT_WRONG;
}

typedef struct weak_job {
    bw_ground ground;
    bw_trial trials[BW_WEAK_TRIALS];
} weak_job;

static int find_weak(const bw_scheme *scheme, int stage, uint64_t seed, weak_job *j,
                     bw_weak_list *weak) {
    int code = bw_load_ground(scheme, &(bw_break_request){0}, &j->ground);
    if (code != BW_EXIT_OK) return code;
    bw_battery battery = {.ground = &j->ground, .trials = j->trials};
    const int count = bw_weak_trials(scheme, seed, j->trials);
    for (int i = 0; i < count; i++) {
        if (stage < 0 || j->trials[i].def.defence == scheme->stages[stage].defenders)
            j->trials[battery.count++] = j->trials[i];
    }
    if (battery.count > 0) code = run_battery(&battery);
    for (int i = 0; i < battery.count; i++)
        bw_weak_take(&j->ground, &j->trials[i], weak);
    return code;
}

int bw_find_weak(const bw_scheme *scheme, int stage, uint64_t seed, bw_weak_list *weak) {
    weak->count = 0;
    weak_job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    const int code = find_weak(scheme, stage, seed, j, weak);
    free(j);
    return code;
}
