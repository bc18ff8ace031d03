/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any bytes as a text that may speak of a player. What is found lies in the text and in order; what is not
/// struck stays byte for byte; when all is struck nothing is found again. Bytes before the first line end
/// are also tried as a name.
#include "team/mention.h"
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

/// What is left of a text when the chosen mentions are taken from it, reckoned byte by byte.
static void compare(const char *text, size_t length, const bw_mention *list, const bool *struck,
                    int count, const char *out) {
    size_t at = 0;
    int i = 0;
    for (size_t from = 0; from < length;) {
        while (i < count && (!struck[i] || list[i].to <= from))
            i++;
        if (i < count && list[i].from == from) {
            must(out[at++] == BW_STRUCK, "what is struck is marked");
            from = list[i].to;
        } else {
            must(out[at++] == text[from++], "what is not struck stays");
        }
    }
    must(out[at] == '\0', "and nothing comes behind it");
}

/// `again` is whether nothing may be found once all is struck.
static void go_over(const bw_called *called, const char *text, size_t length, bool again) {
    bw_mention *list, *more;
    int count, left;
    size_t end = 0;
    must(bw_mentions(called, text, length, &list, &count), "there is memory");
    bool *struck = calloc((size_t)count + 1, sizeof *struck);
    char *out = malloc(length + 1);
    must(struck && out, "there is memory");
    for (int i = 0; i < count; i++) {
        must(list[i].from >= end && list[i].from < list[i].to && list[i].to <= length, "in order");
        end = list[i].to;
    }
    bw_strike(text, length, list, struck, count, out);
    must(memcmp(out, text, length) == 0 && out[length] == '\0', "nothing struck, nothing changed");
    for (int i = 0; i < count; i += 2)
        struck[i] = true;
    bw_strike(text, length, list, struck, count, out);
    compare(text, length, list, struck, count, out);
    memset(struck, true, (size_t)count * sizeof *struck);
    bw_strike(text, length, list, struck, count, out);
    compare(text, length, list, struck, count, out);
    if (again && !memchr(text, '\0', length)) {
        must(bw_mentions(called, out, strlen(out), &more, &left), "there is memory");
        must(left == 0, "nothing that was struck is found again");
        free(more);
    }
    free(out);
    free(struck);
    free(list);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static const bw_player players[] = {
        {.jersey = 12, .initials = "Q.Z.", .name = "Quillon Zimmer"},
        {.jersey = 7, .name = "Zo\xc3\xab \xc3\x85ngstr\xc3\xb6m-Vale"},
        {.jersey = 5, .initials = "AL", .name = "Ann Lee"},
        {.jersey = 0, .initials = "E"}};
    bw_called called;
    const char *text = (const char *)data;
    for (size_t i = 0; i < sizeof players / sizeof *players; i++) {
        bw_called_of(&players[i], i == 0 ? "Jo Quill Li" : NULL, &called);
        go_over(&called, text, size, true);
    }
    char name[BW_FULL_NAME_SIZE] = "";
    const uint8_t *end = memchr(data, '\n', size);
    const size_t length = end ? (size_t)(end - data) : 0;
    if (length == 0 || length >= sizeof name) return 0;
    memcpy(name, data, length);
    bw_called_of(&players[3], name, &called);
    go_over(&called, text, size, false);
    return 0;
}
