/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/scrub.h"
#include "team/sql.h"

/// secure_delete zeroes what is deleted, VACUUM leaves out free pages, and the log, which still has old
/// pages, is cut to nothing. Another reader can hold the log: then its traces stay, and that is said.
bw_status bw_team_scrub(bw_team *team, bw_error *error) {
    bw_status status = bw_sql_run(team, "VACUUM", error);
    int64_t held = 0;
    if (status == BW_OK)
        status = bw_sql_number(team, "PRAGMA wal_checkpoint(TRUNCATE)", 0, &held, error);
    if (status == BW_OK && held != 0)
        status = bw_team_fail(error, BW_FILE,
                              "it is deleted, but another program has the file open, so traces are "
                              "left in it; close that program and run team scrub");
    return status;
}
