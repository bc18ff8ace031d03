/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Begin and end: several calls as one.
#include "team/sql.h"

bw_status bw_team_begin(bw_team *team, bw_error *error) {
    if (team->mode == BW_TEAM_READ)
        return bw_team_fail(error, BW_FILE, "it was opened only to be read");
    if (team->depth == 0) {
        // IMMEDIATE: a writer that waits, waits here, before anything is done.
        const bw_status status = bw_sql_run(team, "BEGIN IMMEDIATE", error);
        if (status != BW_OK) return status;
        team->spoiled = false;
    }
    team->depth++;
    return BW_OK;
}

bw_status bw_team_end(bw_team *team, bw_status status, bw_error *error) {
    if (status != BW_OK) team->spoiled = true;
    if (--team->depth > 0) return status;
    if (!team->spoiled) {
        const bw_status kept = bw_sql_run(team, "COMMIT", error);
        if (kept == BW_OK) return BW_OK;
        status = kept;
    }
    // A full disk may have taken it back already; then this does nothing.
    sqlite3_exec(team->db, "ROLLBACK", NULL, NULL, NULL);
    return status == BW_OK ? bw_team_fail(error, BW_BAD_INPUT, "a part of it failed") : status;
}
