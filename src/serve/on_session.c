/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Being let in, and saying what is here.
#include "core/text.h"
#include "serve/route.h"

static bw_reply no_random(void) {
    return bw_reply_words(500, "The system has no random numbers to give.");
}

static const char *rights_name(bw_rights rights) {
    switch (rights) {
    case BW_COACH: return "coach";
    case BW_PLAYER: return "player";
    default: return "nobody";
    }
}

bw_reply bw_on_hello(bw_site *site, bw_ask *ask) {
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_text(&out.json, "server", "breakwater");
    bw_json_put_text(&out.json, "version", BW_VERSION);
    bw_json_put_text(&out.json, "rights",
                     rights_name(ask->session ? ask->session->rights : BW_STRANGER));
    bw_json_put_bool(&out.json, "shared", ask->door->shared);
    bw_json_put_bool(&out.json, "scheme", site->store.path != NULL);
    const bool coach = ask->session && ask->session->rights == BW_COACH;
    bw_json_put_bool(&out.json, "team", coach && site->team != NULL);
    bw_json_put_text(&out.json, "name",
                     coach && site->store.path ? bw_store_name(&site->store) : "");
    return bw_reply_json_end(&out, 200);
}

static bw_reply let_in(const bw_session *session) {
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_text(&out.json, "secret", session->secret);
    bw_json_put_text(&out.json, "rights", rights_name(session->rights));
    return bw_reply_json_end(&out, 200);
}

/// The body as text; what is too long for the room is cut, and is then wrong.
static void body_text(const bw_ask *ask, char *room, size_t size) {
    bw_text t = bw_text_in(room, size);
    bw_put_n(&t, ask->body, ask->length);
}

bw_reply bw_on_start(bw_site *site, bw_ask *ask) {
    char token[BW_SECRET_SIZE + 8];
    body_text(ask, token, sizeof token);
    if (ask->door->shared)
        return bw_reply_words(403, "The coach's page opens on the coach's computer only.");
    if (!bw_sessions_may_start(&site->sessions, token))
        return bw_reply_words(403, "That address has been used already. Press Enter where the "
                                   "program runs, and open the new one.");
    const bw_session *coach = bw_sessions_start(&site->sessions, token, ask->now);
    return coach ? let_in(coach) : no_random();
}

bw_reply bw_on_join(bw_site *site, bw_ask *ask) {
    char code[65];
    body_text(ask, code, sizeof code);
    if (!ask->door->shared || !site->share.open)
        return bw_reply_words(403, "Nothing is shared here.");
    const char *device = bw_target_value(&ask->target, "name");
    if (device && bw_text_length(device) >= BW_DEVICE_SIZE)
        return bw_reply_words(400, "A device's name has at most 24 letters.");
    switch (bw_join_try(&site->share.join, code, ask->address, ask->now)) {
    case BW_JOIN_WRONG:
        return bw_reply_words(403, "That is not the code, or it is no longer good; look at the "
                                   "coach's screen again.");
    case BW_JOIN_WAIT: return bw_reply_words(429, "Too many wrong codes from here; wait a minute.");
    case BW_JOIN_BROKEN: return no_random();
    default: break;
    }
    const bw_session *player =
        bw_sessions_admit(&site->sessions, ask->address, device ? device : "", ask->now);
    return player ? let_in(player) : no_random();
}
