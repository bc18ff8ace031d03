/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/replay.h"

#include "core/late.h"

typedef struct camera {
    const bw_break *b;
    const bw_answer *answer;
    bw_frame *frames;
    int room, count, ply;
} camera;

/// Where the ball has each defender, and how late he is there. A ball in the air is read as the unit
/// reads it: by where it comes down.
static void place_unit(const camera *c, const bw_state *s, bw_frame *f) {
    const bw_answer_ply *step = &c->answer->plies[f->ply];
    const bool pass = f->flying && step->ply.kind == BW_PASS;
    double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
    bw_break_stations(c->b, s, pass ? step->to : f->ball, pass ? step->ply.to : s->holder, tx, ty);
    for (int d = 0; d < c->b->defenders; d++) {
        f->place[d] = bw_v(tx[d], ty[d]);
        f->late[d] = s->counted[d] ? bw_seconds_to(c->b, s, d, f->place[d]) : 0;
    }
}

static void take(void *self, const bw_state *s, bw_vec ball, bool flying) {
    camera *c = self;
    if (c->count++ >= c->room) return;
    bw_frame *f = &c->frames[c->count - 1];
    *f = (bw_frame){.at_s = s->tick * BW_TICK,
                    .ply = c->ply,
                    .ball = ball,
                    .flying = flying,
                    .holder = s->holder,
                    .stage = s->in,
                    .matched = s->matched};
    for (int a = 0; a < c->b->attackers; a++)
        f->attackers[a] = bw_man(s, a);
    for (int d = 0; d < c->b->defenders; d++) {
        f->defenders[d] = bw_man(s, BW_MAX_ATTACKERS + d);
        f->in[d] = s->counted[d];
        f->job[d] = s->job[d];
    }
    place_unit(c, s, f);
}

/// Plays the camera's answer from `s`, which is left as it is at the end.
static void film(camera *c, bw_state *s) {
    take(c, s, bw_man(s, s->holder), false);
    for (int i = 0; i < c->answer->count; i++) {
        c->ply = i;
        const bw_ply p = c->answer->plies[i].ply;
        bw_state next;
        if (p.kind == BW_SHOOT)
            bw_play_shot(c->b, s, &next, take, c);
        else
            bw_play(c->b, s, p, &next, take, c);
        *s = next;
    }
}

static bw_status counted(const camera *c, int *count) {
    *count = c->count < c->room ? c->count : c->room;
    return c->count > c->room ? BW_NO_ROOM : BW_OK;
}

bw_status bw_replay(const bw_break *b, const bw_answer *answer, bw_frame *frames, int room,
                    int *count) {
    camera c = {.b = b, .answer = answer, .frames = frames, .room = room};
    bw_state s = b->start;
    film(&c, &s);
    return counted(&c, count);
}

bw_status bw_replay_rotation(const bw_break *b, const bw_rotation *rotation, bw_answer *answer,
                             bw_frame *frames, int room, int *count) {
    bw_state s, after;
    bw_rotation_moment(b, rotation, &s);
    const bw_ply pass = {BW_PASS, (int8_t)rotation->receiver, BW_NOBODY, BW_NOBODY};
    bw_play(b, &s, pass, &after, NULL, NULL);
    *answer = (bw_answer){.worth = rotation->chance, .kept = rotation->chance, .count = 1};
    answer->plies[0] = (bw_answer_ply){.ply = pass,
                                       .who = s.holder,
                                       .at_s = s.tick * BW_TICK,
                                       .end_s = after.tick * BW_TICK,
                                       .chance = rotation->chance,
                                       .from = bw_man(&s, s.holder),
                                       .to = bw_man(&after, rotation->receiver)};
    camera c = {.b = b, .answer = answer, .frames = frames, .room = room};
    film(&c, &s);
    return counted(&c, count);
}
