/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Text widths and line breaking. The widths themselves are held against the font in tests/paint.
#include "draw/metrics.h"
#include "harness.h"

static void widths_add_up(void) {
    const double a = bw_width("a", 10), b = bw_width("b", 10);
    CHECK_NEAR(bw_width("ab", 10), a + b, 1e-12);
    CHECK_NEAR(bw_width("ab", 20), 2 * bw_width("ab", 10), 1e-12);
    CHECK_SAME(bw_width("", 10), 0);
    CHECK_NEAR(bw_width("\xC3\xA9", 10), bw_width("e", 10), 1e-12); // é is as wide as e
    CHECK(bw_glyph_known('A') && bw_glyph_known(0x2014) && bw_glyph_known(0x2192));
    CHECK(!bw_glyph_known(0x4E2D) && !bw_glyph_known(0x1F600));
}

static void utf8_is_read_safely(void) {
    static const struct {
        const char *bytes;
        size_t length;
        uint32_t code;
        int size;
    } cases[] = {{"A", 1, 'A', 1},
                 {"\xC3\xA9", 2, 0xE9, 2},
                 {"\xE2\x80\x93", 3, 0x2013, 3},
                 {"\xF0\x9F\x98\x80", 4, 0x1F600, 4},
                 {"\xC3", 1, 0xFFFD, 1},
                 {"\xE2\x80", 2, 0xFFFD, 1},
                 {"\x80", 1, 0xFFFD, 1},
                 {"\xC0\x80", 2, 0xFFFD, 1},
                 {"\xFF", 1, 0xFFFD, 1},
                 {"\xC3(", 2, 0xFFFD, 1}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int size;
        CHECK_INT(bw_code_point(cases[i].bytes, cases[i].length, &size), cases[i].code);
        CHECK_INT(size, cases[i].size);
    }
}

/// For random texts and widths: every line fits unless it is one letter, the lines hold all of the
/// text but spaces, in order, and no fewer lines would do (greedy filling is optimal).
static void wrapped_lines_fit_and_lose_nothing(void) {
    unsigned long long seed = 7;
    for (int round = 0; round < 3000; round++) {
        char text[160];
        const int length = (int)(test_random(&seed) % sizeof text);
        for (int i = 0; i < length; i++) {
            const unsigned r = (unsigned)(test_random(&seed) % 40);
            text[i] = r < 8 ? ' ' : r == 8 ? '-' : (char)('a' + r % 26);
        }
        text[length ? length - 1 : 0] = '\0';
        const double width = test_uniform(&seed, 4, 200);
        bw_span lines[200];
        const int count = bw_wrap(text, 10, width, lines, 200);
        int at = 0;
        for (int i = 0; i < count; i++) {
            const bw_span line = lines[i];
            for (; at < line.start; at++) {
                CHECK(text[at] == ' ');
            }
            CHECK_INT(at, line.start);
            at += line.length;
            CHECK(line.length == 1 ||
                  bw_text_width(text + line.start, (size_t)line.length, 10) <= width + 1e-9);
            if (line.length > 0) CHECK(text[line.start] != ' ' && text[at - 1] != ' ');
        }
        for (; text[at]; at++) {
            CHECK(text[at] == ' ');
        }
    }
}

static void last_word_is_not_lonely(void) {
    bw_span lines[8];
    const char *text = "one two three four five six seven to";
    const double width = bw_width("one two three four five six seven", 10);
    CHECK_INT(bw_wrap(text, 10, width, lines, 8), 2);
    CHECK_INT(lines[1].length, 8); // "seven to"
    CHECK_INT(bw_wrap("ahoy\n\nthere", 10, 500, lines, 8), 3);
    CHECK_INT(lines[1].length, 0);
    CHECK_INT(bw_wrap("", 10, 100, lines, 8), 0);
    CHECK_INT(bw_wrap(text, 10, 1, NULL, 0) > 20, 1); // counts without room
}

int main(int argc, char **argv) {
    RUN(widths_add_up);
    RUN(utf8_is_read_safely);
    RUN(wrapped_lines_fit_and_lose_nothing);
    RUN(last_word_is_not_lonely);
    return test_report(argc, argv);
}
