/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Text in memory: truncation at whole characters, numbers against the C library's own printing.
#include "core/text.h"

#include "harness.h"
#include <limits.h>
#include <stdlib.h>

static char buffer[256];

static const char *fixed(double x, int decimals) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_fixed(&t, x, decimals);
    return buffer;
}

static const char *number(double x, int decimals) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_number(&t, x, decimals);
    return buffer;
}

static const char *integer(long long n) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_int(&t, n);
    return buffer;
}

static void text_is_joined(void) {
    bw_text t = bw_text_in(buffer, sizeof buffer);
    CHECK_TEXT(buffer, "");
    bw_put(&t, "hold ");
    bw_put_n(&t, "crease and more", 6);
    bw_put_char(&t, ' ');
    bw_put_int(&t, 4);
    bw_put(&t, "");
    CHECK_TEXT(buffer, "hold crease 4");
    CHECK_INT(t.used, 13);
    CHECK(!t.full);
}

static void fills_to_the_last_byte(void) {
    char small[5];
    bw_text t = bw_text_in(small, sizeof small);
    bw_put(&t, "abcd");
    CHECK_TEXT(small, "abcd");
    CHECK(!t.full);
    bw_put(&t, "");
    CHECK(!t.full);
    bw_put_char(&t, 'e');
    CHECK_TEXT(small, "abcd");
    CHECK(t.full);
}

static void nothing_follows_a_hole(void) {
    char small[8];
    bw_text t = bw_text_in(small, sizeof small);
    bw_put(&t, "point to crease");
    CHECK_TEXT(small, "point t");
    t = bw_text_in(small, sizeof small);
    bw_put(&t, "12345");
    bw_put_int(&t, 678);
    CHECK(t.full);
    bw_put(&t, "9");
    CHECK_TEXT(small, "12345");
}

static void numbers_are_never_cut(void) {
    for (size_t room = 1; room <= 10; room++) {
        bw_text t = bw_text_in(buffer, room);
        bw_put_fixed(&t, -123.456, 3);
        CHECK_TEXT(buffer, room >= 9 ? "-123.456" : "");
        CHECK(t.full == (room < 9));
    }
}

/// Every prefix of a text with characters of one to four bytes is cut before the character that
/// does not fit, and is itself valid.
static void cuts_at_whole_characters(void) {
    static const char text[] = "a\xc3\xa9"
                               "b\xe2\x82\xac"
                               "c\xf0\x9f\xa5\x8d"
                               "d";
    static const int ends[] = {0, 1, 3, 4, 7, 8, 12, 13};
    for (size_t room = 1; room <= sizeof text + 2; room++) {
        char copy[32];
        const bool fitted = bw_copy(copy, room, text);
        size_t want = 0;
        for (int i = 0; i < 8; i++)
            if ((size_t)ends[i] <= room - 1) want = (size_t)ends[i];
        CHECK_INT(strlen(copy), want);
        CHECK(memcmp(copy, text, want) == 0);
        CHECK(fitted == (room >= sizeof text));
    }
}

static void integers(void) {
    CHECK_TEXT(integer(0), "0");
    CHECK_TEXT(integer(-7), "-7");
    CHECK_TEXT(integer(LLONG_MAX), "9223372036854775807");
    CHECK_TEXT(integer(LLONG_MIN), "-9223372036854775808");
}

static void fixed_places(void) {
    CHECK_TEXT(fixed(0, 0), "0");
    CHECK_TEXT(fixed(0, 2), "0.00");
    CHECK_TEXT(fixed(-0.0, 1), "0.0");
    CHECK_TEXT(fixed(-0.04, 1), "0.0");
    CHECK_TEXT(fixed(-0.05, 1), "-0.1");
    CHECK_TEXT(fixed(9.999, 2), "10.00");
    CHECK_TEXT(fixed(13.0, 1), "13.0");
    CHECK_TEXT(fixed(-0.9144, 3), "-0.914");
    CHECK_TEXT(fixed(999999999.9999999, 9), "999999999.999999881");
    CHECK_TEXT(fixed(0x1p-1074, 9), "0.000000000");
    CHECK_TEXT(fixed(1e-9, 9), "0.000000001");
    CHECK_TEXT(fixed(4.99e-10, 9), "0.000000000");
}

