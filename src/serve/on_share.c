/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sharing as the coach's page shows it, the devices that joined, and what players sent.
#include "core/text.h"
#include "serve/qr.h"
#include "serve/route.h"

/// The picture as rows of "0" and "1", 1 for dark.
static void put_qr(bw_json *json, const bw_share *share) {
    char link[BW_ADDRESS_LINE + 32], row[BW_QR_SIDE + 1];
    bw_text t = bw_text_in(link, sizeof link);
    bw_share_link(share, &t);
    bw_qr qr;
    if (!bw_qr_make(link, &qr)) return;
    bw_json_put_open(json, "qr", '[');
    for (int i = 0; i < qr.side; i++) {
        for (int k = 0; k < qr.side; k++)
            row[k] = qr.dark[i][k] ? '1' : '0';
        row[qr.side] = '\0';
        bw_json_text(json, row);
    }
    bw_json_close(json, ']');
}

static void put_devices(bw_json *json, const bw_sessions *sessions, double now) {
    bw_json_put_open(json, "devices", '[');
    for (int i = 0; i < BW_MAX_SESSIONS; i++) {
        const bw_session *s = &sessions->list[i];
        if (!s->secret[0] || s->rights != BW_PLAYER) continue;
        bw_json_open(json, '{');
        bw_json_put_number(json, "id", s->id);
        bw_json_put_text(json, "name", s->device);
        bw_json_put_text(json, "address", s->address);
        bw_json_put_number(json, "joined_s_ago", now - s->joined);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

bw_reply bw_on_share(bw_site *site, bw_ask *ask) {
    bw_share *share = &site->share;
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_bool(&out.json, "wanted", share->wanted);
    bw_json_put_bool(&out.json, "open", share->open);
    bw_json_put_text(&out.json, "refused", share->refused);
    if (share->open && bw_join_keep(&share->join, ask->now)) {
        char code[BW_CODE_SIZE + 1];
        bw_text t = bw_text_in(code, sizeof code);
        bw_join_put(&share->join, &t);
        bw_json_put_text(&out.json, "address", share->base);
        bw_json_put_text(&out.json, "code", code);
        bw_json_put_number(&out.json, "code_s_left", bw_join_left(&share->join, ask->now));
        bw_json_put_number(&out.json, "share_s_left", share->until - ask->now);
        put_qr(&out.json, share);
    }
    put_devices(&out.json, &site->sessions, ask->now);
    return bw_reply_json_end(&out, 200);
}

bw_reply bw_on_share_start(bw_site *site, bw_ask *ask) {
    int minutes;
    if (!bw_target_number(&ask->target, "minutes", 1, BW_SHARE_MINUTES_MAX, BW_SHARE_MINUTES,
                          &minutes))
        return bw_reply_words(400, "minutes is a whole number from 1 to 720.");
    bw_share_want(&site->share, minutes, ask->now);
    return bw_reply_words(202, "Sharing begins.");
}

bw_reply bw_on_share_stop(bw_site *site, bw_ask *ask) {
    (void)ask;
    site->share.wanted = false;
    bw_sessions_remove_players(&site->sessions);
    return bw_reply_words(202, "Sharing ends; every device has been removed.");
}

bw_reply bw_on_remove(bw_site *site, bw_ask *ask) {
    if (bw_sessions_remove(&site->sessions, ask->id)) return bw_reply_words(200, "Removed.");
    return bw_reply_words(404, "There is no such device.");
}
