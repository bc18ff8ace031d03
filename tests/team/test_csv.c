/* SPDX-License-Identifier: GPL-3.0-or-later */
/// CSV by RFC 4180: what is read, what is refused and where, and that no cell goes out as a formula.
#define _XOPEN_SOURCE 700
#include "core/text.h"
#include "team/csv.h"

#include "harness.h"
#include <stdlib.h>

static bw_csv csv;
static bw_csv_row row;
static bw_error error;

static void begin(const char *text) {
    CHECK_INT(bw_csv_begin(&csv, text, strlen(text), &error), BW_OK);
}

/// Expects a row of these cells, NULL after the last.
static void expect(int line, const char *const *cells) {
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    CHECK_INT(row.line, line);
    int count = 0;
    for (; cells[count] && count < row.count; count++)
        CHECK_TEXT(row.cell[count], cells[count]);
    CHECK(cells[count] == NULL);
    CHECK_INT(row.count, count);
}

#define ROW(line, ...) expect(line, (const char *const[]){__VA_ARGS__, NULL})
#define END() CHECK_INT(bw_csv_next(&csv, &row, &error), BW_NOT_FOUND)

static void the_standard_is_read(void) {
    begin("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    ROW(1, "aaa", "bbb", "ccc");
    ROW(2, "zzz", "yyy", "xxx");
    END();
    END();
    begin("aaa,bbb,ccc"); // the last line need not end
    ROW(1, "aaa", "bbb", "ccc");
    END();
    begin("\"aaa\",\"b,bb\",\"c\"\"cc\"\n,,\n\n\n\"\"\n");
    ROW(1, "aaa", "b,bb", "c\"cc");
    ROW(2, "", "", "");
    ROW(5, "");
    END();
    begin("\xef\xbb\xbf"
          "caf\xc3\xa9 ,  x y  ,\" z \" \n");
    ROW(1, "caf\xc3\xa9", "x y", " z ");
    END();
    begin("");
    END();
    begin("\n\r\n\n");
    END();
}

static void refused_at(const char *text, int line, int column) {
    begin(text);
    bw_status status;
    do {
        status = bw_csv_next(&csv, &row, &error);
    } while (status == BW_OK);
    CHECK(status == BW_BAD_INPUT || status == BW_LIMIT);
    CHECK(error.message[0] != '\0');
    CHECK_INT(error.line, line);
    CHECK_INT(error.column, column);
}

static void the_place_of_a_fault_is_told(void) {
    refused_at("a,b\nc,d\"e\n", 2, 4);
    refused_at("a,b\nc,\"d\"e\n", 2, 6);
    refused_at("a,\"b\nc\n", 3, 1);
    refused_at("a\n\xc3\xa9,\"\"\"", 2, 6);
    refused_at("a,b\tc", 1, 6);
    refused_at("a,\"b\nc\",d\n", 2, 3); // a line end within a cell is no text for one line
    refused_at("a,\xff\n", 1, 4);
    refused_at("a,b\rc\n", 1, 6);
    begin("a\nb");
    CHECK_INT(bw_csv_begin(&csv, "a\0b", 3, &error), BW_OK);
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_BAD_INPUT);
}

/// What stands most in the first line parts the cells, and the comma where nothing does.
static void the_separator_is_told_by_the_header(void) {
    begin("\xef\xbb\xbf\n\"a,b,c,d\";b;c\n1,5;2\n");
    CHECK_INT(csv.delimiter, ';');
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    CHECK_INT(row.count, 3);
    CHECK_TEXT(row.cell[0], "a,b,c,d");
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    CHECK_TEXT(row.cell[0], "1,5");
    begin("a\tb c\n");
    CHECK_INT(csv.delimiter, '\t');
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    CHECK_TEXT(row.cell[1], "b c");
    begin("jersey\n1;2;3\n");
    CHECK_INT(csv.delimiter, ',');
    begin("a,b;c\n");
    CHECK_INT(csv.delimiter, ',');
}

