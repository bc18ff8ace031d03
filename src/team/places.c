/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/places.h"
#include "core/hash.h"
#include "core/text.h"
#include "team/sql.h"
#include "team/texts.h"
#include <stdlib.h>
#include <string.h>

const char *bw_mention_words(bw_mention_kind kind) {
    static const char *const words[BW_SAYS_COUNT] = {"his whole name", "part of his name",
                                                     "his initials", "his number"};
    return words[kind];
}

void bw_places_drop(bw_places *places) {
    free(places->list);
    free(places->slot);
    *places = (bw_places){0};
}

/// Going over all texts, to list places or to strike them.
typedef struct ear {
    const bw_called *called;
    bool shared; ///< someone else has his full name
    bw_places *places;
    const bool *strike; ///< NULL: only list
    int texts;
    bool full;
} ear;

static uint64_t hash_bytes(uint64_t hash, const char *bytes, size_t length) {
    for (size_t i = 0; i < length; i++)
        hash = bw_hash_u64(hash, (unsigned char)bytes[i]);
    return bw_hash_u64(hash, length);
}

static uint64_t key_of(uint64_t text, const bw_mention *m) {
    return bw_hash_u64(bw_hash_u64(text, m->from), (uint64_t)m->kind);
}

/// The slot of a key, or the free one where it belongs.
static uint32_t *slot_of(const bw_places *p, uint64_t key) {
    size_t at = (size_t)(key ^ key >> 32) & (size_t)(p->slots - 1);
    while (p->slot[at] && p->list[p->slot[at] - 1].key != key)
        at = (at + 1) & (size_t)(p->slots - 1);
    return &p->slot[at];
}

/// Room for one more; slots are never more than half full.
static bool make_room(bw_places *p) {
    if (p->slots > 2 * p->count) return true;
    const int slots = p->slots ? 2 * p->slots : 64;
    bw_place *list = realloc(p->list, (size_t)slots / 2 * sizeof *list);
    if (list) p->list = list;
    uint32_t *slot = list ? calloc((size_t)slots, sizeof *slot) : NULL;
    if (!slot) return false;
    free(p->slot);
    p->slot = slot;
    p->slots = slots;
    for (int i = 0; i < p->count; i++)
        *slot_of(p, p->list[i].key) = (uint32_t)i + 1;
    return true;
}

/// Some bytes of a text as one line.
static void excerpt(char *to, size_t room, const char *from, size_t length) {
    bw_text t = bw_text_in(to, room);
    bw_put_n(&t, from, length);
    for (char *c = to; *c; c++) {
        if (*c == '\n') *c = ' ';
    }
}

static void put(ear *e, const bw_speech *s, const bw_mention *m, uint64_t key) {
    bw_places *p = e->places;
    if (e->full || !make_room(p)) {
        e->full = true;
        return;
    }
    uint32_t *slot = slot_of(p, key);
    if (*slot) {
        if (s->revision > 0) p->list[*slot - 1].last = s->revision;
        return;
    }
    *slot = (uint32_t)p->count + 1;
    bw_place *place = &p->list[p->count++];
    *place = (bw_place){.key = key,
                        .kind = m->kind,
                        .sure = m->kind == BW_SAYS_NAME && !e->shared,
                        .first = s->revision,
                        .last = s->revision};
    size_t start = m->from > BW_PLACE_AROUND_SIZE - 1 ? m->from - (BW_PLACE_AROUND_SIZE - 1) : 0;
    while (start < m->from && (s->text[start] & 0xc0) == 0x80)
        start++;
    bw_copy(place->where, sizeof place->where, s->where);
    excerpt(place->before, sizeof place->before, s->text + start, m->from - start);
    excerpt(place->said, sizeof place->said, s->text + m->from, m->to - m->from);
    excerpt(place->after, sizeof place->after, s->text + m->to, s->length - m->to);
    p->sure += place->sure;
    p->seen = (uint32_t)(bw_hash_u64(p->seen, key) & UINT32_MAX);
}

static bool has_small(const char *text, const bw_mention *m) {
    for (size_t i = m->from; i < m->to; i++) {
        if (text[i] >= 'a' && text[i] <= 'z') return true;
    }
    return false;
}

/// Whether such a text can speak of him in this way.
static bool counts(const bw_speech *s, const bw_mention *m) {
    if (s->names_only) return m->kind <= BW_SAYS_PART;
    return !(s->code && m->kind == BW_SAYS_INITIALS && has_small(s->text, m));
}

/// Whether a place that was listed is to be struck.
static bool chosen(const ear *e, uint64_t key) {
    if (e->places->slots == 0) return false;
    const uint32_t at = *slot_of(e->places, key);
    return at && e->strike[at - 1];
}

static bool hear(void *self, const bw_speech *s, char *out) {
    ear *e = self;
    bw_mention *list;
    int count, struck = 0;
    if (e->full || !bw_mentions(e->called, s->text, s->length, &list, &count)) {
        e->full = true;
        return false;
    }
    if (count == 0) return false;
    bool *strike = calloc((size_t)count, sizeof *strike);
    e->full = !strike;
    uint64_t text = hash_bytes(BW_HASH_START, s->where, strlen(s->where));
    text = hash_bytes(text, s->text, s->length);
    for (int i = 0; strike && i < count; i++) {
        const uint64_t key = key_of(text, &list[i]);
        if (!counts(s, &list[i])) continue;
        if (!e->strike)
            put(e, s, &list[i], key);
        else
            struck += strike[i] = chosen(e, key);
    }
    if (struck > 0) bw_strike(s->text, s->length, list, strike, count, out);
    e->texts += struck > 0;
    free(strike);
    free(list);
    return struck > 0;
}

static bw_status go_over(bw_team *team, int jersey, ear *e, bw_error *error) {
    const bw_status status = bw_team_texts(team, jersey, hear, e, error);
    return status == BW_OK && e->full ? bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY) : status;
}

/// Whether another player has one of his full names.
static bw_status is_shared(bw_team *team, const bw_player *player, const char *name, bool *shared,
                           bw_error *error) {
    bw_player *list;
    int count;
    const bw_status status = bw_team_players(team, &list, &count, error);
    *shared = false;
    for (int i = 0; i < count; i++) {
        *shared = *shared || (list[i].jersey != player->jersey &&
                              (bw_called_same(list[i].name, player->name) ||
                               (name && bw_called_same(list[i].name, name))));
    }
    free(list);
    return status;
}

bw_status bw_team_places(bw_team *team, int jersey, const char *name, bw_places *places,
                         bw_error *error) {
    bw_player player;
    bw_called called;
    *places = (bw_places){0};
    ear e = {.called = &called, .places = places};
    bw_status status = bw_team_player(team, jersey, &player, error);
    if (status == BW_OK) status = is_shared(team, &player, name, &e.shared, error);
    if (status != BW_OK) return status;
    bw_called_of(&player, name, &called);
    places->named = called.names > 0;
    return go_over(team, jersey, &e, error);
}

bw_status bw_team_strike(bw_team *team, int jersey, const char *name, const bw_places *places,
                         const bool *strike, int *texts, bw_error *error) {
    bw_player player;
    bw_called called;
    bw_places listed = *places; // looked up, not changed
    ear e = {.called = &called, .places = &listed, .strike = strike};
    bw_status status = bw_team_player(team, jersey, &player, error);
    if (status != BW_OK) return status;
    bw_called_of(&player, name, &called);
    status = go_over(team, jersey, &e, error);
    *texts = e.texts;
    return status;
}
