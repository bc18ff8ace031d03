/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson through time: its properties, and the unit against the board, whose men see a ball that
/// jumps from stop to stop.
#include "core/ball.h"
#include "core/walk.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board.h"

static bw_scheme scheme, mirrored;
static bw_walk walk, other;
static bw_board board;
static unsigned long long seed = 77;

/// Stops anywhere: at landmarks, at places, close together, twice the same, with pauses down to none.
static bw_lesson some_lesson(int defenders) {
    bw_lesson lesson = {.defenders = defenders};
    lesson.stop_count = 1 + (int)(test_random(&seed) % 9);
    for (int i = 0; i < lesson.stop_count; i++) {
        bw_stop *stop = &lesson.stops[i];
        stop->at_landmark = test_random(&seed) % 2 == 0;
        stop->landmark = (int)(test_random(&seed) % (unsigned)scheme.landmark_count);
        stop->ball.x = test_uniform(&seed, -15, 15);
        stop->ball.y = test_uniform(&seed, -6, 18);
        const int kind = (int)(test_random(&seed) % 5);
        stop->pause = kind == 0 ? 0 : test_uniform(&seed, 0, 4);
        if (i == 0 || kind > 1) continue;
        const double pause = stop->pause;
        *stop = stop[-1];
        stop->pause = pause;
        if (kind == 1 && !stop->at_landmark) stop->ball.x += test_uniform(&seed, -4, 4);
    }
    return lesson;
}

static bw_lesson begin(int round) {
    bw_scheme_fresh(0, round % bw_level_count(), &scheme);
    const bw_lesson lesson = some_lesson(3 + round / 2 % 4);
    bw_walk_build(&scheme, &lesson, &walk);
    return lesson;
}

static void begins_at_the_first_stop(void) {
    for (int round = 0; round < 60; round++) {
        begin(round);
        bw_walk_moment m;
        bw_walk_at(&walk, -1, &m);
        CHECK_SAME(m.at_s, 0);
        CHECK_SAME(bw_distance(m.from, walk.stops[0].ball), 0);
        for (int s = 0; s < walk.spots; s++) {
            CHECK_SAME(bw_distance(m.men[s].body.at, walk.stops[0].station[s].at), 0);
            CHECK_SAME(bw_length(m.men[s].body.velocity), 0);
        }
    }
}

/// Ways and pauses in order, each as long as its own rule says.
static void times_add_up(void) {
    for (int round = 0; round < 200; round++) {
        const bw_lesson lesson = begin(round);
        const bw_level *level = bw_level_at(scheme.level);
        double sum = 0;
        for (int i = 0; i < walk.count; i++) {
            const bw_walk_stop *stop = &walk.stops[i];
            CHECK_INT(stop->left, i > 0 ? stop[-1].gone : 0);
            const double way = (stop->come - stop->left) * BW_FOLLOW_STEP;
            const double pause = (stop->gone - stop->come) * BW_FOLLOW_STEP;
            CHECK_NEAR(pause, lesson.stops[i].pause, BW_FOLLOW_STEP / 2 + 1e-9);
            if (stop->way == BW_WAY_PASS) {
                const double flight = bw_ball_time(level->pass_speed, BW_BALL_DRAG, stop->length);
                CHECK(way >= flight - 1e-9 && way < flight + BW_FOLLOW_STEP);
            }
            if (stop->way == BW_WAY_CARRY) {
                CHECK(stop->length <= 5 * BW_METRES_PER_YARD);
                CHECK(way > stop->length / level->carry_speed);
            }
            if (stop->way == BW_WAY_NONE) CHECK_SAME(way, 0);
            sum += way + pause;
        }
        CHECK_NEAR(bw_walk_seconds(&walk), sum, 1e-9);
    }
}

/// The ball leaves from the last stop, is at the next one when it should be, and never jumps; a pass
/// goes no faster than it was thrown, a carry no faster than a man with the ball.
static void the_ball_goes_along(void) {
    for (int round = 0; round < 60; round++) {
        begin(round);
        bw_walk_moment m, last;
        bw_walk_at(&walk, 0, &last);
        for (double t = 0.01; t < bw_walk_seconds(&walk); t += 0.01) {
            bw_walk_at(&walk, t, &m);
            const double pace = m.way == BW_WAY_CARRY && last.way == BW_WAY_CARRY
                                    ? walk.carrying.vmax
                                    : walk.pass_speed;
            CHECK(m.stop >= last.stop);
            CHECK(bw_distance(m.ball, last.ball) <= pace * 0.01 + 1e-9);
            last = m;
        }
        for (int i = 0; i < walk.count; i++) {
            bw_walk_at(&walk, walk.stops[i].come * BW_FOLLOW_STEP, &m);
            if (walk.stops[i].gone > walk.stops[i].come) {
                CHECK_INT(m.stop, i);
                CHECK_SAME(bw_distance(m.ball, walk.stops[i].ball), 0);
            }
        }
    }
}

