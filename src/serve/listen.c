/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _DEFAULT_SOURCE // interface flags
#include "serve/listen.h"

#include <arpa/inet.h>
#include <errno.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>
#include <stdio.h>
#include <string.h>
#include <sys/socket.h>
#include <unistd.h>

enum { WAITING = 512 }; ///< not yet taken on: a whole team opens the page at once

/// Room for an address of either family, and how much of it is used.
typedef struct place {
    union {
        struct sockaddr any;
        struct sockaddr_in v4;
        struct sockaddr_in6 v6;
    } at;
    socklen_t size;
} place;

static bool place_of(const char *address, int port, place *p) {
    memset(p, 0, sizeof *p);
    if (inet_pton(AF_INET, address, &p->at.v4.sin_addr) == 1) {
        p->at.v4.sin_family = AF_INET;
        p->at.v4.sin_port = htons((uint16_t)port);
        p->size = sizeof p->at.v4;
        return true;
    }
    p->at.v6.sin6_family = AF_INET6;
    p->at.v6.sin6_port = htons((uint16_t)port);
    p->size = sizeof p->at.v6;
    return inet_pton(AF_INET6, address, &p->at.v6.sin6_addr) == 1;
}

/// A port that was just let go may be taken again at once; one that is listened at may not.
static bool set_up(int file, place *p) {
    const int on = 1;
    if (setsockopt(file, SOL_SOCKET, SO_REUSEADDR, &on, sizeof on) != 0) return false;
    if (p->at.any.sa_family == AF_INET6 &&
        setsockopt(file, IPPROTO_IPV6, IPV6_V6ONLY, &on, sizeof on) != 0)
        return false;
    return bind(file, &p->at.any, p->size) == 0 && listen(file, WAITING) == 0 &&
           getsockname(file, &p->at.any, &p->size) == 0;
}

int bw_listen(const char *address, int *port) {
    place p;
    if (!place_of(address, *port, &p)) {
        errno = EINVAL;
        return -1;
    }
    const int file = socket(p.at.any.sa_family, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (file < 0) return -1;
    if (!set_up(file, &p)) {
        const int why = errno;
        close(file);
        errno = why;
        return -1;
    }
    *port = ntohs(p.at.any.sa_family == AF_INET6 ? p.at.v6.sin6_port : p.at.v4.sin_port);
    return file;
}

/// How likely an address is the one that phones nearby can reach.
static int rank(const char *name, uint32_t ip) {
    const bool private_range = ip >> 24 == 10 || ip >> 20 == 0xac1 || ip >> 16 == 0xc0a8;
    const bool made_up = strncmp(name, "docker", 6) == 0 || strncmp(name, "veth", 4) == 0 ||
                         strncmp(name, "br-", 3) == 0 || strncmp(name, "virbr", 5) == 0 ||
                         strncmp(name, "tun", 3) == 0;
    return 1 + (private_range ? 2 : 0) + (made_up ? 0 : 1);
}

bool bw_network_address(char *out, size_t room) {
    struct ifaddrs *list;
    int best = 0;
    if (getifaddrs(&list) != 0) return false;
    for (struct ifaddrs *one = list; one; one = one->ifa_next) {
        if (!one->ifa_addr || one->ifa_addr->sa_family != AF_INET) continue;
        if (!(one->ifa_flags & IFF_UP) || (one->ifa_flags & IFF_LOOPBACK)) continue;
        struct sockaddr_in at;
        memcpy(&at, one->ifa_addr, sizeof at);
        const int worth = rank(one->ifa_name, ntohl(at.sin_addr.s_addr));
        if (worth > best && inet_ntop(AF_INET, &at.sin_addr, out, (socklen_t)room)) best = worth;
    }
    freeifaddrs(list);
    return best > 0;
}

bool bw_is_address(const char *text) {
    struct in_addr at;
    return inet_pton(AF_INET, text, &at) == 1;
}
