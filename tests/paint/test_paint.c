/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Painters: the same bytes every time, whole files or none, clear refusals.
#include "core/text.h"
#include "draw/book.h"
#include "draw/metrics.h"
#include "harness.h"
#include "paint/paint.h"
#include "tests/draw/pages.h"

#include <dirent.h>
#include <sys/stat.h>
#include <unistd.h>

static bw_scheme terns;
static bw_fonts *fonts;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];
static char folder[200];
static char why_data[400];
static bw_text why;

static const char *in_folder(const char *name) {
    static char path[2][300];
    static int turn;
    turn = !turn;
    snprintf(path[turn], sizeof path[turn], "%s/%s", folder, name);
    return path[turn];
}

static char *read_all(const char *path, size_t *size) {
    FILE *file = fopen(path, "rb");
    *size = 0;
    if (!file) return NULL;
    char *data = malloc(1 << 24);
    *size = fread(data, 1, (1 << 24) - 1, file);
    data[*size] = '\0';
    fclose(file);
    return data;
}

/// How often `word` occurs in bytes that may hold zeros.
static int occurrences(const char *data, size_t size, const char *word) {
    const size_t length = strlen(word);
    int count = 0;
    for (size_t i = 0; i + length <= size; i++) {
        count += memcmp(data + i, word, length) == 0;
    }
    return count;
}

static int files_in_folder(void) {
    DIR *dir = opendir(folder);
    int count = 0;
    while (readdir(dir)) {
        count++;
    }
    closedir(dir);
    return count - 2;
}

static bw_status write_book(const char *path, const char *date, int pages) {
    const bw_about about = {.title = terns.name, .author = terns.team, .date = date};
    bw_pdf *pdf = bw_pdf_open(path, &about, fonts, bw_theme_at(BW_THEME_CHART), &why);
    if (!pdf) return BW_FILE;
    bw_status status = BW_OK;
    for (int page = 1; page <= pages && status == BW_OK; page++) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        bw_book_page(&terns, page, BW_A4, ink);
        status = bw_pdf_page(pdf, ink, &why);
    }
    return bw_pdf_close(pdf, true, &why);
}

/// `startxref` leads to the table, and every entry of the table to the object it names.
static void check_cross_references(const char *data, size_t size) {
    const char *start = NULL;
    for (size_t i = size; i-- > 0 && !start;) {
        if (strncmp(data + i, "startxref\n", 10) == 0) start = data + i;
    }
    CHECK(start != NULL);
    if (!start) return;
    const char *table = data + strtol(start + 10, NULL, 10);
    int count = 0, objects = 0;
    CHECK_INT(sscanf(table, "xref\n0 %d\n", &count), 1);
    const char *entry = strchr(table + 5, '\n') + 1;
    for (int object = 1; object < count; object++) {
        const long at = strtol(entry + 20L * object, NULL, 10);
        char want[32];
        snprintf(want, sizeof want, "%d 0 obj", object);
        objects += strncmp(data + at, want, strlen(want)) == 0;
    }
    CHECK_INT(objects, count - 1);
}

static void books_are_whole_and_repeatable(void) {
    const int pages = bw_book_pages(&terns);
    size_t one_size, two_size;
    CHECK_INT(write_book(in_folder("one.pdf"), NULL, pages), BW_OK);
    CHECK_INT(write_book(in_folder("two.pdf"), NULL, pages), BW_OK);
    char *one = read_all(in_folder("one.pdf"), &one_size);
    char *two = read_all(in_folder("two.pdf"), &two_size);
    CHECK_INT(one_size, two_size);
    CHECK(one && two && memcmp(one, two, one_size) == 0);
    CHECK_INT(occurrences(one, one_size, "/Type /Page "), pages);
    CHECK_INT(occurrences(one, one_size, "/CreationDate"), 0);
    CHECK(occurrences(one, one_size, "/StructTreeRoot") > 0);
    CHECK(occurrences(one, one_size, "/S /Figure") > 0);
    CHECK(occurrences(one, one_size, "/S /H1") > 0);
    CHECK(occurrences(one, one_size, "/Outlines") > 0);
    CHECK_INT(occurrences(one, one_size, "/MarkInfo << /Marked true >>"), 1);
    CHECK_INT(occurrences(one, one_size, "/Lang (en)"), 1);
    check_cross_references(one, one_size);
    CHECK(occurrences(one, one_size, "B612") > 0);
    CHECK(occurrences(one, one_size, "(Harbour)") > 0); // the title
    free(one);
    free(two);
    CHECK_INT(write_book(in_folder("dated.pdf"), "2025-03-01T12:00:00Z", 1), BW_OK);
    one = read_all(in_folder("dated.pdf"), &one_size);
    CHECK_INT(occurrences(one, one_size, "/CreationDate (20250301120000Z"), 1);
    free(one);
    CHECK_INT(files_in_folder(), 3);
}