/// Halves that a double holds exactly go away from zero, unlike the C library's to even.
static void halves_go_away_from_zero(void) {
    CHECK_TEXT(fixed(0.5, 0), "1");
    CHECK_TEXT(fixed(2.5, 0), "3");
    CHECK_TEXT(fixed(-2.5, 0), "-3");
    CHECK_TEXT(fixed(0.125, 2), "0.13");
    CHECK_TEXT(fixed(-0.0625, 3), "-0.063");
    CHECK_TEXT(fixed(0x1p-10, 9), "0.000976563");
    CHECK_TEXT(fixed(999999999.5, 0), "1000000000");
}

static void canonical_numbers(void) {
    CHECK_TEXT(number(3.50, 4), "3.5");
    CHECK_TEXT(number(-12, 4), "-12");
    CHECK_TEXT(number(100, 0), "100");
    CHECK_TEXT(number(0.1, 9), "0.1");
    CHECK_TEXT(number(-0.00004, 4), "0");
    CHECK_TEXT(number(0.99996, 4), "1");
    CHECK_TEXT(number(1200.0305, 4), "1200.0305");
}

static bool is_half(double x, int decimals) {
    const long double scaled = fabsl((long double)x) * powl(10, decimals);
    return scaled - floorl(scaled) == 0.5L;
}

static void check_like_printf(double x, int decimals) {
    if (is_half(x, decimals)) return;
    char want[64];
    snprintf(want, sizeof want, "%.*f", decimals, x);
    const bool zero = strspn(want, "-0.") == strlen(want);
    CHECK_TEXT(fixed(x, decimals), want + (zero && *want == '-'));
}

/// Against the C library, which also rounds the exact binary value, for every size and length.
static void agrees_with_printf(void) {
    unsigned long long seed = 11;
    for (int i = 0; i < 200000; i++) {
        const double size = pow(10, test_uniform(&seed, -12, 9));
        check_like_printf(test_uniform(&seed, -size, size), i % 10);
    }
}

/// The doubles next to a half, above and below, where only the last bits decide.
static void agrees_with_printf_next_to_halves(void) {
    for (int decimals = 0; decimals <= 9; decimals++)
        for (int k = 0; k < 3000; k++) {
            const double half = (k + 0.5) / pow(10, decimals);
            check_like_printf(half, decimals);
            check_like_printf(nextafter(half, 0), decimals);
            check_like_printf(nextafter(half, 1e9), decimals);
        }
}

/// What a file says is what is read back, as long as the value was written with that many places.
static void canonical_numbers_come_back(void) {
    unsigned long long seed = 12;
    for (int i = 0; i < 50000; i++) {
        const double x = floor(test_uniform(&seed, -2e6, 2e6)) / 1e4;
        char once[64];
        strcpy(once, number(x, 4));
        CHECK_SAME(strtod(once, NULL), x);
        CHECK_TEXT(number(strtod(once, NULL), 4), once);
    }
}

static void words_apart(void) {
    CHECK_INT(bw_edit_distance("crease", "crease", 3), 0);
    CHECK_INT(bw_edit_distance("", "abc", 5), 3);
    CHECK_INT(bw_edit_distance("abc", "", 5), 3);
    CHECK_INT(bw_edit_distance("shift", "shfit", 3), 1);
    CHECK_INT(bw_edit_distance("pickup", "pick", 3), 2);
    CHECK_INT(bw_edit_distance("home", "hole", 3), 1);
    // Kitten, sitting: the textbook pair of V. I. Levenshtein's distance, from memory.
    CHECK_INT(bw_edit_distance("kitten", "sitting", 5), 3);
    // The restricted form: "ca" to "abc" is 3, though unrestricted swaps would make it 2.
    CHECK_INT(bw_edit_distance("ca", "abc", 5), 3);
    CHECK_INT(bw_edit_distance("abcdef", "uvwxyz", 2), 3);
    char longest[66];
    memset(longest, 'a', 65);
    longest[63] = '\0';
    CHECK_INT(bw_edit_distance(longest, longest, 2), 0);
    longest[63] = 'a';
    longest[64] = '\0';
    CHECK_INT(bw_edit_distance(longest, longest, 2), 3);
}

