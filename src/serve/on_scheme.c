/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The coach's file: read and saved.
#include "core/text.h"
#include "serve/route.h"
#include <string.h>

bw_reply bw_on_scheme(bw_site *site, bw_ask *ask) {
    (void)ask;
    if (!site->store.path) return bw_reply_words(404, "The board was opened without a file.");
    bw_bytes text;
    bw_error error;
    char tag[BW_TAG_SIZE];
    if (bw_store_read(&site->store, &text.data, &text.length, tag, &error) != BW_OK)
        return bw_reply_error(500, &error);
    bw_reply answer = bw_reply_bytes("application/json", text);
    memcpy(answer.tag, tag, sizeof tag);
    return answer;
}

bw_reply bw_on_save(bw_site *site, bw_ask *ask) {
    if (!site->store.path) return bw_reply_words(404, "The board was opened without a file.");
    if (!ask->heads.matches)
        return bw_reply_words(428, "Say with If-Match which text this one goes over.");
    char tag[BW_TAG_SIZE];
    bw_copy(tag, sizeof tag, ask->heads.match);
    bw_error error;
    switch (bw_store_save(&site->store, ask->body, ask->length, tag, &error)) {
    case BW_SAVE_WRONG: return bw_reply_error(422, &error);
    case BW_SAVE_CHANGED: return bw_reply_error(412, &error);
    case BW_SAVE_FAILED: return bw_reply_error(500, &error);
    default: break;
    }
    bw_reply answer = bw_reply_words(200, "Saved.");
    memcpy(answer.tag, tag, sizeof tag);
    return answer;
}
