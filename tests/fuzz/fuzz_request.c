/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any request at the site's door, without sockets: method and target in the first line, then heads,
/// then an empty line and the body. Nobody has a secret here, so nothing may be told but what strangers
/// are told, and every refusal is a sentence.
#include "core/text.h"
#include "serve/route.h"
#include "serve/site.h"
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

/// The next line of the input, cut to its room; *at moves past it.
static void line_of(const char **at, const char *end, char *out, size_t room) {
    const char *stop = memchr(*at, '\n', (size_t)(end - *at));
    if (!stop) stop = end;
    size_t n = (size_t)(stop - *at);
    if (n >= room) n = room - 1;
    memcpy(out, *at, n);
    out[n] = '\0';
    *at = stop < end ? stop + 1 : end;
}

/// What was taken for a path or a value has only the letters that are promised.
static void target_is_plain(const bw_target *target) {
    must(target->path[0] == '/' && !strstr(target->path, "//") && !strstr(target->path, ".."),
         "a path is plain");
    must(target->value_count <= BW_MAX_VALUES, "values are counted");
    for (int i = 0; i < target->value_count; i++) {
        must(bw_text_plain(target->values[i].value), "a value is one line");
        must(bw_target_value(target, target->values[i].name) == target->values[i].value,
             "a name stands once");
    }
}

static void look_at(bw_reply *reply) {
    must(reply->status >= 200 && reply->status < 600 && reply->type, "an answer has a status");
    const char *bytes = reply->fixed ? reply->fixed : reply->own.data;
    must(reply->length > 0 && bytes, "an answer has something in it");
    if (reply->status >= 400)
        must(reply->length > 2 && memchr(".?!", bytes[reply->length - 2], 3) != NULL,
             "a refusal is a sentence");
    free(reply->own.data);
}

static void ask_site(bw_site *site, bw_ask *ask, const char *body, size_t length) {
    bw_reply reply;
    size_t room;
    const int refused = bw_site_admit(site, ask, &room, &reply);
    if (refused) {
        must(reply.status == refused, "the refusal is the one announced");
        look_at(&reply);
        return;
    }
    target_is_plain(&ask->target);
    must(!ask->session && (!ask->route || ask->route->rights == BW_STRANGER),
         "strangers get no further than the door");
    must(bw_is_reading(ask->method) || ask->heads.origins == 1, "writing takes an origin");
    char *copy = malloc(room + 1); // of the exact size, so that reading past it is seen
    if (!copy) return;
    const size_t n = length < room ? length : room;
    memcpy(copy, body, n);
    copy[n] = '\0';
    ask->body = copy;
    ask->length = n;
    reply = bw_site_answer(site, ask);
    look_at(&reply);
    free(copy);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static bw_site site;
    bw_door door = {false, 1, {"127.0.0.1:7460"}};
    bw_ask ask = {.door = &door, .now = 1, .address = "10.0.0.1"};
    const char *at = (const char *)data, *end = at + size;
    char first[400], line[400], *target;
    line_of(&at, end, first, sizeof first);
    target = strchr(first, ' ');
    if (!target) return 0;
    *target++ = '\0';
    ask.method = first;
    ask.raw = target;
    while (at < end && *at != '\n') {
        line_of(&at, end, line, sizeof line);
        char *value = strchr(line, ':');
        if (!value) continue;
        *value++ = '\0';
        while (*value == ' ')
            value++;
        bw_heads_note(&ask.heads, line, value);
    }
    if (at < end) at++;
    bw_site_open(&site, NULL, NULL);
    site.share.open = true;
    must(bw_join_renew(&site.share.join, 0) && bw_sessions_launch(&site.sessions), "secrets");
    ask_site(&site, &ask, at, (size_t)(end - at));
    door.shared = true;
    ask_site(&site, &ask, at, (size_t)(end - at));
    bw_site_close(&site);
    return 0;
}
