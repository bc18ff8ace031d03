/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/entry.h"

bw_entry bw_entry_default(void) {
    return (bw_entry){
        .offence = 6, .defence = 4, .outcome = BW_OUTCOME_WHISTLE, .seconds = -1, .passes = -1};
}

const char *bw_outcome_id(bw_outcome outcome) {
    static const char *const ids[] = {
#define BW_X(id, word, words, shot) word,
        BW_OUTCOME_MAP(BW_X)
#undef BW_X
    };
    return (unsigned)outcome < BW_OUTCOME_COUNT ? ids[outcome] : NULL;
}

const char *bw_outcome_words(bw_outcome outcome) {
    static const char *const all[] = {
#define BW_X(id, word, words, shot) words,
        BW_OUTCOME_MAP(BW_X)
#undef BW_X
    };
    return (unsigned)outcome < BW_OUTCOME_COUNT ? all[outcome] : NULL;
}

bool bw_outcome_shot(bw_outcome outcome) {
    static const bool shots[] = {
#define BW_X(id, word, words, shot) shot,
        BW_OUTCOME_MAP(BW_X)
#undef BW_X
    };
    return (unsigned)outcome < BW_OUTCOME_COUNT && shots[outcome];
}

bw_outcome bw_outcome_find(const char *id) {
    int i = 0;
    while (i < BW_OUTCOME_COUNT && !bw_same(bw_outcome_id((bw_outcome)i), id))
        i++;
    return (bw_outcome)i;
}

static bool digit(char c) {
    return c >= '0' && c <= '9';
}

static bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool bw_entry_who(const char *who) {
    int length = 0, digits = 0;
    for (; who[length]; length++) {
        if (length == 3 || (!digit(who[length]) && !letter(who[length]))) return false;
        digits += digit(who[length]);
    }
    // Digits alone are a jersey number as it is written: "7", never "07".
    if (digits < length) return true;
    return length > 0 && (length == 1 || who[0] != '0');
}

static bool client_good(const char *client) {
    for (const char *c = client; *c; c++) {
        if (!letter(*c) && !digit(*c) && *c != '-' && *c != '_' && *c != '.') return false;
    }
    return client[0] != '\0' && bw_text_length(client) < BW_CLIENT_SIZE;
}

/// In [low, high]; a NaN is not.
static bool within(double x, double low, double high) {
    return x >= low && x <= high;
}

static const char *fault_in_numbers(const bw_entry *e) {
    if (e->offence < 3 || e->offence > BW_MAX_ATTACKERS) return "the attackers are from 3 to 6";
    if (e->defence < 2 || e->defence > e->offence)
        return "the defenders are from 2 to as many as the attackers";
    if ((unsigned)e->outcome >= BW_OUTCOME_COUNT) return "there is no such outcome";
    if (e->stage != 0 && (e->stage < 3 || e->stage > BW_MAX_SPOTS))
        return "a stage has from 3 to 6 defenders";
    if (!(e->seconds < 0) && !within(e->seconds, 0, BW_MAX_BREAK_TIME))
        return "a break lasts from 0 to 120 seconds";
    if (e->passes < -1 || e->passes > BW_MAX_PASSES) return "a break has from 0 to 50 passes";
    if (e->time < 0 || e->time > BW_LAST_TIME) return "the time is not from 1970 to 9999";
    if (e->game < 0 || e->revision < 0 || e->order < 0)
        return "the numbers of game, revision and order are not negative";
    return NULL;
}

static const char *fault_in_words(const bw_entry *e) {
    if (!client_good(e->client))
        return "the id has from 1 to 39 letters, digits, \"-\", \"_\" or \".\"";
    if (e->out_count < 0 || e->out_count > BW_MAX_OUT)
        return "at most 6 players can be out of place in one break";
    for (int i = 0; i < e->out_count; i++) {
        if (!bw_entry_who(e->out[i]))
            return "out of place is a spot code such as TL or a jersey number from 0 to 999";
        for (int k = 0; k < i; k++) {
            if (bw_same(e->out[i], e->out[k])) return "a player is named out of place twice";
        }
    }
    return bw_text_plain(e->note) ? NULL : "the note is not one line of UTF-8 text";
}

static const char *fault(const bw_entry *e) {
    const char *found = fault_in_numbers(e);
    if (!found) found = fault_in_words(e);
    if (!found && e->shot_known &&
        !(within(e->shot.x, -BW_SHOT_ACROSS, BW_SHOT_ACROSS) &&
          within(e->shot.y, -BW_SHOT_BEHIND, BW_SHOT_AHEAD)))
        found = "the shot was taken off the field";
    return found;
}

bw_status bw_entry_check(const bw_entry *entry, bw_text *why) {
    const char *found = fault(entry);
    if (!found) return BW_OK;
    if (why) bw_put(why, found);
    return BW_BAD_INPUT;
}

bool bw_entry_same(const bw_entry *a, const bw_entry *b) {
    const bool timed = !(a->seconds < 0);
    bool same = bw_same(a->client, b->client) && a->game == b->game && a->time == b->time &&
                a->offence == b->offence && a->defence == b->defence && a->outcome == b->outcome &&
                timed == !(b->seconds < 0) && (!timed || a->seconds == b->seconds) &&
                a->passes == b->passes && a->shot_known == b->shot_known &&
                a->out_count == b->out_count && a->stage == b->stage &&
                a->revision == b->revision && bw_same(a->note, b->note);
    if (same && a->shot_known) same = a->shot.x == b->shot.x && a->shot.y == b->shot.y;
    for (int i = 0; same && i < a->out_count; i++)
        same = bw_same(a->out[i], b->out[i]);
    return same;
}
