/* SPDX-License-Identifier: GPL-3.0-or-later */
/// From a JSON Pointer to line and column, and from a byte back to both.
#include "file/locate.h"
#include "harness.h"
#include "scheme_text.h"

static void finds_in(const char *text, const char *pointer, int line, int column) {
    const bw_source source = {(char *)text, strlen(text)};
    const int failures = test_failures;
    int got_line = -1, got_column = -1;
    bw_source_locate(&source, pointer, &got_line, &got_column);
    CHECK_INT(got_line, line);
    CHECK_INT(got_column, column);
    if (test_failures > failures) fprintf(stderr, "  looking for %s\n", pointer);
}

static const char text[] = "{\n"
                           "  \"a\": 1, \"list\": [10, {\"b\": true}, [ ], \"t\\\"e,x]t\"],\n"
                           "  \"list2\": [0],\n"
                           "  \"deep\": {\"list\": {\"b\": null}}\n"
                           "}\n";

static void keys_and_entries(void) {
    finds_in(text, "", 1, 1);
    finds_in(text, "/a", 2, 8);
    finds_in(text, "/list", 2, 19);
    finds_in(text, "/list/0", 2, 20);
    finds_in(text, "/list/1", 2, 24);
    finds_in(text, "/list/1/b", 2, 30);
    finds_in(text, "/list/2", 2, 37);
    finds_in(text, "/list/3", 2, 42);
    finds_in(text, "/list2/0", 3, 13);
    finds_in(text, "/deep/list/b", 4, 26);
}

static void the_nearest_parent_of_what_is_missing(void) {
    finds_in(text, "/nothing", 1, 1);
    finds_in(text, "/list/9", 2, 19);
    finds_in(text, "/list/1/c", 2, 24);
    finds_in(text, "/list/2/0", 2, 37);
    finds_in(text, "/deep/list/c/d/e", 4, 20);
    finds_in(text, "/lis", 1, 1);
    finds_in(text, "/list/1/b/more", 2, 30);
    finds_in(text, "no pointer", 1, 1);
    finds_in("", "/a", 1, 1);
}

static void escaped_keys(void) {
    finds_in("{\"a/b\": 1, \"c~d\": 2, \"~1\": 3}", "/a~1b", 1, 9);
    finds_in("{\"a/b\": 1, \"c~d\": 2, \"~1\": 3}", "/c~0d", 1, 19);
    finds_in("{\"a/b\": 1, \"c~d\": 2, \"~1\": 3}", "/~01", 1, 28);
    finds_in("{\"\\u006eame\": 1}", "/name", 1, 15);
    finds_in("{\"q\\\"\\\\\\/\": 1}", "/q\"\\~1", 1, 13);
    finds_in("{\"\\u00e9\": 1}", "/\xc3\xa9", 1, 12);
    finds_in("{\"\\u20AC\": 1}", "/\xe2\x82\xac", 1, 12);
    finds_in("{\"\\ud83d\\ude00\": 1}", "/\xf0\x9f\x98\x80", 1, 18);
    finds_in("{\"\": {\"\": 5}}", "//", 1, 11);
}

static void columns_count_characters(void) {
    finds_in("{\"\xc3\xa9\": \"\xe2\x82\xac\", \"b\": 1}", "/b", 1, 17);
    finds_in("{\r\n\"b\": 1}", "/b", 2, 6);
}

static void a_long_key_is_found(void) {
    char key[140], document[200], pointer[BW_POINTER_SIZE];
    memset(key, 'k', sizeof key);
    key[sizeof key - 1] = '\0';
    snprintf(document, sizeof document, "{\"a\": 0, \"%s\": 1}", key);
    snprintf(pointer, sizeof pointer, "/%s", key);
    finds_in(document, pointer, 1, 153);
}

