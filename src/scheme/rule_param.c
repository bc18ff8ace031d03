/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/rule_param.h"

enum { ONE, YARDS };

static const bw_rule_param params[BW_RULE_PARAM_COUNT] = {
#define RULE_NUMBER(ID, key, UNIT, usual, low, high, label, meaning)                               \
    [BW_RULE_##ID] = {#key, label, meaning, low, high, (UNIT) == YARDS, true},
#define RULE_PLACE(ID, key, side, usual, low, high, label, meaning)                                \
    [BW_RULE_##ID] = {#key, label, meaning, low, high, true, false},
#include "core/rule_params.def"
};

const bw_rule_param *bw_rule_param_at(bw_rule_param_id id) {
    BW_ASSERT(id < BW_RULE_PARAM_COUNT);
    return &params[id];
}

double *bw_rule_param_in(bw_rule *rule, bw_rule_param_id id) {
    double *const in[BW_RULE_PARAM_COUNT] = {
#define RULE_NUMBER(ID, key, ...) [BW_RULE_##ID] = &rule->key,
#define RULE_PLACE(ID, key, side, ...) [BW_RULE_##ID] = &rule->key.side,
#include "core/rule_params.def"
    };
    BW_ASSERT(id < BW_RULE_PARAM_COUNT);
    return in[id];
}
