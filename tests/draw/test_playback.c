/* SPDX-License-Identifier: GPL-3.0-or-later */
/// An answer at any time: at a frame it is the frame, between two it is between them, and every late man
/// has his tether and his seconds.
#include "breaks.h"
#include "core/late.h"
#include "core/replay.h"
#include "draw/playback.h"
#include "harness.h"

static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
static bw_break played;
static bw_answer answer;
static bw_frame frames[BW_MAX_FRAMES];
static bw_sequence sq;

static void film(void) {
    breaks_ready("high-school");
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = 2;
    def.late[0] = 20;
    def.late[1] = 30;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &played, NULL), BW_OK);
    answer = breaks_best(&played, 2, 4, true, true);
    sq = (bw_sequence){&played, &answer, frames, 0};
    CHECK_INT(bw_replay(&played, &answer, frames, BW_MAX_FRAMES, &sq.count), BW_OK);
    CHECK(sq.count > 5 && answer.count > 1);
}

static void at_a_frame_it_is_the_frame(void) {
    for (int f = 0; f < sq.count; f++) {
        const bw_frame now = bw_frame_at(&sq, frames[f].at_s);
        CHECK_SAME(now.at_s, frames[f].at_s);
        CHECK_SAME(now.ball.x, frames[f].ball.x);
        for (int d = 0; d < played.defenders; d++) {
            CHECK_SAME(now.defenders[d].y, frames[f].defenders[d].y);
            CHECK_SAME(now.late[d], frames[f].late[d]);
        }
    }
    CHECK_SAME(bw_frame_at(&sq, -5).at_s, 0);
    CHECK_SAME(bw_frame_at(&sq, 99).at_s, frames[sq.count - 1].at_s);
}

static void between_two_it_is_between_them(void) {
    for (int f = 0; f + 1 < sq.count; f++) {
        const bw_frame *a = &frames[f], *b = &frames[f + 1];
        const bw_frame now = bw_frame_at(&sq, (a->at_s + b->at_s) / 2);
        CHECK_NEAR(bw_distance(now.ball, a->ball), bw_distance(now.ball, b->ball), 1e-9);
        for (int i = 0; i < played.attackers; i++)
            CHECK_NEAR(bw_distance(now.attackers[i], a->attackers[i]) +
                           bw_distance(now.attackers[i], b->attackers[i]),
                       bw_distance(a->attackers[i], b->attackers[i]), 1e-9);
        CHECK_INT(now.ply, b->ply);
    }
}

/// A man who needs no time stands at his place; a late one's seconds are no fewer than his legs allow.
static void seconds_follow_from_the_way(void) {
    const double fastest = breaks_ground.level->defender.vmax;
    for (int f = 0; f < sq.count; f++) {
        for (int d = 0; d < played.defenders; d++) {
            const double metres = bw_distance(frames[f].defenders[d], frames[f].place[d]);
            if (!frames[f].in[d]) {
                CHECK_SAME(frames[f].late[d], 0);
                continue;
            }
            CHECK(frames[f].late[d] >= (metres - 1.5) / fastest);
            if (metres < 0.01) CHECK(frames[f].late[d] < 1);
        }
    }
}

static int late_men(const bw_frame *f) {
    int count = 0;
    for (int d = 0; d < played.defenders; d++)
        count += f->in[d] && bw_is_late(f->late[d], bw_distance(f->defenders[d], f->place[d]));
    return count;
}

/// Words in the accent's colour: nothing else on this chart has them.
static int seconds_shown(const bw_ink *ink) {
    int count = 0;
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_TEXT || item->role != BW_ROLE_ACCENT) continue;
        CHECK(item->text >= 5 && bw_ink_string(item)[item->text - 1] == 's');
        count++;
    }
    return count;
}

static void every_late_man_has_his_seconds(void) {
    const bw_view view = bw_view_fit(bw_window_sequence(&sq), 40, 40, 420);
    int most = 0;
    for (double at = 0; at < frames[sq.count - 1].at_s + 0.3; at += 0.07) {
        const bw_frame now = bw_frame_at(&sq, at);
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        bw_ink_page(ink, 500, 700);
        bw_draw_playback(ink, &sq, at, &view, bw_marks_large(), true);
        CHECK_INT(ink->status, BW_OK);
        CHECK_INT(ink->open, 0);
        CHECK_INT(seconds_shown(ink), late_men(&now));
        most = late_men(&now) > most ? late_men(&now) : most;
    }
    CHECK(most > 0);
}

int main(int argc, char **argv) {
    film();
    RUN(at_a_frame_it_is_the_frame);
    RUN(between_two_it_is_between_them);
    RUN(seconds_follow_from_the_way);
    RUN(every_late_man_has_his_seconds);
    return test_report(argc, argv);
}
