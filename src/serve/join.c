/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/join.h"

#include "serve/secret.h"
#include <string.h>

static const char consonants[] = "BCDFGHJKLMNPQRSTVWXZ";

bool bw_join_renew(bw_join *join, double now) {
    join->made = now;
    const bool drawn = bw_secret_letters(consonants, BW_CODE_LETTERS, join->code);
    if (!drawn) join->code[0] = '\0';
    return drawn;
}

bool bw_join_keep(bw_join *join, double now) {
    return bw_join_left(join, now) > 0 || bw_join_renew(join, now);
}

double bw_join_left(const bw_join *join, double now) {
    const double left = join->made + BW_CODE_SECONDS - now;
    return join->code[0] && left > 0 ? left : 0;
}

/// Whether a place is no longer needed: nothing wrong came from its address for a minute.
static bool over(const bw_join_tries *t, double now) {
    return !t->address[0] || (now >= t->until && now >= t->last + BW_CODE_WAIT);
}

/// The place where an address's tries are counted: its own, or one that is over. NULL when every place
/// is taken by others.
static bw_join_tries *tries_of(bw_join *join, const char *address, double now) {
    bw_join_tries *spare = NULL;
    for (int i = 0; i < BW_JOIN_ADDRESSES; i++) {
        bw_join_tries *t = &join->tries[i];
        const bool done = over(t, now);
        if (bw_same(t->address, address) && !done) return t;
        if (done && !spare) spare = t;
    }
    if (!spare) return NULL;
    memset(spare, 0, sizeof *spare);
    bw_copy(spare->address, sizeof spare->address, address);
    return spare;
}

/// Letters of what was typed, as capitals; false when it is no code at all.
static bool letters_of(const char *text, char out[BW_CODE_SIZE]) {
    int n = 0;
    for (; *text; text++) {
        if (*text == ' ' || *text == '-') continue;
        const char c = *text >= 'a' && *text <= 'z' ? (char)(*text - 'a' + 'A') : *text;
        if (n == BW_CODE_LETTERS || c < 'A' || c > 'Z') return false;
        out[n++] = c;
    }
    out[n] = '\0';
    return n == BW_CODE_LETTERS;
}

static bool right(const bw_join *join, const char *text, double now) {
    char letters[BW_CODE_SIZE];
    if (bw_join_left(join, now) <= 0 || !letters_of(text, letters)) return false;
    int differs = 0;
    for (int i = 0; i < BW_CODE_LETTERS; i++)
        differs |= letters[i] ^ join->code[i];
    return differs == 0;
}

bw_join_answer bw_join_try(bw_join *join, const char *text, const char *address, double now) {
    bw_join_tries *t = tries_of(join, address, now);
    if (!t || now < t->until) return BW_JOIN_WAIT;
    if (right(join, text, now)) {
        t->address[0] = '\0';
        return bw_join_renew(join, now) ? BW_JOIN_IN : BW_JOIN_BROKEN;
    }
    t->last = now;
    if (++t->wrong >= BW_CODE_TRIES) {
        t->wrong = 0;
        t->until = now + BW_CODE_WAIT;
    }
    return BW_JOIN_WRONG;
}

void bw_join_put(const bw_join *join, bw_text *out) {
    bw_put_n(out, join->code, BW_CODE_LETTERS / 2);
    bw_put_char(out, '-');
    bw_put(out, join->code + BW_CODE_LETTERS / 2);
}
