/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any bytes as a quiz's result code: refused with a sentence, or read and written again as the same.
#include "core/quiz_code.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    bw_quiz_said said, again;
    char words[160], code[BW_QUIZ_CODE_BYTES];
    bw_text why = bw_text_in(words, sizeof words), out = bw_text_in(code, sizeof code);
    if (bw_quiz_read((const char *)data, size, &said, &why) != BW_OK) {
        must(why.used > 0 && !why.full, "a refusal says why");
        return 0;
    }
    must(said.right <= said.asked && said.tries <= said.asked, "counts are counts");
    must(bw_quiz_write(&said, &out) && !out.full, "what was read can be written");
    must(bw_quiz_read(code, out.used, &again, NULL) == BW_OK, "and read");
    must(memcmp(&said.bias, &again.bias, sizeof said.bias) == 0, "with the same errors");
    must(strcmp(said.spot, again.spot) == 0 && said.day == again.day, "of the same man");
    return 0;
}
