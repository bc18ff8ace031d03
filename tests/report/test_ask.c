/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is asked for by name: the same values give the same order whoever asks; what is not of its form, or not
/// in the scheme, is refused in one sentence that names it as whoever asks writes it.
#include "harness.h"
#include "report/ask.h"
#include "scheme/fresh.h"
#include <stdlib.h>
#include <string.h>

/// Names and values, one after the other; NULL past the last.
static const char *value_of(const void *self, const char *name) {
    for (const char *const *at = self; *at; at += 2) {
        if (strcmp(at[0], name) == 0) return at[1];
    }
    return NULL;
}

static bw_order *order;

static void begin(void) {
    free(order);
    order = calloc(1, sizeof *order);
    bw_scheme_fresh(0, 3, &order->scheme);
}

/// The sentence about these values, "" when there is nothing wrong.
static const char *said(bw_status (*read)(bw_asked *, bw_order *), const char *name,
                        const char *value, const char *prefix, bw_status want) {
    static bw_asked ask;
    const char *values[] = {name, value, NULL};
    ask = (bw_asked){value_of, values, prefix, 50, 1000, ""};
    begin();
    CHECK_INT(read(&ask, order), want);
    return ask.why;
}

static void a_break_is_read(void) {
    const char *values[] = {"offence", "5",      "seconds", "7",   "seed", "12",
                            "late",    " 8,2.5", "set",     "3-3", NULL};
    bw_asked ask = {value_of, values, "--", 0, 0, ""};
    begin();
    CHECK_INT(bw_ask_break(&ask, order), BW_OK);
    CHECK_INT(order->def.offence, 5);
    CHECK_INT(order->def.defence, 4); // one fewer
    CHECK_INT(order->seconds, 7);
    CHECK_INT((long)order->def.seed, 12);
    CHECK_INT(order->def.late_count, 2);
    CHECK_NEAR(order->def.late[1], 2.5 * bw_unit_length(order->scheme.units), 1e-12);
    CHECK_TEXT(order->def.set, "3-3");
}

static void a_tuning_is_read(void) {
    const char *values[] = {"mix", "30", "practice", "0.7", "within", "2", "tries", "50", NULL};
    bw_asked ask = {value_of, values, "--", 50, 1000, ""};
    begin();
    CHECK_INT(bw_ask_tuning(&ask, order), BW_OK);
    const bw_tuning *def = &order->tune.def;
    CHECK_NEAR(def->mix, 0.3, 1e-15);
    CHECK_NEAR(def->pull, 0.007, 1e-15);
    CHECK_NEAR(def->limits.most, 2 * bw_unit_length(order->scheme.units), 1e-12);
    CHECK_INT(def->budget, 50);
    const bw_tuning usual = bw_tuning_default(&order->scheme, def->stage);
    CHECK_INT(def->training, usual.training);
    CHECK_NEAR(def->spacing, usual.spacing, 0);
}

static void what_is_wrong_is_named(void) {
    CHECK_TEXT(said(bw_ask_break, "seconds", "0", "", BW_BAD_INPUT),
               "seconds is a whole number from 1 to 10, not \"0\"");
    CHECK_TEXT(said(bw_ask_break, "seed", "1.5", "--", BW_BAD_INPUT),
               "--seed is a whole number from 1 to 999999, not \"1.5\"");
    CHECK_TEXT(said(bw_ask_break, "set", "2-2-3", "", BW_NOT_FOUND),
               "there is no attack set \"2-2-3\"; did you mean \"2-2-2\"?");
    CHECK_TEXT(said(bw_ask_break, "defence", "3", "", BW_OK), "");
    CHECK_TEXT(said(bw_ask_tuning, "within", "21", "", BW_BAD_INPUT),
               "within is a number from 0.1 to 20, not \"21\"");
    CHECK_TEXT(said(bw_ask_tuning, "tries", "49", "--", BW_BAD_INPUT),
               "--tries is a whole number from 50 to 1000, not \"49\"");
    CHECK_TEXT(said(bw_ask_tuning, "keep", "homes,rule", "", BW_NOT_FOUND),
               "everything is kept as it is, so there is nothing to tune; let something move");
    CHECK_TEXT(said(bw_ask_tuning, "keep", "homes,rule", "--", BW_NOT_FOUND),
               "everything is kept as it is, so there is nothing to tune; take something out of "
               "--keep");
    CHECK_TEXT(
        said(bw_ask_tuning, "stage", "6", "", BW_NOT_FOUND),
        "with 6 defenders numbers are even, so there is no break to tune for; choose another "
        "stage with stage");
}

static void decimals_are_plain(void) {
    static const struct {
        const char *text;
        bool good;
        double value;
        const char *rest;
    } cases[] = {{"12", true, 12, ""},
                 {"0.25,3", true, 0.25, ",3"},
                 {"1.5.2", true, 1.5, ".2"},
                 {"7.", true, 7, ""},
                 {"-1", true, -1, ""},
                 {"", false, 0, ""},
                 {".", false, 0, "."},
                 {"x2", false, 0, "x2"},
                 {"1e9", true, 1, "e9"},
                 {"nan", false, 0, "nan"},
                 {"1234567", false, 0, "1234567"}};
    for (int i = 0; i < BW_COUNT(cases); i++) {
        const char *at = cases[i].text;
        double value = 0;
        CHECK_INT(bw_scan_decimal(&at, &value), cases[i].good);
        CHECK_NEAR(value, cases[i].value, 0);
        CHECK_TEXT(at, cases[i].rest);
    }
}

int main(int argc, char **argv) {
    RUN(a_break_is_read);
    RUN(a_tuning_is_read);
    RUN(what_is_wrong_is_named);
    RUN(decimals_are_plain);
    free(order);
    return test_report(argc, argv);
}
