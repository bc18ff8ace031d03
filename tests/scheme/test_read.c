/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the reader makes of a document: defaults, units, limits met exactly, the other side filled in,
/// pins on the centre line, and words it can guess. What it refuses is in tests/file/test_broken.c.
#include "harness.h"
#include "invariants.h"
#include "scheme_text.h"

static const double yd = BW_METRES_PER_YARD;
static bw_scheme scheme;
static bw_error error;

static bw_status read_text(const char *text) {
    return bw_document_parse(text, strlen(text), &scheme, &error);
}

/// Reads the small scheme with one thing changed, which must go well.
static void read_changed(const char *old, const char *new_) {
    char *text = text_change(text_small, old, new_);
    const bw_status status = read_text(text);
    CHECK_INT(status, BW_OK);
    if (status != BW_OK) fprintf(stderr, "  %s: %s\n", error.pointer, error.message);
    const char *fault = status == BW_OK ? scheme_fault(&scheme) : NULL;
    CHECK_TEXT(fault ? fault : "whole", "whole");
    free(text);
}

/// The same, refused at a place in words that begin so.
static void refuse_changed(const char *old, const char *new_, const char *pointer,
                           const char *words) {
    char *text = text_change(text_small, old, new_);
    CHECK_INT(read_text(text), BW_BAD_INPUT);
    CHECK_TEXT(error.pointer, pointer);
    CHECK(strstr(error.message, words) != NULL);
    if (!strstr(error.message, words)) fprintf(stderr, "  it says: %s\n", error.message);
    free(text);
}

static void what_is_left_out_is_practice(void) {
    CHECK_INT(read_text(text_small), BW_OK);
    const bw_rule usual = bw_rule_default(), *rule = &scheme.stages[0].rule;
    CHECK_NEAR(rule->pickup, usual.pickup, 1e-12);
    CHECK_NEAR(rule->cushion, usual.cushion, 1e-12);
    CHECK_SAME(rule->shift, usual.shift);
    CHECK_SAME(rule->soft, usual.soft);
    CHECK_NEAR(rule->area, usual.area, 1e-12);
    CHECK_SAME(rule->pull, usual.pull);
    CHECK(rule->hold_behind);
    CHECK_NEAR(rule->hold_at.x, usual.hold_at.x, 1e-12);
    CHECK_NEAR(rule->crease_at.y, usual.crease_at.y, 1e-12);
    CHECK_INT(rule->crease, BW_CREASE_FARTHEST);
    CHECK_INT(scheme.lead, BW_RIGHT);
    CHECK_INT(scheme.late_count + scheme.set_count + scheme.lesson_count, 0);
    CHECK_TEXT(scheme.notes, "");
}

static void lengths_become_metres(void) {
    CHECK_INT(read_text(text_small), BW_OK);
    CHECK_NEAR(scheme.landmarks[0].at.y, 15 * yd, 1e-12);
    CHECK_NEAR(scheme.stages[0].spots[0].home.x, 2.5 * yd, 1e-12);
    read_changed("\"yd\"", "\"m\"");
    CHECK_SAME(scheme.landmarks[0].at.y, 15);
    CHECK_SAME(scheme.stages[0].spots[0].home.x, 2.5);
    read_changed("[0, 15]", "[0.00004, 15.00006]"); // kept to four decimals
    CHECK_SAME(scheme.landmarks[0].at.x, 0);
    CHECK_NEAR(scheme.landmarks[0].at.y, 15.0001 * yd, 1e-12);
    read_changed("[0, 15]", "[-0.0, 15]");
    CHECK(scheme.landmarks[0].at.x == 0 && !signbit(scheme.landmarks[0].at.x));
}

/// Limits hold to the last figure a person can write, in either unit.
static void limits_are_met_exactly(void) {
    static const struct {
        const char *unit, *fine[4], *beyond[4];
    } cases[] = {
        {"\"yd\"",
         {"\"pickup\": 4", "\"pickup\": 25", "\"cushion\": 6", "\"area\": 10"},
         {"\"pickup\": 3.9999", "\"pickup\": 25.0001", "\"cushion\": 6.0001", "\"area\": 10.0001"}},
        {"\"m\"",
         {"\"pickup\": 3.6576", "\"pickup\": 22.86", "\"cushion\": 5.4864", "\"area\": 9.144"},
         {"\"pickup\": 3.6575", "\"pickup\": 22.8601", "\"cushion\": 5.4865", "\"area\": 9.1441"}},
    };
    for (int c = 0; c < BW_COUNT(cases); c++) {
        for (int i = 0; i < 8; i++) {
            char rule[80];
            const bool fine = i < 4;
            snprintf(rule, sizeof rule, "}], \"rule\": {%s}}]}",
                     fine ? cases[c].fine[i] : cases[c].beyond[i - 4]);
            char *unit = text_change(text_small, "\"yd\"", cases[c].unit);
            char *text = text_change(unit, "}]}]}", rule);
            CHECK_INT(read_text(text), fine ? BW_OK : BW_BAD_INPUT);
            free(text);
            free(unit);
        }
    }
}

