/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The break that is asked for.
#include "core/attack_set.h"
#include "core/text.h"
#include "report/ask.h"
#include "trial/standard.h"

/// Nobody starts farther behind than this, m.
static const double farthest = 100;

static void skip_spaces(const char **at) {
    while (**at == ' ')
        ++*at;
}

/// "20,30" into metres; spaces may stand round a number. False when it is no such list.
static bool scan_late(const char *at, double metres, bw_break_def *def) {
    def->late_count = 0;
    skip_spaces(&at);
    if (*at == '\0') return true;
    for (;; at++) {
        double distance;
        skip_spaces(&at);
        if (def->late_count == BW_MAX_LATE || !bw_scan_decimal(&at, &distance)) return false;
        if (!(distance > 0) || distance * metres > farthest) return false;
        def->late[def->late_count++] = distance * metres;
        skip_spaces(&at);
        if (*at == '\0') return true;
        if (*at != ',') return false;
    }
}

static bw_status ask_late(bw_asked *ask, const bw_scheme *scheme, bw_break_def *def) {
    const char *text = ask->value(ask->self, "late");
    if (!text || scan_late(text, bw_unit_length(scheme->units), def)) return BW_OK;
    return bw_ask_refuse(ask, BW_BAD_INPUT,
                         "%slate is up to %d distances from more than 0 to %d %s with commas "
                         "between, such as \"20,30\", or \"\" for nobody, not \"%s\"",
                         ask->prefix, BW_MAX_LATE, (int)bw_in_unit(scheme->units, farthest),
                         bw_unit_long(scheme->units), text);
}

static bw_status ask_numbers(bw_asked *ask, int *offence, int *defence) {
    bw_status status = bw_ask_whole(ask, "offence", 3, BW_MAX_ATTACKERS, offence);
    if (status == BW_OK) status = bw_ask_whole(ask, "defence", 3, BW_MAX_SPOTS, defence);
    if (status != BW_OK) return status;
    if (ask->value(ask->self, "offence") && !ask->value(ask->self, "defence")) {
        *defence = *offence == 6 ? 4 : *offence - 1;
        if (*defence < 3) *defence = 3;
    }
    if (*defence <= *offence) return BW_OK;
    return bw_ask_refuse(ask, BW_BAD_INPUT,
                         "%d defenders are more than %d attackers; a break has at most as many",
                         *defence, *offence);
}

/// Says that there is no such name, with the nearest one or the list of those there are.
static bw_status no_such(bw_asked *ask, const char *what, const char *name,
                         const char *(*id)(const void *, int), const bw_scheme *scheme) {
    const char *near = bw_nearest_word(name, id, scheme);
    if (near)
        return bw_ask_refuse(ask, BW_NOT_FOUND, "there is no %s \"%s\"; did you mean \"%s\"?", what,
                             name, near);
    char list[BW_MAX_LANDMARKS * (BW_ID_SIZE + 2)];
    bw_text text = bw_text_in(list, sizeof list);
    for (int i = 0; id(scheme, i); i++) {
        if (i > 0) bw_put(&text, ", ");
        bw_put(&text, id(scheme, i));
    }
    return bw_ask_refuse(ask, BW_NOT_FOUND, "there is no %s \"%s\"; there are %s", what, name,
                         list);
}

static bw_status check_set(bw_asked *ask, const bw_scheme *scheme, const char *set, int offence) {
    bw_vec at[BW_MAX_ATTACKERS];
    const bw_status status = bw_attack_set_place(scheme, set, offence, at);
    if (status == BW_OK) return BW_OK;
    if (status == BW_NOT_FOUND) return no_such(ask, "attack set", set, bw_set_id, scheme);
    return bw_ask_refuse(
        ask, BW_NOT_FOUND,
        "the attack set \"%s\" has fewer than %d men; ask for fewer with %soffence", set, offence,
        ask->prefix);
}

bw_status bw_ask_break(bw_asked *ask, bw_order *order) {
    const bw_scheme *scheme = &order->scheme;
    const bw_break_def usual = bw_standard_break(scheme);
    const char *set = ask->value(ask->self, "set"), *start = ask->value(ask->self, "start");
    int offence = usual.offence, defence = usual.defence, seed = 1;
    order->seconds = 4;
    bw_status status = ask_numbers(ask, &offence, &defence);
    if (status == BW_OK) status = bw_ask_whole(ask, "seconds", 1, BW_MAX_SECONDS, &order->seconds);
    if (status == BW_OK) status = bw_ask_whole(ask, "seed", 1, 999999, &seed);
    if (status == BW_OK && set) status = check_set(ask, scheme, set, offence);
    if (status != BW_OK) return status;
    if (start && bw_scheme_landmark(scheme, start) < 0)
        return no_such(ask, "landmark", start, bw_landmark_id, scheme);
    order->def = bw_standard_def(scheme, offence, defence, set ? set : usual.set,
                                 start ? start : usual.start);
    order->def.seed = (uint64_t)seed;
    return ask_late(ask, scheme, &order->def);
}
