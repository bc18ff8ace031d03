/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is asked for among the values of a request. The page fills them in from lists, so the sentences are
/// for whoever talks to the server by hand.
#include "core/level.h"
#include "core/text.h"
#include "report/ask.h"
#include "serve/work.h"

bw_status bw_work_read_look(const bw_target *target, bw_work *w, bw_error *error) {
    const char *level = bw_target_value(target, "level"), *theme = bw_target_value(target, "theme");
    const char *paper = bw_target_value(target, "paper");
    w->level = level ? bw_level_find(level) : NULL;
    if (level && !w->level) return bw_work_refuse(error, "There is no level \"", level, "\"");
    w->theme = theme ? bw_theme_find(theme) : bw_theme_at(BW_THEME_CHART);
    if (!w->theme) return bw_work_refuse(error, "There is no theme \"", theme, "\"");
    for (int i = 0; paper && !bw_same(bw_paper_name((bw_paper)i), paper); i++) {
        if (i + 1 == BW_PAPER_COUNT)
            return bw_work_refuse(error, "There is no paper \"", paper, "\"");
        w->order.paper = (bw_paper)(i + 1);
    }
    return BW_OK;
}

/// Quick is what a coach waits for at the board.
static const char *value_of(const void *self, const char *name) {
    const bw_work *w = self;
    const char *value = bw_target_value(&w->target, name);
    if (value || !w->order.alone) return value;
    return bw_same(name, "tries") ? "200" : bw_same(name, "breaks") ? "12" : NULL;
}

bw_status bw_work_read_order(bw_work *w, bw_error *error) {
    bw_asked ask = {value_of, w, "", 10, 5000, ""};
    int quick;
    if (!bw_target_number(&w->target, "quick", 0, 1, 0, &quick))
        return bw_work_refuse(error, "quick is 0 or 1", "", "");
    w->order.alone = quick != 0;
    bw_status status = bw_ask_break(&ask, &w->order);
    if (status == BW_OK && w->kind->product && bw_same(w->kind->product, "tune")) {
        status = bw_ask_tuning(&ask, &w->order);
        w->order.tune.def.seed = w->order.def.seed;
    }
    if (status != BW_OK) return bw_work_refuse(error, ask.why, "", "");
    return bw_work_read_look(&w->target, w, error);
}
