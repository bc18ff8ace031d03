/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What was deleted is gone from the bytes of the file too.
#ifndef BW_TEAM_SCRUB_H
#define BW_TEAM_SCRUB_H

#include "team/team.h"

/// Writes the file anew without anything that was deleted, and empties the log beside it.
bw_status bw_team_scrub(bw_team *team, bw_error *error);

#endif