static bw_ink *one_word(const char *word) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 200, 100);
    bw_ink_fill(ink, BW_ROLE_PAGE);
    bw_ink_move(ink, 0, 0);
    bw_ink_line(ink, 200, 0);
    bw_ink_line(ink, 200, 100);
    bw_ink_line(ink, 0, 100);
    bw_ink_shut(ink);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 20, BW_LEFT_ALIGN, 20, 60, word);
    return ink;
}

static void expect_refusal(bw_status status, bw_status want, const char *part) {
    CHECK_INT(status, want);
    CHECK(strstr(why_data, part) != NULL);
    if (!strstr(why_data, part)) fprintf(stderr, "said: %s\n", why_data);
    why = bw_text_in(why_data, sizeof why_data);
}

static void refusals_are_clear_and_leave_nothing(void) {
    const bw_theme *theme = bw_theme_at(BW_THEME_CHART);
    const int before = files_in_folder();
    const char *odd = "\xE4\xB8\xAD"; // a Chinese letter
    expect_refusal(bw_paint_png(in_folder("a.png"), one_word(odd), fonts, theme, 72, &why),
                   BW_BAD_INPUT, "no letter");
    expect_refusal(bw_paint_png(in_folder("a.png"), one_word("a"), fonts, theme, 5, &why),
                   BW_BAD_INPUT, "dots per inch");
    expect_refusal(bw_paint_png(in_folder("no/a.png"), one_word("a"), fonts, theme, 72, &why),
                   BW_FILE, "No such file");
    expect_refusal(bw_paint_png(folder, one_word("a"), fonts, theme, 72, &why), BW_FILE,
                   "Is a directory");
    expect_refusal(bw_paint_svg("", one_word("a"), theme, &why), BW_FILE, "Cannot write");

    const bw_about about = {.title = "x"};
    bw_pdf *pdf = bw_pdf_open(in_folder("a.pdf"), &about, fonts, theme, &why);
    CHECK(pdf != NULL);
    expect_refusal(bw_pdf_page(pdf, one_word(odd), &why), BW_BAD_INPUT, "no letter");
    CHECK_INT(bw_pdf_close(pdf, true, &why), BW_BAD_INPUT);

    pdf = bw_pdf_open(in_folder("a.pdf"), &about, fonts, theme, &why);
    CHECK_INT(bw_pdf_page(pdf, one_word("a"), &why), BW_OK);
    CHECK_INT(bw_pdf_close(pdf, false, &why), BW_OK); // not to be kept

    bw_ink *small = bw_ink_in(memory, sizeof(bw_ink) + 8);
    bw_ink_page(small, 10, 10);
    bw_ink_fill(small, BW_ROLE_PAGE);
    expect_refusal(bw_paint_png(in_folder("a.png"), small, fonts, theme, 72, &why), BW_NO_ROOM,
                   "memory");
    CHECK_INT(files_in_folder(), before);
    CHECK_INT(access(folder, F_OK), 0);
}

/// A full device: the old file stays as it was.
static void an_old_file_survives_a_failure(void) {
    size_t size;
    const bw_theme *theme = bw_theme_at(BW_THEME_CHART);
    CHECK_INT(bw_paint_png(in_folder("old.png"), one_word("old"), fonts, theme, 72, &why), BW_OK);
    char *old = read_all(in_folder("old.png"), &size);
    CHECK_INT(bw_paint_png(in_folder("old.png"), one_word("\xE4\xB8\xAD"), fonts, theme, 72, &why),
              BW_BAD_INPUT);
    why = bw_text_in(why_data, sizeof why_data);
    size_t now_size;
    char *now = read_all(in_folder("old.png"), &now_size);
    CHECK(now && now_size == size && memcmp(old, now, size) == 0);
    free(old);
    free(now);
}

