/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/export.h"
#include "core/text.h"
#include "team/breaks.h"
#include "team/csv.h"
#include "team/games.h"
#include "team/roster.h"
#include "team/settings.h"
#include "team/splits.h"
#include <stdlib.h>

static void put_header(FILE *out, const char *const *names) {
    for (int i = 0; names[i]; i++)
        bw_csv_put_text(out, i, names[i]);
    bw_csv_end_row(out);
}

/// The codes of his spots, or of the fixed ones only, with blanks between.
static void put_spots(FILE *out, int index, const bw_player *p, bool fixed) {
    char codes[BW_MAX_PLAYER_SPOTS * 4 + 1];
    bw_text text = bw_text_in(codes, sizeof codes);
    for (int i = 0; i < p->spot_count; i++) {
        if (fixed && !p->spots[i].fixed) continue;
        if (text.used > 0) bw_put_char(&text, ' ');
        bw_put(&text, p->spots[i].spot);
    }
    bw_csv_put_text(out, index, codes);
}

static bw_status export_roster(bw_team *team, FILE *out, bw_error *error) {
    static const char *const with[] = {"jersey", "initials", "spots", "fixed", "name", NULL};
    static const char *const without[] = {"jersey", "initials", "spots", "fixed", NULL};
    bool names;
    bw_player *list;
    int count;
    bw_status status = bw_team_names(team, &names, error);
    if (status == BW_OK) status = bw_team_players(team, &list, &count, error);
    if (status != BW_OK) return status;
    put_header(out, names ? with : without);
    for (int i = 0; i < count; i++) {
        bw_csv_put_number(out, 0, true, list[i].jersey);
        bw_csv_put_text(out, 1, list[i].initials);
        put_spots(out, 2, &list[i], false);
        put_spots(out, 3, &list[i], true);
        if (names) bw_csv_put_text(out, 4, list[i].name);
        bw_csv_end_row(out);
    }
    free(list);
    return BW_OK;
}

static bw_status export_splits(bw_team *team, bw_units units, FILE *out, bw_error *error) {
    const char *const header[] = {
        "jersey",  "date",  units == BW_METRES ? "distance_m" : "distance_yd",
        "seconds", "clock", NULL};
    bw_timed_split *list;
    int count;
    const bw_status status = bw_team_splits(team, -1, &list, &count, error);
    if (status != BW_OK) return status;
    put_header(out, header);
    for (int i = 0; i < count; i++) {
        bw_csv_put_number(out, 0, true, list[i].jersey);
        bw_csv_put_text(out, 1, list[i].date);
        bw_csv_put_number(out, 2, true, bw_in_unit(units, list[i].distance));
        bw_csv_put_number(out, 3, true, list[i].seconds);
        bw_csv_put_text(out, 4, list[i].clock);
        bw_csv_end_row(out);
    }
    free(list);
    return BW_OK;
}

static void put_time(FILE *out, int index, int64_t time) {
    char text[32];
    bw_text t = bw_text_in(text, sizeof text);
    if (time > 0) bw_put_time(&t, time);
    bw_csv_put_text(out, index, text);
}

static void put_out(FILE *out, int index, const bw_entry *e) {
    char text[BW_MAX_OUT * BW_ID_SIZE];
    bw_text t = bw_text_in(text, sizeof text);
    for (int i = 0; i < e->out_count; i++) {
        if (i > 0) bw_put_char(&t, ' ');
        bw_put(&t, e->out[i]);
    }
    bw_csv_put_text(out, index, text);
}

static void put_entry(FILE *out, const bw_entry *e, const bw_game *game, bw_units units) {
    bw_csv_put_text(out, 0, e->client);
    bw_csv_put_text(out, 1, game->date);
    bw_csv_put_text(out, 2, game->opponent);
    bw_csv_put_text(out, 3, game->field);
    put_time(out, 4, e->time);
    bw_csv_put_number(out, 5, true, e->offence);
    bw_csv_put_number(out, 6, true, e->defence);
    bw_csv_put_text(out, 7, bw_outcome_id(e->outcome));
    bw_csv_put_number(out, 8, !(e->seconds < 0), e->seconds);
    bw_csv_put_number(out, 9, e->passes >= 0, e->passes);
    bw_csv_put_number(out, 10, e->shot_known, bw_in_unit(units, e->shot.x));
    bw_csv_put_number(out, 11, e->shot_known, bw_in_unit(units, e->shot.y));
    put_out(out, 12, e);
    bw_csv_put_number(out, 13, e->stage > 0, e->stage);
    bw_csv_put_number(out, 14, e->revision > 0, (double)e->revision);
    bw_csv_put_text(out, 15, e->note);
    bw_csv_end_row(out);
}

static const bw_game *game_of(const bw_game *games, int count, int64_t id) {
    static const bw_game none;
    for (int i = 0; i < count; i++) {
        if (games[i].id == id) return &games[i];
    }
    return &none;
}

static bw_status export_breaks(bw_team *team, bw_units units, FILE *out, bw_error *error) {
    const bool m = units == BW_METRES;
    const char *const header[] = {"id",
                                  "date",
                                  "opponent",
                                  "field",
                                  "time",
                                  "offence",
                                  "defence",
                                  "outcome",
                                  "seconds",
                                  "passes",
                                  m ? "shot_x_m" : "shot_x_yd",
                                  m ? "shot_y_m" : "shot_y_yd",
                                  "out",
                                  "stage",
                                  "revision",
                                  "note",
                                  NULL};
    bw_game *games;
    bw_entry *entries = NULL;
    int game_count, count = 0;
    bw_status status = bw_team_games(team, &games, &game_count, error);
    if (status != BW_OK) return status;
    status = bw_team_entries(team, NULL, &entries, &count, error);
    if (status == BW_OK) put_header(out, header);
    for (int i = 0; i < count; i++)
        put_entry(out, &entries[i], game_of(games, game_count, entries[i].game), units);
    free(entries);
    free(games);
    return status;
}

bw_status bw_team_export(bw_team *team, bw_csv_sheet sheet, bw_units units, FILE *out,
                         bw_error *error) {
    switch (sheet) {
    case BW_SHEET_ROSTER: return export_roster(team, out, error);
    case BW_SHEET_SPLITS: return export_splits(team, units, out, error);
    default: return export_breaks(team, units, out, error);
    }
}
