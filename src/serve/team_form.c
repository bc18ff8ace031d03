/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/team_form.h"

#include "core/text.h"
#include "scheme/path.h"
#include <stddef.h>
#include <stdlib.h>
#include <string.h>

static const int many = 1000000; // rows of a table

#define MOST_TEXT(type, field) .high = (sizeof((type *)0)->field - 1)
#define TEXT(type, name, field)                                                                    \
    .key = (name), .kind = BW_MEMBER_TEXT, .offset = offsetof(type, field), MOST_TEXT(type, field)
#define RANGE(type, name, what, field, least, most)                                                \
    .key = (name), .kind = BW_MEMBER_##what, .offset = offsetof(type, field), .low = (least),      \
    .high = (most)
#define TABLE(array) .members = (array), .count = BW_COUNT(array)

static const bw_form_member game_members[] = {
    {.key = "id", .kind = BW_MEMBER_TOLD},
    {TEXT(bw_game, "date", date)},
    {TEXT(bw_game, "opponent", opponent)},
    {TEXT(bw_game, "field", field)},
};
static const bw_form_table game = {.name = "game", .what = "a game", TABLE(game_members)};

static bool take_game(const bw_form *form, const bw_form_member *member, void *to) {
    bw_sent_entry *out = to;
    const int32_t node = bw_node_member(form->tree, form->at, member->key);
    if (node && form->tree->nodes[node].kind == BW_NODE_OBJECT) {
        out->named = true;
        return bw_form_game(&(bw_form){form->tree, node, form->error}, &out->game);
    }
    int number = 0;
    if (!bw_form_whole(form, member->key, 1, many, &number)) return false;
    out->entry.game = number;
    return true;
}

static bool take_time(const bw_form *form, const bw_form_member *member, void *to) {
    bw_sent_entry *out = to;
    char time[32] = "";
    if (!bw_form_text(form, member->key, time, sizeof time)) return false;
    if (!time[0] || bw_time_read(time, &out->entry.time)) return true;
    return bw_form_refuse(form, member->key, "is a moment in UTC such as 2026-04-11T18:05:00Z");
}

static bool take_outcome(const bw_form *form, const bw_form_member *member, void *to) {
    bw_sent_entry *out = to;
    char word[24] = "", room[160];
    if (!bw_form_text(form, member->key, word, sizeof word)) return false;
    out->entry.outcome = bw_outcome_find(word);
    if (out->entry.outcome != BW_OUTCOME_COUNT) return true;
    bw_text t = bw_text_in(room, sizeof room);
    bw_put(&t, "is ");
    for (int i = 0; i < BW_OUTCOME_COUNT; i++) {
        if (i > 0) bw_put(&t, i == BW_OUTCOME_COUNT - 1 ? " or " : ", ");
        bw_put(&t, bw_outcome_id((bw_outcome)i));
    }
    return bw_form_refuse(form, member->key, room);
}

static bool take_out(const bw_form *form, const bw_form_member *member, void *to) {
    bw_entry *e = &((bw_sent_entry *)to)->entry;
    const bw_tree_node *nodes = form->tree->nodes;
    int32_t list;
    if (!bw_form_list(form, member->key, (int)member->high, &list)) return false;
    for (int32_t i = list ? nodes[list].first : 0; i; i = nodes[i].next) {
        bw_text who = bw_text_in(e->out[e->out_count++], BW_ID_SIZE);
        if (nodes[i].kind != BW_NODE_STRING || nodes[i].text_length >= BW_ID_SIZE)
            return bw_form_refuse(form, member->key, "names spots or jersey numbers in quotes");
        bw_put_n(&who, form->tree->text + nodes[i].text, (size_t)nodes[i].text_length);
    }
    return true;
}

