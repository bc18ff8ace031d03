/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The table of what can be asked for beside the page itself: by the coach, by a phone, by anybody. Private to this room.
#ifndef BW_SERVE_ROUTE_H
#define BW_SERVE_ROUTE_H

#include "serve/request.h"

typedef struct bw_route {
    const char *method;
    const char *path; ///< "#" stands for a number from 1
    bw_rights rights; ///< that it takes
    size_t room;      ///< bytes of body at most
    bool waits; ///< for a disk, the team file or a computation: answered without the site's lock
    bw_reply (*answer)(bw_site *site, bw_ask *ask);
} bw_route;

/// The route for a method and path, its number in *id. NULL: *allow has the methods there are for this
/// path, or is NULL when there is no such path.
const bw_route *bw_route_find(const char *method, const char *path, int *id, const char **allow);

/// Number `index` of the table; NULL past the last.
const bw_route *bw_route_at(int index);

bw_reply bw_on_hello(bw_site *site, bw_ask *ask);
bw_reply bw_on_start(bw_site *site, bw_ask *ask);
bw_reply bw_on_join(bw_site *site, bw_ask *ask);
bw_reply bw_on_scheme(bw_site *site, bw_ask *ask);
bw_reply bw_on_save(bw_site *site, bw_ask *ask);
bw_reply bw_on_share(bw_site *site, bw_ask *ask);
bw_reply bw_on_share_start(bw_site *site, bw_ask *ask);
bw_reply bw_on_share_stop(bw_site *site, bw_ask *ask);
bw_reply bw_on_remove(bw_site *site, bw_ask *ask);
bw_reply bw_on_team(bw_site *site, bw_ask *ask);
bw_reply bw_on_game(bw_site *site, bw_ask *ask);
bw_reply bw_on_player(bw_site *site, bw_ask *ask);
bw_reply bw_on_split(bw_site *site, bw_ask *ask);
bw_reply bw_on_places(bw_site *site, bw_ask *ask);
bw_reply bw_on_forget(bw_site *site, bw_ask *ask);
bw_reply bw_on_entries(bw_site *site, bw_ask *ask);
bw_reply bw_on_entries_post(bw_site *site, bw_ask *ask);
bw_reply bw_on_entry_change(bw_site *site, bw_ask *ask);
bw_reply bw_on_entry_remove(bw_site *site, bw_ask *ask);
bw_reply bw_on_review(bw_site *site, bw_ask *ask);
bw_reply bw_on_job_start(bw_site *site, bw_ask *ask);
bw_reply bw_on_job(bw_site *site, bw_ask *ask);
bw_reply bw_on_job_file(bw_site *site, bw_ask *ask);
bw_reply bw_on_job_cancel(bw_site *site, bw_ask *ask);

#endif
