/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/team_form.h"

#include "core/text.h"
#include "scheme/path.h"

#define KEYS(array) (array), BW_COUNT(array)

static const int many = 1000000; // games and revisions

bool bw_form_game(const bw_form *form, bw_game *out) {
    static const char *const keys[] = {"date", "opponent", "field"};
    *out = (bw_game){.id = 0};
    return bw_form_object(form, "a game", KEYS(keys)) &&
           bw_form_text(form, "date", out->date, sizeof out->date) &&
           bw_form_text(form, "opponent", out->opponent, sizeof out->opponent) &&
           bw_form_text(form, "field", out->field, sizeof out->field);
}

static bool take_game(const bw_form *form, bw_sent_entry *out) {
    const int32_t node = bw_node_member(form->tree, form->at, "game");
    if (node && form->tree->nodes[node].kind == BW_NODE_OBJECT) {
        out->named = true;
        return bw_form_game(&(bw_form){form->tree, node, form->error}, &out->game);
    }
    int game = 0;
    if (!bw_form_whole(form, "game", 1, many, &game)) return false;
    out->entry.game = game;
    return true;
}

static bool take_time(const bw_form *form, bw_entry *e) {
    char time[32] = "";
    if (!bw_form_text(form, "time", time, sizeof time)) return false;
    if (!time[0] || bw_time_read(time, &e->time)) return true;
    return bw_form_refuse(form, "time", "is a moment in UTC such as 2026-04-11T18:05:00Z");
}

static bool take_outcome(const bw_form *form, bw_entry *e) {
    char word[24] = "";
    if (!bw_form_text(form, "outcome", word, sizeof word)) return false;
    e->outcome = bw_outcome_find(word);
    return e->outcome != BW_OUTCOME_COUNT ||
           bw_form_refuse(form, "outcome",
                          "is goal, save, wide, forced, unforced, ground-ball, matched-up or "
                          "whistle");
}

static bool take_shot(const bw_form *form, bw_entry *e) {
    const bool x = bw_node_member(form->tree, form->at, "shot_x_m") != 0;
    const bool y = bw_node_member(form->tree, form->at, "shot_y_m") != 0;
    if (x != y) return bw_form_refuse(form, x ? "shot_x_m" : "shot_y_m", "has no partner");
    e->shot_known = x;
    return bw_form_number(form, "shot_x_m", -BW_SHOT_ACROSS, BW_SHOT_ACROSS, &e->shot.x) &&
           bw_form_number(form, "shot_y_m", -BW_SHOT_BEHIND, BW_SHOT_AHEAD, &e->shot.y);
}

static bool take_out(const bw_form *form, bw_entry *e) {
    const bw_tree_node *nodes = form->tree->nodes;
    int32_t list;
    if (!bw_form_list(form, "out", BW_MAX_OUT, &list)) return false;
    for (int32_t i = list ? nodes[list].first : 0; i; i = nodes[i].next) {
        bw_text who = bw_text_in(e->out[e->out_count++], BW_ID_SIZE);
        if (nodes[i].kind != BW_NODE_STRING || nodes[i].text_length >= BW_ID_SIZE)
            return bw_form_refuse(form, "out", "names spots or jersey numbers in quotes");
        bw_put_n(&who, form->tree->text + nodes[i].text, (size_t)nodes[i].text_length);
    }
    return true;
}

bool bw_form_entry(const bw_form *form, bw_sent_entry *out) {
    static const char *const keys[] = {"number",   "id",      "time",    "game",     "offence",
                                       "defence",  "outcome", "seconds", "passes",   "shot_x_m",
                                       "shot_y_m", "out",     "stage",   "revision", "note"};
    *out = (bw_sent_entry){.entry = bw_entry_default()};
    bw_entry *e = &out->entry;
    int revision = 0;
    const bool taken =
        bw_form_object(form, "a break", KEYS(keys)) &&
        bw_form_text(form, "id", e->client, sizeof e->client) && take_time(form, e) &&
        take_game(form, out) && bw_form_whole(form, "offence", 3, BW_MAX_ATTACKERS, &e->offence) &&
        bw_form_whole(form, "defence", 2, BW_MAX_ATTACKERS, &e->defence) && take_outcome(form, e) &&
        bw_form_number(form, "seconds", 0, BW_MAX_BREAK_TIME, &e->seconds) &&
        bw_form_whole(form, "passes", 0, BW_MAX_PASSES, &e->passes) && take_shot(form, e) &&
        take_out(form, e) && bw_form_whole(form, "stage", 3, BW_MAX_SPOTS, &e->stage) &&
        bw_form_whole(form, "revision", 1, many, &revision) &&
        bw_form_text(form, "note", e->note, sizeof e->note);
    e->revision = revision;
    if (!taken) return false;
    *form->error = (bw_error){.status = BW_OK};
    bw_text why = bw_text_in(form->error->message, sizeof form->error->message);
    form->error->status = bw_entry_check(e, &why);
    return form->error->status == BW_OK;
}

bool bw_form_player(const bw_form *form, bw_player *out) {
    static const char *const keys[] = {"jersey", "initials", "name", "spots"};
    static const char *const spot_keys[] = {"spot", "fixed"};
    *out = (bw_player){.jersey = -1};
    int32_t list;
    if (!bw_form_object(form, "a player", KEYS(keys)) ||
        !bw_form_whole(form, "jersey", 0, BW_MAX_JERSEY, &out->jersey) ||
        !bw_form_text(form, "initials", out->initials, sizeof out->initials) ||
        !bw_form_text(form, "name", out->name, sizeof out->name) ||
        !bw_form_list(form, "spots", BW_MAX_PLAYER_SPOTS, &list))
        return false;
    if (out->jersey < 0) return bw_form_refuse(form, "jersey", "is missing");
    for (int32_t i = list ? form->tree->nodes[list].first : 0; i; i = form->tree->nodes[i].next) {
        const bw_form one = {form->tree, i, form->error};
        bw_player_spot *spot = &out->spots[out->spot_count++];
        if (!bw_form_object(&one, "a spot", KEYS(spot_keys)) ||
            !bw_form_text(&one, "spot", spot->spot, sizeof spot->spot) ||
            !bw_form_flag(&one, "fixed", &spot->fixed))
            return false;
    }
    return true;
}

bool bw_form_split(const bw_form *form, bw_timed_split *out) {
    static const char *const keys[] = {"jersey", "date", "distance_m", "seconds", "clock"};
    *out = (bw_timed_split){.jersey = -1};
    if (!bw_form_object(form, "a sprint", KEYS(keys)) ||
        !bw_form_whole(form, "jersey", 0, BW_MAX_JERSEY, &out->jersey) ||
        !bw_form_text(form, "date", out->date, sizeof out->date) ||
        !bw_form_number(form, "distance_m", 1, 200, &out->distance) ||
        !bw_form_number(form, "seconds", 0.3, 60, &out->seconds) ||
        !bw_form_text(form, "clock", out->clock, sizeof out->clock))
        return false;
    return out->jersey >= 0 || bw_form_refuse(form, "jersey", "is missing");
}
