/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Better spots for one stage: the search, the evidence and the maps.
#include "report/product_part.h"

enum { EVIDENCE_SEEDS = 3, EVIDENCE_BREAKS = 12 };

/// What a break costs judged fully, in breaks judged quickly (docs/tune.md). For the progress alone.
static const double full_cost = 16;

/// How far a tuning is, in candidates judged or what takes as long.
typedef struct gauge {
    const bw_watcher *watch;
    double before, each, all; ///< of the parts done, of a step of this part, in all
} gauge;

static void tell(void *self, int done, int of) {
    (void)of;
    const gauge *g = self;
    bw_tell(g->watch, (int)(g->before + g->each * done), (int)g->all);
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

static void go_on(const bw_order *o, const char *doing) {
    if (o->doing) o->doing(doing);
}

static bw_status work(bw_order *o) {
    bw_tune_run *t = &o->tune;
    bw_tuning *def = &t->def;
    const int most = def->training < EVIDENCE_BREAKS ? def->training : EVIDENCE_BREAKS;
    const double round = 2 * full_cost * most / def->training;
    const int rounds = EVIDENCE_SEEDS * BW_DRILL_KINDS;
    gauge g = {&o->watch, 0, 1, def->budget + rounds * round + map_cost(def)};
    // Whoever is told what is done counts each part on its own; others count the whole.
    def->watch = o->doing ? o->watch : (bw_watcher){tell, &g, o->watch.cancel};
    bw_status status = bw_tune(def, &t->tuned);
    if (status != BW_OK) return status;
    go_on(o, "Playing held-out breaks");
    g.before = def->budget;
    g.each = round;
    status = bw_evidence_collect(def, &t->tuned.scheme, EVIDENCE_SEEDS, most, &t->evidence);
    if (status != BW_OK) return status;
    go_on(o, "Looking where a yard matters");
    g.before += rounds * round;
    g.each = 1;
    return bw_sense_map_all(def, &t->tuned.scheme, &t->sense);
}

static bw_status page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_tune_page(&o->tune.report, number, o->paper, ink);
}

static bw_status put_text(const void *self, bw_text *out) {
    bw_tune_text(&((const bw_order *)self)->tune.report, out);
    return BW_OK;
}

static bool put_json(const void *self, FILE *out) {
    bw_tune_json(out, &((const bw_order *)self)->tune.report);
    return true;
}

bw_status bw_open_tuning(bw_order *o, bw_document *out, bw_text *why) {
    bw_tune_run *t = &o->tune;
    const bw_status status = work(o);
    t->def.watch = BW_UNWATCHED; // the gauge is gone
    if (status == BW_BAD_INPUT) bw_put(why, "no break of this stage can be played.");
    if (status != BW_OK) return status;
    t->report = (bw_tune_report){
        .def = &t->def, .tuned = &t->tuned, .evidence = &t->evidence, .sense = &t->sense};
    out->pages.count = bw_tune_pages(&t->report);
    out->pages.page = page;
    out->room = BW_TUNE_TEXT_BYTES;
    out->text = put_text;
    out->json = put_json;
    return BW_OK;
}
