/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/http.h"

#include "core/text.h"
#include <arpa/inet.h>
#include <microhttpd.h>
#include <stdlib.h>
#include <string.h>
#include <sys/socket.h>
#include <unistd.h>

enum {
    HEAD_ROOM = 16 * 1024, ///< bytes for the head of a request, and what is sent back
    RAW_ROOM = 1024,       ///< bytes of a target; longer ones are none of ours
    STACK_ROOM = 1 << 20,  ///< bytes, for the thread of a connection
    QUIET_SECONDS = 20,    ///< without a byte
    GUEST_CONNECTIONS = 16 ///< from one address of the network; a browser has six
};

struct bw_listener {
    bw_house *house;
    bw_door door;
    struct MHD_Daemon *daemon;
};

/// A request under way.
typedef struct visit {
    bw_ask ask;
    bool begun; ///< its head has been looked at
    char raw[RAW_ROOM];
    char method[8];
    char *body;
    size_t room, length;
} visit;

static const char *const headers[][2] = {
    {"Content-Security-Policy",
     "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; "
     "img-src 'self' data: blob:; media-src 'self' blob:; connect-src 'self'; "
     "worker-src 'self' blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"},
    {"X-Content-Type-Options", "nosniff"},
    {"Cross-Origin-Opener-Policy", "same-origin"},
    {"Cross-Origin-Resource-Policy", "same-origin"},
    {"Referrer-Policy", "no-referrer"},
    {"Cache-Control", "no-store"},
};

static double now_of(const bw_house *house) {
    return house->clock(house->clock_self);
}

static int socket_of(struct MHD_Connection *connection) {
    const union MHD_ConnectionInfo *info =
        MHD_get_connection_info(connection, MHD_CONNECTION_INFO_CONNECTION_FD);
    return info ? info->connect_fd : -1;
}

static void address_of(struct MHD_Connection *connection, char *out) {
    const union MHD_ConnectionInfo *info =
        MHD_get_connection_info(connection, MHD_CONNECTION_INFO_CLIENT_ADDRESS);
    out[0] = '\0';
    if (!info || !info->client_addr) return;
    const struct sockaddr *at = info->client_addr;
    const void *numbers =
        at->sa_family == AF_INET6
            ? (const void *)&((const struct sockaddr_in6 *)(const void *)at)->sin6_addr
            : (const void *)&((const struct sockaddr_in *)(const void *)at)->sin_addr;
    if (!inet_ntop(at->sa_family, numbers, out, BW_ADDRESS_SIZE)) out[0] = '\0';
}

/// Sends what the site answered and frees it. A request that is turned away before its body was read
/// is the connection's last, so that nobody can take that body for the next request.
static enum MHD_Result send_reply(struct MHD_Connection *connection, bw_reply *reply, bool last) {
    void *bytes = reply->fixed ? (void *)reply->fixed : reply->own.data;
    struct MHD_Response *response = MHD_create_response_from_buffer(
        reply->length, bytes, reply->fixed ? MHD_RESPMEM_PERSISTENT : MHD_RESPMEM_MUST_FREE);
    if (!response) {
        if (!reply->fixed) free(reply->own.data);
        return MHD_NO;
    }
    for (int i = 0; i < BW_COUNT(headers); i++)
        MHD_add_response_header(response, headers[i][0], headers[i][1]);
    MHD_add_response_header(response, MHD_HTTP_HEADER_CONTENT_TYPE, reply->type);
    if (reply->allow) MHD_add_response_header(response, MHD_HTTP_HEADER_ALLOW, reply->allow);
    if (reply->tag[0]) MHD_add_response_header(response, MHD_HTTP_HEADER_ETAG, reply->tag);
    if (last) MHD_add_response_header(response, MHD_HTTP_HEADER_CONNECTION, "close");
    const enum MHD_Result done =
        MHD_queue_response(connection, (unsigned int)reply->status, response);
    MHD_destroy_response(response);
    return done;
}

/// The target before the library decodes it.
static void *on_target(void *self, const char *raw, struct MHD_Connection *connection) {
    (void)self;
    (void)connection;
    visit *v = calloc(1, sizeof *v);
    if (v && !bw_copy(v->raw, sizeof v->raw, raw)) v->raw[0] = '\0';
    return v;
}

static enum MHD_Result on_header(void *self, enum MHD_ValueKind kind, const char *name,
                                 const char *value) {
    (void)kind;
    bw_heads_note(self, name, value);
    return MHD_YES;
}

/// The head is there: is it to be answered?
static enum MHD_Result admit(bw_listener *listener, struct MHD_Connection *connection,
                             const char *method, visit *v) {
    bw_house *house = listener->house;
    v->begun = true;
    // A method that does not fit is none of ours, and stays one.
    bw_copy(v->method, sizeof v->method, method);
    v->ask.method = v->method;
    v->ask.door = &listener->door;
    v->ask.raw = v->raw;
    v->ask.now = now_of(house);
    address_of(connection, v->ask.address);
    MHD_get_connection_values(connection, MHD_HEADER_KIND, on_header, &v->ask.heads);
    bw_slow_note(&house->slow, socket_of(connection), listener, true, v->ask.now);

    bw_reply reply;
    const int refused = bw_site_admit(&house->site, &v->ask, &v->room, &reply);
    if (refused) return send_reply(connection, &reply, true);
    v->room = (size_t)bw_heads_length(&v->ask.heads);
    v->body = malloc(v->room + 1);
    return v->body ? MHD_YES : MHD_NO;
}

