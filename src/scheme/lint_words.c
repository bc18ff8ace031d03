/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Calls: on a loud field two men must not answer to one word, and nobody may be without one.
#include "scheme/lint_part.h"

static char lower(char c) {
    return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

static const char *past_spaces(const char *s) {
    while (*s == ' ')
        s++;
    return s;
}

static bool silent(const char *call) {
    return !*past_spaces(call);
}

/// Shouted, "Low" and "low" are one word, and nobody hears a space.
static bool sounds_same(const char *a, const char *b) {
    for (;; a++, b++) {
        a = past_spaces(a);
        b = past_spaces(b);
        if (lower(*a) != lower(*b)) return false;
        if (!*a) return true;
    }
}

static bw_finding *begin(bw_lint *lint, int spot) {
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    bw_lint_point_to(lint, f, "/spots/", spot, "/call");
    return f;
}

static const char *call_of(const bw_lint *lint, int spot) {
    return bw_lint_stage(lint)->spots[spot].call;
}

static void say_missing(bw_lint *lint, int spot) {
    bw_lint_say(lint, begin(lint, spot), &bw_s_lint_no_call, &bw_s_lint_no_call_mend,
                bw_lint_as_spot("spot", lint, spot));
}

static void say_twice(bw_lint *lint, int spot, int earlier) {
    bw_lint_say(lint, begin(lint, spot), &bw_s_lint_same_call, &bw_s_lint_same_call_mend,
                bw_lint_as_spot("earlier", lint, earlier), bw_lint_as_spot("spot", lint, spot),
                bw_as_word("call", call_of(lint, spot)));
}

/// The word that calls the whole unit must not also be one man's.
static void say_stage_word(bw_lint *lint, int spot) {
    bw_lint_say(lint, begin(lint, spot), &bw_s_lint_stage_word, &bw_s_lint_stage_word_mend,
                bw_lint_as_spot("spot", lint, spot), bw_as_word("call", call_of(lint, spot)));
}

static void look_at_stage_call(bw_lint *lint) {
    const bw_stage *stage = bw_lint_stage(lint);
    if (silent(stage->call)) {
        bw_finding *f = bw_lint_begin(lint, BW_NOTE);
        bw_lint_point(lint, f, "/call");
        bw_lint_say(lint, f, &bw_s_lint_silent_stage, &bw_s_lint_silent_stage_mend,
                    bw_as_word("shape", stage->shape));
        return;
    }
    for (int i = 0; i < lint->stage; i++) {
        const bw_stage *earlier = &lint->scheme->stages[i];
        if (!sounds_same(earlier->call, stage->call)) continue;
        bw_finding *f = bw_lint_begin(lint, BW_WARNING);
        bw_lint_point(lint, f, "/call");
        bw_lint_say(lint, f, &bw_s_lint_same_stage_call, &bw_s_lint_same_call_mend,
                    bw_as_word("earlier", earlier->shape), bw_as_word("shape", stage->shape),
                    bw_as_word("call", stage->call));
        return;
    }
}

void bw_lint_words(bw_lint *lint) {
    const bw_stage *stage = bw_lint_stage(lint);
    look_at_stage_call(lint);
    for (int s = 0; s < stage->defenders; s++) {
        if (silent(stage->spots[s].call)) {
            say_missing(lint, s);
            continue;
        }
        if (sounds_same(stage->spots[s].call, stage->call)) say_stage_word(lint, s);
        for (int k = 0; k < s; k++) {
            if (!sounds_same(stage->spots[k].call, stage->spots[s].call)) continue;
            say_twice(lint, s, k);
            break;
        }
    }
}
