/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The team file while the board is open on it. It is opened anew for each request, so that other
/// programs can work in it at the same time, and nothing of it stays in memory.
#ifndef BW_SERVE_TEAM_DESK_H
#define BW_SERVE_TEAM_DESK_H

#include "serve/form.h"
#include "serve/site.h"
#include "team/team.h"

/// Opens it; NULL with the refusal in *answer: also when the target's value "mark" is not this file's.
bw_team *bw_desk_open(const bw_site *site, const bw_ask *ask, bw_team_mode mode, bw_reply *answer);

/// What tells this team's file from another's, so that breaks which a browser still holds never go into the
/// wrong one. Made when it is first asked for.
bw_status bw_desk_mark(bw_team *team, char mark[BW_SECRET_SIZE], bw_error *error);

/// What a team file's sentence is answered with.
bw_reply bw_desk_refusal(const bw_error *error);

/// Reads the body as one JSON value with one of the readers of serve/team_form.h into *out, and opens the file.
/// NULL with the refusal in *answer.
bw_team *bw_desk_take(const bw_site *site, const bw_ask *ask, bw_team_mode mode,
                      bool (*read)(const bw_form *form, void *out), void *out, bw_reply *answer);

#endif
