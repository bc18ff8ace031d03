/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The table, and how each row of it is looked at.
#include "team/odd.h"
#include "core/sprint.h"
#include "core/units.h"
#include "team/opponent.h"
#include <string.h>

static const bw_odd_rule rules[BW_ODD_COUNT] = {
    [BW_ODD_OPPONENT] = {"opponent", "opponent", 0, "",
                         "\"{value}\" is no opponent so far, but {near} is",
                         "the games in the file"},
    [BW_ODD_GAME_AHEAD] = {"game-ahead", "date", 366, "days",
                           "the game on {value} is more than a year ahead; today is {near}",
                           "assumed: no schedule is made longer before"},
    [BW_ODD_BREAK_AHEAD] = {"break-ahead", "date", 1, "days",
                            "the game on {value} has not been played yet; today is {near}",
                            "the machine's clock, and a day for where it is tomorrow already"},
    [BW_ODD_SPRINT_AHEAD] = {"sprint-ahead", "date", 1, "days",
                             "a sprint on {value} has not been run yet; today is {near}",
                             "the machine's clock, and a day for where it is tomorrow already"},
    [BW_ODD_SPRINT_FAST] = {"sprint-fast", "seconds", 0.25, "s",
                            "{value} is faster than anybody has run; the fastest man timed took "
                            "{near} from his first step",
                            "men's 100 m final, Berlin 2009, the splits as R. Graubner and "
                            "E. Nixdorf give them in New Studies in Athletics: within 0.02 s top "
                            "speed 12.2146 m/s and time constant 1.2367 s. 0.25 s for a thumb that "
                            "starts late, 0.5 s for a light gate that he trips on the move"},
    [BW_ODD_SPRINT_SLOW] = {"sprint-slow", "seconds", 2, "m/s",
                            "{value} is slower than a slow start and a fast walk, {near}",
                            "the fastest walk of men in their twenties is 2.5 m/s (R. W. Bohannon, "
                            "Age and Ageing 26, 1997)"},
    [BW_ODD_SPOT] = {"spot", "spots", 0, "",
                     "no scheme in the file has a spot \"{value}\"; there are {near}",
                     "the schemes in the file, every revision"},
    [BW_ODD_JERSEY] = {"jersey", "out", 0, "", "nobody on the roster wears number {value}",
                       "the roster, where there is one"},
    [BW_ODD_SHOT] = {"shot", "shot", 1, "yd", "a shot from {value} was taken off the field; {near}",
                     "the field of the newest scheme (core/field), and a yard for the finger"},
    [BW_ODD_STAGE] = {"stage", "stage", 1, "men", "the stage for {value} was called with {near}",
                      "a call may come one man early or late; more is a slip (assumed)"},
};

const bw_odd_rule *bw_odd_rule_of(bw_odd_kind kind) {
    return kind > BW_ODD_NOTHING && kind < BW_ODD_COUNT ? &rules[kind] : NULL;
}

/// Fills *odd with the rule's sentence. Always true.
static bool found(bw_odd *odd, bw_odd_kind kind, const char *value, const char *near) {
    odd->kind = kind;
    bw_text t = bw_text_in(odd->message, sizeof odd->message);
    for (const char *c = rules[kind].sentence; *c;) {
        if (strncmp(c, "{value}", 7) == 0) {
            bw_put(&t, value);
            c += 7;
        } else if (strncmp(c, "{near}", 6) == 0) {
            bw_put(&t, near);
            c += 6;
        } else {
            bw_put_char(&t, *c++);
        }
    }
    return true;
}

static bool ahead(const bw_known *known, const char *date, bw_odd_kind kind, bw_odd *odd) {
    if (known->today == 0 || bw_date_days(date) <= known->today + (int64_t)rules[kind].limit)
        return false;
    char today[BW_DATE_SIZE];
    bw_text t = bw_text_in(today, sizeof today); // the day alone fits
    bw_put_time(&t, known->today * 86400);
    return found(odd, kind, date, today);
}

bool bw_odd_game(const bw_known *known, const bw_game *game, bw_odd *odd) {
    *odd = (bw_odd){.kind = BW_ODD_NOTHING};
    const bw_game *near = NULL;
    bool is_known = false;
    int least = BW_NAME_SIZE;
    for (int i = 0; i < known->game_count; i++) {
        const bw_game *g = &known->games[i];
        if (strcmp(g->opponent, game->opponent) == 0) {
            if (strcmp(g->date, game->date) == 0) return false;
            is_known = true;
            continue;
        }
        const int apart = bw_opponents_apart(g->opponent, game->opponent);
        if (apart < 0 || apart > least) continue;
        near = g; // the nearest name, of equals the latest game
        least = apart;
    }
    if (near && !is_known) {
        char what[2 * BW_NAME_SIZE];
        bw_text t = bw_text_in(what, sizeof what);
        bw_put_char(&t, '"');
        bw_put(&t, near->opponent);
        bw_put(&t, "\" (game ");
        bw_put_int(&t, near->id);
        bw_put(&t, ", ");
        bw_put(&t, near->date);
        bw_put_char(&t, ')');
        return found(odd, BW_ODD_OPPONENT, game->opponent, what);
    }
    return ahead(known, game->date, BW_ODD_GAME_AHEAD, odd);
}

/// The fastest man timed (rules[BW_ODD_SPRINT_FAST].source).
static const bw_legs fastest = {12.2146, 1.2367};

/// How much earlier than his first step a light gate at the line can be tripped, s.
static const double gate_early = 0.5;

/// What a slow starter needs to get going from a stand, s (assumed): a metre in 0.7 s is no walk.
static const double slow_start = 1.0;

