/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Attack sets: where the offence stands when the break begins, named by numbers from the top down.
/// The places are common practice (no source). Men are listed so that the first three, four or five
/// make the same set short of men: a 4v3 in "2-2-2" is its first four.
#ifndef BW_CORE_ATTACK_SET_H
#define BW_CORE_ATTACK_SET_H

#include "core/scheme.h"

typedef struct bw_attack_set {
    const char *id;              ///< "2-2-2", "1-4-1", "2-3-1", "3-3", "1-3-2", "spread"
    const char *name;            ///< in words
    int count;                   ///< always BW_MAX_ATTACKERS for the built-in sets
    bw_vec at[BW_MAX_ATTACKERS]; ///< metres
} bw_attack_set;

int bw_attack_set_count(void);
const bw_attack_set *bw_attack_set_at(int index);

/// The built-in set with this id, or NULL.
const bw_attack_set *bw_attack_set_find(const char *id);

/// How many men the set with this id has, looked up as by bw_attack_set_place; 0 when there is none.
int bw_attack_set_men(const bw_scheme *scheme, const char *id);

/// Places of the first `men` attackers of a set, the scheme's own sets looked up before the built-in
/// ones. BW_NOT_FOUND: no such set; BW_LIMIT: the set has fewer men.
bw_status bw_attack_set_place(const bw_scheme *scheme, const char *id, int men, bw_vec *at);

#endif
