/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/session.h"

#include <string.h>

bool bw_sessions_launch(bw_sessions *sessions) {
    return bw_secret_make(sessions->launch);
}

/// A place for one more of this kind: a free one while there are not too many of them, or else that of
/// the one seen longest ago.
static bw_session *place_for(bw_sessions *sessions, bw_rights rights) {
    bw_session *spare = NULL, *oldest = NULL;
    int count = 0;
    for (int i = 0; i < BW_MAX_SESSIONS; i++) {
        bw_session *s = &sessions->list[i];
        if (!s->secret[0]) {
            spare = s;
        } else if (s->rights == rights) {
            count++;
            if (!oldest || s->seen < oldest->seen) oldest = s;
        }
    }
    return count < (rights == BW_COACH ? BW_MAX_COACHES : BW_MAX_PLAYERS) ? spare : oldest;
}

static bw_session *begin(bw_sessions *sessions, bw_rights rights, double now) {
    bw_session fresh = {.rights = rights, .joined = now, .seen = now};
    if (!bw_secret_make(fresh.secret)) return NULL;
    bw_session *s = place_for(sessions, rights);
    fresh.id = ++sessions->given;
    *s = fresh;
    return s;
}

bool bw_sessions_may_start(const bw_sessions *sessions, const char *token) {
    return bw_secret_same(sessions->launch, token);
}

const bw_session *bw_sessions_start(bw_sessions *sessions, const char *token, double now) {
    if (!bw_sessions_may_start(sessions, token)) return NULL;
    const bw_session *coach = begin(sessions, BW_COACH, now);
    if (coach) sessions->launch[0] = '\0';
    return coach;
}

const bw_session *bw_sessions_admit(bw_sessions *sessions, const char *address, const char *device,
                                    double now) {
    bw_session *player = begin(sessions, BW_PLAYER, now);
    if (!player) return NULL;
    bw_copy(player->address, sizeof player->address, address);
    bw_copy(player->device, sizeof player->device, device);
    return player;
}

const bw_session *bw_sessions_find(bw_sessions *sessions, const char *secret, double now) {
    bw_session *found = NULL;
    for (int i = 0; i < BW_MAX_SESSIONS; i++) {
        if (bw_secret_same(sessions->list[i].secret, secret)) found = &sessions->list[i];
    }
    if (found) found->seen = now;
    return found;
}

bool bw_sessions_remove(bw_sessions *sessions, int id) {
    for (int i = 0; i < BW_MAX_SESSIONS; i++) {
        bw_session *s = &sessions->list[i];
        if (s->id != id || s->rights != BW_PLAYER || !s->secret[0]) continue;
        memset(s, 0, sizeof *s);
        return true;
    }
    return false;
}

void bw_sessions_remove_players(bw_sessions *sessions) {
    for (int i = 0; i < BW_MAX_SESSIONS; i++)
        bw_sessions_remove(sessions, sessions->list[i].id);
}