static const bw_form_member break_members[] = {
    {.key = "number", .kind = BW_MEMBER_TOLD},
    {TEXT(bw_sent_entry, "id", entry.client)},
    {.key = "time", .kind = BW_MEMBER_TEXT, .high = 31, .take = take_time},
    {.key = "game", .kind = BW_MEMBER_OBJECT, .of = &game, .take = take_game},
    {RANGE(bw_sent_entry, "offence", WHOLE, entry.offence, 3, BW_MAX_ATTACKERS)},
    {RANGE(bw_sent_entry, "defence", WHOLE, entry.defence, 2, BW_MAX_ATTACKERS)},
    {.key = "outcome", .kind = BW_MEMBER_TEXT, .high = 23, .take = take_outcome},
    {RANGE(bw_sent_entry, "seconds", NUMBER, entry.seconds, 0, BW_MAX_BREAK_TIME)},
    {RANGE(bw_sent_entry, "passes", WHOLE, entry.passes, 0, BW_MAX_PASSES)},
    {RANGE(bw_sent_entry, "shot_x_m", NUMBER, entry.shot.x, -BW_SHOT_ACROSS, BW_SHOT_ACROSS)},
    {RANGE(bw_sent_entry, "shot_y_m", NUMBER, entry.shot.y, -BW_SHOT_BEHIND, BW_SHOT_AHEAD)},
    {.key = "out", .kind = BW_MEMBER_LIST, .high = BW_MAX_OUT, .take = take_out},
    {RANGE(bw_sent_entry, "stage", WHOLE, entry.stage, 3, BW_MAX_SPOTS)},
    {RANGE(bw_sent_entry, "revision", ROW, entry.revision, 1, many)},
    {TEXT(bw_sent_entry, "note", entry.note)},
};
static const bw_form_table entry = {.name = "break", .what = "a break", TABLE(break_members)};

static const bw_form_member spot_members[] = {
    {TEXT(bw_player_spot, "spot", spot)},
    {.key = "fixed", .kind = BW_MEMBER_FLAG, .offset = offsetof(bw_player_spot, fixed)},
};
static const bw_form_table spot = {.name = "spot", .what = "a spot", TABLE(spot_members)};

static bool take_spots(const bw_form *form, const bw_form_member *member, void *to) {
    bw_player *out = to;
    const bw_tree_node *nodes = form->tree->nodes;
    int32_t list;
    if (!bw_form_list(form, member->key, (int)member->high, &list)) return false;
    for (int32_t i = list ? nodes[list].first : 0; i; i = nodes[i].next) {
        const bw_form one = {form->tree, i, form->error};
        if (!bw_form_read(&one, member->of, &out->spots[out->spot_count++])) return false;
    }
    return true;
}

static const bw_form_member player_members[] = {
    {RANGE(bw_player, "jersey", WHOLE, jersey, 0, BW_MAX_JERSEY), .needed = true},
    {TEXT(bw_player, "initials", initials)},
    {TEXT(bw_player, "name", name)},
    {.key = "spots",
     .kind = BW_MEMBER_LIST,
     .high = BW_MAX_PLAYER_SPOTS,
     .of = &spot,
     .take = take_spots},
};
static const bw_form_table player = {.name = "player", .what = "a player", TABLE(player_members)};

static const bw_form_member sprint_members[] = {
    {RANGE(bw_timed_split, "jersey", WHOLE, jersey, 0, BW_MAX_JERSEY), .needed = true},
    {TEXT(bw_timed_split, "date", date)},
    {RANGE(bw_timed_split, "distance_m", NUMBER, distance, 1, 200)},
    {RANGE(bw_timed_split, "seconds", NUMBER, seconds, 0.3, 60)},
    {TEXT(bw_timed_split, "clock", clock)},
};
static const bw_form_table sprint = {.name = "sprint", .what = "a sprint", TABLE(sprint_members)};

/// Eight hex digits.
static bool take_seen(const bw_form *form, const bw_form_member *member, void *to) {
    char code[16] = "";
    if (!bw_form_text(form, member->key, code, sizeof code)) return false;
    const size_t length = strlen(code);
    if (length > 0 && (length != 8 || strspn(code, "0123456789abcdef") != length))
        return bw_form_refuse(form, member->key, "is the code of a list, such as 99aa1fc0");
    ((bw_sent_forget *)to)->seen = (uint32_t)strtoul(code, NULL, 16);
    return true;
}

