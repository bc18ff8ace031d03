/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board's server: on this computer alone, until it is told to share.
#ifndef BW_SERVE_SERVER_H
#define BW_SERVE_SERVER_H

#include "core/text.h"
#include "serve/share.h"

/// Where it is found unless told otherwise; nothing registered uses it that a coach would run.
enum { BW_PORT = 7460, BW_PORT_MIN = 1024, BW_PORT_MAX = 65535 };

typedef struct bw_server_def {
    const char *file;    ///< scheme on the disk; NULL: none
    const char *team;    ///< team file; NULL: none
    int port;            ///< 0: BW_PORT, or any free one when that is taken
    bool share;          ///< begin to share at once
    int minutes;         ///< sharing ends by itself after these
    const char *host;    ///< name under which the network knows this computer; NULL: its address
    const char *address; ///< this computer's address to share on; NULL: found out
    double (*clock)(void *self); ///< seconds, never going back; NULL: the system's
    void *clock_self;
} bw_server_def;

typedef struct bw_server bw_server;

/// NULL with one sentence in *why. Strings of *def must outlive it.
bw_server *bw_server_open(const bw_server_def *def, bw_text *why);

/// Port on this computer.
int bw_server_port(const bw_server *server);

/// A new address for the coach's browser, good for one opening; those given before are void.
bool bw_server_launch(bw_server *server, bw_text *out);

/// To be called a few times a second: begins and ends sharing, shuts connections that take too long.
void bw_server_tick(bw_server *server);

/// What the terminal shows of sharing.
typedef struct bw_share_view {
    bool open;
    char base[BW_ADDRESS_LINE]; ///< address for players
    char code[BW_CODE_SIZE + 1];
    char link[BW_ADDRESS_LINE + 32]; ///< the address with the code, for a QR picture
    char refused[BW_ADDRESS_LINE];   ///< why sharing could not begin; "" otherwise
    int devices;                     ///< that have joined
} bw_share_view;

void bw_server_look(bw_server *server, bw_share_view *view);

/// Stops listening, cancels what runs, frees.
void bw_server_close(bw_server *server);

#endif
