/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Tables out of the team file, for a spreadsheet: the columns that import.h reads, in CSV (csv.h). What
/// is exported is no longer under the care of the team file.
#ifndef BW_TEAM_EXPORT_H
#define BW_TEAM_EXPORT_H

#include "core/scheme.h"
#include "team/import.h"
#include <stdio.h>

/// Writes the whole sheet, lengths in this unit. Full names are written only where they are kept. Whether
/// the stream took it all, ferror() tells.
bw_status bw_team_export(bw_team *team, bw_csv_sheet sheet, bw_units units, FILE *out,
                         bw_error *error);

#endif
