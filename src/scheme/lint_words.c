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

static void point_call(const bw_lint *lint, bw_finding *f, int spot) {
    char room[BW_POINTER_SIZE];
    bw_text part = bw_text_in(room, sizeof room);
    bw_put(&part, "/spots/");
    bw_put_int(&part, spot);
    bw_put(&part, "/call");
    bw_lint_point(lint, f, room);
}

static void say_missing(bw_lint *lint, int spot) {
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    point_call(lint, f, spot);
    bw_text t = bw_lint_message(f);
    bw_put(&t, "The spot \"");
    bw_put(&t, bw_lint_spot_name(lint, spot));
    bw_put(&t, "\" has no call, so nobody hears that it is taken.");
    bw_lint_remedy(f, "Give it a word of its own to shout.");
}

static void say_twice(bw_lint *lint, int spot, int earlier) {
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    point_call(lint, f, spot);
    bw_text t = bw_lint_message(f);
    bw_put(&t, "The spots \"");
    bw_put(&t, bw_lint_spot_name(lint, earlier));
    bw_put(&t, "\" and \"");
    bw_put(&t, bw_lint_spot_name(lint, spot));
    bw_put(&t, "\" both call \"");
    bw_put(&t, bw_lint_stage(lint)->spots[spot].call);
    bw_put(&t, "\".");
    bw_lint_remedy(f, "Give one of them another word.");
}

/// The word that calls the whole unit must not also be one man's.
static void say_stage_word(bw_lint *lint, int spot) {
    bw_finding *f = bw_lint_begin(lint, BW_WARNING);
    point_call(lint, f, spot);
    bw_text t = bw_lint_message(f);
    bw_put(&t, "The spot \"");
    bw_put(&t, bw_lint_spot_name(lint, spot));
    bw_put(&t, "\" calls \"");
    bw_put(&t, bw_lint_stage(lint)->spots[spot].call);
    bw_put(&t, "\", which is the word that calls its stage.");
    bw_lint_remedy(f, "Give one of the two another word.");
}

static void look_at_stage_call(bw_lint *lint) {
    const bw_stage *stage = bw_lint_stage(lint);
    if (silent(stage->call)) {
        bw_finding *f = bw_lint_begin(lint, BW_NOTE);
        bw_lint_point(lint, f, "/call");
        bw_text t = bw_lint_message(f);
        bw_put(&t, "The stage ");
        bw_put(&t, stage->shape);
        bw_put(&t, " has no call, so nothing tells the unit to go into it.");
        bw_lint_remedy(f, "Give the stage a word the goalkeeper can shout.");
        return;
    }
    for (int i = 0; i < lint->stage; i++) {
        const bw_stage *earlier = &lint->scheme->stages[i];
        if (!sounds_same(earlier->call, stage->call)) continue;
        bw_finding *f = bw_lint_begin(lint, BW_WARNING);
        bw_lint_point(lint, f, "/call");
        bw_text t = bw_lint_message(f);
        bw_put(&t, "The stages ");
        bw_put(&t, earlier->shape);
        bw_put(&t, " and ");
        bw_put(&t, stage->shape);
        bw_put(&t, " are both called \"");
        bw_put(&t, stage->call);
        bw_put(&t, "\".");
        bw_lint_remedy(f, "Give one of them another word.");
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
