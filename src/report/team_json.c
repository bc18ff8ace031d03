/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/team_json.h"
#include "team/date.h"
#include <stdio.h>

static void text_member(bw_json *json, const char *key, const char *text) {
    if (!text[0]) return;
    bw_json_put_text(json, key, text);
}

static void number_member(bw_json *json, const char *key, bool known, double value) {
    if (!known) return;
    bw_json_put_number(json, key, value);
}

void bw_json_time(bw_json *json, const char *key, int64_t time) {
    char text[32];
    bw_text t = bw_text_in(text, sizeof text);
    if (time > 0) bw_put_time(&t, time);
    text_member(json, key, text);
}

void bw_json_player(bw_json *json, const bw_player *p) {
    bw_json_open(json, '{');
    number_member(json, "jersey", true, p->jersey);
    text_member(json, "initials", p->initials);
    text_member(json, "name", p->name);
    bw_json_put_open(json, "spots", '[');
    for (int i = 0; i < p->spot_count; i++) {
        bw_json_open(json, '{');
        text_member(json, "spot", p->spots[i].spot);
        bw_json_put_bool(json, "fixed", p->spots[i].fixed);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

void bw_json_entry(bw_json *json, const bw_entry *e, const bw_game *game, bw_units units) {
    const double per = bw_unit_length(units);
    bw_json_open(json, '{');
    number_member(json, "number", true, (double)e->order);
    text_member(json, "id", e->client);
    number_member(json, "game", e->game > 0, (double)e->game);
    if (game && game->id > 0) {
        text_member(json, "date", game->date);
        text_member(json, "opponent", game->opponent);
    }
    bw_json_time(json, "time", e->time);
    number_member(json, "offence", true, e->offence);
    number_member(json, "defence", true, e->defence);
    text_member(json, "outcome", bw_outcome_id(e->outcome));
    number_member(json, "seconds", !(e->seconds < 0), e->seconds);
    number_member(json, "passes", e->passes >= 0, e->passes);
    number_member(json, units == BW_METRES ? "shot_x_m" : "shot_x_yd", e->shot_known,
                  e->shot.x / per);
    number_member(json, units == BW_METRES ? "shot_y_m" : "shot_y_yd", e->shot_known,
                  e->shot.y / per);
    bw_json_put_open(json, "out", '[');
    for (int i = 0; i < e->out_count; i++)
        bw_json_text(json, e->out[i]);
    bw_json_close(json, ']');
    number_member(json, "stage", e->stage > 0, e->stage);
    number_member(json, "revision", e->revision > 0, (double)e->revision);
    text_member(json, "note", e->note);
    bw_json_close(json, '}');
}

static void place(bw_json *json, const bw_place *p) {
    bw_json_put_text(json, "where", p->where);
    bw_json_put_text(json, "before", p->before);
    bw_json_put_text(json, "said", p->said);
    bw_json_put_text(json, "after", p->after);
    bw_json_put_text(json, "what", bw_mention_words(p->kind));
    bw_json_put_bool(json, "sure", p->sure);
    number_member(json, "first_revision", p->first > 0, (double)p->first);
    number_member(json, "last_revision", p->first > 0, (double)p->last);
}

void bw_json_places(bw_json *json, const bw_places *places, const bool *strike) {
    char seen[16];
    snprintf(seen, sizeof seen, "%08x", places->seen);
    bw_json_put_text(json, "seen", seen);
    bw_json_put_open(json, "places", '[');
    for (int i = 0; i < places->count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "number", i + 1);
        place(json, &places->list[i]);
        if (strike) bw_json_put_bool(json, "struck", strike[i]);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}
