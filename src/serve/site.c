/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/site.h"

#include "core/text.h"
#include "serve/assets.h"
#include "serve/route.h"
#include <string.h>

void bw_site_open(bw_site *site, const char *path, const char *team) {
    memset(site, 0, sizeof *site);
    pthread_mutex_init(&site->lock, NULL);
    bw_store_open(&site->store, path);
    site->team = team;
    site->rate.burst = 200;
    site->rate.per_second = 40;
    bw_job_open(&site->job);
}

void bw_site_close(bw_site *site) {
    bw_job_close(&site->job);
    bw_store_close(&site->store);
    pthread_mutex_destroy(&site->lock);
}

static int refuse(bw_reply *answer, int status, const char *sentence) {
    *answer = bw_reply_words(status, sentence);
    return status;
}

static int not_allowed(bw_reply *answer, const char *allow) {
    refuse(answer, 405, "That cannot be done here.");
    answer->allow = allow;
    return 405;
}

/// Which part of the page or which route it is.
static int find(bw_ask *ask, bw_reply *answer) {
    ask->asset = bw_asset_find(ask->target.path);
    if (ask->asset) return bw_is_reading(ask->method) ? 0 : not_allowed(answer, "GET, HEAD");
    const char *allow = NULL;
    ask->route = bw_route_find(ask->method, ask->target.path, &ask->id, &allow);
    if (ask->route) return 0;
    return allow ? not_allowed(answer, allow) : refuse(answer, 404, "There is nothing here.");
}

/// Who asks: the coach only at this computer, players only on the network.
static void look_up(bw_site *site, bw_ask *ask) {
    const bw_session *s =
        ask->heads.secrets ? bw_sessions_find(&site->sessions, ask->heads.secret, ask->now) : NULL;
    ask->session = NULL;
    if (!s || (s->rights == BW_PLAYER) != ask->door->shared) return;
    ask->who = *s;
    ask->session = &ask->who;
}

/// Requests are counted by who asks, so that nobody can use up what another is allowed: each session for
/// itself; our page before it has been let in; and all else that comes from an address, such as the pages
/// of others in the coach's own browser.
static bool within_rate(bw_site *site, const bw_ask *ask) {
    char name[BW_RATE_NAME_SIZE];
    bw_text t = bw_text_in(name, sizeof name);
    if (ask->session) {
        bw_put(&t, "session ");
        bw_put_int(&t, ask->session->id);
    } else {
        if (bw_from_own_page(ask->door, &ask->heads)) bw_put(&t, "page ");
        bw_put(&t, ask->address);
    }
    return bw_rate_allow(&site->rate, name, ask->now);
}

static int authorise(const bw_ask *ask, bw_reply *answer) {
    const bw_rights rights = ask->session ? ask->session->rights : BW_STRANGER;
    if (!ask->route || rights >= ask->route->rights) return 0;
    if (rights == BW_PLAYER) return refuse(answer, 403, "Only the coach may do that.");
    return refuse(answer, 403,
                  ask->door->shared ? "Join first, with the code on the coach's screen."
                                    : "Open the board with the address that the program printed.");
}

int bw_site_admit(bw_site *site, bw_ask *ask, size_t *room, bw_reply *answer) {
    const char *why = NULL;
    *room = 0;
    ask->route = NULL;
    ask->asset = NULL;
    pthread_mutex_lock(&site->lock);
    look_up(site, ask);
    const bool allowed = within_rate(site, ask);
    pthread_mutex_unlock(&site->lock);
    if (!allowed) return refuse(answer, 429, "Too many requests; wait a moment.");
    if (strlen(ask->method) > 7) return refuse(answer, 405, "That cannot be done here.");
    const bw_status read = bw_target_read(ask->raw, &ask->target);
    const bool api = read != BW_OK || !bw_asset_find(ask->target.path);
    int status = bw_guard(ask->door, ask->method, &ask->heads, api, &why);
    if (status) return refuse(answer, status, why);
    if (read != BW_OK) return refuse(answer, 404, "There is nothing at such an address.");
    status = find(ask, answer);
    if (!status) status = authorise(ask, answer);
    if (status) return status;
    if (ask->route) *room = ask->route->room;
    if (bw_heads_length(&ask->heads) > (long long)*room)
        return refuse(answer, 413, "That is more than may be sent here.");
    return 0;
}

bw_reply bw_site_answer(bw_site *site, bw_ask *ask) {
    if (ask->asset)
        return (bw_reply){.status = 200,
                          .type = ask->asset->type,
                          .fixed = ask->asset->begin,
                          .length = bw_asset_length(ask->asset)};
    bw_reply answer;
    pthread_mutex_lock(&site->lock);
    look_up(site, ask);
    const bool refused = authorise(ask, &answer) != 0;
    if (!refused && !ask->route->waits) answer = ask->route->answer(site, ask);
    pthread_mutex_unlock(&site->lock);
    if (!refused && ask->route->waits) answer = ask->route->answer(site, ask);
    return answer;
}