/// Every value of the demo, by way of the reader's tree: a place and its pointer name each other.
static void demo_values_are_found(void) {
    static const struct {
        const char *pointer, *begins;
    } some[] = {
        {"/name", "\"Harbour\""},
        {"/landmarks/10/id", "\"hole\""},
        {"/stages/1/rule/hold_at/1", "1.5]"},
        {"/stages/3/shape", "\"match-up\""},
        {"/late/2/takes", "\"match\""},
        {"/lessons/1/stops/4/caption", "\"Nobody chases."},
    };
    size_t length;
    char *terns = text_of_file("examples/terns.json", &length);
    const bw_source source = {terns, length};
    for (size_t i = 0; i < sizeof some / sizeof some[0]; i++) {
        int line = 0, column = 0;
        bw_source_locate(&source, some[i].pointer, &line, &column);
        const char *at = terns;
        for (int l = 1; l < line && strchr(at, '\n'); l++)
            at = strchr(at, '\n') + 1;
        CHECK(strncmp(at + column - 1, some[i].begins, strlen(some[i].begins)) == 0);
    }
    free(terns);
}

static void offset_is(const char *document, size_t offset, const char *pointer, int line,
                      int column) {
    const bw_source source = {(char *)document, strlen(document)};
    bw_error error = {.status = BW_BAD_INPUT};
    bw_locate_offset(&source, offset, &error);
    CHECK_TEXT(error.pointer, pointer);
    CHECK_INT(error.line, line);
    CHECK_INT(error.column, column);
}

static void offsets(void) {
    const char *const document = "{\"a\": [1, {\"key\" 2}]}";
    offset_is(document, 0, "", 1, 1);
    offset_is(document, 1, "", 1, 1);
    offset_is(document, 4, "/a", 1, 2);
    offset_is(document, 8, "/a/0", 1, 8);
    offset_is(document, 16, "/a/1/key", 1, 12);
    offset_is(document, 18, "/a/1/key", 1, 18);
    offset_is(document, 1000, "", 1, 21);
    offset_is("{\"a\": \"no end", 13, "/a", 1, 7);
    offset_is("{\"a\": \"no end\n\"}", 14, "/a", 1, 14);
}

/// A pointer can be written as JSON and shown on a terminal whatever the keys are.
static void strange_keys(void) {
    offset_is("{\"a\\u001b[2J\": [1 2]}", 19, "", 1, 19);
    offset_is("{\"a\xff\": [1 2]}", 11, "", 1, 11);
    offset_is("{\"a\xc2\x9b\": [1 2]}", 12, "", 1, 11);
    offset_is("{\"a\xc3\xa9\": [1 2]}", 12, "/a\xc3\xa9/0", 1, 11);
}

/// Any bytes at all: no crash, no reading past the end (under AddressSanitizer), a place in the text.
static void any_bytes(void) {
    static const char alphabet[] = "{}[]\",:\\u0e9 \n\xc3\xa9ud83d";
    unsigned long long state = 11;
    for (int round = 0; round < 20000; round++) {
        const size_t length = (size_t)(test_random(&state) % 40);
        char *bytes = malloc(length ? length : 1);
        for (size_t i = 0; i < length; i++)
            bytes[i] = alphabet[test_random(&state) % sizeof alphabet];
        const bw_source source = {bytes, length};
        bw_error error = {.status = BW_BAD_INPUT};
        bw_locate_offset(&source, (size_t)(test_random(&state) % 50), &error);
        CHECK(error.line >= 1 && error.column >= 1 && error.line <= (int)length + 1);
        int line = 0, column = 0;
        bw_source_locate(&source, error.pointer, &line, &column);
        CHECK(line >= 1 && column >= 1 && line <= (int)length + 1);
        free(bytes);
    }
}

int main(int argc, char **argv) {
    RUN(keys_and_entries);
    RUN(the_nearest_parent_of_what_is_missing);
    RUN(escaped_keys);
    RUN(columns_count_characters);
    RUN(a_long_key_is_found);
    RUN(demo_values_are_found);
    RUN(offsets);
    RUN(strange_keys);
    RUN(any_bytes);
    return test_report(argc, argv);
}
