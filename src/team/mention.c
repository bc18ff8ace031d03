/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/mention.h"
#include "core/text.h"
#include <stdlib.h>
#include <string.h>

/// What of him a word of the text can be. Bit k of a name is its word k.
typedef struct token {
    size_t from, to;
    uint32_t exact[BW_CALLED_NAMES]; ///< words it is
    uint32_t plain[BW_CALLED_NAMES]; ///< words it is but for accents, or holds inside
    uint32_t first[BW_CALLED_NAMES]; ///< words it is the first letter of
    char letter[8];                  ///< a single letter, folded; "" otherwise
    int letters;
    int number;    ///< -1: none
    bool strong;   ///< alone enough to speak of him
    bool initials; ///< all of them in one word
    bool capitals;
    bool leads;   ///< "no", "number", ...: a number that follows is a jersey
    bool carries; ///< "and", "or"
} token;

enum { PART = 3, INSIDE = 5, NUMBER_GAP = 4 }; ///< letters, letters, bytes

static bool among(const char *word, const char *list) {
    const size_t length = strlen(word);
    for (const char *at = list; (at = strstr(at, word)); at += length) {
        if ((at == list || at[-1] == ' ') && (at[length] == ' ' || !at[length])) return true;
    }
    return false;
}

/// In small letters these are words, not initials.
static bool common(const char *word) {
    return among(word,
                 "ad ah am an as at be by do go ha he hi if in is it me my no of oh ok on or ox "
                 "pa so to up us we yd ft the and all any are ask bad big but can cut did end "
                 "far few fly for get got gun guy had has her him his hit hot how its job law "
                 "leg let lot low man may men met new nor not now off old one our out own pad "
                 "per pin put ran red ref run saw say see set she sit six tap ten then they "
                 "this that them than too top try two use via was way wet who why win with "
                 "won yes yet you ball shot slow late left wing high post side goal from");
}

static void add_initials(bw_called *called, const char *letters) {
    for (int i = 0; i < called->initials; i++) {
        if (strcmp(called->letters[i], letters) == 0) return;
    }
    bw_copy(called->letters[called->initials++], BW_FOLD_BYTES, letters);
}

/// How many bytes the first character has.
static size_t first_size(const char *s) {
    size_t size = s[0] != '\0';
    while ((s[size] & 0xc0) == 0x80)
        size++;
    return size;
}

/// "qzx" and "qx" of a name in three words.
static void initials_of(bw_called *called, const bw_word *word, int count) {
    char all[BW_FOLD_BYTES], ends[BW_FOLD_BYTES];
    bw_text a = bw_text_in(all, sizeof all), e = bw_text_in(ends, sizeof ends);
    for (int i = 0; i < count; i++) {
        bw_put_n(&a, word[i].plain, first_size(word[i].plain));
        if (i == 0 || i == count - 1) bw_put_n(&e, word[i].plain, first_size(word[i].plain));
    }
    if (count < 2) return;
    add_initials(called, all);
    add_initials(called, ends);
}

static int words_of(const char *name, bw_word *word) {
    char cut[BW_FULL_NAME_SIZE];
    bw_copy(cut, sizeof cut, name);
    size_t at = 0;
    int count = 0;
    while (count < BW_CALLED_WORDS && bw_word_next(cut, strlen(cut), &at, &word[count]))
        count++;
    return count;
}

static void add_name(bw_called *called, const char *name) {
    bw_word *word = called->word[called->names];
    const int count = words_of(name, word);
    if (count == 0) return;
    called->words[called->names++] = count;
}

void bw_called_of(const bw_player *player, const char *name, bw_called *called) {
    bw_word word[BW_CALLED_WORDS];
    char letters[BW_FOLD_BYTES];
    bw_text t = bw_text_in(letters, sizeof letters);
    called->jersey = player->jersey;
    called->names = called->initials = 0;
    add_name(called, player->name);
    if (name) add_name(called, name);
    const int count = words_of(player->initials, word);
    for (int i = 0; i < count; i++)
        bw_put(&t, word[i].plain);
    // A single letter would speak of everyone.
    if (letters[0] && letters[first_size(letters)]) add_initials(called, letters);
    for (int n = 0; n < called->names; n++)
        initials_of(called, called->word[n], called->words[n]);
}

bool bw_called_same(const char *name, const char *other) {
    bw_word a[BW_CALLED_WORDS], b[BW_CALLED_WORDS];
    const int count = words_of(name, a);
    uint32_t used = 0;
    if (count == 0 || count != words_of(other, b)) return false;
    for (int i = 0; i < count; i++) {
        int k = 0;
        while (k < count && ((used >> k & 1u) || strcmp(a[i].exact, b[k].exact) != 0))
            k++;
        if (k == count) return false;
        used |= 1u << k;
    }
    return true;
}

