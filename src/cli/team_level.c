/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/team_level.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/text.h"
#include "team/settings.h"
#include <stddef.h>

/// The figures that are kept, by the setting that holds each.
static const struct {
    const char *setting;
    size_t offset;
    double least, most; ///< what a kept figure can be
} figures[] = {{"own-pass-sure", offsetof(bw_level, pass_sure), 0.3, 1},
               {"own-shot-error", offsetof(bw_level, shot_error), 0.001, 1},
               {"own-release", offsetof(bw_level, release), 0.2, 3}};

static double *figure(bw_level *level, int i) {
    return (double *)(void *)((char *)level + figures[i].offset);
}

bw_status bw_team_keep_level(bw_team *team, const bw_level *level, bw_error *error) {
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    for (int i = 0; i < BW_COUNT(figures) && status == BW_OK; i++) {
        char value[40] = "";
        bw_text t = bw_text_in(value, sizeof value);
        bw_level copy = level ? *level : (bw_level){.id = ""};
        if (level) bw_put_fixed(&t, *figure(&copy, i), 9);
        status = bw_team_set(team, figures[i].setting, value, error);
    }
    return bw_team_end(team, status, error);
}

bw_status bw_team_own_level(bw_team *team, bw_level *level, bool *own, bw_error *error) {
    *own = false;
    for (int i = 0; i < BW_COUNT(figures); i++) {
        char value[BW_SETTING_SIZE];
        const bw_status status =
            bw_team_setting(team, figures[i].setting, value, sizeof value, error);
        if (status != BW_OK) return status;
        const char *at = value;
        double number;
        if (!value[0] || !bw_scan_decimal(&at, &number) || *at != '\0') continue;
        if (!(number >= figures[i].least && number <= figures[i].most)) continue;
        *figure(level, i) = number;
        *own = true;
    }
    return BW_OK;
}

int bw_load_team_level(const bw_args *args, const bw_level **level) {
    static bw_level own;
    const char *path = bw_option_text(args, "team");
    if (!path) return BW_EXIT_OK;
    bw_team *team;
    bw_error error = {0};
    bool any;
    bw_status status = bw_team_open(path, BW_TEAM_READ, &team, &error);
    if (status != BW_OK) return bw_team_refusal(NULL, path, &error);
    own = **level;
    status = bw_team_own_level(team, &own, &any, &error);
    if (status != BW_OK) return bw_team_refusal(team, path, &error);
    bw_team_close(team);
    if (!any) {
        bw_say("%s keeps no figures of its own; `breakwater team feedback %s --apply on` would.",
               path, path);
        return BW_EXIT_OK;
    }
    bw_say("With the team's own figures from %s, which its log moved: passes caught, shots, time "
           "to pass.",
           path);
    *level = &own;
    return BW_EXIT_OK;
}
