/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/roster.h"
#include "core/entry.h"
#include "core/text.h"
#include "team/settings.h"
#include "team/sql.h"
#include <stdlib.h>
#include <string.h>

static bool spot_good(const char *spot) {
    // Digits alone would be a jersey number where men out of place are named.
    return bw_entry_who(spot) && strspn(spot, "0123456789") < strlen(spot);
}

static const char *fault_in_spots(const bw_player *p) {
    if (p->spot_count < 0 || p->spot_count > BW_MAX_PLAYER_SPOTS)
        return "a player has at most 8 spots";
    for (int i = 0; i < p->spot_count; i++) {
        if (!spot_good(p->spots[i].spot))
            return "a spot is a code of 1 to 3 letters or digits, such as TL";
        for (int k = 0; k < i; k++) {
            if (strcmp(p->spots[i].spot, p->spots[k].spot) == 0)
                return "a spot is named twice for one player";
        }
    }
    return NULL;
}

/// At most four letters: longer ones would be a name.
static bool initials_short(const char *initials) {
    int letters = 0;
    for (const char *c = initials; *c; c++)
        letters += !strchr(". -", *c) && ((unsigned char)*c & 0xc0) != 0x80;
    return letters <= 4;
}

static const char *fault(const bw_player *p, bool names) {
    if (p->jersey < 0 || p->jersey > BW_MAX_JERSEY) return "a jersey number is from 0 to 999";
    if (!bw_text_plain(p->initials) || !bw_text_plain(p->name))
        return "initials and name are each one line of UTF-8 text";
    if (bw_text_hidden(p->initials) || bw_text_hidden(p->name))
        return "initials and name hold no invisible characters that turn or hide letters; type "
               "them anew";
    if (!initials_short(p->initials)) return "initials are at most 4 letters";
    if (p->name[0] && !names)
        return "full names are not kept unless they are turned on: team set FILE full-names on";
    return fault_in_spots(p);
}

static bw_status check(bw_team *team, const bw_player *p, bw_error *error) {
    bool names;
    bw_status status = bw_team_names(team, &names, error);
    if (status != BW_OK) return status;
    const char *found = fault(p, names);
    return found ? bw_team_fail(error, BW_BAD_INPUT, "%s", found) : BW_OK;
}

static bw_status put_row(bw_team *team, const bw_player *p, bw_error *error) {
    bw_sql q = bw_sql_of(team, "INSERT INTO player (jersey, initials, name) VALUES (?, ?, ?)"
                               " ON CONFLICT (jersey) DO UPDATE SET initials = excluded.initials,"
                               " name = excluded.name");
    bw_sql_int(&q, p->jersey);
    bw_sql_text(&q, p->initials[0] ? p->initials : NULL);
    bw_sql_text(&q, p->name[0] ? p->name : NULL);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

static bw_status put_spots(bw_team *team, const bw_player *p, bw_error *error) {
    bw_sql gone = bw_sql_of(team, "DELETE FROM player_spot WHERE player ="
                                  " (SELECT id FROM player WHERE jersey = ?)");
    bw_sql_int(&gone, p->jersey);
    bw_sql_again(&gone);
    const bw_status status = bw_sql_end(&gone, error);
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, "INSERT INTO player_spot (player, place, spot, fixed)"
                               " SELECT id, ?, ?, ? FROM player WHERE jersey = ?");
    for (int i = 0; i < p->spot_count; i++) {
        bw_sql_int(&q, i);
        bw_sql_text(&q, p->spots[i].spot);
        bw_sql_int(&q, p->spots[i].fixed);
        bw_sql_int(&q, p->jersey);
        bw_sql_again(&q);
    }
    return bw_sql_end(&q, error);
}

bw_status bw_team_put_player(bw_team *team, const bw_player *player, bw_error *error) {
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = check(team, player, error);
    if (status == BW_OK) status = put_row(team, player, error);
    if (status == BW_OK) status = put_spots(team, player, error);
    return bw_team_end(team, status, error);
}

/// A row for each spot of each player, and one for a player without any.
static const char everyone[] =
    "SELECT jersey, initials, name, spot, fixed FROM player LEFT JOIN player_spot"
    " ON player_spot.player = player.id WHERE ?1 < 0 OR jersey = ?1 ORDER BY jersey, place";

static void take_player(const bw_sql *q, bw_player *p) {
    *p = (bw_player){.jersey = (int)bw_sql_int_at(q, 0)};
    bw_sql_text_at(q, 1, p->initials, sizeof p->initials);
    bw_sql_text_at(q, 2, p->name, sizeof p->name);
}

static void take_spot(const bw_sql *q, bw_player *p) {
    if (bw_sql_null_at(q, 3) || p->spot_count == BW_MAX_PLAYER_SPOTS) return;
    bw_player_spot *spot = &p->spots[p->spot_count++];
    bw_sql_text_at(q, 3, spot->spot, sizeof spot->spot);
    spot->fixed = bw_sql_int_at(q, 4) != 0;
}

/// The players with this number, or all of them when it is negative.
static bw_status select(bw_team *team, int jersey, bw_player **list, int *count, bw_error *error) {
    *list = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, everyone);
    bw_sql_int(&q, jersey);
    while (bw_sql_row(&q)) {
        if (*count == 0 || (*list)[*count - 1].jersey != (int)bw_sql_int_at(&q, 0)) {
            if (!bw_sql_grow(&q, (void **)list, *count, sizeof **list)) break;
            take_player(&q, &(*list)[(*count)++]);
        }
        take_spot(&q, &(*list)[*count - 1]);
    }
    return bw_sql_end_list(&q, (void **)list, count, error);
}

bw_status bw_team_players(bw_team *team, bw_player **list, int *count, bw_error *error) {
    return select(team, -1, list, count, error);
}

bw_status bw_team_player(bw_team *team, int jersey, bw_player *player, bw_error *error) {
    bw_player *list;
    int count;
    const bw_status status =
        select(team, jersey < 0 ? BW_MAX_JERSEY + 1 : jersey, &list, &count, error);
    if (status != BW_OK) return status;
    if (count > 0) *player = list[0];
    free(list);
    return count > 0
               ? BW_OK
               : bw_team_fail(error, BW_NOT_FOUND, "nobody on the roster wears number %d", jersey);
}