static enum MHD_Result on_request(void *self, struct MHD_Connection *connection, const char *url,
                                  const char *method, const char *version, const char *data,
                                  size_t *size, void **request) {
    (void)url;
    (void)version;
    bw_listener *listener = self;
    visit *v = *request;
    if (!v) return MHD_NO;
    if (!v->begun) return admit(listener, connection, method, v);
    if (*size > 0) {
        if (v->length + *size > v->room) return MHD_NO;
        memcpy(v->body + v->length, data, *size);
        v->length += *size;
        *size = 0;
        return MHD_YES;
    }
    v->body[v->length] = '\0';
    v->ask.body = v->body;
    v->ask.length = v->length;
    bw_reply reply = bw_site_answer(&listener->house->site, &v->ask);
    return send_reply(connection, &reply, false);
}

static void on_end(void *self, struct MHD_Connection *connection, void **request,
                   enum MHD_RequestTerminationCode how) {
    (void)how;
    bw_listener *listener = self;
    visit *v = *request;
    if (v) free(v->body);
    free(v);
    *request = NULL;
    bw_slow_note(&listener->house->slow, socket_of(connection), listener, false,
                 now_of(listener->house));
}

static void on_connection(void *self, struct MHD_Connection *connection, void **unused,
                          enum MHD_ConnectionNotificationCode code) {
    (void)unused;
    bw_listener *listener = self;
    bw_slow *slow = &listener->house->slow;
    const int file = socket_of(connection);
    if (code == MHD_CONNECTION_NOTIFY_CLOSED)
        bw_slow_forget(slow, file);
    else if (!bw_slow_note(slow, file, listener, false, now_of(listener->house)))
        shutdown(file, SHUT_RDWR);
}

/// The library's own complaints are about what strangers send; nobody need read them.
static void be_quiet(void *self, const char *format, va_list list) {
    (void)self;
    (void)format;
    (void)list;
}

/// Connections at a full door.
static int most_at(const bw_door *door) {
    return door->shared ? BW_NETWORK_CONNECTIONS : BW_OWN_CONNECTIONS;
}

/// A thread for each connection: then whoever waits for the disk or the team file waits alone. Here
/// the library does not keep those waiting that are too many, it closes them, so a door has some to
/// spare. The listener is woken (ITC) when one ends, so that its place is free at once.
/// poll, not epoll: with epoll libmicrohttpd 0.9.75 does not see that a client left together with its
/// last bytes, and keeps the connection till it has been quiet long enough.
bw_listener *bw_http_open(bw_house *house, const bw_door *door, int file) {
    bw_listener *listener = calloc(1, sizeof *listener);
    if (listener) {
        listener->house = house;
        listener->door = *door;
        const unsigned int most = (unsigned int)(most_at(door) + BW_SPARE_CONNECTIONS);
        const unsigned int each = door->shared ? GUEST_CONNECTIONS : 0; // 0: as many as it likes
        listener->daemon = MHD_start_daemon(
            MHD_USE_THREAD_PER_CONNECTION | MHD_USE_POLL_INTERNAL_THREAD | MHD_USE_ITC |
                MHD_USE_ERROR_LOG,
            0, NULL, NULL, on_request, listener, MHD_OPTION_EXTERNAL_LOGGER, be_quiet, NULL,
            MHD_OPTION_LISTEN_SOCKET, file, MHD_OPTION_THREAD_STACK_SIZE, (size_t)STACK_ROOM,
            MHD_OPTION_CONNECTION_LIMIT, most, MHD_OPTION_PER_IP_CONNECTION_LIMIT, each,
            MHD_OPTION_CONNECTION_MEMORY_LIMIT, (size_t)HEAD_ROOM, MHD_OPTION_CONNECTION_TIMEOUT,
            (unsigned int)QUIET_SECONDS, MHD_OPTION_STRICT_FOR_CLIENT, 1,
            MHD_OPTION_URI_LOG_CALLBACK, on_target, NULL, MHD_OPTION_NOTIFY_COMPLETED, on_end,
            listener, MHD_OPTION_NOTIFY_CONNECTION, on_connection, listener, MHD_OPTION_END);
        if (listener->daemon) return listener;
    }
    close(file);
    free(listener);
    return NULL;
}

void bw_http_sweep(bw_listener *listener) {
    if (!listener) return;
    bw_slow_sweep(&listener->house->slow, listener, most_at(&listener->door),
                  now_of(listener->house));
}

void bw_http_close(bw_listener *listener) {
    if (!listener) return;
    MHD_stop_daemon(listener->daemon);
    free(listener);
}
