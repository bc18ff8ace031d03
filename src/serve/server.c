/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/server.h"

#include "file/beside.h"
#include "serve/http.h"
#include "serve/listen.h"
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <time.h>

struct bw_server {
    bw_server_def def;
    int port;
    bw_house house;
    bw_listener *own4, *own6; ///< at 127.0.0.1 and ::1
    bw_listener *network;     ///< while sharing
};

static double system_clock(void *self) {
    (void)self;
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static double now_of(const bw_server *server) {
    return server->house.clock(server->house.clock_self);
}

/// Adds "name:port" to what a door answers to.
static void add_name(bw_door *door, const char *name, int port) {
    bw_text t = bw_text_in(door->names[door->name_count++], BW_HOST_SIZE);
    bw_put(&t, name);
    bw_put_char(&t, ':');
    bw_put_int(&t, port);
}

/// The usual port, or a free one when nobody asked for it by number.
static int own_socket(bw_server *server, bw_text *why) {
    server->port = server->def.port ? server->def.port : BW_PORT;
    int file = bw_listen("127.0.0.1", &server->port);
    if (file < 0 && errno == EADDRINUSE && !server->def.port) {
        server->port = 0;
        file = bw_listen("127.0.0.1", &server->port);
    }
    if (file >= 0) return file;
    bw_put(why, "Port ");
    bw_put_int(why, server->port);
    bw_put(why, " cannot be used: ");
    bw_put(why, strerror(errno));
    bw_put_char(why, '.');
    return -1;
}

static bool open_own(bw_server *server, bw_text *why) {
    const int file = own_socket(server, why);
    if (file < 0) return false;
    bw_door door = {.shared = false};
    add_name(&door, "127.0.0.1", server->port);
    add_name(&door, "localhost", server->port);
    add_name(&door, "[::1]", server->port);
    server->own4 = bw_http_open(&server->house, &door, file);
    if (!server->own4) {
        bw_put(why, "The server could not be started.");
        return false;
    }
    int port = server->port; // where there is IPv6, browsers may try it first
    const int file6 = bw_listen("::1", &port);
    if (file6 >= 0) server->own6 = bw_http_open(&server->house, &door, file6);
    return true;
}

/// A connection takes a file, and some systems give a program too few of them for a team.
static void allow_files(void) {
    const rlim_t wanted = 2 * BW_CONNECTIONS;
    struct rlimit files;
    if (getrlimit(RLIMIT_NOFILE, &files) != 0 || files.rlim_cur >= wanted) return;
    files.rlim_cur = files.rlim_max < wanted ? files.rlim_max : wanted;
    setrlimit(RLIMIT_NOFILE, &files);
}

bw_server *bw_server_open(const bw_server_def *def, bw_text *why) {
    bw_server *server = calloc(1, sizeof *server);
    if (!server) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return NULL;
    }
    server->def = *def;
    bw_house *house = &server->house;
    house->clock = def->clock ? def->clock : system_clock;
    house->clock_self = def->clock_self;
    allow_files();
    bw_slow_open(&house->slow);
    bw_site_open(&house->site, def->file, def->team);
    if (def->file) bw_beside_sweep_of(def->file);
    if (def->team) bw_beside_sweep_of(def->team);
    if (def->share) bw_share_want(&house->site.share, def->minutes, now_of(server));
    if (open_own(server, why)) return server;
    bw_server_close(server);
    return NULL;
}

int bw_server_port(const bw_server *server) {
    return server->port;
}

bool bw_server_launch(bw_server *server, bw_text *out) {
    bw_house *house = &server->house;
    pthread_mutex_lock(&house->site.lock);
    const bool drawn = bw_sessions_launch(&house->site.sessions);
    bw_put(out, "http://127.0.0.1:");
    bw_put_int(out, server->port);
    bw_put(out, "/#start=");
    bw_put(out, house->site.sessions.launch);
    pthread_mutex_unlock(&house->site.lock);
    return drawn;
}

/// The socket for the network: at the same port where it is free.
static int network_socket(const bw_server *server, char *address, size_t room, int *port) {
    if (server->def.address)
        bw_copy(address, room, server->def.address);
    else if (!bw_network_address(address, room))
        return -1;
    *port = server->port;
    int file = bw_listen(address, port);
    if (file < 0 && errno == EADDRINUSE) {
        *port = 0;
        file = bw_listen(address, port);
    }
    return file;
}

static void open_network(bw_server *server) {
    bw_share *share = &server->house.site.share;
    char address[BW_ADDRESS_SIZE];
    int port = 0;
    const int file = network_socket(server, address, sizeof address, &port);
    const char *name = server->def.host ? server->def.host : address;
    bw_door door = {.shared = true};
    if (file >= 0) {
        add_name(&door, name, port);
        if (server->def.host) add_name(&door, address, port);
        server->network = bw_http_open(&server->house, &door, file);
    }
    pthread_mutex_lock(&server->house.site.lock);
    share->open = server->network && bw_join_renew(&share->join, now_of(server));
    bw_text base = bw_text_in(share->base, sizeof share->base);
    if (share->open) {
        bw_put(&base, "http://");
        bw_put(&base, door.names[0]);
        bw_put_char(&base, '/');
    } else {
        share->wanted = false;
        bw_copy(share->refused, sizeof share->refused,
                "Nothing is shared: this computer has no address on a local network that can be "
                "used. Join a Wi-Fi first.");
    }
    pthread_mutex_unlock(&server->house.site.lock);
}

static void close_network(bw_server *server) {
    bw_site *site = &server->house.site;
    pthread_mutex_lock(&server->house.site.lock);
    site->share.open = false;
    site->share.join.code[0] = '\0';
    bw_sessions_remove_players(&site->sessions);
    pthread_mutex_unlock(&server->house.site.lock);
    bw_http_close(server->network);
    server->network = NULL;
}

void bw_server_tick(bw_server *server) {
    bw_house *house = &server->house;
    pthread_mutex_lock(&house->site.lock);
    const bool due = bw_share_due(&house->site.share, now_of(server));
    if (house->site.share.open) bw_join_keep(&house->site.share.join, now_of(server));
    pthread_mutex_unlock(&house->site.lock);
    if (due && !server->network) open_network(server);
    if (!due && server->network) close_network(server);
    bw_http_sweep(server->own4);
    bw_http_sweep(server->own6);
    bw_http_sweep(server->network);
}

void bw_server_look(bw_server *server, bw_share_view *view) {
    *view = (bw_share_view){.open = false};
    pthread_mutex_lock(&server->house.site.lock);
    const bw_site *site = &server->house.site;
    const bw_share *share = &site->share;
    view->open = share->open;
    bw_copy(view->base, sizeof view->base, share->base);
    bw_copy(view->refused, sizeof view->refused, share->refused);
    bw_text code = bw_text_in(view->code, sizeof view->code);
    bw_text link = bw_text_in(view->link, sizeof view->link);
    if (share->open) {
        bw_join_put(&share->join, &code);
        bw_share_link(share, &link);
    }
    for (int i = 0; i < BW_MAX_SESSIONS; i++) {
        const bw_session *s = &site->sessions.list[i];
        if (s->secret[0] && s->rights == BW_PLAYER) view->devices++;
    }
    pthread_mutex_unlock(&server->house.site.lock);
}

void bw_server_close(bw_server *server) {
    bw_http_close(server->network);
    bw_http_close(server->own4);
    bw_http_close(server->own6);
    bw_site_close(&server->house.site);
    bw_slow_close(&server->house.slow);
    free(server);
}
