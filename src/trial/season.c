/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/season.h"
#include "core/maths.h"

#define YD BW_METRES_PER_YARD

bw_shot_place bw_shot_place_of(const bw_entry *entry) {
    if (!entry->shot_known) return BW_SHOT_UNKNOWN;
    if (entry->shot.y < 0) return BW_SHOT_BACK;
    const double d = bw_length(entry->shot);
    return d < 5 * YD    ? BW_SHOT_NEAR
           : d < 10 * YD ? BW_SHOT_MIDDLE
           : d < 15 * YD ? BW_SHOT_FAR
                         : BW_SHOT_LONG;
}

static void add(bw_group *g, const bw_entry *e, double forecast) {
    const bool shot = bw_outcome_shot(e->outcome), goal = e->outcome == BW_OUTCOME_GOAL;
    g->breaks++;
    g->outcome[e->outcome]++;
    g->goals.cases++;
    g->goals.hits += goal;
    g->shots.cases++;
    g->shots.hits += shot;
    g->on_shot.cases += shot;
    g->on_shot.hits += goal;
    if (e->seconds >= 0) {
        g->timed++;
        g->seconds += (e->seconds - g->seconds) / g->timed;
    }
    if (forecast >= 0) {
        g->forecast_breaks++;
        g->expected += forecast;
    }
}

/// The group with this key, a new one at the end when there is none yet; NULL when there is no room.
static bw_group *group_of(bw_group *list, int *count, int room, int64_t key) {
    for (int i = 0; i < *count; i++) {
        if (list[i].key == key) return &list[i];
    }
    if (*count == room) return NULL;
    list[*count] = (bw_group){.key = key};
    return &list[(*count)++];
}

/// By rising key. Insertion: the lists are short.
static void sort_by_key(bw_group *list, int count) {
    for (int i = 1; i < count; i++) {
        const bw_group moved = list[i];
        int k = i;
        for (; k > 0 && list[k - 1].key > moved.key; k--)
            list[k] = list[k - 1];
        list[k] = moved;
    }
}

/// Groups the caller named, the newest as far as there is room.
static int name_groups(bw_group *list, int room, const bw_season_name *names, int count) {
    const int from = count > room ? count - room : 0;
    for (int i = from; i < count; i++) {
        list[i - from] = (bw_group){.key = names[i].id};
        bw_copy(list[i - from].label, sizeof list[i - from].label, names[i].label);
    }
    return count - from;
}

static void add_named(bw_season *s, const bw_entry *e) {
    s->named_breaks.cases++;
    s->named_breaks.hits += e->out_count > 0;
    for (int i = 0; i < e->out_count; i++) {
        int k = 0;
        while (k < s->named_count && !bw_same(s->named[k].who, e->out[i]))
            k++;
        if (k == s->named_count) {
            if (k == BW_SEASON_MEN) continue;
            s->named[s->named_count++] = (bw_named){.times = 0};
            bw_copy(s->named[k].who, sizeof s->named[k].who, e->out[i]);
        }
        s->named[k].times++;
        s->named[k].goals += e->outcome == BW_OUTCOME_GOAL;
    }
}

static void sort_named(bw_season *s) {
    for (int i = 1; i < s->named_count; i++) {
        const bw_named moved = s->named[i];
        int k = i;
        for (; k > 0 && s->named[k - 1].times < moved.times; k--)
            s->named[k] = s->named[k - 1];
        s->named[k] = moved;
    }
}

static void label_numbers(bw_group *g) {
    bw_text t = bw_text_in(g->label, sizeof g->label);
    bw_put_int(&t, g->key / 10);
    bw_put(&t, "v");
    bw_put_int(&t, g->key % 10);
}

static void label_stage(bw_group *g) {
    bw_text t = bw_text_in(g->label, sizeof g->label);
    if (g->key > BW_MAX_SPOTS) {
        bw_put(&t, "not noted");
        return;
    }
    bw_put_int(&t, g->key);
    bw_put(&t, " in");
}

static void label_place(bw_group *g) {
    static const char *const words[] = {"within 5 yd",  "5 to 10 yd",      "10 to 15 yd",
                                        "beyond 15 yd", "behind the goal", "place not noted"};
    bw_copy(g->label, sizeof g->label, words[g->key]);
}

static void lean(bw_group *list, int count) {
    bw_count counts[BW_SEASON_GAMES] = {{0, 0}};
    for (int i = 0; i < count; i++)
        counts[i] = list[i].goals;
    const bw_belief spread = bw_rate_spread(counts, count);
    for (int i = 0; i < count; i++)
        list[i].leaning = bw_rate_learn(spread, list[i].goals);
}

static void finish(bw_season *s) {
    sort_by_key(s->numbers, s->number_count);
    sort_by_key(s->stages, s->stage_count);
    sort_by_key(s->places, s->place_count);
    for (int i = 0; i < s->number_count; i++)
        label_numbers(&s->numbers[i]);
    for (int i = 0; i < s->stage_count; i++)
        label_stage(&s->stages[i]);
    for (int i = 0; i < s->place_count; i++)
        label_place(&s->places[i]);
    lean(s->games, s->game_count);
    lean(s->numbers, s->number_count);
    lean(s->stages, s->stage_count);
    sort_named(s);
}

static void calibrate(const bw_season_log *log, bw_season *out) {
    out->forecast_breaks = 0;
    if (!log->forecast) return;
    bw_calibrating run = bw_calibrate_begin();
    for (int i = 0; i < log->count; i++) {
        if (log->forecast[i] < 0) continue;
        bw_calibrate_add(&run, log->forecast[i], log->entries[i].outcome == BW_OUTCOME_GOAL);
        out->forecast_breaks++;
    }
    out->calibration = bw_calibrate_end(&run);
}

void bw_season_count(const bw_season_log *log, bw_season *s) {
    *s = (bw_season){.named_count = 0};
    bw_copy(s->all.label, sizeof s->all.label, "the season");
    s->game_count = name_groups(s->games, BW_SEASON_GAMES, log->games, log->game_count);
    s->revision_count =
        name_groups(s->revisions, BW_SEASON_REVISIONS, log->revisions, log->revision_count);
    for (int i = 0; i < log->count; i++) {
        const bw_entry *e = &log->entries[i];
        const double forecast = log->forecast ? log->forecast[i] : -1;
        int games = s->game_count, revisions = s->revision_count;
        bw_group *g[5] = {
            group_of(s->numbers, &s->number_count, BW_SEASON_NUMBERS, 10 * e->offence + e->defence),
            group_of(s->stages, &s->stage_count, BW_MAX_STAGES + 1, e->stage > 0 ? e->stage : 9),
            e->game ? group_of(s->games, &games, s->game_count, e->game) : NULL,
            e->revision ? group_of(s->revisions, &revisions, s->revision_count, e->revision) : NULL,
            bw_outcome_shot(e->outcome)
                ? group_of(s->places, &s->place_count, BW_SEASON_PLACES, bw_shot_place_of(e))
                : NULL};
        add(&s->all, e, forecast);
        for (int k = 0; k < 5; k++) {
            if (g[k]) add(g[k], e, forecast);
        }
        add_named(s, e);
    }
    calibrate(log, s);
    finish(s);
}