static bool take_strike(const bw_form *form, const bw_form_member *member, void *to) {
    bw_sent_forget *out = to;
    const bw_tree_node *nodes = form->tree->nodes;
    int32_t list;
    if (!bw_form_list(form, member->key, (int)member->high, &list)) return false;
    for (int32_t i = list ? nodes[list].first : 0; i; i = nodes[i].next) {
        const double number = nodes[i].kind == BW_NODE_NUMBER ? nodes[i].number : 0;
        if (!(number >= 1 && number <= out->places) || number != (int)number)
            return bw_form_refuse(form, member->key, "has numbers of the list's places");
        out->strike[(int)number - 1] = true;
    }
    return true;
}

static const bw_form_member forget_members[] = {
    {RANGE(bw_sent_forget, "jersey", WHOLE, jersey, 0, BW_MAX_JERSEY), .needed = true},
    {TEXT(bw_sent_forget, "name", name)},
    {.key = "seen", .kind = BW_MEMBER_TEXT, .high = 8, .take = take_seen},
    {RANGE(bw_sent_forget, "places", WHOLE, places, 0, BW_SENT_PLACES)},
    {.key = "strike", .kind = BW_MEMBER_LIST, .high = BW_SENT_PLACES, .take = take_strike},
};
static const bw_form_table forget = {
    .name = "forget", .what = "a player to forget", TABLE(forget_members)};

const bw_form_table *bw_team_form_at(int index) {
    static const bw_form_table *const all[] = {&entry, &game, &player, &spot, &sprint, &forget};
    return index >= 0 && index < BW_COUNT(all) ? all[index] : NULL;
}

/// The shot is known when both its numbers are there.
static bool pair_shot(const bw_form *form, bw_entry *e) {
    const bool x = bw_form_has(form, "shot_x_m"), y = bw_form_has(form, "shot_y_m");
    e->shot_known = x && y;
    return x == y || bw_form_refuse(form, x ? "shot_x_m" : "shot_y_m", "has no partner");
}

bool bw_form_entry(const bw_form *form, void *to) {
    bw_sent_entry *out = to;
    *out = (bw_sent_entry){.entry = bw_entry_default()};
    if (!bw_form_read(form, &entry, out) || !pair_shot(form, &out->entry)) return false;
    *form->error = (bw_error){.status = BW_OK};
    bw_text why = bw_text_in(form->error->message, sizeof form->error->message);
    form->error->status = bw_entry_check(&out->entry, &why);
    return form->error->status == BW_OK;
}

static bool take_entries(const bw_form *form, const bw_form_member *member, void *to) {
    bw_sent *out = to;
    const bw_tree_node *nodes = form->tree->nodes;
    int32_t list;
    if (!bw_form_list(form, member->key, (int)member->high, &list)) return false;
    for (int32_t i = nodes[list].first; i; i = nodes[i].next) {
        const bw_form one = {form->tree, i, form->error};
        if (!bw_form_entry(&one, &out->list[out->count++])) return false;
    }
    return true;
}

bool bw_form_sent(const bw_form *form, void *to) {
    bw_sent *out = to;
    static const bw_form_member members[] = {{.key = "entries",
                                              .kind = BW_MEMBER_LIST,
                                              .high = BW_SENT_MAX,
                                              .needed = true,
                                              .of = &entry,
                                              .take = take_entries}};
    static const bw_form_table table = {.what = "what is sent", TABLE(members)};
    out->count = 0;
    return bw_form_read(form, &table, out);
}

bool bw_form_game(const bw_form *form, void *out) {
    *(bw_game *)out = (bw_game){.id = 0};
    return bw_form_read(form, &game, out);
}

bool bw_form_player(const bw_form *form, void *out) {
    *(bw_player *)out = (bw_player){.jersey = -1};
    return bw_form_read(form, &player, out);
}

bool bw_form_split(const bw_form *form, void *out) {
    *(bw_timed_split *)out = (bw_timed_split){.jersey = -1};
    return bw_form_read(form, &sprint, out);
}

bool bw_form_forget(const bw_form *form, void *out) {
    *(bw_sent_forget *)out = (bw_sent_forget){.jersey = -1};
    return bw_form_read(form, &forget, out);
}
