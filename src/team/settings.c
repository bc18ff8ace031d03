/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/settings.h"
#include "core/text.h"
#include "team/scrub.h"
#include "team/sql.h"
#include <string.h>

static const char names[] = "full-names";

static bool name_good(const char *name) {
    const size_t length = strspn(name, "abcdefghijklmnopqrstuvwxyz-");
    return length > 0 && length < 32 && name[length] == '\0';
}

bw_status bw_team_setting(bw_team *team, const char *name, char *value, size_t room,
                          bw_error *error) {
    bw_sql q = bw_sql_of(team, "SELECT value FROM setting WHERE name = ?");
    bw_sql_text(&q, name);
    bw_copy(value, room, "");
    if (bw_sql_row(&q)) bw_sql_text_at(&q, 0, value, room);
    return bw_sql_end(&q, error);
}

bw_status bw_team_set(bw_team *team, const char *name, const char *value, bw_error *error) {
    if (!name_good(name))
        return bw_team_fail(error, BW_BAD_INPUT,
                            "a setting's name has from 1 to 31 small letters or \"-\"");
    if (!bw_text_plain(value) || strlen(value) >= BW_SETTING_SIZE)
        return bw_team_fail(error, BW_BAD_INPUT,
                            "a setting is one line of UTF-8 text of at most %d bytes",
                            BW_SETTING_SIZE - 1);
    if (bw_text_hidden(value))
        return bw_team_fail(error, BW_BAD_INPUT,
                            "a setting holds no invisible characters that turn or hide letters; "
                            "type it anew");
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    bw_sql q = value[0]
                   ? bw_sql_of(team, "INSERT INTO setting (name, value) VALUES (?, ?)"
                                     " ON CONFLICT (name) DO UPDATE SET value = excluded.value")
                   : bw_sql_of(team, "DELETE FROM setting WHERE name = ?");
    bw_sql_text(&q, name);
    if (value[0]) bw_sql_text(&q, value);
    bw_sql_again(&q);
    status = bw_sql_end(&q, error);
    return bw_team_end(team, status, error);
}

bw_status bw_team_names(bw_team *team, bool *on, bw_error *error) {
    char value[BW_SETTING_SIZE];
    const bw_status status = bw_team_setting(team, names, value, sizeof value, error);
    *on = strcmp(value, "on") == 0;
    return status;
}

bw_status bw_team_allow_names(bw_team *team, bool on, bw_error *error) {
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = bw_team_set(team, names, on ? "on" : "", error);
    if (status == BW_OK && !on) status = bw_sql_run(team, "UPDATE player SET name = NULL", error);
    status = bw_team_end(team, status, error);
    return status == BW_OK && !on ? bw_team_scrub(team, error) : status;
}