/// A distance: symmetric, zero only for the same word, one for one random slip.
static void one_slip_is_one(void) {
    unsigned long long seed = 13;
    for (int i = 0; i < 20000; i++) {
        char word[16];
        const int n = 2 + (int)(test_random(&seed) % 10);
        for (int k = 0; k < n; k++)
            word[k] = (char)('a' + test_random(&seed) % 4);
        word[n] = '\0';
        char slip[16];
        strcpy(slip, word);
        const int at = (int)(test_random(&seed) % (unsigned)(n - 1));
        if (i % 3 == 0) {
            slip[at] = 'z';
        } else if (i % 3 == 1) {
            memmove(slip + at, slip + at + 1, (size_t)(n - at));
        } else {
            slip[at] = word[at + 1];
            slip[at + 1] = word[at];
        }
        const int want = strcmp(slip, word) != 0;
        CHECK_INT(bw_edit_distance(word, slip, 4), want);
        CHECK_INT(bw_edit_distance(slip, word, 4), want);
    }
}

static void same_words(void) {
    CHECK(bw_same("", ""));
    CHECK(bw_same("LL", "LL"));
    CHECK(!bw_same("LL", "L"));
    CHECK(!bw_same("L", "LL"));
    CHECK(!bw_same("LL", "LR"));
    CHECK_INT(bw_text_length("goal line"), 9);
}

static void plain_text_is_known(void) {
    CHECK(bw_text_plain("") && bw_text_plain("late slide, again!"));
    CHECK(bw_text_plain("caf\xc3\xa9 \xe2\x82\xac \xf0\x9f\xa5\x8d \xf4\x8f\xbf\xbf \xed\x9f\xbf"));
    static const char *const bad[] = {
        "a\nb",
        "\t",
        "\x7f",
        "\xc2\x80",
        "\xc2\x9f",
        "\xc2",
        "\xe2\x82",
        "\xc0\xaf",
        "\xc1\xbf",
        "\xe0\x9f\xbf",
        "\xed\xa0\x80",
        "\xf0\x8f\xbf\xbf",
        "\xf4\x90\x80\x80",
        "\xf5\x80\x80\x80",
        "\x80",
        "\xff",
        "\xe2\x28\xa1",
        "\xf0\x9f\xa5(",
    };
    for (int i = 0; i < (int)(sizeof bad / sizeof *bad); i++)
        CHECK(!bw_text_plain(bad[i]));
}

/// Characters that make a name read otherwise than it is; not the joiners scripts are written with.
static void hidden_characters_are_seen(void) {
    static const char *const hidden[] = {"C\xe2\x80\xae"
                                         "D",
                                         "\xe2\x80\x8b",
                                         "a\xe2\x81\xa6",
                                         "\xd8\x9c",
                                         "\xef\xbb\xbf"
                                         "a",
                                         "\xe2\x80\x8f",
                                         "\xf3\xa0\x80\x81"};
    static const char *const seen[] = {"",
                                       "A.B.",
                                       "Zo\xc3\xab",
                                       "\xe2\x80\x94",
                                       "\xd9\x86\xe2\x80\x8c\xd9\x87",
                                       "\xf0\x9f\x91\x8d",
                                       "\xd7\xa9\xd7\x9c"};
    for (int i = 0; i < 7; i++) {
        CHECK(bw_text_plain(hidden[i]) && bw_text_hidden(hidden[i]));
        CHECK(bw_text_plain(seen[i]) && !bw_text_hidden(seen[i]));
    }
}

int main(int argc, char **argv) {
    RUN(text_is_joined);
    RUN(fills_to_the_last_byte);
    RUN(nothing_follows_a_hole);
    RUN(numbers_are_never_cut);
    RUN(cuts_at_whole_characters);
    RUN(integers);
    RUN(fixed_places);
    RUN(halves_go_away_from_zero);
    RUN(canonical_numbers);
    RUN(agrees_with_printf);
    RUN(agrees_with_printf_next_to_halves);
    RUN(canonical_numbers_come_back);
    RUN(words_apart);
    RUN(one_slip_is_one);
    RUN(same_words);
    RUN(plain_text_is_known);
    RUN(hidden_characters_are_seen);
    return test_report(argc, argv);
}
