/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_rule.h"

#include "core/text.h"
#include "scheme/rule_param.h"

static const double length_step = 0.25; // shown units
static const double share_step = 0.05;
static const double places = 100; // of a turned knob: hundredths

/// Whole steps inside the limits, which are yards.
static void set_range(bw_board_knob *knob, double low, double high, double unit) {
    const double per = BW_METRES_PER_YARD / unit;
    knob->low = -bw_floor(-low * per / knob->step) * knob->step;
    knob->high = bw_floor(high * per / knob->step) * knob->step;
}

bool bw_board_knob_at(const bw_board *board, int index, bw_board_knob *knob) {
    if (index < 0 || index >= BW_RULE_PARAM_COUNT) return false;
    const bw_rule_param_id id = (bw_rule_param_id)index;
    const bw_rule_param *param = bw_rule_param_at(id);
    const double unit = param->length ? bw_board_unit(board) : 1;
    bw_rule copy = board->scheme.stages[board->stage].rule;
    *knob = (bw_board_knob){.low = param->low,
                            .high = param->high,
                            .step = param->length ? length_step : share_step,
                            .value = bw_round_to(*bw_rule_param_in(&copy, id) / unit, places)};
    if (param->length) set_range(knob, param->low, param->high, unit);
    bw_copy(knob->key, sizeof knob->key, param->key);
    bw_copy(knob->name, sizeof knob->name, param->label);
    bw_copy(knob->unit, sizeof knob->unit, param->length ? bw_unit_short(board->scheme.units) : "");
    bw_copy(knob->meaning, sizeof knob->meaning, param->meaning);
    return true;
}

static void renew(bw_board *board) {
    bw_board_prepare(board);
    bw_board_settle(board);
}

void bw_board_turn(bw_board *board, int index, double value) {
    bw_board_knob knob;
    if (!bw_board_knob_at(board, index, &knob)) return;
    const double unit = *knob.unit ? bw_board_unit(board) : 1;
    const double held = bw_clamp(bw_round_to(value, places), knob.low, knob.high);
    *bw_rule_param_in(&board->scheme.stages[board->stage].rule, (bw_rule_param_id)index) =
        held * unit;
    renew(board);
}

void bw_board_hold(bw_board *board, bool hold) {
    board->scheme.stages[board->stage].rule.hold_behind = hold;
    renew(board);
}

void bw_board_crease(bw_board *board, int crease) {
    bw_stage *stage = &board->scheme.stages[board->stage];
    if (crease < BW_CREASE_NONE || crease >= stage->defenders) return;
    stage->rule.crease = crease;
    renew(board);
}
