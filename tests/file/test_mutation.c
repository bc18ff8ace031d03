/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The demo scheme with things done to it: whatever the reader still takes is a whole scheme that
/// comes back the same from its own canonical text.
#include "harness.h"
#include "invariants.h"
#include "scheme_text.h"

enum { ROUNDS = 5000 };

static char *demo;
static size_t demo_length;
static int taken;
static bw_scheme scheme, again;

static void hold(const char *text, size_t length) {
    bw_error error;
    if (bw_document_parse(text, length, &scheme, &error) != BW_OK) {
        CHECK(error.message[0] != '\0' && error.line >= 1 && error.column >= 1);
        CHECK(memchr(error.message, '\0', sizeof error.message) != NULL);
        CHECK(memchr(error.pointer, '\0', sizeof error.pointer) != NULL);
        return;
    }
    taken++;
    const char *fault = scheme_fault(&scheme);
    CHECK_TEXT(fault ? fault : "whole", "whole");
    char *first = text_change(text_of_scheme(&scheme), "", "");
    CHECK_INT(bw_document_parse(first, strlen(first), &again, &error), BW_OK);
    CHECK(text_same(text_of_scheme(&again), first));
    free(first);
}

static size_t below(unsigned long long *state, size_t n) {
    return (size_t)(test_random(state) % n);
}

/// Changes, drops or doubles one to four bytes.
static void bytes_change(void) {
    unsigned long long state = 20250101;
    char *text = malloc(demo_length + 8);
    for (int round = 0; round < ROUNDS; round++) {
        size_t length = demo_length;
        memcpy(text, demo, length);
        const size_t edits = 1 + below(&state, 4);
        for (size_t i = 0; i < edits; i++) {
            const size_t at = below(&state, length), kind = below(&state, 3);
            const char byte = (char)test_random(&state);
            if (kind == 0) {
                text[at] = byte;
            } else if (kind == 1) {
                memmove(text + at, text + at + 1, --length - at);
            } else {
                memmove(text + at + 1, text + at, length++ - at);
            }
        }
        hold(text, length);
    }
    free(text);
}

/// A place in the text where a token begins: after one of the characters that stand between values.
static size_t token(unsigned long long *state) {
    size_t at = below(state, demo_length);
    while (at > 0 && !strchr(" ,[{:", demo[at - 1]))
        at--;
    return at;
}

static size_t token_length(size_t at) {
    size_t n = 1;
    if (demo[at] == '"') {
        while (demo[at + n] && demo[at + n] != '"')
            n++;
        return n + 1;
    }
    while (demo[at + n] && !strchr(" ,]}:\n", demo[at + n]))
        n++;
    return n;
}

/// Puts in place of one token another from elsewhere in the text, or one that was made to be trouble.
static void tokens_change(void) {
    static const char *const trouble[] = {
        "0",     "-0",     "1",         "-1",       "3",     "6",      "25",
        "40",    "-15",    "30.00004",  "1e-300",   "1e15",  "0.0001", "0.00004",
        "true",  "null",   "\"\"",      "[]",       "{}",    "[0, 0]", "\"none\"",
        "\"m\"", "\"yd\"", "\"match\"", "\"left\"", "\"M\"", "[4, 4]", "2.5"};
    unsigned long long state = 20250102;
    char *text = malloc(2 * demo_length);
    for (int round = 0; round < ROUNDS; round++) {
        const size_t at = token(&state), length = token_length(at), other = token(&state);
        const size_t pick = below(&state, 2 * BW_COUNT(trouble));
        const char *with = demo + other;
        int with_length = (int)token_length(other);
        if (pick < (size_t)BW_COUNT(trouble)) {
            with = trouble[pick];
            with_length = (int)strlen(with);
        }
        const int n = snprintf(text, 2 * demo_length, "%.*s%.*s%s", (int)at, demo, with_length,
                               with, demo + at + length);
        hold(text, (size_t)n);
    }
    free(text);
}

/// Takes out a stretch of whole lines, or says it twice.
static void lines_change(void) {
    unsigned long long state = 20250103;
    char *text = malloc(2 * demo_length + 1);
    for (int round = 0; round < ROUNDS / 5; round++) {
        size_t from = below(&state, demo_length), lines = 1 + below(&state, 3);
        while (from > 0 && demo[from - 1] != '\n')
            from--;
        size_t to = from;
        while (to < demo_length && lines > 0)
            lines -= demo[to++] == '\n';
        const size_t rest = below(&state, 2) ? from : to;
        const size_t head = rest == from ? to : from;
        memcpy(text, demo, head);
        memcpy(text + head, demo + rest, demo_length - rest);
        hold(text, head + demo_length - rest);
    }
    free(text);
}

static void cut_anywhere(void) {
    for (size_t length = 0; length < demo_length; length += 7)
        hold(demo, length);
}

int main(int argc, char **argv) {
    demo = text_of_file("examples/terns.json", &demo_length);
    RUN(bytes_change);
    RUN(tokens_change);
    RUN(lines_change);
    RUN(cut_anywhere);
    // Changes that nothing survives would test nothing.
    if (test_all(argc, argv)) CHECK(taken > 500);
    free(demo);
    return test_report(argc, argv);
}
