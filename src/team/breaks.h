/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The log: breaks that were seen in games (core/entry.h).
#ifndef BW_TEAM_BREAKS_H
#define BW_TEAM_BREAKS_H

#include "core/entry.h"
#include "team/team.h"

/// Stores entries, all or none, and tells which are new. An entry whose client id is known already is the
/// same break sent again: it is not stored, and what is stored of it stays; so is one that was
/// removed. Fills `order` of each (0 for one that was removed), and fresh[i] (NULL: not wanted). When this
/// returns BW_OK, what it stored survives the program being killed.
bw_status bw_team_add_entries(bw_team *team, bw_entry *entries, int count, bool *fresh, int *added,
                              bw_error *error);

/// Which entries: 0 is "any".
typedef struct bw_entry_filter {
    int64_t game;
    int64_t revision;
    int64_t order;
} bw_entry_filter;

/// Entries in the order in which they were stored; a NULL filter means all. The caller frees *list.
bw_status bw_team_entries(bw_team *team, const bw_entry_filter *filter, bw_entry **list, int *count,
                          bw_error *error);

/// The entry with this order number, or the newest one when it is 0. BW_NOT_FOUND when there is none.
bw_status bw_team_entry(bw_team *team, int64_t order, bw_entry *entry, bw_error *error);

/// Puts right the entry with this order number: everything but its client id.
bw_status bw_team_change_entry(bw_team *team, const bw_entry *entry, bw_error *error);

/// Removes an entry. Its client id is remembered, so that a phone that sends it once more does not bring
/// it back.
bw_status bw_team_remove_entry(bw_team *team, int64_t order, bw_error *error);

#endif
