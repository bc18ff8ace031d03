/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The numbers of core/rule_params.def, to be gone through one by one: what each is called, what it
/// says, how far it goes. Whatever reads, writes, shows, tunes or lets a person turn them shares it.
#ifndef BW_SCHEME_RULE_PARAM_H
#define BW_SCHEME_RULE_PARAM_H

#include "core/scheme.h"

/// In the order of the document: first its plain numbers, then the sides of its places.
typedef enum bw_rule_param_id {
#define RULE_NUMBER(ID, ...) BW_RULE_##ID,
#include "core/rule_params.def"
#define RULE_PLACE(ID, ...) BW_RULE_##ID,
#include "core/rule_params.def"
    BW_RULE_PARAM_COUNT
} bw_rule_param_id;

typedef struct bw_rule_param {
    const char *key;     ///< in the document
    const char *label;   ///< "Pickup"
    const char *meaning; ///< in words, after "the rule says"
    double low, high;    ///< limits, ends included: yards, or shares of one
    bool length;         ///< a length; else a share
    bool whole;          ///< the key's value is this number; else one side of a place
} bw_rule_param;

const bw_rule_param *bw_rule_param_at(bw_rule_param_id id);

/// Where a rule keeps this number: metres, or a share.
double *bw_rule_param_in(bw_rule *rule, bw_rule_param_id id);

#endif