/// A sentence that offers limits offers what is then taken.
static void offered_limits_are_taken(void) {
    for (int field = 0; field < bw_field_count(); field++) {
        for (int unit = 0; unit < 2; unit++) {
            double low_x = 0, high_x = 0, low_y = 0, high_y = 0;
            char place[80];
            char *on = text_change(text_small, "boys-nfhs", bw_field_at(field)->id);
            char *in = text_change(on, "\"yd\"", unit ? "\"m\"" : "\"yd\"");
            char *off = text_change(in, "[0, 15]", "[0, 900]");
            CHECK_INT(read_text(off), BW_BAD_INPUT);
            const char *from = strstr(error.message, " x is from ");
            CHECK(from && sscanf(from, " x is from %lf to %lf and y from %lf to %lf", &low_x,
                                 &high_x, &low_y, &high_y) == 4);
            CHECK_SAME(low_x, -high_x);
            snprintf(place, sizeof place, "[%.1f, %.1f]", low_x, high_y);
            char *taken = text_change(in, "[0, 15]", place);
            CHECK_INT(read_text(taken), BW_OK);
            free(taken);
            snprintf(place, sizeof place, "[%.1f, %.1f]", high_x, low_y);
            taken = text_change(in, "[0, 15]", place);
            CHECK_INT(read_text(taken), BW_OK);
            free(taken);
            free(off);
            free(in);
            free(on);
        }
    }
}

static void the_other_side_follows(void) {
    CHECK_INT(read_text(text_small), BW_OK);
    const bw_landmark *wl = &scheme.landmarks[2], *wr = &scheme.landmarks[1];
    CHECK_SAME(wl->at.x, -wr->at.x);
    CHECK_SAME(wl->at.y, wr->at.y);
    CHECK_TEXT(wl->name, "left wing");
    CHECK_INT(wl->twin, 1);
    CHECK_INT(wr->twin, 2);
    CHECK_INT(scheme.landmarks[0].twin, 0);
    const bw_spot *left = &scheme.stages[0].spots[1];
    CHECK_SAME(left->home.x, -scheme.stages[0].spots[0].home.x);
    CHECK_TEXT(left->name, "left back");
    CHECK_TEXT(left->call, "left");
    CHECK_INT(scheme.stages[0].spots[2].twin, 2);
    // Twins need not say so, and near is not the same.
    read_changed("{\"id\": \"wl\", \"mirror_of\": \"wr\"}",
                 "{\"id\": \"wl\", \"name\": \"wing\", \"at\": [-13, 7]}");
    CHECK_INT(scheme.landmarks[2].twin, 1);
    read_changed("{\"id\": \"wl\", \"mirror_of\": \"wr\"}",
                 "{\"id\": \"wl\", \"name\": \"wing\", \"at\": [-13, 7.0001]}");
    CHECK_INT(scheme.landmarks[2].twin, -1);
    // A mirror may stand before what it mirrors.
    read_changed("{\"id\": \"top\",", "{\"id\": \"w2\", \"mirror_of\": \"top2\"},\n"
                                      "{\"id\": \"top2\", \"name\": \"t\", \"at\": [3, 15]},\n"
                                      "{\"id\": \"top\",");
    CHECK_NEAR(scheme.landmarks[0].at.x, -3 * yd, 1e-12);
}

static int pinned(const char *landmark, const char *spot) {
    const bw_stage *stage = &scheme.stages[0];
    return stage->pinned[bw_scheme_landmark(&scheme, landmark)][bw_stage_spot(stage, spot)];
}

static bw_vec pin(const char *landmark, const char *spot) {
    const bw_stage *stage = &scheme.stages[0];
    return stage->pins[bw_scheme_landmark(&scheme, landmark)][bw_stage_spot(stage, spot)];
}

static void read_pins(const char *pins) {
    char rest[200];
    snprintf(rest, sizeof rest, "}], \"pins\": %s}]}", pins);
    read_changed("}]}]}", rest);
}

