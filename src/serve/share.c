/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/share.h"

void bw_share_want(bw_share *share, int minutes, double now) {
    share->wanted = true;
    share->until = now + 60.0 * minutes;
    share->refused[0] = '\0';
}

bool bw_share_due(bw_share *share, double now) {
    if (share->wanted && now >= share->until) share->wanted = false;
    return share->wanted;
}

void bw_share_link(const bw_share *share, bw_text *out) {
    bw_put(out, share->base);
    bw_put(out, "#join=");
    bw_put(out, share->join.code);
}
