/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Random scenes for the board, hashed: the page must show what the native program would. The same
/// walk is taken natively and in WebAssembly and must come to the same bits, ink and words included.
#ifndef BW_WEB_AGREE_H
#define BW_WEB_AGREE_H

#include "web/board.h"

/// Hash of `scenes` random scenes from `seed`: stages, balls, attackers, runs, edits, themes of size.
/// Uses the board's memory and leaves the last scene in it.
uint64_t bw_agree(bw_board *board, uint32_t seed, int scenes);

/// The same on a board of its own, for a module in Node. Not for two threads at once.
uint64_t bw_agree_alone(int seed, int scenes);

#endif
