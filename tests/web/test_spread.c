/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Marks on small charts: nobody covers anybody, no word stands at the wrong man, the ball's ring crosses no
/// letters; what a finger moves stays whole in the picture; and a picture that leaves the page explains itself.
#include "core/attack_set.h"
#include "core/text.h"
#include "draw/metrics.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board_spread.h"

static bw_board board, other;

static void begin(bw_board *b, int stage) {
    static bw_scheme scheme;
    bw_scheme_fresh(0, 3, &scheme);
    bw_board_reset(b);
    b->scheme = scheme;
    b->open = true;
    b->ball = scheme.landmarks[0].at;
    bw_board_show(b, stage);
}

/// As a phone's page draws it in the look for the sun: 171 points across.
static void draw_small(bw_board *b) {
    bw_board_settle(b);
    bw_board_say(b);
    bw_board_draw(b, 171, 260);
}

/// Of every set, at every named place: the discs are apart, and the ball's ring is off all letters.
static void marks_do_not_cover_each_other(void) {
    const bw_mark_size size = bw_marks_small();
    for (int stage = 0; stage < 4; stage++) {
        begin(&board, stage);
        for (int set = -1; set < bw_attack_set_count(); set++) {
            bw_board_attack(&board, set, 6);
            for (int l = 0; l < board.scheme.landmark_count; l++) {
                bw_board_ball_to(&board, l);
                draw_small(&board);
                const bw_token *token = board.view.token;
                for (int i = 1; i < board.view.token_count; i++) {
                    const double ring = bw_board_ball_ring(size) + 0.55;
                    const double wide = bw_width(token[i].code, size.type) / 2;
                    const double x = bw_max(0, bw_abs(token[0].px - token[i].px) - wide);
                    const double y = bw_max(0, bw_abs(token[0].py - token[i].py) -
                                                   size.type * BW_CAP_HEIGHT / 2);
                    if (i > BW_BOARD_KEEPER) CHECK(x * x + y * y >= ring * ring);
                    for (int j = i + 1; j < board.view.token_count; j++) {
                        const bw_vec by =
                            bw_v(token[i].px - token[j].px, token[i].py - token[j].py);
                        const double least = i == BW_BOARD_KEEPER ? 1.6 : 2;
                        CHECK(bw_length(by) >= least * size.radius - 0.5);
                    }
                }
            }
        }
    }
}

/// A mark gives way by little: it stays within two discs of its place, and on a large chart with men apart it
/// is on it. The ball is always where it is.
static void marks_stay_near_their_places(void) {
    begin(&board, 1);
    for (int l = 0; l < board.scheme.landmark_count; l++) {
        bw_board_ball_to(&board, l);
        bw_board_attack(&board, 0, 6);
        draw_small(&board);
        for (int i = 0; i < board.view.token_count; i++) {
            const bw_token *t = &board.view.token[i];
            const double off = bw_length(bw_v(t->px - t->at_x, t->py - t->at_y));
            CHECK(off <= (i < BW_BOARD_MEN ? 0 : 4 * bw_marks_small().radius));
        }
    }
    begin(&board, 1);
    bw_board_say(&board);
    bw_board_draw(&board, 800, 800);
    for (int i = 0; i < board.view.token_count; i++) {
        CHECK_SAME(board.view.token[i].px, board.view.token[i].at_x);
        CHECK_SAME(board.view.token[i].py, board.view.token[i].at_y);
    }
}

/// Under a finger that goes far outside, the ball stays in the picture, ring and all.
static void a_dragged_ball_is_never_cut(void) {
    begin(&board, 1);
    draw_small(&board);
    const bw_box *box = &board.chart.box;
    const double ring = bw_board_ball_ring(bw_marks_small()) + 0.55;
    static const bw_vec far[] = {{-900, 90}, {900, 90}, {80, -900}, {80, 900}, {900, 900}};
    for (int i = 0; i < BW_COUNT(far); i++) {
        bw_board_drag(&board, 0, far[i]);
        draw_small(&board);
        const bw_token *ball = &board.view.token[0];
        CHECK(ball->px - ring >= box->x && ball->px + ring <= box->x + box->width);
        CHECK(ball->py - ring >= box->y && ball->py + ring <= box->y + box->height);
    }
}

