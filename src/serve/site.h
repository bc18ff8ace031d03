/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the server knows, without sockets: requests go in, answers come out. Any thread may ask, and no
/// request waits for another's wait: what is in memory is answered under one lock, what waits for a disk,
/// for the team file or for a computation is answered without it (route.h).
#ifndef BW_SERVE_SITE_H
#define BW_SERVE_SITE_H

#include "serve/request.h"

/// The scheme file and the team file it is opened on; NULL: none.
void bw_site_open(bw_site *site, const char *path, const char *team);
void bw_site_close(bw_site *site);

/// Looks at a request before its body comes. 0: let it come, at most *room bytes; otherwise *answer is
/// what to send at once.
int bw_site_admit(bw_site *site, bw_ask *ask, size_t *room, bw_reply *answer);

/// Answers a request that was admitted and is all there. Whoever was let in may have been taken out in
/// the meantime, so the session is looked up again.
bw_reply bw_site_answer(bw_site *site, bw_ask *ask);

#endif
