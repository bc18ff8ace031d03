/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/teach.h"

#include "scheme/caption.h"

int bw_teach_spot(const bw_teach *teach, int stage) {
    if (!teach->spot) return -1;
    const int spot = bw_stage_spot(&teach->scheme->stages[stage], teach->spot);
    return spot >= 0 ? spot : -2;
}

bw_format bw_teach_format(const bw_teach *teach) {
    return bw_format_of(teach->paper, teach->large ? BW_LARGE_PRINT : 1);
}

void bw_teach_place(const bw_scheme *scheme, bw_vec at, bw_text *out) {
    char words[80];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_place(scheme->units, at, &t);
    for (size_t i = 0; i < t.used; i++) {
        const bool figure = i > 0 && words[i - 1] >= '0' && words[i - 1] <= '9';
        if (words[i] == ' ' && figure)
            bw_put(out, "\xC2\xA0");
        else
            bw_put_char(out, words[i]);
    }
}
