/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A tuning on a terminal.
#include "core/level.h"
#include "core/maths.h"
#include "report/catalogue.h"
#include "report/column.h"
#include "report/tune_report.h"

enum { WIDTH = 79, LABEL = 20, LINE = 1024 };

static void put_changes(const bw_tune_report *r, bw_text *out) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_put_plain_sentence(out, bw_voice_of(r->def->scheme), &bw_s_tune_changes);
    int kept = 0;
    for (int k = 0; k < r->tuned->knob_count; k++) {
        if (r->tuned->at[k] == r->tuned->knobs[k].now) {
            kept++;
            continue;
        }
        char line[LINE];
        bw_text t = bw_text_in(line, sizeof line);
        bw_knob_name(stage, &r->tuned->knobs[k], &t);
        bw_put(out, "  ");
        char turn[LINE];
        bw_text now = bw_text_in(turn, sizeof turn);
        bw_say_turn(r, k, &now);
        bw_put_row(out, 2, (bw_column[]){{line, 48}, {turn, 30}}, 2);
    }
    if (kept > 0) {
        bw_put(out, "  As they are: ");
        bw_put_int(out, kept);
        bw_put(out, " of ");
        bw_put_int(out, r->tuned->knob_count);
        bw_put(out, " numbers.\n");
    }
}

static void put_kind(const bw_tune_report *r, bw_drill_kind kind, bw_text *out) {
    const int drills = r->evidence->drills[kind];
    if (drills == 0) return;
    char line[LINE];
    bw_put(out, kind == BW_DRILL_TRAINING ? "  Trained on: " : "  Held out: ");
    bw_put(out, bw_drill_name(kind));
    if (kind == BW_DRILL_LEVEL) {
        bw_put(out, ", ");
        bw_put(out, bw_level_at(r->evidence->level)->name);
    }
    bw_put(out, " (");
    bw_put_int(out, drills);
    bw_put(out, drills == 1 ? " break, " : " breaks, ");
    bw_put_int(out, r->evidence->seeds);
    bw_put(out, " seeds)\n");
    for (int best = 0; best < 2; best++) {
        bw_text t = bw_text_in(line, sizeof line);
        bw_say_kind(r, kind, best, &t);
        bw_put(out, best ? "    best     " : "    typical  ");
        bw_put_wrapped(out, line, 13, 13, WIDTH);
    }
}

/// How far a home may be off before it costs more than chance: along x and y from the middle.
static void put_room(const bw_tune_report *r, const bw_sense_map *map, bw_text *out) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    const int mid = BW_SENSE_STEPS;
    const struct {
        const char *name;
        int across, out;
    } ways[] = {{"in", 0, -1}, {"out", 0, 1}, {"narrower", -1, 0}, {"wider", 1, 0}};
    char name[2 * BW_NAME_SIZE];
    bw_text t = bw_text_in(name, sizeof name);
    if (map->twin >= 0 && map->twin != map->spot) {
        bw_put(&t, stage->spots[map->twin].name);
        bw_put(&t, " and ");
    }
    bw_put(&t, stage->spots[map->spot].name);
    bw_put(out, "  ");
    char costs[LINE];
    bw_text c = bw_text_in(costs, sizeof costs);
    for (int w = 0; w < BW_COUNT(ways); w++) {
        const int across = mid + 2 * ways[w].across, up = mid + 2 * ways[w].out;
        bw_put(&c, w > 0 ? ", " : "");
        bw_put(&c, ways[w].name);
        bw_put(&c, " ");
        if (!map->there[up][across]) {
            bw_put(&c, "-");
            continue;
        }
        const double cost = 100 * map->cost[up][across];
        if (cost > 0) bw_put(&c, "+");
        bw_put_fixed(&c, cost, 1);
    }
    bw_put_row(out, 2, (bw_column[]){{name, 32}, {costs, 46}}, 2);
}

static void put_sense(const bw_tune_report *r, bw_text *out) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "Where precision matters: goals in 100 training breaks more or fewer when a pair "
               "stands two ");
    bw_put(&t, bw_unit_long(r->def->scheme->units));
    bw_put(&t, " off its new place. Anything between -");
    bw_put_fixed(&t, 100 * r->sense->flat, 1);
    bw_put(&t, " and +");
    bw_put_fixed(&t, 100 * r->sense->flat, 1);
    bw_put(&t, " is chance.");
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    for (int i = 0; i < r->sense->map_count; i++)
        put_room(r, &r->sense->maps[i], out);
}

void bw_tune_text(const bw_tune_report *r, bw_text *out) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    char line[LINE];
    bw_put(out, r->def->scheme->name);
    bw_put(out, ", ");
    bw_put(out, stage->shape);
    bw_put(out, ": a suggestion\n\n");
    put_changes(r, out);
    bw_put(out, "\nGoals in 100 breaks of six seconds\n");
    for (int kind = 0; kind < BW_DRILL_KINDS; kind++)
        put_kind(r, (bw_drill_kind)kind, out);
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_gain(r, &t);
    bw_put_char(out, '\n');
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    bw_put_char(out, '\n');
    put_sense(r, out);
    bw_put(out, "\nHow to read this\n");
    for (int i = 0;; i++) {
        t = bw_text_in(line, sizeof line);
        if (!bw_say_tune_limit(r, i, &t)) break;
        bw_put(out, "  ");
        bw_put_wrapped(out, line, 2, 2, WIDTH);
    }
}
