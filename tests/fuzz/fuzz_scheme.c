/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any bytes into the reader: it answers with a sentence or with a whole scheme, and a scheme comes
/// back the same from its own text and lints without trouble.
#include "invariants.h"
#include "scheme/lint.h"
#include "scheme_text.h"
#include <jansson.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

static int is_utf8(const char *text) {
    json_t *string = json_string(text);
    json_decref(string);
    return string != NULL;
}

/// Nothing that a terminal would obey.
static int plain(const char *text) {
    for (const char *c = text; *c; c++) {
        if ((unsigned char)*c < 0x20 || *c == 0x7f) return 0;
    }
    return is_utf8(text);
}

static void accepted(const bw_scheme *scheme) {
    static bw_scheme again;
    static char first[BW_DOCUMENT_BYTES];
    bw_error error;
    const char *fault = scheme_fault(scheme);
    must(!fault, fault ? fault : "");
    const char *text = text_of_scheme(scheme);
    const size_t length = strlen(text);
    must(length > 0, "it has a text");
    memcpy(first, text, length + 1);
    must(bw_document_parse(first, length, &again, &error) == BW_OK, error.message);
    must(strcmp(text_of_scheme(&again), first) == 0, "its text is canonical");

    static bw_finding findings[BW_MAX_FINDINGS];
    must(bw_scheme_lint(scheme, findings, BW_MAX_FINDINGS) >= 0, "it lints");
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static bw_scheme scheme;
    bw_error error;
    const char *text = (const char *)data;
    if (bw_document_parse(text, size, &scheme, &error) == BW_OK) {
        accepted(&scheme);
        return 0;
    }
    must(error.message[0] != '\0', "a refusal says why");
    must(plain(error.message), "a refusal can be shown");
    must(is_utf8(error.pointer), "a pointer can be written as JSON");
    must(error.line >= 1 && error.column >= 1, "a refusal has a place");
    return 0;
}
