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

static void say_long(bw_lint *lint, int lesson, int stop, const char *caption) {
    const int words = bw_style_words(caption), sentence = bw_style_sentence(caption);
    const bool whole = words > BW_CAPTION_WORDS;
    if (!whole && sentence <= BW_SENTENCE_WORDS) return;
    bw_lint_say(lint, begin(lint, lesson, stop),
                whole ? &bw_s_lint_long_caption : &bw_s_lint_long_sentence,
                whole ? &bw_s_lint_long_caption_mend : &bw_s_lint_long_sentence_mend,
                bw_as_word("lesson", lint->scheme->lessons[lesson].name),
                bw_as_count("stop", stop + 1), bw_as_count("words", whole ? words : sentence),
                bw_as_count("most", whole ? BW_CAPTION_WORDS : BW_SENTENCE_WORDS));
}

static void say_jargon(bw_lint *lint, int lesson, int stop, const char *caption) {
    const bw_jargon *jargon = bw_style_jargon(caption);
    if (!jargon) return;
    bw_lint_say(lint, begin(lint, lesson, stop), &bw_s_lint_jargon, &bw_s_lint_jargon_mend,
                bw_as_word("lesson", lint->scheme->lessons[lesson].name),
                bw_as_count("stop", stop + 1), bw_as_word("word", jargon->word),
                bw_as_part("plain", &jargon->plain));
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
