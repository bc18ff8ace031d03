/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/late.h"

double bw_seconds_to(const bw_break *b, const bw_state *s, int defender, bw_vec place) {
    const int man = BW_MAX_ATTACKERS + defender;
    const bw_body body = {bw_man(s, man), bw_v(s->u[man], s->v[man])};
    const bw_legs own = b->def.legs[defender];
    return bw_arrive(own.vmax > 0 ? own : b->ground->level->defender, body, place, BW_HOLD_FROM);
}

bool bw_is_late(double seconds, double metres) {
    return seconds >= 0.15 && metres >= BW_METRES_PER_YARD;
}