/// Every page in the mono theme: black, white, nothing between; and not a blank sheet.
static void mono_pages_have_two_colours(void) {
    enum { WIDTH = 850, HEIGHT = 1100 };
    uint32_t *pixels = malloc(sizeof *pixels * WIDTH * HEIGHT);
    for (int page = 1; page <= bw_book_pages(&terns); page += 5) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        bw_book_page(&terns, page, BW_LETTER, ink);
        CHECK_INT(
            bw_paint_pixels(ink, fonts, bw_theme_at(BW_THEME_MONO), WIDTH, HEIGHT, pixels, &why),
            BW_OK);
        int black = 0, other = 0;
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            const uint32_t c = pixels[i] & 0xFFFFFF;
            black += c == 0;
            other += c != 0 && c != 0xFFFFFF;
        }
        CHECK_INT(other, 0);
        CHECK(black > WIDTH * HEIGHT / 100 && black < WIDTH * HEIGHT / 5);
    }
    CHECK_INT(bw_paint_pixels(one_word("a"), fonts, bw_theme_at(BW_THEME_MONO), 0, 5, pixels, &why),
              BW_LIMIT);
    why = bw_text_in(why_data, sizeof why_data);
    free(pixels);
}

static void svg_has_real_text(void) {
    size_t size;
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_book_page(&terns, 8, BW_LETTER, ink);
    CHECK_INT(bw_paint_svg(in_folder("page.svg"), ink, bw_theme_at(BW_THEME_CHART), &why), BW_OK);
    char *svg = read_all(in_folder("page.svg"), &size);
    CHECK(strncmp(svg, "<svg xmlns", 10) == 0);
    CHECK(strstr(svg, ">adjacent</text>") != NULL);
    CHECK(strstr(svg, "role=\"img\" aria-label=\"") != NULL);
    CHECK(strstr(svg, "base64,") != NULL);
    CHECK_INT(occurrences(svg, size, "<g"), occurrences(svg, size, "</g>"));
    CHECK_INT(occurrences(svg, size, "<svg"), occurrences(svg, size, "</svg>"));
    free(svg);
    CHECK_INT(bw_paint_svg(in_folder("odd.svg"), one_word("<&\"\x01>"), bw_theme_at(BW_THEME_CHART),
                           &why),
              BW_OK);
    svg = read_all(in_folder("odd.svg"), &size);
    CHECK(strstr(svg, ">&lt;&amp;&quot; &gt;</text>") != NULL);
    free(svg);
}

/// Widths by the table against pango's, kerning and all: what is wrapped by the one fits by the other.
static void table_widths_hold_on_paper(void) {
    static const char *const lines[] = {
        "Ball behind the goal. The low pair hold. Top left drops to the crease.",
        "Top right takes the ball. Low right and top left are adjacent.",
        "AVATAR To Ty We Yo LT fi fl ffi",
        "0123456789 10\xC2\xA0yd \xE2\x80\x9Cport low\xE2\x80\x9D",
        "wing left",
        "page 12 of 25",
        "\xC3\x89t\xC3\xA9 na\xC3\xAFve \xC3\x85ngstr\xC3\xB6m"};
    for (size_t i = 0; i < sizeof lines / sizeof lines[0]; i++) {
        for (int bold = 0; bold < 2; bold++) {
            const double table = bw_width(lines[i], 12);
            const double paper = bw_fonts_width(fonts, lines[i], 12, bold);
            CHECK(paper <= table * 1.005);
            CHECK(paper >= table * 0.9);
            CHECK_NEAR(bw_fonts_width(fonts, lines[i], 24, bold), 2 * paper, 0.05);
        }
    }
    for (int c = 'A'; c <= 'z'; c++) { // one letter alone has no kerning: the very width
        const char letter[2] = {(char)c, 0};
        CHECK_NEAR(bw_fonts_width(fonts, letter, 100, 0), bw_width(letter, 100), 0.1);
    }
}

int main(int argc, char **argv) {
    const char *temporary = getenv("TMPDIR");
    snprintf(folder, sizeof folder, "%s/bw-paint-XXXXXX", temporary ? temporary : "/tmp");
    why = bw_text_in(why_data, sizeof why_data);
    fonts = bw_fonts_open(&why);
    CHECK(fonts != NULL);
    if (fonts && load_terns(&terns) && mkdtemp(folder)) {
        RUN(books_are_whole_and_repeatable);
        RUN(refusals_are_clear_and_leave_nothing);
        RUN(an_old_file_survives_a_failure);
        RUN(mono_pages_have_two_colours);
        RUN(svg_has_real_text);
        RUN(table_widths_hold_on_paper);
        CHECK_TEXT(why_data, "");
        static const char *const made[] = {"one.pdf", "two.pdf",  "dated.pdf",
                                           "old.png", "page.svg", "odd.svg"};
        for (size_t i = 0; i < sizeof made / sizeof made[0]; i++) {
            CHECK(unlink(in_folder(made[i])) == 0 || !test_all(argc, argv));
        }
        CHECK_INT(rmdir(folder), 0); // and nothing else was left
    }
    bw_fonts_close(fonts);
    return test_report(argc, argv);
}