/// Whether a word holds a part of a name: a long one anywhere, a short one with an s behind it.
static bool holds(const char *word, const bw_word *part) {
    if (part->letters >= INSIDE && strstr(word, part->plain)) return true;
    const size_t length = strlen(part->plain);
    return part->letters >= PART && strncmp(word, part->plain, length) == 0 &&
           strcmp(word + length, "s") == 0;
}

static void compare_part(const bw_word *word, const bw_word *part, int name, uint32_t bit,
                         token *t) {
    if (part->number != word->number) return;
    if (strcmp(word->exact, part->exact) == 0) t->exact[name] |= bit;
    if (strcmp(word->plain, part->plain) == 0 || holds(word->plain, part)) {
        t->plain[name] |= bit;
        t->strong = t->strong || (part->letters >= PART && !part->number);
    }
    if (t->letter[0] && strncmp(part->plain, t->letter, strlen(t->letter)) == 0)
        t->first[name] |= bit;
}

static token token_of(const bw_called *called, const bw_word *word) {
    token t = {.from = word->from,
               .to = word->to,
               .letters = word->letters,
               .number = -1,
               .capitals = word->capitals};
    if (word->number && strspn(word->plain, "0123456789") == strlen(word->plain) &&
        word->letters < 9)
        t.number = atoi(word->plain);
    if (!word->number && word->plain[0] && !word->plain[first_size(word->plain)])
        bw_copy(t.letter, sizeof t.letter, word->plain);
    for (int n = 0; n < called->names; n++) {
        for (int k = 0; k < called->words[n]; k++)
            compare_part(word, &called->word[n][k], n, 1u << k, &t);
    }
    for (int i = 0; i < called->initials && !word->number; i++)
        t.initials = t.initials || strcmp(word->plain, called->letters[i]) == 0;
    t.initials = t.initials && (word->capitals || !common(word->plain));
    t.leads = among(word->plain, "no nos nr nrs num nums number numbers jersey jerseys shirt "
                                 "shirts player players");
    t.carries = among(word->plain, "and or");
    return t;
}

static bool blank(char c) {
    return c == ' ' || c == '\t' || c == '\n';
}

/// Whether only what may stand inside a name is between two words. A full stop ends a sentence unless
/// what it follows is short, as initials are.
static bool joined(const char *text, const token *a, const token *b) {
    if (b->from - a->to == 1 && text[a->to] == BW_STRUCK) return true;
    for (size_t i = a->to; i < b->from; i++) {
        const char c = text[i];
        if (c == '.' && a->letters > 2 && blank(text[i + 1])) return false;
        if (c == '.' || c == ',' || c == '-' || c == '\'' || blank(c)) continue;
        // No-break space; dashes, the right quote, wide and zero width spaces.
        if (c == '\xc2' && text[i + 1] == '\xa0')
            i += 1;
        else if (c == '\xe2' && text[i + 1] == '\x80')
            i += 2;
        else
            return false;
    }
    return true;
}

/// The words of a text, and where they stand.
typedef struct scan {
    const bw_called *called;
    const char *text;
    size_t length;
    token *token;
    int count, room;
    bw_mention *found;
    int found_count, found_room;
    bool full; ///< no memory
} scan;

static bool grow(void **list, int count, int *room, size_t size) {
    if (count < *room) return true;
    const int more = *room ? 2 * *room : 16;
    void *larger = realloc(*list, (size_t)more * size);
    if (!larger) return false;
    *list = larger;
    *room = more;
    return true;
}

static void put(scan *s, size_t from, size_t to, bw_mention_kind kind) {
    s->full =
        s->full || !grow((void **)&s->found, s->found_count, &s->found_room, sizeof *s->found);
    if (!s->full) s->found[s->found_count++] = (bw_mention){from, to, kind};
}

/// With the point behind a single letter.
static size_t end_of(const scan *s, const token *t) {
    return t->to + (t->letter[0] && t->to < s->length && s->text[t->to] == '.');
}

/// How many words from i on are a whole full name; 0 when they are none.
static int whole_name(const scan *s, int i) {
    for (int n = 0; n < s->called->names; n++) {
        const int count = s->called->words[n];
        uint32_t left = count == 32 ? UINT32_MAX : (1u << count) - 1;
        int k = 0;
        for (; count >= 2 && k < count && i + k < s->count; k++) {
            const token *t = &s->token[i + k];
            const uint32_t may = t->exact[n] & left;
            if (!may || (k > 0 && !joined(s->text, t - 1, t))) break;
            left &= ~(may & (~may + 1)); // words alike are interchangeable
        }
        if (left == 0) return k;
    }
    return 0;
}

/// Whether a word can be one of several that speak of him.
static bool belongs(const scan *s, const token *t) {
    const bool dotted = end_of(s, t) > t->to;
    for (int n = 0; n < s->called->names; n++) {
        if (t->plain[n] || (t->first[n] && (t->capitals || dotted))) return true;
    }
    return false;
}

