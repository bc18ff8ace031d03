/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A stage's rule, and the pins that overrule it. Either may be left out; node 0 stands for that.
#include "scheme/reading.h"
#include "scheme/rule_param.h"

/// The practice rule as it would be read back from a file in this unit. Set field by field: a copy of
/// the whole would bring along what lies between them, and a scheme is compared and hashed as a block.
static void set_usual_rule(const bw_reading *r, bw_rule *rule) {
    bw_rule usual = bw_rule_default();
    for (int i = 0; i < BW_RULE_PARAM_COUNT; i++) {
        const bw_rule_param_id id = (bw_rule_param_id)i;
        const double value = *bw_rule_param_in(&usual, id);
        *bw_rule_param_in(rule, id) =
            bw_rule_param_at(id)->length ? bw_file_length(r, value) : value;
    }
    rule->hold_behind = usual.hold_behind;
    rule->crease_at.x = bw_file_length(r, usual.crease_at.x);
    rule->crease = usual.crease;
}

/// "farthest", "none", or the spot that always has the crease.
static bool read_crease(bw_reading *r, int32_t node, bw_stage *stage) {
    const char *words[BW_MAX_SPOTS + 2] = {"farthest", "none"};
    for (int s = 0; s < stage->defenders; s++)
        words[2 + s] = stage->spots[s].id;
    const bw_words choices = {words, stage->defenders + 2};
    int choice = 0;
    r->unsure = r->spots_bad;
    const bool found = bw_take_choice(r, node, "the crease cannot go to", choices, &choice);
    r->unsure = false;
    if (!found) return false;
    const int fixed[] = {BW_CREASE_FARTHEST, BW_CREASE_NONE};
    stage->rule.crease = choice < 2 ? fixed[choice] : choice - 2;
    return true;
}

static bool read_hold_at(bw_reading *r, int32_t node, bw_rule *rule) {
    if (!bw_take_place(r, node, &rule->hold_at)) return false;
    return (rule->hold_at.x > 0 && rule->hold_at.y >= 0) ||
           bw_fail(r, node, "", "hold_at",
                   " is where the right man of the low pair holds; its x must be above 0 and its "
                   "y not below 0");
}

static bool read_number(bw_reading *r, int32_t node, bw_rule_param_id id, bw_rule *rule) {
    const bw_rule_param *param = bw_rule_param_at(id);
    const int32_t n = param->whole ? bw_member(r, node, param->key) : 0;
    double *value = bw_rule_param_in(rule, id);
    if (!n) return true;
    if (param->length) return bw_take_length(r, n, param->low, param->high, value);
    return bw_take_number(r, n, (bw_range){param->low, param->high, ""}, value);
}

bool bw_read_rule(bw_reading *r, int32_t node, bw_stage *stage) {
    bw_rule *rule = &stage->rule;
    set_usual_rule(r, rule);
    if (!node) return true;
    if (!bw_take_object(r, node, BW_NOUN_RULE)) return false;
    bool good = true;
    for (int i = 0; i < BW_RULE_PARAM_COUNT; i++)
        good = read_number(r, node, (bw_rule_param_id)i, rule) && good;
    int32_t n = bw_member(r, node, "hold_behind");
    if (n) good = bw_take_flag(r, n, &rule->hold_behind) && good;
    n = bw_member(r, node, "hold_at");
    if (n) good = read_hold_at(r, n, rule) && good;
    n = bw_member(r, node, "crease_at");
    if (n) good = bw_take_place(r, n, &rule->crease_at) && good;
    n = bw_member(r, node, "crease");
    return (!n || read_crease(r, n, stage)) && good;
}

static bool read_pins_at(bw_reading *r, int32_t node, int landmark, bw_stage *stage) {
    const char *ids[BW_MAX_SPOTS];
    for (int s = 0; s < stage->defenders; s++)
        ids[s] = stage->spots[s].id;
    r->unsure = r->spots_bad;
    bool good = bw_take_map(r, node, "an object such as {\"LL\": [-3, 2]}",
                            "this stage has no spot", (bw_words){ids, stage->defenders});
    r->unsure = false;
    for (int s = 0; good && s < stage->defenders; s++) {
        const int32_t place = bw_member(r, node, ids[s]);
        if (!place) continue;
        good = bw_take_place(r, place, &stage->pins[landmark][s]);
        stage->pinned[landmark][s] = 1;
    }
    return good;
}

bool bw_read_pins(bw_reading *r, int32_t node, bw_stage *stage) {
    if (!node) return true;
    const char *ids[BW_MAX_LANDMARKS];
    for (int l = 0; l < r->scheme->landmark_count; l++)
        ids[l] = r->scheme->landmarks[l].id;
    r->unsure = r->landmarks_bad;
    bool good = bw_take_map(r, node, "an object such as {\"x\": {\"LL\": [-3, 2]}}",
                            "there is no landmark", (bw_words){ids, r->scheme->landmark_count});
    r->unsure = false;
    if (!good) return false;
    for (int l = 0; l < r->scheme->landmark_count; l++) {
        const int32_t at = bw_member(r, node, ids[l]);
        if (at) good = read_pins_at(r, at, l, stage) && good;
    }
    return good;
}
