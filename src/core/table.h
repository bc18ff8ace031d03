/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Transposition table: the best ply found from a state when the search was shallower, to be tried
/// first when it comes by again. It orders and never answers, so a wrong entry costs time only.
/// Private to the search.
#ifndef BW_CORE_TABLE_H
#define BW_CORE_TABLE_H

#include "core/hash.h"
#include "core/play.h"

enum { BW_TABLE_SLOTS = 1 << 14 };

typedef struct bw_table {
    uint64_t key[BW_TABLE_SLOTS];
    bw_ply ply[BW_TABLE_SLOTS];
} bw_table;

void bw_table_clear(bw_table *table);

/// A state's key: the ball, the time, and where everyone is and goes.
uint64_t bw_table_key(const bw_state *s);

/// The ply stored for a key; kind -1 when there is none.
bw_ply bw_table_find(const bw_table *table, uint64_t key);

/// Stores a ply; the newest keeps the slot.
void bw_table_store(bw_table *table, uint64_t key, bw_ply ply);

#endif
