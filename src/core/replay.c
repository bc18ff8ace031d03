/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/replay.h"

typedef struct camera {
    const bw_break *b;
    bw_frame *frames;
    int room, count, ply;

} camera;

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
}

bw_status bw_replay(const bw_break *b, const bw_answer *answer, bw_frame *frames, int room,
                    int *count) {
    camera c = {.b = b, .frames = frames, .room = room};
    bw_state s = b->start, next;
    take(&c, &s, bw_man(&s, s.holder), false);
    for (int i = 0; i < answer->count; i++) {
        c.ply = i;
        const bw_ply p = answer->plies[i].ply;
        if (p.kind == BW_SHOOT)
            bw_play_shot(b, &s, &next, take, &c);
        else
            bw_play(b, &s, p, &next, take, &c);
        s = next;
    }
    *count = c.count < room ? c.count : room;
    return c.count > room ? BW_NO_ROOM : BW_OK;
}
