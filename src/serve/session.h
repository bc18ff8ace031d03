/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who has been let in: the coach by a launch token that is good once, players by a join code. A
/// session is a secret that its page sends in a header of every request; there are no cookies, for
/// those go to every port of a machine.
#ifndef BW_SERVE_SESSION_H
#define BW_SERVE_SESSION_H

#include "core/base.h"
#include "serve/join.h"
#include "serve/secret.h"

/// Places for the coach's windows and for devices are apart, so that neither can take the other's. There
/// is always room for one more: where all places of a kind are taken, the session of that kind that has
/// asked for nothing for the longest time gives way.
enum {
    BW_MAX_COACHES = 128,
    BW_MAX_PLAYERS = 256,
    BW_MAX_SESSIONS = BW_MAX_COACHES + BW_MAX_PLAYERS,
    BW_DEVICE_SIZE = 25
};

/// What a session may do; each may do what stands before it.
typedef enum bw_rights {
    BW_STRANGER, ///< the page itself, and asking to be let in
    BW_PLAYER,   ///< read the scheme
    BW_COACH     ///< everything, on this computer only
} bw_rights;

typedef struct bw_session {
    int id; ///< from 1, never used twice
    bw_rights rights;
    char secret[BW_SECRET_SIZE]; ///< "" marks a free place
    char address[BW_ADDRESS_SIZE];
    char device[BW_DEVICE_SIZE]; ///< what the player calls it; may be ""
    double joined;               ///< s, on the caller's clock
    double seen;                 ///< when it last asked for something, s
} bw_session;

typedef struct bw_sessions {
    bw_session list[BW_MAX_SESSIONS];
    int given;                   ///< ids so far
    char launch[BW_SECRET_SIZE]; ///< "" once it is used
} bw_sessions;

/// A new launch token; the old one is void. False when there are no random numbers.
bool bw_sessions_launch(bw_sessions *sessions);

/// Whether this is the launch token, not yet used.
bool bw_sessions_may_start(const bw_sessions *sessions, const char *token);

/// Swaps the launch token for a coach's session; NULL when it is not the one or used, or when there are
/// no random numbers: then it is still good.
const bw_session *bw_sessions_start(bw_sessions *sessions, const char *token, double now);

/// Lets a player's device in; NULL when there are no random numbers.
const bw_session *bw_sessions_admit(bw_sessions *sessions, const char *address, const char *device,
                                    double now);

/// The session with this secret, which is thereby seen; or NULL.
const bw_session *bw_sessions_find(bw_sessions *sessions, const char *secret, double now);

/// Takes a player's rights away. False when there is no such player.
bool bw_sessions_remove(bw_sessions *sessions, int id);

/// Takes all players' rights away.
void bw_sessions_remove_players(bw_sessions *sessions);

#endif
