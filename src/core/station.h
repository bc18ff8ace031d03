/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where one man belongs and what he does there.
#ifndef BW_CORE_STATION_H
#define BW_CORE_STATION_H

#include "core/scheme.h"

typedef struct bw_station {
    bw_vec at;    ///< where he belongs
    bw_duty duty; ///< what he does there
    int man;      ///< index of the attacker he shades to or has, -1 if none
} bw_station;

#endif