/// In the mode Pins an arrow takes the ball to the next named place that way, and there is a way to each.
static void arrows_walk_the_named_places(void) {
    static const bw_vec ways[] = {{-0.5, 0}, {0.5, 0}, {0, 0.5}, {0, -0.5}};
    bool seen[BW_MAX_LANDMARKS] = {false};
    int open[BW_MAX_LANDMARKS], count = 1;
    begin(&board, 1);
    bw_board_set_mode(&board, BW_BOARD_PINS);
    open[0] = bw_board_landmark(&board);
    seen[open[0]] = true;
    while (count > 0) {
        const int from = open[--count];
        for (int w = 0; w < BW_COUNT(ways); w++) {
            bw_board_ball_to(&board, from);
            const bw_vec was = board.ball;
            bw_board_nudge(&board, 0, ways[w]);
            const int to = bw_board_landmark(&board);
            CHECK(to >= 0);
            if (to == from) continue;
            const bw_vec by = bw_sub(board.ball, was);
            CHECK(by.x * ways[w].x + by.y * ways[w].y > 0);
            if (!seen[to]) open[count++] = to;
            seen[to] = true;
        }
    }
    for (int l = 0; l < board.scheme.landmark_count; l++)
        CHECK(seen[l]);
}

/// All the words on the page, a line each.
static const char *words_of(const bw_ink *ink) {
    static char words[8192];
    bw_text all = bw_text_in(words, sizeof words);
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != BW_INK_TEXT) continue;
        bw_put_n(&all, bw_ink_string(i), (size_t)i->text);
        bw_put_char(&all, '\n');
    }
    return words;
}

static void a_picture_explains_itself(void) {
    begin(&board, 1);
    bw_board_say(&board);
    bw_board_picture(&board, 560, "As of 3 May 2031.");
    const bw_ink *ink = (const bw_ink *)board.page;
    const char *const words[] = {board.scheme.name,  "4 in: 2-2",   "ball at top",
                                 "goalkeeper",       "on the ball", "Distances in yards",
                                 "As of 3 May 2031."};
    for (int i = 0; i < BW_COUNT(words); i++)
        CHECK(strstr(words_of(ink), words[i]) != NULL);
    CHECK_SAME(ink->width, 560);
    CHECK(ink->height > board.view.height + 60);
}

/// Mirrored men come out mirrored, but for their codes, which are not all as wide.
static void marks_mirror(void) {
    begin(&board, 1);
    begin(&other, 1);
    bw_board_move(&board, 0, bw_v(9, 4));
    bw_board_move(&other, 0, bw_v(-9, 4));
    draw_small(&board);
    draw_small(&other);
    const double middle = board.chart.origin.x;
    for (int s = 0; s < board.plan.spots; s++) {
        const int twin = board.scheme.stages[1].spots[s].twin;
        const bw_token *a = &board.view.token[BW_BOARD_MEN + s];
        const bw_token *b = &other.view.token[BW_BOARD_MEN + (twin < 0 ? s : twin)];
        CHECK_NEAR(a->px - middle, middle - b->px, 1);
        CHECK_NEAR(a->py, b->py, 1);
    }
}

int main(int argc, char **argv) {
    RUN(marks_do_not_cover_each_other);
    RUN(marks_stay_near_their_places);
    RUN(a_dragged_ball_is_never_cut);
    RUN(arrows_walk_the_named_places);
    RUN(a_picture_explains_itself);
    RUN(marks_mirror);
    return test_report(argc, argv);
}
