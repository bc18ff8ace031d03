/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the terminal says while the board is served.
#ifndef BW_CLI_BOARD_TALK_H
#define BW_CLI_BOARD_TALK_H

#include "serve/server.h"

/// How to use the address just printed, and how to stop.
void bw_board_greet(bool terminal);

/// Says what is new of sharing since *before, and remembers it there: the code with its picture, a
/// device that joined, the end.
void bw_board_tell(bw_server *server, bw_share_view *before);

#endif