/// "20.0 yd (18.3 m) in 0.90 s"
static void put_run(bw_text *t, const bw_timed_split *s) {
    bw_say_length(BW_YARDS, s->distance, t);
    bw_put(t, " (");
    bw_say_length(BW_METRES, s->distance, t);
    bw_put(t, ") in ");
    bw_put_fixed(t, s->seconds, 2);
    bw_put(t, " s");
}

static bool odd_time(const bw_timed_split *s, bw_odd *odd) {
    char run[64], held[64];
    bw_text value = bw_text_in(run, sizeof run), near = bw_text_in(held, sizeof held);
    put_run(&value, s);
    const double record = bw_sprint_time(fastest, s->distance);
    const double early =
        strcmp(s->clock, "gate") == 0 ? gate_early : rules[BW_ODD_SPRINT_FAST].limit;
    if (s->seconds < record - early) {
        bw_put_fixed(&near, record, 2);
        bw_put(&near, " s");
        return found(odd, BW_ODD_SPRINT_FAST, run, held);
    }
    const double walk = slow_start + s->distance / rules[BW_ODD_SPRINT_SLOW].limit;
    if (s->seconds <= walk) return false;
    bw_say_seconds(walk, &near);
    return found(odd, BW_ODD_SPRINT_SLOW, run, held);
}

bool bw_odd_split(const bw_known *known, const bw_timed_split *split, bw_odd *odd) {
    *odd = (bw_odd){.kind = BW_ODD_NOTHING};
    return odd_time(split, odd) || ahead(known, split->date, BW_ODD_SPRINT_AHEAD, odd);
}

/// "G" is the goalkeeper, who has no spot in a stage.
static bool odd_spot(const bw_known *known, const char *code, bw_odd *odd) {
    char all[4 * BW_KNOWN_SPOTS + 8];
    bw_text t = bw_text_in(all, sizeof all);
    if (known->spot_count == 0 || strcmp(code, "G") == 0) return false;
    for (int i = 0; i < known->spot_count; i++) {
        if (strcmp(known->spot[i], code) == 0) return false;
        if (i > 0) bw_put(&t, i == known->spot_count - 1 ? " and " : ", ");
        bw_put(&t, known->spot[i]);
    }
    return found(odd, BW_ODD_SPOT, code, all);
}

bool bw_odd_player(const bw_known *known, const bw_player *player, bw_odd *odd) {
    *odd = (bw_odd){.kind = BW_ODD_NOTHING};
    for (int i = 0; i < player->spot_count; i++) {
        if (odd_spot(known, player->spots[i].spot, odd)) return true;
    }
    return false;
}

static bool odd_out(const bw_known *known, const char *who, bw_odd *odd) {
    int jersey = 0;
    if (strspn(who, "0123456789") < strlen(who)) return odd_spot(known, who, odd);
    for (const char *c = who; *c; c++)
        jersey = 10 * jersey + (*c - '0');
    if (known->player_count == 0 || known->jersey[jersey]) return false;
    return found(odd, BW_ODD_JERSEY, who, "");
}

/// How far something is beyond a line, with its grace; `line` is in metres from where it is counted.
static bool beyond(double at, double line, const char *where, const char *what, bw_odd *odd) {
    if (at <= line + rules[BW_ODD_SHOT].limit * BW_METRES_PER_YARD) return false;
    char value[64], near[96];
    bw_text v = bw_text_in(value, sizeof value), n = bw_text_in(near, sizeof near);
    bw_say_length(BW_YARDS, at, &v);
    bw_put_char(&v, ' ');
    bw_put(&v, where);
    bw_put(&n, what);
    bw_put(&n, " is at ");
    bw_say_length(BW_YARDS, line, &n);
    return found(odd, BW_ODD_SHOT, value, near);
}

static bool odd_shot(const bw_known *known, const bw_entry *e, bw_odd *odd) {
    const bw_field *f = known->field ? known->field : bw_field_at(0);
    const double across = e->shot.x < 0 ? -e->shot.x : e->shot.x;
    if (!e->shot_known) return false;
    return beyond(across, f->width / 2, e->shot.x < 0 ? "left" : "right", "the sideline", odd) ||
           beyond(e->shot.y, f->midline, "out", "the midline", odd) ||
           beyond(-e->shot.y, f->end_line, "behind", "the end line", odd);
}

static bool odd_stage(const bw_entry *e, bw_odd *odd) {
    const int off = e->stage > e->defence ? e->stage - e->defence : e->defence - e->stage;
    if (e->stage == 0 || off <= (int)rules[BW_ODD_STAGE].limit) return false;
    char value[32], near[32];
    bw_text v = bw_text_in(value, sizeof value), n = bw_text_in(near, sizeof near);
    bw_put_int(&v, e->stage);
    bw_put(&v, " defenders");
    bw_put_int(&n, e->defence);
    bw_put(&n, " in, on a ");
    bw_put_int(&n, e->offence);
    bw_put_char(&n, 'v');
    bw_put_int(&n, e->defence);
    return found(odd, BW_ODD_STAGE, value, near);
}

bool bw_odd_entry(const bw_known *known, const bw_entry *entry, const bw_game *game, bw_odd *odd) {
    *odd = (bw_odd){.kind = BW_ODD_NOTHING};
    for (int i = 0; i < entry->out_count; i++) {
        if (odd_out(known, entry->out[i], odd)) return true;
    }
    return odd_stage(entry, odd) || odd_shot(known, entry, odd) ||
           (game && ahead(known, game->date, BW_ODD_BREAK_AHEAD, odd));
}
