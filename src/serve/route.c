/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/route.h"

#include "core/text.h"
#include "scheme/tree.h"
#include "serve/team_form.h"
#include <string.h>

enum { SMALL = 64, FORM = 4096 };

static const bw_route routes[] = {
    {"GET", "/api/hello", BW_STRANGER, 0, false, bw_on_hello},
    {"POST", "/api/start", BW_STRANGER, SMALL, false, bw_on_start},
    {"POST", "/api/join", BW_STRANGER, SMALL, false, bw_on_join},
    {"GET", "/api/scheme", BW_PLAYER, 0, true, bw_on_scheme},
    {"PUT", "/api/scheme", BW_COACH, BW_DOCUMENT_BYTES, true, bw_on_save},
    {"GET", "/api/share", BW_COACH, 0, false, bw_on_share},
    {"POST", "/api/share", BW_COACH, 0, false, bw_on_share_start},
    {"DELETE", "/api/share", BW_COACH, 0, false, bw_on_share_stop},
    {"DELETE", "/api/devices/#", BW_COACH, 0, false, bw_on_remove},
    {"GET", "/api/team", BW_COACH, 0, true, bw_on_team},
    {"POST", "/api/team/games", BW_COACH, FORM, true, bw_on_game},
    {"POST", "/api/team/players", BW_COACH, FORM, true, bw_on_player},
    {"POST", "/api/team/splits", BW_COACH, FORM, true, bw_on_split},
    {"POST", "/api/team/places", BW_COACH, FORM, true, bw_on_places},
    {"POST", "/api/team/forget", BW_COACH, BW_SENT_ROOM, true, bw_on_forget},
    {"GET", "/api/team/entries", BW_COACH, 0, true, bw_on_entries},
    {"POST", "/api/team/entries", BW_COACH, BW_SENT_ROOM, true, bw_on_entries_post},
    {"PUT", "/api/team/entries/#", BW_COACH, FORM, true, bw_on_entry_change},
    {"DELETE", "/api/team/entries/#", BW_COACH, 0, true, bw_on_entry_remove},
    {"GET", "/api/team/review", BW_COACH, 0, true, bw_on_review},
    {"POST", "/api/jobs", BW_COACH, BW_DOCUMENT_BYTES, true, bw_on_job_start},
    {"GET", "/api/jobs/#", BW_COACH, 0, true, bw_on_job},
    {"DELETE", "/api/jobs/#", BW_COACH, 0, true, bw_on_job_cancel},
    {"GET", "/api/jobs/#/file", BW_COACH, 0, true, bw_on_job_file},
};

/// Whether a path is of a pattern's form, with the number where the pattern has "#".
static bool matches(const char *pattern, const char *path, int *id) {
    *id = 0;
    for (; *pattern; pattern++) {
        if (*pattern != '#') {
            if (*path++ != *pattern) return false;
            continue;
        }
        if (*path < '1' || *path > '9') return false;
        for (int digits = 0; *path >= '0' && *path <= '9'; digits++, path++) {
            if (digits == 7) return false;
            *id = *id * 10 + (*path - '0');
        }
    }
    return *path == '\0';
}

static const char *methods_of(bool get, bool put, bool post, bool delete) {
    if (get && put) return "GET, HEAD, PUT";
    if (get && post && delete) return "GET, HEAD, POST, DELETE";
    if (get && post) return "GET, HEAD, POST";
    if (get && delete) return "GET, HEAD, DELETE";
    if (get) return "GET, HEAD";
    if (put) return "PUT, DELETE";
    return post ? "POST" : "DELETE";
}

const bw_route *bw_route_find(const char *method, const char *path, int *id, const char **allow) {
    const char *wanted = bw_is_reading(method) ? "GET" : method;
    bool get = false, put = false, post = false, delete = false;
    for (int i = 0; i < BW_COUNT(routes); i++) {
        if (!matches(routes[i].path, path, id)) continue;
        if (bw_same(routes[i].method, wanted)) return &routes[i];
        get |= bw_same(routes[i].method, "GET");
        put |= bw_same(routes[i].method, "PUT");
        post |= bw_same(routes[i].method, "POST");
        delete |= bw_same(routes[i].method, "DELETE");
    }
    *allow = get || put || post || delete ? methods_of(get, put, post, delete) : NULL;
    return NULL;
}

const bw_route *bw_route_at(int index) {
    return index >= 0 && index < BW_COUNT(routes) ? &routes[index] : NULL;
}
