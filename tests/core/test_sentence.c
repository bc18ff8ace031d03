/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sentences: places are filled by name, in the words of those who read them.
#include "core/sentence.h"

#include "core/field.h"
#include "voice.h"

static char room[256];

/// A sentence with arguments, said.
#define SAID(voice, pattern, ...)                                                                  \
    said(voice, pattern, (const bw_arg[]){__VA_ARGS__, {.kind = BW_ARG_END}})

static const char *said(bw_voice voice, const char *pattern, const bw_arg *args) {
    bw_text t = bw_text_in(room, sizeof room);
    bw_put_sentence_with(&t, voice, &(bw_sentence){pattern}, args);
    return room;
}

static const char *plain(bw_voice voice, const char *pattern) {
    bw_text t = bw_text_in(room, sizeof room);
    bw_put_plain_sentence(&t, voice, &(bw_sentence){pattern});
    return room;
}

static const bw_voice british = {0};
static const bw_voice american = {.american = true};
static const bw_voice women = {.women = true};

static void places_are_filled_by_name_in_any_order(void) {
    CHECK_TEXT(
        SAID(british, "{b} before {a}, {b}.", bw_as_word("a", "one"), bw_as_word("b", "two")),
        "two before one, two.");
    CHECK_TEXT(plain(british, "Nothing to fill."), "Nothing to fill.");
    CHECK_TEXT(plain(british, ""), "");
}

static void figures_are_written_with_their_units(void) {
    const bw_voice metres = {.units = BW_METRES};
    CHECK_TEXT(SAID(metres, "{l}, {v}, {t}", bw_as_length("l", 3), bw_as_speed("v", 7.25),
                    bw_as_seconds("t", 0.4)),
               "3.0 m, 7.3 m/s, 0.4 s");
    CHECK_TEXT(SAID(british, "{l}", bw_as_length("l", 2 * BW_METRES_PER_YARD)), "2.0 yd");
    CHECK_TEXT(
        SAID(british, "{n} in 100, {x}", bw_as_in_100("n", 0.283), bw_as_number("x", 1.5, 2)),
        "28 in 100, 1.50");
    CHECK_TEXT(SAID(british, "{n}", bw_as_count("n", -9223372036854775807)),
               "-9223372036854775807");
}

static void one_and_many_have_forms_of_their_own(void) {
    static const char pattern[] = "{n} {n|carry|carries} {n|asks|ask}{n|| all}.";
    CHECK_TEXT(SAID(british, pattern, bw_as_count("n", 1)), "1 carry asks.");
    CHECK_TEXT(SAID(british, pattern, bw_as_count("n", 2)), "2 carries ask all.");
    CHECK_TEXT(SAID(british, pattern, bw_as_count("n", 0)), "0 carries ask all.");
}

static void a_large_letter_asks_for_one(void) {
    CHECK_TEXT(SAID(british, "{Spot}; {spot}", bw_as_word("spot", "low left")),
               "Low left; low left");
    CHECK_TEXT(SAID(british, "{Spot}", bw_as_word("spot", "\xC3\xA9toile")), "\xC3\xA9toile");
    CHECK_TEXT(SAID(british, "{Spot}.", bw_as_word("spot", "")), ".");
    CHECK_TEXT(plain(women, "{His} post, {Men} and {men}."), "Her post, Players and players.");
}

static void a_part_has_the_arguments_of_the_whole(void) {
    static const bw_sentence part = {" with the ball {at}"};
    CHECK_TEXT(SAID(british, "Off{with}.", bw_as_part("with", &part), bw_as_word("at", "up top")),
               "Off with the ball up top.");
    CHECK_TEXT(SAID(british, "Off{with}.", bw_as_part("with", NULL)), "Off.");
}

static void words_follow_people_and_spelling(void) {
    static const char pattern[] = "{he} at the {centre} of the {defence} takes {his} {man}";
    CHECK_TEXT(plain(british, pattern), "he at the centre of the defence takes his man");
    CHECK_TEXT(plain(american, pattern), "he at the center of the defense takes his man");
    CHECK_TEXT(plain(women, pattern), "she at the centre of the defence takes her player");
}

static void an_argument_comes_before_a_word_of_that_name(void) {
    CHECK_TEXT(SAID(women, "{man}", bw_as_word("man", "goalkeeper")), "goalkeeper");
}

static void what_nothing_fills_stays_as_it_is(void) {
    CHECK_TEXT(SAID(british, "{a} {missing} {a", bw_as_word("a", "x")), "x {missing} {a");
    CHECK_TEXT(plain(british, "{} { }"), "{} { }");
}

/// Text of a scheme is only ever put in, never read as a sentence.
static void a_word_with_braces_is_no_place(void) {
    CHECK_TEXT(SAID(british, "{a}", bw_as_word("a", "{b}%s{a}")), "{b}%s{a}");
}

static void nothing_is_written_past_the_end(void) {
    for (size_t size = 1; size < 30; size++) {
        char small[32];
        memset(small, '#', sizeof small);
        bw_text t = bw_text_in(small, size);
        bw_put_sentence(&t, british, &(bw_sentence){"{Word} and {n} {n|one|two}"},
                        bw_as_word("word", "caf\xC3\xA9"), bw_as_count("n", 12));
        CHECK(t.used < size && small[t.used] == '\0');
        CHECK(size >= sizeof small || small[size] == '#');
        CHECK(bw_text_plain(small));
    }
}

static void a_word_made_for_its_place_is_kept(void) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, "at");
    bw_put(&own, "on the left wing");
    CHECK_TEXT(SAID(british, "Ball {at}.", arg), "Ball on the left wing.");
}

/// Facts of the field profiles: whose field it is.
static void the_field_decides_the_voice(void) {
    for (int i = 0; i < bw_field_count(); i++) {
        const bw_field *f = bw_field_at(i);
        const bw_voice voice = bw_voice_of(&(bw_scheme){.field = i, .units = BW_METRES});
        const bool states =
            strstr(f->id, "nfhs") || strstr(f->id, "ncaa") || strstr(f->id, "youth");
        CHECK_INT(voice.american, states);
        CHECK_INT(voice.women, strcmp(f->id, "women") == 0);
        CHECK_INT(voice.units, BW_METRES);
    }
}

int main(int argc, char **argv) {
    RUN(places_are_filled_by_name_in_any_order);
    RUN(figures_are_written_with_their_units);
    RUN(one_and_many_have_forms_of_their_own);
    RUN(a_large_letter_asks_for_one);
    RUN(a_part_has_the_arguments_of_the_whole);
    RUN(words_follow_people_and_spelling);
    RUN(an_argument_comes_before_a_word_of_that_name);
    RUN(what_nothing_fills_stays_as_it_is);
    RUN(a_word_with_braces_is_no_place);
    RUN(nothing_is_written_past_the_end);
    RUN(a_word_made_for_its_place_is_kept);
    RUN(the_field_decides_the_voice);
    return test_report(argc, argv);
}
