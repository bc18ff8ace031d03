/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/attackers.h"
#include "cli/load.h"
#include "cli/say.h"
#include "core/attack_set.h"
#include "core/field.h"

/// "x,y x,y ...": up to six places with spaces between.
static bool scan_attackers(const bw_scheme *scheme, const char *text, bw_attackers *men) {
    while (*text == ' ')
        text++;
    while (*text) {
        if (men->count == BW_MAX_ATTACKERS) return false;
        if (!bw_scan_place(scheme, &text, &men->at[men->count])) return false;
        if (*text && *text != ' ') return false;
        men->count++;
        while (*text == ' ')
            text++;
    }
    return men->count > 0;
}

const char *bw_set_choice(int index) {
    return index < bw_attack_set_count() ? bw_attack_set_at(index)->id : NULL;
}

static int place_set(const bw_scheme *scheme, const char *id, int count, bw_attackers *men) {
    bw_status status = bw_attack_set_place(scheme, id, count, men->at);
    men->count = count;
    if (status == BW_OK) return BW_EXIT_OK;
    const char *near = bw_nearest_word(id, bw_set_id, scheme);
    if (status == BW_LIMIT)
        bw_say_error("the set \"%s\" has %d men, fewer than %d; ask for fewer with --men.", id,
                     bw_attack_set_men(scheme, id), count);
    else if (near)
        bw_say_error("there is no attack set \"%s\"; did you mean \"%s\"?", id, near);
    else
        bw_say_error("there is no attack set \"%s\"; a set is named from the top down, such as "
                     "2-2-2.",
                     id);
    return BW_EXIT_WRONG;
}

static int load_set(const bw_args *args, const bw_scheme *scheme, const char *id,
                    bw_attackers *men) {
    int count = bw_attack_set_men(scheme, id);
    if (!bw_option_int(args, "men", 3, BW_MAX_ATTACKERS, &count)) return BW_EXIT_USAGE;
    return place_set(scheme, id, count, men);
}

static int place_each(const bw_args *args, const bw_scheme *scheme, const char *places,
                      bw_attackers *men) {
    if (!scan_attackers(scheme, places, men))
        return bw_usage(args->verb,
                        "--attackers is up to %d places with spaces between, such as "
                        "\"-7,14 7,14\", not \"%s\".",
                        BW_MAX_ATTACKERS, places);
    for (int i = 0; i < men->count; i++) {
        if (bw_field_contains(bw_field_at(scheme->field), men->at[i])) continue;
        bw_say_error("attacker %d of \"%s\" is off the field; every place lies inside the lines.",
                     i + 1, places);
        return BW_EXIT_WRONG;
    }
    return BW_EXIT_OK;
}

int bw_load_attackers(const bw_args *args, const bw_scheme *scheme, bw_attackers *men) {
    const char *places = bw_option_text(args, "attackers"), *set = bw_option_text(args, "set");
    men->count = 0;
    if (places && set) return bw_usage(args->verb, "give --attackers or --set, not both.");
    if (!set && bw_option_given(args, "men"))
        return bw_usage(args->verb, "--men goes with --set: how many of its attackers come.");
    if (set) return load_set(args, scheme, set, men);
    return places ? place_each(args, scheme, places, men) : BW_EXIT_OK;
}
