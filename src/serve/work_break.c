/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A break, a level and a paper among the values of a request. The page fills them in from lists, so the
/// sentences are for whoever talks to the server by hand.
#include "core/attack_set.h"
#include "core/level.h"
#include "core/text.h"
#include "serve/work.h"

/// Nobody starts farther behind than this, m.
static const double farthest = 100;

static bw_status read_late(const bw_target *target, bw_work *w, bw_error *error) {
    const char *text = bw_target_value(target, "late");
    if (!text) return BW_OK;
    const double metres = bw_unit_length(w->order.scheme.units);
    w->order.def.late_count = 0;
    while (*text) {
        const double length = bw_target_decimal(&text) * metres;
        if (w->order.def.late_count == BW_MAX_LATE || !(length > 0) || length > farthest ||
            (*text && (*text != ',' || !text[1])))
            return bw_work_refuse(error, "late is up to four distances with commas between", "",
                                  "");
        w->order.def.late[w->order.def.late_count++] = length;
        if (*text == ',') text++;
    }
    return BW_OK;
}

static bw_status read_names(const bw_target *target, const bw_work *w, const bw_break_def *usual,
                            const char **set, const char **start, bw_error *error) {
    *set = bw_target_value(target, "set");
    *start = bw_target_value(target, "start");
    if (!*set) *set = usual->set;
    if (!*start) *start = usual->start;
    if (bw_scheme_landmark(&w->order.scheme, *start) < 0)
        return bw_work_refuse(error, "There is no landmark \"", *start, "\"");
    return BW_OK;
}

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

bw_status bw_work_read_break(const bw_target *target, bw_work *w, bw_error *error) {
    const bw_break_def usual = bw_standard_break(&w->order.scheme);
    int offence, defence, seed, quick;
    if (!bw_target_number(target, "offence", 3, BW_MAX_ATTACKERS, usual.offence, &offence) ||
        !bw_target_number(target, "defence", 3, BW_MAX_SPOTS, usual.defence, &defence) ||
        !bw_target_number(target, "seconds", 1, BW_MAX_SECONDS, 4, &w->order.seconds) ||
        !bw_target_number(target, "seed", 1, 999999, 1, &seed) ||
        !bw_target_number(target, "quick", 0, 1, 0, &quick) || defence > offence)
        return bw_work_refuse(error, "A number of the break is out of its range", "", "");
    const char *set, *start;
    bw_status status = read_names(target, w, &usual, &set, &start, error);
    if (status != BW_OK) return status;
    bw_vec at[BW_MAX_ATTACKERS];
    if (bw_attack_set_place(&w->order.scheme, set, offence, at) != BW_OK)
        return bw_work_refuse(error, "There is no attack set \"", set, "\" with so many men");
    w->order.def = bw_standard_def(&w->order.scheme, offence, defence, set, start);
    w->order.def.seed = (uint64_t)seed;
    w->order.alone = quick != 0;
    status = read_late(target, w, error);
    return status == BW_OK ? bw_work_read_look(target, w, error) : status;
}
