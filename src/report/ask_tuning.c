/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a tuning that is asked for may change.
#include "core/text.h"
#include "report/ask.h"
#include <string.h>

/// Everything `keep` may name, for the nearest word: spots, then the rest.
static const char *keepable(const void *self, int index) {
    const bw_stage *stage = self;
    static const char *const whole[] = {"homes", "rule"};
    if (index < stage->defenders) return stage->spots[index].id;
    index -= stage->defenders;
    if (index < BW_COUNT(whole)) return whole[index];
    const int kind = BW_KNOB_RULE + index - BW_COUNT(whole);
    return kind < BW_KNOB_KINDS ? bw_knob_key((bw_knob_kind)kind) : NULL;
}

/// "pickup, cushion and shift": all numbers of the rule that can be kept.
static void put_rule_keys(bw_text *out) {
    for (int kind = BW_KNOB_RULE; kind < BW_KNOB_KINDS; kind++) {
        const bool last = kind == BW_KNOB_KINDS - 1;
        if (kind > BW_KNOB_RULE) bw_put(out, last ? " and " : ", ");
        bw_put(out, bw_knob_key((bw_knob_kind)kind));
    }
}

static bw_status ask_keep(bw_asked *ask, const bw_stage *stage, bw_knob_limits *limits) {
    const char *text = ask->value(ask->self, "keep");
    while (text && *text) {
        char word[BW_NAME_SIZE];
        const size_t length = strcspn(text, ",");
        bw_text t = bw_text_in(word, sizeof word);
        bw_put_n(&t, text, length);
        if (!bw_knob_keep(stage, word, limits)) {
            const char *near = bw_nearest_word(word, keepable, stage);
            if (near)
                return bw_ask_refuse(ask, BW_BAD_INPUT,
                                     "%skeep cannot keep \"%s\"; did you mean \"%s\"?", ask->prefix,
                                     word, near);
            char keys[128];
            bw_text k = bw_text_in(keys, sizeof keys);
            put_rule_keys(&k);
            return bw_ask_refuse(ask, BW_BAD_INPUT,
                                 "%skeep cannot keep \"%s\"; it takes spots of the stage, "
                                 "\"homes\", \"rule\", or %s",
                                 ask->prefix, word, keys);
        }
        text += length + (text[length] == ',');
    }
    return BW_OK;
}

/// A plain number from low to high, times `unit`, or a hundredth of it when that is 0.
static bw_status ask_number(bw_asked *ask, const char *name, double low, double high, double unit,
                            double *out) {
    const char *text = ask->value(ask->self, name), *at = text;
    double value;
    if (!text) return BW_OK;
    if (!bw_scan_decimal(&at, &value) || *at != '\0' || value < low || value > high)
        return bw_ask_refuse(ask, BW_BAD_INPUT, "%s%s is a number from %g to %g, not \"%s\"",
                             ask->prefix, name, low, high, text);
    *out = unit > 0 ? value * unit : value / 100;
    return BW_OK;
}

static bw_status ask_numbers(bw_asked *ask, double unit, bw_tuning *def) {
    bw_status status = ask_number(ask, "within", 0.1, 20, unit, &def->limits.most);
    if (status == BW_OK) status = ask_number(ask, "spacing", 0, 10, unit, &def->spacing);
    if (status == BW_OK) status = ask_number(ask, "mix", 0, 100, 0, &def->mix);
    if (status == BW_OK) status = ask_number(ask, "practice", 0, 10, 0, &def->pull);
    if (status == BW_OK)
        status = bw_ask_whole(ask, "tries", ask->tries_least, ask->tries_most, &def->budget);
    if (status == BW_OK) status = bw_ask_whole(ask, "breaks", 4, BW_MAX_DRILLS, &def->training);
    return status;
}

bw_status bw_ask_tuning(bw_asked *ask, bw_order *order) {
    const bw_scheme *scheme = &order->scheme;
    bw_tuning *def = &order->tune.def;
    int stage = bw_scheme_stage(scheme, 4);
    if (stage < 0) stage = 0;
    bw_status status = bw_ask_stage(ask, scheme, &stage);
    if (status != BW_OK) return status;
    const bw_stage *s = &scheme->stages[stage];
    if (s->defenders >= BW_MAX_ATTACKERS)
        return bw_ask_refuse(ask, BW_NOT_FOUND,
                             "with %d defenders numbers are even, so there is no break to tune "
                             "for; choose another stage with %sstage",
                             s->defenders, ask->prefix);
    *def = bw_tuning_default(scheme, stage);
    status = ask_numbers(ask, bw_unit_length(scheme->units), def);
    if (status == BW_OK) status = ask_keep(ask, s, &def->limits);
    if (status != BW_OK) return status;
    bw_knob knobs[BW_MAX_KNOBS];
    if (bw_knobs(scheme, stage, &def->limits, knobs) > 0) return BW_OK;
    return bw_ask_refuse(ask, BW_NOT_FOUND,
                         "everything is kept as it is, so there is nothing to tune; %s",
                         *ask->prefix ? "take something out of --keep" : "let something move");
}
