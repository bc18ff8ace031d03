/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/playback.h"

#include "core/late.h"
#include "draw/label.h"

/// Frames of one step that are drawn as paths; a step has fewer.
enum { TRAIL = 32 };

/// The last frame not after `at_s`.
static int frame_before(const bw_sequence *sq, double at_s) {
    int f = 0;
    while (f + 1 < sq->count && sq->frames[f + 1].at_s <= at_s)
        f++;
    return f;
}

bw_frame bw_frame_at(const bw_sequence *sq, double at_s) {
    const int f = frame_before(sq, at_s);
    const bw_frame *a = &sq->frames[f];
    bw_frame now = *a;
    if (f + 1 >= sq->count) return now;
    const bw_frame *b = &sq->frames[f + 1];
    now.ply = b->ply; // a step begins where the one before ends
    if (at_s <= a->at_s) return now;
    const double share = (at_s - a->at_s) / (b->at_s - a->at_s);
    now.at_s = at_s;
    // On its way between two frames the ball is in the air when either says so.
    now.flying = a->flying || b->flying;
    now.ball = bw_lerp(a->ball, b->ball, share);
    for (int i = 0; i < sq->b->attackers; i++)
        now.attackers[i] = bw_lerp(a->attackers[i], b->attackers[i], share);
    for (int d = 0; d < sq->b->defenders; d++) {
        now.defenders[d] = bw_lerp(a->defenders[d], b->defenders[d], share);
        now.place[d] = bw_lerp(a->place[d], b->place[d], share);
        now.late[d] = a->late[d] + (b->late[d] - a->late[d]) * share;
    }
    return now;
}

/// The step's frames up to now with the moment itself as the last, in trail[TRAIL]. Returns how many.
static int follow(const bw_sequence *sq, double at_s, bw_frame *trail) {
    const bw_frame now = bw_frame_at(sq, at_s);
    const int last = frame_before(sq, at_s);
    int first = last;
    while (first > 0 && last - first < TRAIL - 2 && sq->frames[first].ply == now.ply)
        first--;
    int count = 0;
    for (int f = first; f <= last; f++)
        trail[count++] = sq->frames[f];
    if (now.at_s > sq->frames[last].at_s) trail[count++] = now;
    return count;
}

static bool shown_late(const bw_frame *f, int d) {
    return f->in[d] && bw_is_late(f->late[d], bw_distance(f->defenders[d], f->place[d]));
}

static void draw_tether(bw_ink *ink, const bw_frame *f, int d, const bw_view *view,
                        bw_mark_size size) {
    const bw_vec man = bw_view_point(view, f->defenders[d]);
    const bw_vec place = bw_view_point(view, f->place[d]);
    if (bw_distance(man, place) < size.radius * 1.7) return;
    bw_mark_tether(ink, size, man, place, f->late[d]);
}

static void avoid_people(const bw_sequence *sq, const bw_frame *f, const bw_view *view,
                         bw_mark_size size, bw_labels *labels) {
    const bw_vec ring = bw_v(size.radius, size.radius);
    for (int a = 0; a < sq->b->attackers; a++)
        bw_labels_avoid(labels, bw_view_point(view, f->attackers[a]), ring);
    for (int d = 0; d < sq->b->defenders; d++)
        bw_labels_avoid(labels, bw_view_point(view, f->defenders[d]),
                        bw_mark_reach(size, bw_defender_code(sq->b, d), BW_NO_DUTY));
    bw_labels_avoid(labels, bw_view_point(view, f->ball), bw_v(BW_BALL_REACH, BW_BALL_REACH));
}

static void draw_seconds(bw_ink *ink, const bw_sequence *sq, const bw_frame *f, const bw_view *view,
                         bw_mark_size size) {
    char words[BW_MAX_SPOTS][16];
    bw_labels labels;
    bw_labels_begin_chart(&labels, view);
    avoid_people(sq, f, view, size, &labels);
    for (int d = 0; d < sq->b->defenders; d++) {
        if (!shown_late(f, d)) continue;
        const bw_vec at = bw_view_point(view, f->defenders[d]);
        bw_text t = bw_text_in(words[d], sizeof words[d]);
        bw_put_fixed(&t, f->late[d], 1);
        bw_put(&t, " s");
        bw_labels_avoid_line(&labels, at, bw_view_point(view, f->place[d]));
        bw_labels_add(&labels, words[d], BW_BOLD, size.label, BW_ROLE_ACCENT, at,
                      bw_mark_reach(size, bw_defender_code(sq->b, d), BW_NO_DUTY));
    }
    bw_labels_place(&labels);
    bw_labels_draw(ink, &labels);
}

void bw_draw_playback(bw_ink *ink, const bw_sequence *sq, double at_s, const bw_view *view,
                      bw_mark_size size, bool figures) {
    bw_frame trail[TRAIL];
    const int count = follow(sq, at_s, trail);
    const bw_frame *now = &trail[count - 1];
    bw_sequence step = *sq;
    step.frames = trail;
    // The shot itself is drawn only when it leaves the stick: with the sequence's last frame.
    const bool over = now->at_s >= sq->frames[sq->count - 1].at_s;
    step.count = over ? count : count + 1;
    bw_draw_moment_ways(ink, &step, 0, count - 1, view, size);
    for (int d = 0; d < sq->b->defenders; d++) {
        if (shown_late(now, d)) draw_tether(ink, now, d, view, size);
    }
    draw_seconds(ink, sq, now, view, size);
    bw_draw_moment_people(ink, &step, count - 1, view, size, figures);
}
