/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One chart on one sheet, composed from the drawing room's parts.
#ifndef BW_CLI_DRAW_CHART_H
#define BW_CLI_DRAW_CHART_H

#include "core/scheme.h"
#include "draw/sheet.h"

typedef struct bw_chart_request {
    const bw_scheme *scheme;
    int stage; ///< index in scheme->stages
    bw_paper paper;
    bw_vec ball;
    const bw_vec *attackers;
    int attacker_count; ///< 0: nobody but the unit
    bool danger;        ///< tint where a free shot is dangerous
} bw_chart_request;

/// Draws the sheet, replacing what was in the ink. ink->status tells whether it fitted.
void bw_chart_sheet(const bw_chart_request *request, bw_ink *ink);

#endif
