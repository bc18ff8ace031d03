/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/rate.h"

static bw_rate_entry *entry_of(bw_rate_limit *rate, const char *name, double now) {
    bw_rate_entry *oldest = &rate->list[0];
    for (int i = 0; i < BW_RATE_ENTRIES; i++) {
        bw_rate_entry *e = &rate->list[i];
        if (bw_same(e->name, name)) return e;
        if (e->last < oldest->last) oldest = e;
    }
    *oldest = (bw_rate_entry){.left = rate->burst, .last = now};
    bw_copy(oldest->name, sizeof oldest->name, name);
    return oldest;
}

bool bw_rate_allow(bw_rate_limit *rate, const char *name, double now) {
    bw_rate_entry *e = entry_of(rate, name, now);
    const double gained = (now - e->last) * rate->per_second;
    e->left = e->left + gained < rate->burst ? e->left + gained : rate->burst;
    e->last = now;
    if (e->left < 1) return false;
    e->left -= 1;
    return true;
}
