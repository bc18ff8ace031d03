/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Listening sockets, and this computer's address on the local network.
#ifndef BW_SERVE_LISTEN_H
#define BW_SERVE_LISTEN_H

#include "core/base.h"
#include "core/text.h"

/// A socket that listens at an address in numbers ("127.0.0.1", "::1") and a port, 0 for any free one.
/// -1 with errno when it cannot be had; otherwise *port is what it got.
int bw_listen(const char *address, int *port);

/// This computer's IPv4 address on the local network, the private ranges of RFC 1918 and real network
/// cards first. False when there is none.
bool bw_network_address(char *out, size_t room);

/// Whether text is an IPv4 address in numbers.
bool bw_is_address(const char *text);

#endif
