/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/table.h"

void bw_table_clear(bw_table *table) {
    for (int i = 0; i < BW_TABLE_SLOTS; i++) {
        table->key[i] = 0;
        table->ply[i] = (bw_ply){-1, 0, 0, 0};
    }
}

static uint64_t mix(uint64_t h, double value) {
    union {
        double value;
        uint64_t bits;
    } both = {.value = value};
    h = (h ^ both.bits) * 0x9e3779b97f4a7c15ull;
    return h ^ h >> 29;
}

uint64_t bw_table_key(const bw_state *s) {
    uint64_t h = (uint64_t)s->tick << 16 | (uint64_t)(uint8_t)s->holder << 8 | (uint8_t)s->in;
    for (int a = 0; a < BW_MAX_ATTACKERS; a++) {
        h = (h << 7 | h >> 57) ^ (uint64_t)(uint8_t)s->place[a];
        h = mix(h, s->x[a] + 64 * s->y[a]);
    }
    // Defenders follow from the ball's way; two of them tell different ways apart.
    h = mix(h, s->x[BW_MAX_ATTACKERS] + 64 * s->u[BW_MAX_ATTACKERS]);
    return mix(h, s->y[BW_MAX_ATTACKERS + 1] + 64 * s->v[BW_MAX_ATTACKERS + 1]);
}

bw_ply bw_table_find(const bw_table *table, uint64_t key) {
    const int slot = (int)(key >> 50);
    return table->key[slot] == key ? table->ply[slot] : (bw_ply){-1, 0, 0, 0};
}

void bw_table_store(bw_table *table, uint64_t key, bw_ply ply) {
    const int slot = (int)(key >> 50);
    table->key[slot] = key;
    table->ply[slot] = ply;
}
