/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_rule.h"

#include "core/text.h"
#include "scheme/knob.h"

static const double length_step = 0.25; // shown units
static const double share_step = 0.05;
static const double places = 100; // of a turned knob: hundredths

static const char *const names[BW_KNOBS] = {"Pickup", "Cushion", "Shift", "Soft", "Area", "Pull"};

/// The numbers of the two places in a rule; the reader holds them to the field alone, a slider to what
/// is ever of use, yards.
static const struct {
    const char *key, *name, *meaning;
    double low, high;
} spots[] = {
    {"hold_at", "Hold, aside", "how far from the middle the low pair hold, ball behind", 0.5, 10},
    {"hold_at", "Hold, out", "how far out from the goal line they hold", 0, 8},
    {"crease_at", "Crease, out", "how far out from the goal line the crease is covered", 0, 12},
};

static double *spot_in(bw_rule *rule, int index) {
    double *const in[] = {&rule->hold_at.x, &rule->hold_at.y, &rule->crease_at.y};
    return in[index];
}

static double *value_of(bw_rule *rule, int index) {
    return index < BW_KNOBS ? bw_knob_in(rule, index) : spot_in(rule, index - BW_KNOBS);
}

/// Whole steps inside the limits, which are yards.
static void set_range(bw_board_knob *knob, double low, double high, double unit) {
    const double per = BW_METRES_PER_YARD / unit;
    knob->low = -bw_floor(-low * per / knob->step) * knob->step;
    knob->high = bw_floor(high * per / knob->step) * knob->step;
}

bool bw_board_knob_at(const bw_board *board, int index, bw_board_knob *knob) {
    if (index < 0 || index >= BW_KNOBS + BW_COUNT(spots)) return false;
    const bool rule = index < BW_KNOBS, length = !rule || bw_knob_at(index)->length;
    const double unit = length ? bw_board_unit(board) : 1;
    bw_rule copy = board->scheme.stages[board->stage].rule;
    *knob = (bw_board_knob){.step = length ? length_step : share_step,
                            .value = bw_round_to(*value_of(&copy, index) / unit, places)};
    if (!length) {
        knob->low = bw_knob_at(index)->low;
        knob->high = bw_knob_at(index)->high;
    } else if (rule) {
        set_range(knob, bw_knob_at(index)->low, bw_knob_at(index)->high, unit);
    } else {
        set_range(knob, spots[index - BW_KNOBS].low, spots[index - BW_KNOBS].high, unit);
    }
    bw_copy(knob->key, sizeof knob->key,
            rule ? bw_knob_at(index)->key : spots[index - BW_KNOBS].key);
    bw_copy(knob->name, sizeof knob->name, rule ? names[index] : spots[index - BW_KNOBS].name);
    bw_copy(knob->unit, sizeof knob->unit, length ? bw_unit_short(board->scheme.units) : "");
    bw_copy(knob->meaning, sizeof knob->meaning,
            rule ? bw_knob_at(index)->meaning : spots[index - BW_KNOBS].meaning);
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
    *value_of(&board->scheme.stages[board->stage].rule, index) = held * unit;
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
