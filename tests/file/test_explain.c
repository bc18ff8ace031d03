/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Slips of the pen and habits of other languages, each met with what would be right, at its place.
#include "file/document.h"
#include "harness.h"

typedef struct slip {
    const char *text, *pointer;
    int column;
    const char *sentence; ///< how it begins
} slip;

static const char comma[] = "a comma is missing before this";
static const char number[] = "numbers are written like 3, 0.5 or -2";
static const char escape[] = "after a backslash a text has one of";

static const slip slips[] = {
    {"[1 2]", "/0", 4, comma},
    {"[{} {}]", "/0", 5, comma},
    {"{\"a\": 1 \"b\": 2}", "/a", 9, comma},
    {"[\"a\" true]", "/0", 6, comma},
    {"{\"a\": 1,}", "", 9, "there is a comma too many before this bracket"},
    {"[1, 2, ]", "", 8, "there is a comma too many before this bracket"},
    {"[1,, 2]", "/2", 4, "there is a comma too many here"},
    {"[,1]", "/1", 2, "there is a comma too many here"},
    {"{\"a\" 1}", "/a", 6, "a colon is missing between a key and its value"},
    {"{\"a\": }", "", 7, "a value is missing after the colon"},
    {"{\"a\": , \"b\": 1}", "", 7, "a value is missing after the colon"},
    {"[1}", "", 3, "this bracket does not close the one that is open"},
    {"{\"a\": 1]", "", 8, "this bracket does not close the one that is open"},
    {"{'a': 1}", "", 2, "texts and keys stand in double quotes"},
    {"{name: 1}", "", 2, "keys stand in double quotes: \"name\""},
    {"{\"a\": 1} // end", "", 10, "something follows the document"},
    {"// start\n{}", "", 1, "JSON has no comments"},
    {"[1, # one\n2]", "/1", 5, "JSON has no comments"},
    {"[01]", "/0", 2, number},
    {"[+1]", "/0", 2, number},
    {"[.5]", "/0", 2, number},
    {"[1.]", "/0", 2, number},
    {"[NaN]", "/0", 2, "NaN is no value"},
    {"[-Infinity]", "/0", 2, "-Infinity is no value"},
    {"[True]", "/0", 2, "True is no value"},
    {"[1e999]", "/0", 2, "this number is too large"},
    {"[\"a\\x\"]", "/0", 5, escape},
    {"[\"\\ud80g\"]", "/0", 8, escape},
    {"[\"\\ud800\"]", "/0", 2, "a \\u here is only half a character"},
    {"[\"\\ud800\\u0041\"]", "/0", 2, "a \\u here is only half a character"},
    {"[\"a\nb\"]", "/0", 4, "a text is not closed on its line"},
    {"[\"a\001\"]", "/0", 4, "a text has a control character"},
    {"[\"\t\"]", "/0", 3, "a text has a control character"},
    {"{\"\303\251\": \"\303\251\t\"}", "/\303\251", 9, "a text has a control character"},
    {"[\"\303\251\377\"]", "/0", 4, "the text is not UTF-8 here"},
    {"{\"a\377\": 1}", "", 4, "the text is not UTF-8 here"},
    {"[1, \377]", "/1", 5, "the text is not UTF-8 here"},
    {"[1,\t\303\251\n]", "/1", 5, "this is not JSON here"},
    {"[tru\303\251]", "/0", 2, "tru is no value"},
    {"[\"ok\",\r\n\t1 2]", "/1", 4, comma},
    {"[\"a", "/0", 2, "the document ends before it is whole"},
    {"{\"a\": {\"bc", "/a", 8, "the document ends before it is whole"},
    {"[1, ", "/1", 4, "the document ends before it is whole"},
    {"{\"a\": 1, \"a\": 2}", "/a", 10, "the key \"a\" is said twice"},
};

static void each_slip_is_named(void) {
    static bw_scheme scheme;
    for (int i = 0; i < BW_COUNT(slips); i++) {
        const slip *s = &slips[i];
        const int failures = test_failures;
        bw_error error;
        CHECK_INT(bw_document_parse(s->text, strlen(s->text), &scheme, &error), BW_BAD_INPUT);
        CHECK_TEXT(error.pointer, s->pointer);
        CHECK_INT(error.column, s->column);
        CHECK(strncmp(error.message, s->sentence, strlen(s->sentence)) == 0);
        if (test_failures > failures) fprintf(stderr, "  %s: %s\n", s->text, error.message);
    }
}

/// A NUL byte is one; half of UTF-16 is such bytes, and its cure is another.
static void a_nul_byte_is_called_one(void) {
    static const char one[] = "{\"a\": \"b\0\"}", little[] = "{\0}\0", marked[] = "\377\376{\0}\0";
    static bw_scheme scheme;
    bw_error error;
    CHECK_INT(bw_document_parse(one, sizeof one - 1, &scheme, &error), BW_BAD_INPUT);
    CHECK(strncmp(error.message, "there is a NUL byte here", 24) == 0);
    CHECK_INT(error.column, 9);
    CHECK_INT(bw_document_parse(little, sizeof little - 1, &scheme, &error), BW_BAD_INPUT);
    CHECK_TEXT(error.message, "the file is UTF-16 text; save it as UTF-8");
    CHECK_INT(bw_document_parse(marked, sizeof marked - 1, &scheme, &error), BW_BAD_INPUT);
    CHECK_TEXT(error.message, "the file is UTF-16 text; save it as UTF-8");
}

/// A text that no line of the explanation knows keeps the parser's reason, and nothing in it is obeyed
/// by a terminal.
static void an_unknown_slip_is_still_a_sentence(void) {
    static bw_scheme scheme;
    static const char *const texts[] = {"\033[31m", "[\177]", "\\", "[\"\\", "@", "[*]"};
    for (int i = 0; i < BW_COUNT(texts); i++) {
        bw_error error;
        CHECK_INT(bw_document_parse(texts[i], strlen(texts[i]), &scheme, &error), BW_BAD_INPUT);
        CHECK(strlen(error.message) > 20);
        for (const char *c = error.message; *c; c++)
            CHECK((unsigned char)*c >= 0x20 && *c != 0x7f);
    }
}

int main(int argc, char **argv) {
    RUN(each_slip_is_named);
    RUN(a_nul_byte_is_called_one);
    RUN(an_unknown_slip_is_still_a_sentence);
    return test_report(argc, argv);
}
