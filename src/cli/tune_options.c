/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/tune_options.h"
#include "cli/load.h"
#include "cli/say.h"
#include "core/text.h"
#include "draw/view.h"
#include <string.h>

/// Everything --keep may name, for the nearest word: spots, then the rest.
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

static int load_keep(const bw_args *args, const bw_stage *stage, bw_knob_limits *limits) {
    const char *text = bw_option_text(args, "keep");
    while (text && *text) {
        char word[BW_NAME_SIZE];
        const size_t length = strcspn(text, ",");
        bw_text t = bw_text_in(word, sizeof word);
        bw_put_n(&t, text, length);
        if (!bw_knob_keep(stage, word, limits)) {
            char keys[128];
            bw_text k = bw_text_in(keys, sizeof keys);
            put_rule_keys(&k);
            const char *near = bw_nearest_word(word, keepable, stage);
            return bw_usage(
                args->verb,
                near ? "--keep cannot keep \"%s\"; did you mean \"%s\"?"
                     : "--keep cannot keep \"%s\"; it takes spots of the stage, \"homes\", "
                       "\"rule\", or %s.",
                word, near ? near : keys);
        }
        text += length + (text[length] == ',');
    }
    return BW_EXIT_OK;
}

/// A plain number from low to high.
static bool load_number(const bw_args *args, const char *name, double low, double high,
                        double *out) {
    const char *text = bw_option_text(args, name), *at = text;
    if (bw_scan_decimal(&at, out) && *at == '\0' && *out >= low && *out <= high) return true;
    bw_usage(args->verb, "--%s is a number from %g to %g, not \"%s\".", name, low, high, text);
    return false;
}

static int choose_stage(const bw_args *args, const bw_scheme *scheme, int *stage) {
    int code = BW_EXIT_OK;
    if (bw_option_given(args, "stage")) {
        *stage = bw_load_stage(args, scheme, &code);
        return *stage < 0 ? code : BW_EXIT_OK;
    }
    *stage = bw_scheme_stage(scheme, 4);
    if (*stage < 0) *stage = 0;
    return BW_EXIT_OK;
}

int bw_load_tuning(const bw_args *args, const bw_scheme *scheme, bw_tuning *def) {
    int stage, seed = 1;
    int code = choose_stage(args, scheme, &stage);
    if (code != BW_EXIT_OK) return code;
    *def = bw_tuning_default(scheme, stage);
    const double unit = bw_unit_length(scheme->units);
    double within, spacing, percent, goals;
    if (!load_number(args, "within", 0.1, 20, &within) ||
        !load_number(args, "spacing", 0, 10, &spacing) ||
        !load_number(args, "mix", 0, 100, &percent) ||
        !load_number(args, "practice", 0, 10, &goals) ||
        !bw_option_int(args, "tries", 50, 100000, &def->budget) ||
        !bw_option_int(args, "breaks", 4, BW_MAX_DRILLS, &def->training) ||
        !bw_option_int(args, "seed", 0, 2000000000, &seed))
        return BW_EXIT_USAGE;
    def->limits.most = within * unit;
    def->spacing = spacing * unit;
    def->mix = percent / 100;
    def->pull = goals / 100;
    def->seed = (uint64_t)seed;
    return load_keep(args, &scheme->stages[stage], &def->limits);
}
