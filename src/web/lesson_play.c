/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson played on the board, moment by moment, and its places called out.
#include "scheme/caption.h"
#include "web/board_aside.h"
#include "web/lesson.h"

void bw_lessons_build(bw_lessons *l, const bw_scheme *scheme) {
    if (l->view.lesson < 0) return;
    const bw_lesson *lesson = &scheme->lessons[l->view.lesson];
    // Another document may have been opened without a word to us.
    const bool same = l->walk.count == lesson->stop_count &&
                      l->walk.stage == bw_scheme_stage(scheme, lesson->defenders);
    if (l->built && same) return;
    bw_walk_build(scheme, lesson, &l->walk);
    l->built = true;
    l->view.seconds = bw_walk_seconds(&l->walk);
}

/// Everyone on the board as in this moment.
static void show(const bw_walk *walk, const bw_walk_moment *m, bw_board *board) {
    const double waits = (walk->stops[m->stop].left + walk->delay) * BW_FOLLOW_STEP - m->at_s;
    board->ball = m->ball;
    board->attacker_count = 0;
    bw_board_forget_aside(board);
    for (int s = 0; s < walk->spots; s++) {
        board->station[s] = m->men[s].station;
        board->body[s] = board->shown[s] = m->men[s].body;
        board->effort[s] = bw_v(0, 0);
    }
    for (int i = 0; i < BW_BOARD_PAST; i++)
        board->past[i] = m->ball;
    board->spare = 0;
    board->unseen = waits > 0 ? (int)(waits / BW_BOARD_STEP + 0.5) : 0;
    board->view.running = 0;
}

static void say_now(bw_lessons *l, const bw_scheme *scheme, const bw_walk_moment *m) {
    bw_text now = bw_text_in(l->view.now, sizeof l->view.now);
    bw_put_fixed(&now, m->at_s, 1);
    bw_put(&now, " of ");
    bw_put_fixed(&now, l->view.seconds, 1);
    bw_put(&now, " seconds, ");
    bw_put(&now, m->way == BW_WAY_PASS    ? "pass to be "
                 : m->way == BW_WAY_CARRY ? "carried to be "
                                          : "ball ");
    bw_say_at(scheme, l->walk.stops[m->stop].ball, &now);
    bw_copy(l->view.caption, sizeof l->view.caption, l->view.stops[m->stop].caption);
}

void bw_lessons_at(bw_lessons *l, bw_board *board, double seconds) {
    if (!bw_lessons_chosen(l, board)) return;
    bw_lessons_build(l, &board->scheme);
    if (!l->view.playing || board->stage != l->walk.stage) {
        board->mode = BW_BOARD_PLAY;
        bw_board_show(board, l->walk.stage);
    }
    bw_walk_moment moment;
    bw_walk_at(&l->walk, seconds, &moment);
    show(&l->walk, &moment, board);
    l->view.playing = 1;
    l->view.at = moment.at_s;
    l->view.stop = moment.stop;
    say_now(l, &board->scheme, &moment);
}

void bw_lessons_stop(bw_lessons *l, bw_board *board) {
    if (l->view.playing) {
        bw_board_prepare(board);
        board->view.running = 1;
    }
    l->view.playing = 0;
}

/// A new round. Every order is as likely as any other.
static void shuffle(bw_lessons *l) {
    l->next = 0;
    for (int i = 0; i < l->view.stop_count; i++)
        l->order[i] = i;
    for (int i = l->view.stop_count - 1; l->shuffled && i > 0; i--) {
        const int k = (int)(bw_random_unit(&l->random) * (i + 1));
        const int moved = l->order[i];
        l->order[i] = l->order[k];
        l->order[k] = moved;
    }
}

void bw_lessons_call(bw_lessons *l, bool shuffled, uint32_t seed) {
    l->random = (bw_random){seed};
    l->shuffled = shuffled;
    l->view.spot[0] = '\0';
    shuffle(l);
}

void bw_lessons_next(bw_lessons *l, bw_board *board) {
    const bw_lesson *lesson = bw_lessons_chosen(l, board);
    if (!lesson) return;
    char last[sizeof l->view.spot];
    bw_copy(last, sizeof last, l->view.spot);
    for (int tries = 0; tries < 2 * BW_MAX_STOPS; tries++) {
        if (l->next >= lesson->stop_count) shuffle(l);
        const int stop = l->order[l->next++];
        if (stop >= lesson->stop_count) continue; // stops were taken out meanwhile
        bw_text spot = bw_text_in(l->view.spot, sizeof l->view.spot);
        bw_say_ball(&board->scheme, bw_stop_ball(&board->scheme, &lesson->stops[stop]), &spot);
        bw_lessons_visit(l, board, stop);
        if (!bw_same(last, l->view.spot)) return;
    }
}