static void limits_hold(void) {
    char *text = malloc((size_t)BW_CSV_BYTES + 1);
    memset(text, '\n', (size_t)BW_CSV_BYTES + 1);
    CHECK_INT(bw_csv_begin(&csv, text, (size_t)BW_CSV_BYTES + 1, &error), BW_LIMIT);
    for (int i = 0; i < BW_CSV_ROWS * 2 + 2; i += 2)
        memcpy(text + i, "a\n", 2);
    CHECK_INT(bw_csv_begin(&csv, text, (size_t)BW_CSV_ROWS * 2 + 2, &error), BW_OK);
    int rows = 0;
    while (bw_csv_next(&csv, &row, &error) == BW_OK)
        rows++;
    CHECK_INT(rows, BW_CSV_ROWS);
    CHECK_INT(error.status, BW_LIMIT);
    CHECK_INT(error.line, BW_CSV_ROWS + 1);
    memset(text, ',', 100);
    text[BW_CSV_COLUMNS - 1] = '\0';
    begin(text);
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    CHECK_INT(row.count, BW_CSV_COLUMNS);
    text[BW_CSV_COLUMNS - 1] = ',';
    text[BW_CSV_COLUMNS] = '\0';
    begin(text);
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_LIMIT);
    memset(text, 'x', 1000);
    text[BW_CSV_CELL - 1] = '\0';
    begin(text);
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_OK);
    text[BW_CSV_CELL - 1] = 'x';
    text[BW_CSV_CELL] = '\0';
    begin(text);
    CHECK_INT(bw_csv_next(&csv, &row, &error), BW_LIMIT);
    free(text);
}

static void every_text_comes_back(void) {
    static const char *const pieces[] = {"=",   "+", "-",  "@",   "'", "\"",          ",",
                                         " ",   "a", "1",  "(",   ")", "\xc3\xa9",    ";",
                                         "SUM", "|", "''", "=\"", "x", "\xef\xbb\xbf"};
    unsigned long long seed = 9;
    for (int round = 0; round < 4000; round++) {
        char text[3][64] = {"", "", ""};
        for (int c = 0; c < 3; c++) {
            bw_text t = bw_text_in(text[c], sizeof text[c]);
            for (int k = (int)(test_random(&seed) % 7); k > 0; k--)
                bw_put(&t, pieces[test_random(&seed) % (sizeof pieces / sizeof *pieces)]);
        }
        char *bytes = NULL;
        size_t length = 0;
        FILE *out = open_memstream(&bytes, &length);
        for (int c = 0; c < 3; c++)
            bw_csv_put_text(out, c, text[c]);
        bw_csv_end_row(out);
        fclose(out);
        begin(bytes);
        ROW(1, text[0], text[1], text[2]);
        END();
        // Wherever a cell begins, no formula does.
        bool quoted = false, start = true;
        for (const char *c = bytes; *c; c++) {
            const bool opens = start && !quoted && *c == '"';
            if (start && !opens) CHECK(!strchr("=+-@\t\r", *c) || (c[0] == '\r' && c[1] == '\n'));
            if (*c == '"') quoted = !quoted;
            start = opens || (!quoted && *c == ',');
        }
        free(bytes);
    }
}

static void numbers_are_plain(void) {
    char *bytes = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&bytes, &length);
    bw_csv_put_number(out, 0, true, -4.5);
    bw_csv_put_number(out, 1, false, 7);
    bw_csv_put_number(out, 2, true, 3);
    bw_csv_put_number(out, 3, true, 1.0 / 3);
    bw_csv_end_row(out);
    fclose(out);
    CHECK_TEXT(bytes, "-4.5,,3,0.3333\r\n");
    free(bytes);
}

int main(int argc, char **argv) {
    RUN(the_standard_is_read);
    RUN(the_place_of_a_fault_is_told);
    RUN(the_separator_is_told_by_the_header);
    RUN(limits_hold);
    RUN(every_text_comes_back);
    RUN(numbers_are_plain);
    return test_report(argc, argv);
}
