/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/break_options.h"
#include "cli/say.h"
#include "core/attack_set.h"
#include "core/level.h"
#include "core/text.h"
#include "trial/standard.h"

/// Nobody starts farther behind than this, m.
static const double farthest = 100;

const char *bw_level_choice(int index) {
    return index < bw_level_count() ? bw_level_at(index)->id : NULL;
}

static int refuse_late(const bw_args *args, const bw_scheme *scheme, const char *text) {
    return bw_usage(args->verb,
                    "--late is up to %d distances from more than 0 to %d %s with commas between, "
                    "such as \"20,30\", or \"\" for nobody, not \"%s\".",
                    BW_MAX_LATE, (int)bw_in_unit(scheme->units, farthest),
                    bw_unit_long(scheme->units), text);
}

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

static int load_late(const bw_args *args, const bw_scheme *scheme, bw_break_def *def) {
    if (!bw_option_given(args, "late")) return BW_EXIT_OK;
    const char *text = bw_option_text(args, "late");
    return scan_late(text, bw_unit_length(scheme->units), def) ? BW_EXIT_OK
                                                               : refuse_late(args, scheme, text);
}

static int load_numbers(const bw_args *args, int *offence, int *defence) {
    const bool given = bw_option_given(args, "offence");
    if (!bw_option_int(args, "offence", 3, BW_MAX_ATTACKERS, offence) ||
        !bw_option_int(args, "defence", 3, BW_MAX_SPOTS, defence))
        return BW_EXIT_USAGE;
    if (given && !bw_option_given(args, "defence")) {
        *defence = *offence == 6 ? 4 : *offence - 1;
        if (*defence < 3) *defence = 3;
    }
    if (*defence > *offence)
        return bw_usage(args->verb,
                        "%d defenders are more than %d attackers; a break has at most "
                        "as many.",
                        *defence, *offence);
    return BW_EXIT_OK;
}

static const char *set_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    if (index < bw_attack_set_count()) return bw_attack_set_at(index)->id;
    index -= bw_attack_set_count();
    return index < scheme->set_count ? scheme->sets[index].id : NULL;
}

static const char *landmark_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    return index < scheme->landmark_count ? scheme->landmarks[index].id : NULL;
}

/// Says that there is no such name, with the nearest one or the list of those there are.
static int no_such(const char *what, const char *name, const char *(*id)(const void *, int),
                   const bw_scheme *scheme) {
    const char *near = bw_nearest_word(name, id, scheme);
    if (near) {
        bw_say_error("there is no %s \"%s\"; did you mean \"%s\"?", what, name, near);
        return BW_EXIT_WRONG;
    }
    char list[BW_MAX_LANDMARKS * (BW_ID_SIZE + 2)];
    bw_text text = bw_text_in(list, sizeof list);
    for (int i = 0; id(scheme, i); i++) {
        if (i > 0) bw_put(&text, ", ");
        bw_put(&text, id(scheme, i));
    }
    bw_say_error("there is no %s \"%s\"; there are %s.", what, name, list);
    return BW_EXIT_WRONG;
}

static int check_set(const bw_scheme *scheme, const char *set, int offence) {
    bw_vec at[BW_MAX_ATTACKERS];
    const bw_status status = bw_attack_set_place(scheme, set, offence, at);
    if (status == BW_OK) return BW_EXIT_OK;
    if (status == BW_NOT_FOUND) return no_such("attack set", set, set_id, scheme);
    bw_say_error("the attack set \"%s\" has fewer than %d men; ask for fewer with --offence.", set,
                 offence);
    return BW_EXIT_WRONG;
}

int bw_load_break(const bw_args *args, const bw_scheme *scheme, bw_break_request *request) {
    static const char *const choosing[] = {"offence", "defence", "set", "start", "late"};
    bw_break_def usual = bw_standard_break(scheme);
    int offence = usual.offence, defence = usual.defence, seed = 1;
    *request = (bw_break_request){.seconds = 4};
    for (int i = 0; i < BW_COUNT(choosing); i++)
        request->chosen |= bw_option_given(args, choosing[i]);

    int code = load_numbers(args, &offence, &defence);
    if (code != BW_EXIT_OK) return code;
    if (!bw_option_int(args, "seconds", 1, BW_MAX_SECONDS, &request->seconds) ||
        !bw_option_int(args, "seed", 1, 999999, &seed))
        return BW_EXIT_USAGE;
    const char *set = bw_option_text(args, "set"), *landmark = bw_option_text(args, "start");
    if (set) code = check_set(scheme, set, offence);
    if (code != BW_EXIT_OK) return code;
    if (landmark && bw_scheme_landmark(scheme, landmark) < 0)
        return no_such("landmark", landmark, landmark_id, scheme);

    request->def = bw_standard_def(scheme, offence, defence, set ? set : usual.set,
                                   landmark ? landmark : usual.start);
    request->def.seed = (uint64_t)seed;
    const char *level = bw_option_text(args, "level");
    request->level = level ? bw_level_find(level) : NULL;
    return load_late(args, scheme, &request->def);
}
