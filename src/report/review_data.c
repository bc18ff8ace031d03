/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/review_data.h"

#include "report/review_forecast.h"
#include "team/breaks.h"
#include <stdlib.h>
#include <string.h>

static bw_status no_memory(bw_error *error) {
    *error = (bw_error){.status = BW_NO_ROOM, .message = BW_NO_MEMORY};
    return BW_NO_ROOM;
}

static bw_status read_all(bw_team *team, bw_review_data *d, bw_error *error) {
    bw_status status = bw_team_setting(team, BW_SETTING_TEAM, d->name, sizeof d->name, error);
    if (status == BW_OK)
        status = bw_team_setting(team, BW_SETTING_ABOUT, d->about, sizeof d->about, error);
    if (status == BW_OK) status = bw_team_entries(team, NULL, &d->entries, &d->entry_count, error);
    if (status == BW_OK) status = bw_team_games(team, &d->games, &d->game_count, error);
    if (status == BW_OK) status = bw_team_revisions(team, &d->revisions, &d->revision_count, error);
    if (status != BW_OK || d->revision_count == 0) return status;
    status = bw_team_scheme(team, 0, &d->scheme, NULL, error);
    d->has_scheme = status == BW_OK;
    return status;
}

static bool name_all(bw_review_data *d) {
    d->game_names = calloc((size_t)d->game_count + 1, sizeof *d->game_names);
    d->revision_names = calloc((size_t)d->revision_count + 1, sizeof *d->revision_names);
    if (!d->game_names || !d->revision_names) return false;
    for (int i = 0; i < d->game_count; i++) {
        bw_season_name *n = &d->game_names[i];
        n->id = d->games[i].id;
        bw_text t = bw_text_in(n->label, sizeof n->label);
        bw_put(&t, d->games[i].date);
        bw_put(&t, " ");
        bw_put(&t, d->games[i].opponent);
    }
    for (int i = 0; i < d->revision_count; i++) {
        bw_season_name *n = &d->revision_names[i];
        n->id = d->revisions[i].id;
        bw_text t = bw_text_in(n->label, sizeof n->label);
        bw_put(&t, d->revisions[i].scheme);
        bw_put(&t, " ");
        bw_put_int(&t, d->revisions[i].id);
        if (!d->revisions[i].note[0]) continue;
        bw_put(&t, ", ");
        bw_put(&t, d->revisions[i].note);
    }
    return true;
}

static void count(bw_review_data *d) {
    const bw_season_log log = {.entries = d->entries,
                               .count = d->entry_count,
                               .forecast = d->forecast,
                               .games = d->game_names,
                               .game_count = d->game_count,
                               .revisions = d->revision_names,
                               .revision_count = d->revision_count};
    bw_season_count(&log, &d->season);
}

static void choose_change(bw_review_data *d) {
    bw_review *r = &d->review;
    r->before = r->after = -1;
    for (int i = 0; i < d->season.revision_count; i++) {
        if (d->season.revisions[i].breaks == 0) continue;
        r->before = r->after;
        r->after = i;
    }
}

static bw_status play(bw_team *team, bw_watcher watch, bw_review_data *d, bw_error *error) {
    d->forecast = calloc((size_t)d->entry_count, sizeof *d->forecast);
    if (!d->forecast) return no_memory(error);
    const bw_status status =
        bw_forecast_breaks(team, d->entries, d->entry_count, watch, d->forecast);
    if (status == BW_NO_ROOM) return no_memory(error);
    if (status != BW_OK) *error = (bw_error){.status = status, .message = "it was cancelled"};
    return status;
}

bw_status bw_review_load(bw_team *team, bool modelled, bw_units units, bw_watcher watch,
                         bw_review_data *d, bw_error *error) {
    memset(d, 0, sizeof *d);
    bw_status status = read_all(team, d, error);
    if (status == BW_OK && !name_all(d)) status = no_memory(error);
    modelled = modelled && d->has_scheme && d->entry_count > 0;
    if (status == BW_OK && modelled) status = play(team, watch, d, error);
    if (status != BW_OK) return status;
    count(d);
    d->review = (bw_review){.season = &d->season,
                            .entries = d->entries,
                            .entry_count = d->entry_count,
                            .team = d->name,
                            .field = bw_field_at(d->has_scheme ? d->scheme.field : 0),
                            .units = units,
                            .modelled = modelled,
                            .about = d->about[0] ? d->about : NULL};
    choose_change(d);
    return BW_OK;
}

void bw_review_drop(bw_review_data *d) {
    free(d->entries);
    free(d->forecast);
    free(d->games);
    free(d->revisions);
    free(d->game_names);
    free(d->revision_names);
}
