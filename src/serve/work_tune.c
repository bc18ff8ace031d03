/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Better spots for one stage: what may be turned, from a request.
#include "core/text.h"
#include "serve/work.h"

/// Quick is what a coach waits for at the board.
enum { QUICK_TRIES = 200, QUICK_BREAKS = 12 };

static bw_status read_stage(const bw_work *w, int *stage, bw_error *error) {
    int defenders;
    const char *text = bw_target_value(&w->target, "stage");
    *stage = bw_scheme_stage(&w->order.scheme, 4);
    if (text) {
        if (!bw_target_number(&w->target, "stage", 1, BW_MAX_SPOTS, 4, &defenders))
            return bw_work_refuse(error, "stage is a number of defenders", "", "");
        *stage = bw_scheme_stage(&w->order.scheme, defenders);
        if (*stage < 0) return bw_work_refuse(error, "There is no stage with ", text, " defenders");
    }
    if (*stage < 0) *stage = 0;
    if (w->order.scheme.stages[*stage].defenders >= BW_MAX_ATTACKERS)
        return bw_work_refuse(
            error, "With so many defenders numbers are even, so there is no break to tune for", "",
            "");
    return BW_OK;
}

static bw_status read_keep(const bw_work *w, bw_tuning *def, bw_error *error) {
    const char *text = bw_target_value(&w->target, "keep");
    while (text && *text) {
        char word[BW_VALUE_SIZE];
        size_t n = 0;
        for (; text[n] && text[n] != ','; n++)
            word[n] = text[n];
        word[n] = '\0';
        if (!bw_knob_keep(&w->order.scheme.stages[def->stage], word, &def->limits))
            return bw_work_refuse(error, "There is nothing to keep that is called \"", word, "\"");
        text += n + (text[n] == ',');
    }
    return BW_OK;
}

/// A plain number as the request has it, times `unit`; what is there already when it has none.
static bool read_decimal(const bw_work *w, const char *name, double low, double high, double unit,
                         double *out) {
    const char *text = bw_target_value(&w->target, name);
    if (!text) return true;
    const double value = bw_target_decimal(&text);
    *out = value * unit;
    return *text == '\0' && value >= low && value <= high;
}

bw_status bw_work_read_tuning(bw_work *w, bw_error *error) {
    int stage, quick;
    bw_status status = read_stage(w, &stage, error);
    if (status != BW_OK) return status;
    bw_tuning *def = &w->order.tune.def;
    *def = bw_tuning_default(&w->order.scheme, stage);
    def->seed = w->order.def.seed;
    const double unit = bw_unit_length(w->order.scheme.units);
    if (!read_decimal(w, "within", 0.1, 20, unit, &def->limits.most))
        return bw_work_refuse(error, "within is a number from 0.1 to 20", "", "");
    if (!read_decimal(w, "spacing", 0, 10, unit, &def->spacing))
        return bw_work_refuse(error, "spacing is a number from 0 to 10", "", "");
    if (!read_decimal(w, "mix", 0, 100, 0.01, &def->mix))
        return bw_work_refuse(error, "mix is a percentage from 0 to 100", "", "");
    if (!read_decimal(w, "practice", 0, 10, 0.01, &def->pull))
        return bw_work_refuse(error, "practice is a number of goals in 100 breaks from 0 to 10", "",
                              "");
    if (!bw_target_number(&w->target, "quick", 0, 1, 0, &quick))
        return bw_work_refuse(error, "quick is 0 or 1", "", "");
    if (!bw_target_number(&w->target, "tries", 10, 5000, quick ? QUICK_TRIES : def->budget,
                          &def->budget))
        return bw_work_refuse(error, "tries is a number from 10 to 5000", "", "");
    if (!bw_target_number(&w->target, "breaks", 4, BW_MAX_DRILLS,
                          quick ? QUICK_BREAKS : def->training, &def->training))
        return bw_work_refuse(error, "breaks is a number from 4 to 48", "", "");
    status = read_keep(w, def, error);
    if (status != BW_OK) return status;
    bw_knob knobs[BW_MAX_KNOBS];
    if (bw_knobs(&w->order.scheme, stage, &def->limits, knobs) > 0) return BW_OK;
    return bw_work_refuse(error, "Everything is kept as it is, so there is nothing to suggest", "",
                          "");
}