static void pins_hold_on_both_sides(void) {
    read_pins("{\"wr\": {\"BR\": [4, 3]}}");
    CHECK_INT(pinned("wr", "BR"), 1);
    CHECK_INT(pinned("wl", "BL"), 2);
    CHECK_INT(pinned("wr", "BL"), 0);
    CHECK_INT(pinned("wl", "BR"), 0);
    CHECK_SAME(pin("wl", "BL").x, -pin("wr", "BR").x);
    CHECK_SAME(pin("wl", "BL").y, pin("wr", "BR").y);

    // His own pin stands; a man in the middle is his own twin.
    read_pins("{\"wr\": {\"BR\": [4, 3], \"P\": [3, 9]}, \"wl\": {\"BL\": [-5, 4]}}");
    CHECK_INT(pinned("wl", "BL"), 1);
    CHECK_NEAR(pin("wl", "BL").x, -5 * yd, 1e-12);
    CHECK_INT(pinned("wl", "P"), 2);
    CHECK_NEAR(pin("wl", "P").x, -3 * yd, 1e-12);

    read_pins("{}");
    CHECK_INT(pinned("wr", "BR"), 0);
    read_pins("{\"wr\": {}}");
    CHECK_INT(pinned("wr", "BR"), 0);
}

/// On the centre line a pin speaks for the man named; only the low pair that hold while the ball is
/// behind stand as images of each other.
static void pins_on_the_centre_line(void) {
    read_pins("{\"top\": {\"BR\": [2, 3], \"P\": [0.5, 11]}}");
    CHECK_INT(pinned("top", "BR"), 1);
    CHECK_INT(pinned("top", "BL"), 0);
    CHECK_INT(pinned("top", "P"), 1);
    CHECK_NEAR(pin("top", "P").x, 0.5 * yd, 1e-12);
    read_pins("{\"x\": {\"BR\": [2, 3], \"P\": [0.5, 6]}}");
    CHECK_INT(pinned("x", "BL"), 2);
    CHECK_SAME(pin("x", "BL").x, -pin("x", "BR").x);
    CHECK_INT(pinned("x", "P"), 1);
    read_pins("{\"x\": {\"BR\": [2, 3]}}, \"rule\": {\"hold_behind\": false}");
    CHECK_INT(pinned("x", "BR"), 1);
    CHECK_INT(pinned("x", "BL"), 0);
}

static void words_are_guessed_when_near(void) {
    refuse_changed("\"format\"", "\"formt\"", "/formt", "did you mean \"format\"?");
    refuse_changed("\"home\"", "\"hmoe\"", "/stages/0/spots/0/hmoe", "did you mean \"home\"?");
    refuse_changed("high-school", "highschool", "/level", "did you mean \"high-school\"?");
    refuse_changed("boys-nfhs", "football", "/field", "it is one of boys-nfhs, ");
    refuse_changed("\"mirror_of\": \"wr\"", "\"mirror_of\": \"wd\"", "/landmarks/2/mirror_of",
                   "did you mean \"w");
    refuse_changed("\"mirror_of\": \"wr\"", "\"mirror_of\": \"\"", "/landmarks/2/mirror_of",
                   "it is one of top, wr, wl, x");
}

/// However long or strange a word of the document is, the sentence about it stays whole and plain.
static void strange_words_are_shown_plainly(void) {
    char word[1200];
    memset(word, 'w', sizeof word);
    memcpy(word, "high-school", 11);
    memcpy(word + sizeof word - 2, "\"", 2);
    refuse_changed("high-school\"", word, "/level", "...\"; it is one of");
    refuse_changed("high-school", "\\u001b[31mred", "/level", "?[31mred");
    refuse_changed("high-school", "\\u009b31mred", "/level", "?31mred");
}

/// The whole document is read the same however its blanks and escapes are written.
static void blanks_and_escapes_mean_nothing(void) {
    CHECK_INT(read_text(text_small), BW_OK);
    char *want = text_change(text_of_scheme(&scheme), "", "");
    char *bare = malloc(sizeof text_small);
    size_t n = 0;
    int in_text = 0;
    for (const char *c = text_small; *c; c++) {
        if (*c == '"') in_text = !in_text;
        if (in_text || (*c != ' ' && *c != '\n')) bare[n++] = *c;
    }
    bare[n] = '\0';
    CHECK_INT(read_text(bare), BW_OK);
    CHECK(text_same(text_of_scheme(&scheme), want));
    read_changed("\"name\": \"Small\"", "\"n\\u0061me\": \"\\u0053mall\"");
    CHECK(text_same(text_of_scheme(&scheme), want));
    free(bare);
    free(want);
}

int main(int argc, char **argv) {
    RUN(what_is_left_out_is_practice);
    RUN(lengths_become_metres);
    RUN(limits_are_met_exactly);
    RUN(offered_limits_are_taken);
    RUN(the_other_side_follows);
    RUN(pins_hold_on_both_sides);
    RUN(pins_on_the_centre_line);
    RUN(words_are_guessed_when_near);
    RUN(strange_words_are_shown_plainly);
    RUN(blanks_and_escapes_mean_nothing);
    return test_report(argc, argv);
}
