/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a team file keeps of its own ways: a few named texts.
#ifndef BW_TEAM_SETTINGS_H
#define BW_TEAM_SETTINGS_H

#include "team/team.h"
#include <stdbool.h>

enum { BW_SETTING_SIZE = 256 }; ///< bytes of a value, terminator included

#define BW_SETTING_TEAM "team"   ///< what the team is called
#define BW_SETTING_ABOUT "about" ///< a line that stands on every review

/// The value of a setting (1 to 31 small letters or "-"), "" when it is not set.
bw_status bw_team_setting(bw_team *team, const char *name, char *value, size_t room,
                          bw_error *error);

/// One line of text; "" unsets it.
bw_status bw_team_set(bw_team *team, const char *name, const char *value, bw_error *error);

/// Whether full names may be kept. They may not unless the coach turned them on: players are minors, and
/// a jersey number with initials is enough for all that is computed.
bw_status bw_team_names(bw_team *team, bool *on, bw_error *error);

/// Turning them off erases every full name from the file for good (see scrub.h).
bw_status bw_team_allow_names(bw_team *team, bool on, bw_error *error);

#endif