/// How many words from i on are parts of a name; 0 when they are too little to speak of him. Two short
/// parts beside each other are enough.
static int parts(const scan *s, int i) {
    int k = i, weak = 0;
    bool strong = false;
    for (; k < s->count; k++) {
        const token *t = &s->token[k];
        if (!belongs(s, t) || (k > i && (!joined(s->text, t - 1, t) || whole_name(s, k)))) break;
        strong = strong || t->strong;
        weak += !t->letter[0] && t->number < 0;
    }
    return strong || weak >= 2 ? k - i : 0;
}

/// How many single letters from i on are his initials, by points, hyphens or (capitals) blanks apart.
static int spaced_initials(const scan *s, int i) {
    for (int n = 0; n < s->called->initials; n++) {
        const char *rest = s->called->letters[n];
        int k = i;
        bool capitals = true, pointed = true;
        for (; k < s->count && *rest; k++) {
            const token *t = &s->token[k];
            const size_t size = strlen(t->letter);
            if (size == 0 || strncmp(rest, t->letter, size) != 0) break;
            if (k > i && !joined(s->text, t - 1, t)) break;
            capitals = capitals && t->capitals;
            rest += size;
            pointed = pointed && (!*rest || (t->to < s->length && !blank(s->text[t->to])));
        }
        if (!*rest && k > i + 1 && (capitals || pointed)) return k - i;
    }
    return 0;
}

/// Whether a "#" or its like stands before a word, at most after blanks.
static bool signed_number(const scan *s, const token *t, size_t after) {
    size_t at = t->from;
    while (at > after && blank(s->text[at - 1]))
        at--;
    if (at > after && s->text[at - 1] == '#') return true;
    return at >= after + 3 && (memcmp(s->text + at - 3, "\xe2\x84\x96", 3) == 0 ||
                               memcmp(s->text + at - 3, "\xef\xbc\x83", 3) == 0);
}

static bool near_enough(const scan *s, size_t from, size_t to) {
    for (size_t i = from; i < to; i++) {
        if (!strchr(" .:,/&+-#", s->text[i]) || !s->text[i]) return false;
    }
    return to - from <= NUMBER_GAP;
}

/// Whether word i is a number that is said to be a jersey; *reach is whether the next one would be.
static bool jersey_number(const scan *s, int i, bool *reach) {
    const token *t = &s->token[i];
    const size_t after = i > 0 ? t[-1].to : 0;
    const bool reached = *reach && near_enough(s, after, t->from);
    if (t->number < 0) {
        *reach = t->leads || (t->carries && reached);
        return false;
    }
    *reach = reached || signed_number(s, t, after);
    return *reach;
}

static void find(scan *s) {
    bool reach = false;
    for (int i = 0; i < s->count && !s->full;) {
        const token *t = &s->token[i];
        const bool jersey = jersey_number(s, i, &reach);
        const int whole = whole_name(s, i), some = whole ? whole : parts(s, i);
        const int spaced = some ? 0 : spaced_initials(s, i);
        const int taken = some ? some : spaced;
        if (taken) {
            put(s, t->from, end_of(s, &s->token[i + taken - 1]),
                whole  ? BW_SAYS_NAME
                : some ? BW_SAYS_PART
                       : BW_SAYS_INITIALS);
            reach = false;
        } else if (t->initials) {
            put(s, t->from, t->to, BW_SAYS_INITIALS);
        } else if (jersey && t->number == s->called->jersey) {
            put(s, t->from, t->to, BW_SAYS_NUMBER);
        }
        i += taken ? taken : 1;
    }
}

bool bw_mentions(const bw_called *called, const char *text, size_t length, bw_mention **list,
                 int *count) {
    scan s = {.called = called, .text = text, .length = length};
    bw_word word;
    for (size_t at = 0; !s.full && bw_word_next(text, length, &at, &word);) {
        s.full = !grow((void **)&s.token, s.count, &s.room, sizeof *s.token);
        if (!s.full) s.token[s.count++] = token_of(called, &word);
    }
    find(&s);
    free(s.token);
    if (s.full) {
        free(s.found);
        s.found = NULL;
        s.found_count = 0;
    }
    *list = s.found;
    *count = s.found_count;
    return !s.full;
}

void bw_strike(const char *text, size_t length, const bw_mention *list, const bool *struck,
               int count, char *out) {
    size_t at = 0;
    for (int i = 0; i < count; i++) {
        if (!struck[i]) continue;
        memcpy(out, text + at, list[i].from - at);
        out += list[i].from - at;
        *out++ = BW_STRUCK;
        at = list[i].to;
    }
    memcpy(out, text + at, length - at);
    out[length - at] = '\0';
}
