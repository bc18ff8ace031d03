/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Better spots for one stage: what may be turned, from a request; the search, the evidence and the maps.
#include "core/text.h"
#include "report/tune_report.h"
#include "serve/work.h"
#include <stdlib.h>
#include <string.h>

/// Quick is what a coach waits for at the board; evidence as the verb tune has it.
enum { QUICK_TRIES = 200, QUICK_BREAKS = 12, EVIDENCE_SEEDS = 3, EVIDENCE_BREAKS = 12 };

/// What a break costs judged fully, in breaks judged quickly (docs/tune.md). For the progress alone.
static const double full_cost = 16;

static bw_status read_stage(const bw_work *w, int *stage, bw_error *error) {
    int defenders;
    const char *text = bw_target_value(&w->target, "stage");
    *stage = bw_scheme_stage(&w->scheme, 4);
    if (text) {
        if (!bw_target_number(&w->target, "stage", 1, BW_MAX_SPOTS, 4, &defenders))
            return bw_work_refuse(error, "stage is a number of defenders", "", "");
        *stage = bw_scheme_stage(&w->scheme, defenders);
        if (*stage < 0) return bw_work_refuse(error, "There is no stage with ", text, " defenders");
    }
    if (*stage < 0) *stage = 0;
    if (w->scheme.stages[*stage].defenders >= BW_MAX_ATTACKERS)
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
        if (!bw_knob_keep(&w->scheme.stages[def->stage], word, &def->limits))
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
    bw_tuning *def = &w->tuning;
    *def = bw_tuning_default(&w->scheme, stage);
    def->seed = w->def.seed;
    const double unit = bw_unit_length(w->scheme.units);
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
    if (bw_knobs(&w->scheme, stage, &def->limits, knobs) > 0) return BW_OK;
    return bw_work_refuse(error, "Everything is kept as it is, so there is nothing to suggest", "",
                          "");
}

/// One tuning under way. Its progress is in candidates judged, or what takes as long.
typedef struct tuning {
    bw_work *work;
    bw_tuned tuned;
    bw_evidence evidence;
    bw_sense sense;
    bw_tune_report report;
    double before, each, all; ///< candidates: of the parts done, of a step of this part, in all
} tuning;

static void tell(void *self, int done, int of) {
    (void)of;
    const tuning *t = self;
    bw_tell(&t->work->battery.watch, (int)(t->before + t->each * done), (int)t->all);
}

/// Candidates that the maps take.
static int map_cost(const bw_tuning *def) {
    bw_knob knobs[BW_MAX_KNOBS];
    const bw_knob_limits all = bw_knob_limits_default();
    const int count = bw_knobs(def->scheme, def->stage, &all, knobs);
    int candidates = 1;
    for (int k = 0; k < count; k++) {
        if (knobs[k].spot < 0) candidates += BW_SENSE_SIDE;
        if (knobs[k].kind == BW_KNOB_OUT) candidates += BW_SENSE_SIDE * BW_SENSE_SIDE;
    }
    return candidates;
}

static bw_status go(tuning *t) {
    bw_tuning *def = &t->work->tuning;
    const int most = def->training < EVIDENCE_BREAKS ? def->training : EVIDENCE_BREAKS;
    const double round = 2 * full_cost * most / def->training;
    const int rounds = EVIDENCE_SEEDS * BW_DRILL_KINDS;
    def->watch = (bw_watcher){tell, t, t->work->battery.watch.cancel};
    t->each = 1;
    t->all = def->budget + rounds * round + map_cost(def);
    bw_status status = bw_tune(def, &t->tuned);
    if (status != BW_OK) return status;
    t->before = def->budget;
    t->each = round;
    status = bw_evidence_collect(def, &t->tuned.scheme, EVIDENCE_SEEDS, most, &t->evidence);
    if (status != BW_OK) return status;
    t->before += rounds * round;
    t->each = 1;
    return bw_sense_map_all(def, &t->tuned.scheme, &t->sense);
}

static bw_status put_json(const tuning *t, bw_bytes *result, bw_text *why) {
    FILE *out = open_memstream(&result->data, &result->length);
    if (out) bw_tune_json(out, &t->report);
    if (out && fclose(out) == 0) return BW_OK;
    bw_put(why, BW_NO_MEMORY_SENTENCE);
    return BW_NO_ROOM;
}

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const tuning *t = self;
    return bw_tune_page(&t->report, number, t->work->paper, ink);
}

static bw_status make(bw_work *w, bw_press *press, bool sheets, bw_bytes *result, bw_text *why) {
    tuning *t = calloc(1, sizeof *t);
    if (!t) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
        return BW_NO_ROOM;
    }
    t->work = w;
    t->report = (bw_tune_report){
        .def = &w->tuning, .tuned = &t->tuned, .evidence = &t->evidence, .sense = &t->sense};
    bw_status status = go(t);
    if (status == BW_LIMIT) bw_put(why, "Cancelled.");
    if (status == BW_NO_ROOM) bw_put(why, BW_NO_MEMORY_SENTENCE);
    if (status == BW_BAD_INPUT) bw_put(why, "No break of this stage can be played.");
    if (status == BW_OK && sheets) {
        const bw_pages pages = {bw_tune_pages(&t->report), w->scheme.name, draw_page, t};
        status = bw_press_pdf(press, &pages, w->theme, result, why);
    } else if (status == BW_OK) {
        status = put_json(t, result, why);
    }
    free(t);
    return status;
}

bw_status bw_make_tuning(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    return make(w, press, false, result, why);
}

bw_status bw_make_tuning_sheets(bw_work *w, bw_press *press, bw_bytes *result, bw_text *why) {
    return make(w, press, true, result, why);
}
