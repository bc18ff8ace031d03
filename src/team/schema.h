/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: the tables, and how an older file becomes one of today.
#ifndef BW_TEAM_SCHEMA_H
#define BW_TEAM_SCHEMA_H

#include "team/team.h"
#include <stdbool.h>

/// "BwTf" in the header of every team file (the SQLite application id).
#define BW_TEAM_APPLICATION 0x42775466

/// Steps from format k to format k + 1, each some constant statements.
typedef struct bw_steps {
    const char *const *step;
    int count;
} bw_steps;

/// The steps of this program: a file with none done is format 0.
bw_steps bw_team_steps(void);

/// Does the steps that the file still lacks, all in one transaction with its format number: whole or
/// not at all. A newer format is refused.
bw_status bw_team_migrate(bw_team *team, bw_steps steps, bw_error *error);

/// The format a file has.
bw_status bw_team_format(bw_team *team, int *format, bw_error *error);

/// Refuses a format this program does not know.
bw_status bw_team_known(int format, int known, bw_error *error);

/// Refuses a file whose tables are not word for word those the steps make: what this program reads is
/// what it wrote, with no view, trigger or computed column of anyone else's.
bw_status bw_team_tables_ours(bw_team *team, bw_error *error);

#endif
