/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/choice.h"
#include "core/play.h"
#include "core/play_part.h"

/// What is left of a promise that comes later: the break is closing, and people know it.
static double hurried(const bw_break *b, const bw_state *from, const bw_state *to) {
    return 1 / (1 + b->ground->level->hurry * ((to->tick - from->tick) * BW_TICK));
}

/// A shot from `at` by a man who gets a pass there, as it looks now; `best` when it cannot be better.
static double feed(const bw_break *b, const bw_state *s, bw_vec ball, bw_vec at, double place,
                   double best) {
    const bw_level *level = b->ground->level;
    const double length = bw_distance(ball, at);
    if (length > BW_LONGEST_PASS || length < 1) return best;
    const double most = place * bw_pass_thrown(level, length);
    if (most <= best) return best;
    const double open = most * bw_shot_open(b, s, at);
    if (open <= best) return best;
    const double seconds = length / level->pass_speed;
    return bw_max(best, open * bw_lane_left(b, s, ball, at, length, seconds));
}

/// What a state seems worth at a glance: a shot now, a pass and a shot at once, or keeping the ball.
static double at_a_glance(const bw_break *b, const bw_state *s) {
    const bw_ground *g = b->ground;
    const bw_vec ball = bw_man(s, s->holder);
    double best = bw_max(g->level->keep, bw_shot_worth(&g->shot, ball) * bw_shot_open(b, s, ball));
    for (int j = 0; j < b->attackers; j++) {
        if (j == s->holder) continue;
        if (s->moving[j]) {
            const bw_node *to = &g->places[(int)s->place[j]];
            best = feed(b, s, ball, to->at, g->worth[(int)s->place[j]], best);
            continue;
        }
        const bw_vec at = bw_man(s, j);
        best = feed(b, s, ball, at, bw_shot_worth(&g->shot, at), best);
    }
    return best;
}

/// Shares from rates. `plies` come by rising rank, so members of a kind lie side by side.
static void share_out(const bw_level *level, bw_choice *c) {
    double top = 0, total = 0;
    for (int i = 0; i < c->count; i++)
        top = bw_max(top, c->rate[i]);
    for (int i = 0; i < c->count;) {
        int end = i;
        double sum = 0;
        const bw_ply first = c->plies[i];
        for (; end < c->count && c->plies[end].kind == first.kind &&
               (first.kind != BW_PASS || c->plies[end].to == first.to);
             end++) {
            c->share[end] = bw_exp(level->sharpness * (c->rate[end] - top));
            sum += c->share[end];
        }
        // The kind's weight is the mean of its members': more ways to do a thing make it no likelier.
        total += sum / (end - i);
        for (const int members = end - i; i < end; i++)
            c->share[i] /= members;
    }
    for (int i = 0; i < c->count; i++)
        c->share[i] /= total;
    c->shoot = c->count > 0 && c->plies[0].kind == BW_SHOOT ? c->share[0] : 0;
}

/// What comes after a ply, thought through one ply further: the logit mean of shooting, passing,
/// carrying and holding there, new cuts left out, each rated at a glance.
static double rate_child(const bw_break *b, const bw_state *child, int look_ahead,
                         bw_choice_work *work) {
    if (look_ahead == 0) return at_a_glance(b, child);
    bw_choice *next = &work->next;
    next->count = bw_plies_uncut(b, child, next->plies);
    bool released = false;
    for (int n = 0; n < next->count; n++) {
        const bw_ply p = next->plies[n];
        work->played++;
        if (p.kind == BW_SHOOT) {
            const bw_shot_terms t = bw_play_shot(b, child, NULL, NULL, NULL);
            next->rate[n] = t.place * t.left;
            continue;
        }
        double kept;
        bw_flight flight;
        if (p.kind == BW_PASS) {
            if (!released) bw_play_windup(b, child, p, &work->next_released, NULL);
            released = true;
            bw_play_release(b, &work->next_released, p.to, &flight);
            kept = bw_play_flight(b, &work->next_released, p.to, &flight, &work->grandchild, NULL);
        } else {
            kept = bw_play(b, child, p, &work->grandchild, NULL, NULL);
        }
        next->rate[n] =
            kept * at_a_glance(b, &work->grandchild) * hurried(b, child, &work->grandchild);
    }
    share_out(b->ground->level, next);
    double mean = 0;
    for (int i = 0; i < next->count; i++)
        mean += next->share[i] * next->rate[i];
    return bw_max(mean, b->ground->level->keep);
}

void bw_choose(const bw_break *b, const bw_state *s, int look_ahead, bw_choice_work *work,
               bw_choice *out) {
    out->count = bw_plies(b, s, out->plies);
    out->scores = 0;
    int released = 0;
    bw_ply released_as[BW_MAX_CUTS + 1];
    for (int i = 0; i < out->count; i++) {
        const bw_ply p = out->plies[i];
        work->played++;
        if (p.kind == BW_SHOOT) {
            const bw_shot_terms t = bw_play_shot(b, s, NULL, NULL, NULL);
            out->chance[i] = out->rate[i] = out->scores = t.place * t.left;
            continue;
        }
        if (p.kind == BW_PASS) {
            int k = 0;
            while (k < released &&
                   (released_as[k].cutter != p.cutter || released_as[k].cut_place != p.cut_place))
                k++;
            if (k == released) {
                bw_play_windup(b, s, p, &work->released[k], NULL);
                released_as[released++] = p;
            }
            bw_flight flight;
            bw_play_release(b, &work->released[k], p.to, &flight);
            out->chance[i] =
                bw_play_flight(b, &work->released[k], p.to, &flight, &work->child, NULL);
        } else {
            out->chance[i] = bw_play(b, s, p, &work->child, NULL, NULL);
        }
        out->rate[i] = out->chance[i] * rate_child(b, &work->child, look_ahead, work) *
                       hurried(b, s, &work->child);
    }
    share_out(b->ground->level, out);
}
