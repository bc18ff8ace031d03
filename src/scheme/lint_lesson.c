/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Captions of lessons: read while a picture stands a moment, by players who may be new.
#include "scheme/lint_part.h"
#include "scheme/style.h"

static bw_finding *begin(bw_lint *lint, int lesson, int stop) {
    bw_finding *f = bw_lint_begin(lint, BW_NOTE);
    bw_text t = bw_text_in(f->pointer, sizeof f->pointer);
    bw_put(&t, "/lessons/");
    bw_put_int(&t, lesson);
    bw_put(&t, "/stops/");
    bw_put_int(&t, stop);
    bw_put(&t, "/caption");
    return f;
}

static void put_which(const bw_lint *lint, int lesson, int stop, bw_text *out) {
    bw_put(out, "In the lesson \"");
    bw_put(out, lint->scheme->lessons[lesson].name);
    bw_put(out, "\" the caption of stop ");
    bw_put_int(out, stop + 1);
}

static void say_long(bw_lint *lint, int lesson, int stop, const char *caption) {
    const int words = bw_style_words(caption), sentence = bw_style_sentence(caption);
    const bool whole = words > BW_CAPTION_WORDS;
    if (!whole && sentence <= BW_SENTENCE_WORDS) return;
    bw_finding *f = begin(lint, lesson, stop);
    bw_text t = bw_lint_message(f);
    put_which(lint, lesson, stop, &t);
    bw_put(&t, " has ");
    bw_put_int(&t, whole ? words : sentence);
    bw_put(&t, whole ? " words; " : " words in one sentence; ");
    bw_put_int(&t, whole ? BW_CAPTION_WORDS : BW_SENTENCE_WORDS);
    bw_put(&t, " can be read while it stands.");
    bw_lint_remedy(f, whole ? "Keep what the men do, and leave the rest to the coach."
                            : "Make two sentences of it.");
}

static void say_jargon(bw_lint *lint, int lesson, int stop, const char *caption) {
    const bw_jargon *jargon = bw_style_jargon(caption);
    if (!jargon) return;
    bw_finding *f = begin(lint, lesson, stop);
    bw_text t = bw_lint_message(f);
    put_which(lint, lesson, stop, &t);
    bw_put(&t, " has a word that new players do not know.");
    char remedy[BW_MESSAGE_SIZE];
    t = bw_text_in(remedy, sizeof remedy);
    bw_put(&t, "Instead of \"");
    bw_put(&t, jargon->word);
    bw_put(&t, "...\" say \"");
    bw_put(&t, jargon->plain);
    bw_put(&t, "\".");
    bw_lint_remedy(f, remedy);
}

void bw_lint_lessons(bw_lint *lint) {
    for (int l = 0; l < lint->scheme->lesson_count; l++) {
        const bw_lesson *lesson = &lint->scheme->lessons[l];
        for (int i = 0; i < lesson->stop_count; i++) {
            say_long(lint, l, i, lesson->stops[i].caption);
            say_jargon(lint, l, i, lesson->stops[i].caption);
        }
    }
}
