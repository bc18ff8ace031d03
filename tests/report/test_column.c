/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Plain text in columns: nothing of a text is lost when its column is too narrow for it.
#include "harness.h"
#include "report/column.h"

static const char *row(int at, const bw_column *columns, int count) {
    static char room[1024];
    bw_text out = bw_text_in(room, sizeof room);
    bw_put_row(&out, at, columns, count);
    return room;
}

static void a_row_that_fits_is_one_line(void) {
    const bw_column columns[] = {{"6v4", 6}, {"top", 8}, {"", 4}, {"12", 4}};
    CHECK_TEXT(row(2, columns, 4), "6v4   top         12\n");
    CHECK_TEXT(row(2, columns, 3), "6v4   top\n");
}

static void a_text_too_wide_goes_on_below(void) {
    const bw_column columns[] = {
        {"left goal-line extended", 15}, {"top", 6}, {"to right goal-line extended", 15}};
    CHECK_TEXT(row(2, columns, 3),
               "left goal-line top   to right\n  extended             goal-line\n"
               "                       extended\n");
    const bw_column whole[] = {{"extended", 9}, {"x", 2}};
    CHECK_TEXT(row(0, whole, 2), "extended x\n");
    const bw_column word[] = {{"extended", 5}, {"x", 2}};
    CHECK_TEXT(row(0, word, 2), "exte x\nnded\n");
    const bw_column accents[] = {{"\303\244\303\244\303\244 \303\266\303\266", 5}, {"x", 2}};
    CHECK_TEXT(row(1, accents, 2), "\303\244\303\244\303\244  x\n \303\266\303\266\n");
}

int main(int argc, char **argv) {
    RUN(a_row_that_fits_is_one_line);
    RUN(a_text_too_wide_goes_on_below);
    return test_report(argc, argv);
}
