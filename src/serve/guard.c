/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/guard.h"

#include "core/text.h"
#include <string.h>
#include <strings.h>

static void note(int *count, char *room, size_t size, const char *value) {
    *count += bw_copy(room, size, value) ? 1 : 2;
}

void bw_heads_note(bw_heads *heads, const char *name, const char *value) {
    if (!value) value = "";
    if (strcasecmp(name, "Host") == 0)
        note(&heads->hosts, heads->host, sizeof heads->host, value);
    else if (strcasecmp(name, "Origin") == 0)
        note(&heads->origins, heads->origin, sizeof heads->origin, value);
    else if (strcasecmp(name, "Breakwater-Secret") == 0)
        note(&heads->secrets, heads->secret, sizeof heads->secret, value);
    else if (strcasecmp(name, "Sec-Fetch-Site") == 0)
        note(&heads->sites, heads->site, sizeof heads->site, value);
    else if (strcasecmp(name, "If-Match") == 0)
        note(&heads->matches, heads->match, sizeof heads->match, value);
    else if (strcasecmp(name, "Content-Length") == 0)
        note(&heads->lengths, heads->length, sizeof heads->length, value);
    else if (strcasecmp(name, "Transfer-Encoding") == 0)
        heads->codings++;
}

bool bw_is_reading(const char *method) {
    return strcmp(method, "GET") == 0 || strcmp(method, "HEAD") == 0;
}

long long bw_heads_length(const bw_heads *heads) {
    long long length = 0;
    if (heads->lengths == 0) return 0;
    for (const char *at = heads->length; *at; at++) {
        if (*at < '0' || *at > '9' || length > 1000000000) return -1;
        length = length * 10 + (*at - '0');
    }
    return heads->length[0] ? length : -1;
}

static bool known_host(const bw_door *door, const char *host) {
    for (int i = 0; i < door->name_count; i++) {
        if (strcmp(door->names[i], host) == 0) return true;
    }
    return false;
}

/// The page's own origin: this scheme, this very host and port.
static bool own_origin(const bw_heads *heads) {
    return heads->origins == 1 && strncmp(heads->origin, "http://", 7) == 0 &&
           strcmp(heads->origin + 7, heads->host) == 0;
}

/// What Sec-Fetch-Site says of our own page, and of an address that was typed in.
static bool own_site(const bw_heads *heads) {
    return strcmp(heads->site, "same-origin") == 0 || strcmp(heads->site, "none") == 0;
}

bool bw_from_own_page(const bw_door *door, const bw_heads *heads) {
    // With a foreign name in Host, "same origin" is the origin of whoever owns that name.
    if (heads->hosts != 1 || !known_host(door, heads->host)) return false;
    return heads->sites > 0 ? heads->sites == 1 && own_site(heads) : own_origin(heads);
}

static int refuse(int status, const char *sentence, const char **why) {
    *why = sentence;
    return status;
}

int bw_guard(const bw_door *door, const char *method, const bw_heads *heads, bool api,
             const char **why) {
    if (heads->hosts != 1 || heads->origins > 1 || heads->secrets > 1 || heads->sites > 1 ||
        heads->matches > 1 || heads->lengths > 1)
        return refuse(400, "A header that may come once came twice, or not at all.", why);
    if (!known_host(door, heads->host))
        return refuse(421, "This server answers only to the address that it printed.", why);
    if (heads->codings > 0) return refuse(411, "Send the body in one piece, with its length.", why);
    if (bw_heads_length(heads) < 0) return refuse(400, "The length of the body is no number.", why);
    if ((heads->origins > 0 || !bw_is_reading(method)) && !own_origin(heads))
        return refuse(403, "Only the board's own page may ask for this.", why);
    if (api && heads->sites > 0 && !own_site(heads))
        return refuse(403, "Only the board's own page may ask for this.", why);
    return 0;
}
