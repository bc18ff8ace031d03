/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/sentence.h"

#include "core/field.h"

/// One word that has two forms.
typedef struct word {
    const char *place;
    bool people; ///< it depends on the people, otherwise on the spelling
    const char *plain, *other;
} word;

#define BW_PEOPLE(place, men, women) {place, true, men, women},
#define BW_SPELLING(place, british, american) {place, false, british, american},
static const word wordbook[] = {
#include "core/wordbook.def"
};

bw_voice bw_voice_of(const bw_scheme *scheme) {
    const bw_field *field = bw_field_at(scheme->field);
    return (bw_voice){.units = scheme->units, .american = field->american, .women = field->women};
}

bw_arg bw_as_word(const char *name, const char *w) {
    return (bw_arg){.name = name, .kind = BW_ARG_WORD, .word = w};
}

bw_text bw_own_word(bw_arg *arg, const char *name) {
    *arg = bw_as_word(name, NULL);
    return bw_text_in(arg->own, sizeof arg->own);
}

bw_arg bw_as_part(const char *name, const bw_sentence *part) {
    return (bw_arg){.name = name, .kind = BW_ARG_PART, .part = part};
}

bw_arg bw_as_count(const char *name, long long n) {
    return (bw_arg){.name = name, .kind = BW_ARG_COUNT, .count = n};
}

bw_arg bw_as_number(const char *name, double x, int decimals) {
    return (bw_arg){.name = name, .kind = BW_ARG_NUMBER, .value = x, .decimals = decimals};
}

bw_arg bw_as_in_100(const char *name, double share) {
    return (bw_arg){.name = name, .kind = BW_ARG_IN_100, .value = share};
}

bw_arg bw_as_length(const char *name, double metres) {
    return (bw_arg){.name = name, .kind = BW_ARG_LENGTH, .value = metres};
}

bw_arg bw_as_speed(const char *name, double metres_per_second) {
    return (bw_arg){.name = name, .kind = BW_ARG_SPEED, .value = metres_per_second};
}

bw_arg bw_as_seconds(const char *name, double seconds) {
    return (bw_arg){.name = name, .kind = BW_ARG_SECONDS, .value = seconds};
}

/// A place as it is written: `size` bytes, the forms behind its first bar left out of `name`.
typedef struct place {
    const char *name;
    size_t name_size, size;
} place;

static char small(char c) {
    return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

/// The place that begins behind a brace; size 0 when no brace ends it.
static place place_at(const char *text) {
    place p = {.name = text};
    while (text[p.size] && text[p.size] != '}')
        p.size++;
    if (!text[p.size]) return (place){.name = text};
    while (p.name_size < p.size && text[p.name_size] != '|')
        p.name_size++;
    return p;
}

static bool named(const place *p, const char *name) {
    for (size_t i = 0; i < p->name_size; i++) {
        const char c = i == 0 ? small(p->name[i]) : p->name[i];
        if (name[i] != c) return false;
    }
    return !name[p->name_size];
}

/// {count|one|many}
static void put_form(bw_text *out, const place *p, bool one) {
    const char *first = p->name + p->name_size + 1, *end = p->name + p->size, *bar = first;
    while (bar < end && *bar != '|')
        bar++;
    if (one || bar == end)
        bw_put_n(out, first, (size_t)(bar - first));
    else
        bw_put_n(out, bar + 1, (size_t)(end - bar - 1));
}

static void put_argument(bw_text *out, bw_voice voice, const bw_arg *arg) {
    switch (arg->kind) {
    case BW_ARG_COUNT: bw_put_int(out, arg->count); break;
    case BW_ARG_NUMBER: bw_put_fixed(out, arg->value, arg->decimals); break;
    case BW_ARG_IN_100: bw_put_int(out, bw_in_100(arg->value)); break;
    case BW_ARG_LENGTH: bw_say_length(voice.units, arg->value, out); break;
    case BW_ARG_SPEED: bw_say_speed(voice.units, arg->value, out); break;
    case BW_ARG_SECONDS: bw_say_seconds(arg->value, out); break;
    default: bw_put(out, arg->word ? arg->word : arg->own);
    }
}

static bool put_word(bw_text *out, bw_voice voice, const place *p) {
    for (int i = 0; i < BW_COUNT(wordbook); i++) {
        if (!named(p, wordbook[i].place)) continue;
        const bool other = wordbook[i].people ? voice.women : voice.american;
        bw_put(out, other ? wordbook[i].other : wordbook[i].plain);
        return true;
    }
    return false;
}

/// Fills a place; a part is said with the arguments that the whole has.
static void put_place(bw_text *out, bw_voice voice, const place *p, const bw_arg *args) {
    for (const bw_arg *arg = args; arg->kind != BW_ARG_END; arg++) {
        if (!named(p, arg->name)) continue;
        if (p->name_size < p->size)
            put_form(out, p, arg->count == 1);
        else if (arg->kind != BW_ARG_PART)
            put_argument(out, voice, arg);
        else if (arg->part)
            bw_put_sentence_with(out, voice, arg->part, args);
        return;
    }
    if (!put_word(out, voice, p)) bw_put_n(out, p->name - 1, p->size + 2);
}

void bw_put_sentence_with(bw_text *out, bw_voice voice, const bw_sentence *sentence,
                          const bw_arg *args) {
    const char *text = sentence->text;
    while (*text) {
        size_t plain = 0;
        while (text[plain] && text[plain] != '{')
            plain++;
        bw_put_n(out, text, plain);
        text += plain;
        if (!*text) return;
        const place p = place_at(text + 1);
        if (p.size == 0) {
            bw_put(out, text);
            return;
        }
        const size_t start = out->used;
        put_place(out, voice, &p, args);
        const bool large = small(*p.name) != *p.name;
        if (large && out->used > start) bw_capital(out->data + start);
        text += p.size + 2;
    }
}

void bw_put_plain_sentence(bw_text *out, bw_voice voice, const bw_sentence *sentence) {
    bw_put_sentence_with(out, voice, sentence, &(const bw_arg){.kind = BW_ARG_END});
}