/// A pause long enough lets the whole unit stand where bw_where says, and nobody is late.
static void everyone_comes_to_his_place(void) {
    for (int round = 0; round < 60; round++) {
        begin(round);
        bw_lesson lesson = some_lesson(3 + round % 4);
        for (int i = 0; i < lesson.stop_count; i++)
            lesson.stops[i].pause = 20;
        bw_walk_build(&scheme, &lesson, &walk);
        bw_plan plan;
        bw_plan_build(&scheme, walk.stage, &plan);
        for (int i = 0; i < walk.count; i++) {
            bw_walk_moment m;
            bw_station station[BW_MAX_SPOTS];
            bw_walk_at(&walk, walk.stops[i].gone * BW_FOLLOW_STEP - 0.01, &m);
            bw_where(&plan, bw_stop_ball(&scheme, &lesson.stops[i]), NULL, 0, station);
            for (int s = 0; s < walk.spots; s++) {
                CHECK_NEAR(bw_distance(m.men[s].body.at, station[s].at), 0, 1e-9);
                CHECK_INT(m.men[s].station.duty, station[s].duty);
                CHECK_SAME(m.men[s].late, 0);
            }
        }
    }
}

/// Moments asked for backwards, and again more densely, are the same moments.
static void is_the_same_path_at_any_speed(void) {
    for (int round = 0; round < 20; round++) {
        begin(round);
        enum { MOMENTS = 200 };
        static bw_walk_moment once[MOMENTS];
        const double all = bw_walk_seconds(&walk);
        for (int i = 0; i < MOMENTS; i++)
            bw_walk_at(&walk, all * i / MOMENTS, &once[i]);
        for (int i = 2 * MOMENTS - 1; i >= 0; i--) {
            bw_walk_moment again;
            bw_walk_at(&walk, all * i / (2 * MOMENTS), &again);
            if (i % 2 == 0) CHECK(again.stop == once[i / 2].stop);
            for (int s = 0; s < walk.spots && i % 2 == 0; s++) {
                CHECK_SAME(again.men[s].body.at.x, once[i / 2].men[s].body.at.x);
                CHECK_SAME(again.men[s].body.at.y, once[i / 2].men[s].body.at.y);
                CHECK_SAME(again.men[s].late, once[i / 2].men[s].late);
            }
        }
    }
}

static void mirrors_to_the_last_bit(void) {
    for (int round = 0; round < 40; round++) {
        begin(round);
        scheme.lessons[0] = some_lesson(3 + round % 4);
        scheme.lesson_count = 1;
        bw_scheme_mirror(&scheme, &mirrored);
        bw_walk_build(&scheme, &scheme.lessons[0], &walk);
        bw_walk_build(&mirrored, &mirrored.lessons[0], &other);
        CHECK_SAME(bw_walk_seconds(&other), bw_walk_seconds(&walk));
        for (double t = 0; t < bw_walk_seconds(&walk); t += 0.13) {
            bw_walk_moment a, b;
            bw_walk_at(&walk, t, &a);
            bw_walk_at(&other, t, &b);
            CHECK_SAME(b.ball.x, -a.ball.x);
            CHECK_SAME(b.ball.y, a.ball.y);
            for (int s = 0; s < walk.spots; s++) {
                CHECK_SAME(b.men[s].body.at.x, -a.men[s].body.at.x);
                CHECK_SAME(b.men[s].body.velocity.y, a.men[s].body.velocity.y);
                CHECK_SAME(b.men[s].late, a.men[s].late);
            }
        }
    }
}

/// The board's men under a ball that jumps to each stop as it leaves the one before run the very same
/// way: the same places, to the last bit, at every step.
static void runs_as_on_the_board(void) {
    for (int round = 0; round < 24; round++) {
        begin(round);
        bw_board_reset(&board);
        board.scheme = scheme;
        board.open = true;
        bw_board_show(&board, walk.stage);
        board.ball = walk.stops[0].ball;
        bw_board_settle(&board);
        bw_walk_moment first; // a first pause of nothing: the ball is off before the first step
        bw_walk_at(&walk, 0, &first);
        board.past[board.newest] = walk.stops[first.stop].ball;
        for (int step = 1; step <= walk.stops[walk.count - 1].gone; step++) {
            bw_walk_moment m;
            bw_walk_at(&walk, step * BW_FOLLOW_STEP, &m);
            board.ball = walk.stops[m.stop].ball;
            bw_board_run(&board, BW_FOLLOW_STEP);
            board.spare = 0; // what rounding leaves
            for (int s = 0; s < walk.spots; s++) {
                CHECK_SAME(m.men[s].body.at.x, board.body[s].at.x);
                CHECK_SAME(m.men[s].body.at.y, board.body[s].at.y);
            }
        }
    }
}

/// He is late by what he needs when the ball is there, less before; waiting does not make it worse.
static void lateness_runs_out(void) {
    int late_men = 0;
    for (int round = 0; round < 40; round++) {
        begin(round);
        for (double t = 0; t < bw_walk_seconds(&walk); t += 0.1) {
            bw_walk_moment m;
            bw_walk_at(&walk, t, &m);
            for (int s = 0; s < walk.spots; s++) {
                const bw_walker *man = &m.men[s];
                CHECK(man->late >= 0 && man->late <= man->needs);
                CHECK_NEAR(man->late, bw_max(man->needs - m.to_come, 0), 1e-12);
                late_men += man->late > 0;
            }
        }
    }
    CHECK(late_men > 100);
}

int main(int argc, char **argv) {
    RUN(begins_at_the_first_stop);
    RUN(times_add_up);
    RUN(the_ball_goes_along);
    RUN(everyone_comes_to_his_place);
    RUN(is_the_same_path_at_any_speed);
    RUN(mirrors_to_the_last_bit);
    RUN(runs_as_on_the_board);
    RUN(lateness_runs_out);
    return test_report(argc, argv);
}
