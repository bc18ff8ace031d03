/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a coach changes on the board beside places: the rule, attackers of his own, how much is seen.
#include "core/attack_set.h"
#include "core/text.h"
#include "draw/metrics.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "scheme/rule_param.h"
#include "web/board_rule.h"

static bw_board board, other;

static void begin(int stage, bw_units units) {
    bw_board_reset(&board);
    bw_scheme_fresh(0, 3, &board.scheme);
    board.scheme.units = units;
    board.open = true;
    board.ball = board.scheme.landmarks[0].at;
    bw_board_show(&board, stage);
    bw_board_say(&board);
    bw_board_draw(&board, 500, 500);
}

/// What a slider can be set to is what a file may say, in both units.
static void knobs_stay_within_the_readers_limits(void) {
    for (int units = 0; units < 2; units++) {
        begin(1, (bw_units)units);
        const double unit = bw_board_unit(&board);
        bw_board_knob knob;
        for (int i = 0; i < BW_RULE_PARAM_COUNT; i++) {
            CHECK(bw_board_knob_at(&board, i, &knob));
            const double per =
                bw_rule_param_at((bw_rule_param_id)i)->length ? unit / BW_METRES_PER_YARD : 1;
            CHECK(knob.low * per >= bw_rule_param_at((bw_rule_param_id)i)->low - 1e-4);
            CHECK(knob.high * per <= bw_rule_param_at((bw_rule_param_id)i)->high + 1e-4);
            CHECK(knob.low < knob.value && knob.value < knob.high);
            for (int end = 0; end < 2; end++) {
                bw_board_turn(&board, i, end ? 1e9 : -1e9);
                CHECK(bw_board_knob_at(&board, i, &knob));
                CHECK_NEAR(knob.value, end ? knob.high : knob.low, 1e-9);
            }
        }
        CHECK(!bw_board_knob_at(&board, BW_RULE_PARAM_COUNT, &knob) &&
              !bw_board_knob_at(&board, -1, &knob));
    }
}

/// A deeper pickup meets the ball farther out, seen at once: nobody has to run there.
static void a_turn_is_seen_at_once(void) {
    begin(1, BW_YARDS);
    double last = -1;
    for (double pickup = 6; pickup <= 14; pickup += 2) {
        bw_board_turn(&board, 0, pickup);
        double out = -1;
        for (int s = 0; s < board.plan.spots; s++) {
            CHECK_SAME(board.shown[s].at.y, board.station[s].at.y);
            if (board.station[s].duty == BW_DUTY_BALL) out = board.station[s].at.y;
        }
        CHECK(out >= last);
        last = out;
    }
    CHECK(last > 9);
    CHECK(!board.view.running);
}

static void men_come_and_go(void) {
    begin(1, BW_YARDS);
    for (int n = 1; n <= BW_MAX_ATTACKERS + 2; n++) {
        bw_board_add_man(&board);
        CHECK_INT(board.attacker_count, n < BW_MAX_ATTACKERS ? n : BW_MAX_ATTACKERS);
        CHECK_INT(board.set, BW_SET_OWN);
        for (int a = 0; a < board.attacker_count; a++) {
            CHECK(bw_distance(board.attackers[a], board.ball) > 1);
            for (int b = 0; b < a; b++)
                CHECK(bw_distance(board.attackers[a], board.attackers[b]) > 1);
        }
    }
    const bw_vec second = board.attackers[1];
    bw_board_remove_man(&board, 0);
    CHECK_SAME(board.attackers[0].x, second.x);
    while (board.attacker_count > 0)
        bw_board_remove_man(&board, board.attacker_count - 1);
    CHECK_INT(board.set, BW_SET_NONE);
    bw_board_remove_man(&board, 0);
}

/// Attackers that were moved are the coach's own again.
static void nudge(void) {
    const int first = BW_BOARD_MEN + board.plan.spots;
    bw_board_move(&board, first, bw_add(board.attackers[0], bw_v(0.5, 0)));
}

static void a_set_is_kept_and_dropped(void) {
    begin(1, BW_YARDS);
    bw_board_add_man(&board);
    bw_board_add_man(&board);
    CHECK(!bw_board_keep_set(&board, "Two men"));
    bw_board_add_man(&board);
    CHECK(!bw_board_keep_set(&board, ""));
    static const char *const names[] = {"Our Overload!", "Our overload", "\xC3\xA9\xC3\xA8",
                                        "2-2-2"};
    static const char *const ids[] = {"our-overload", "our-overload-2", "set", "2-2-2-2"};
    for (int i = 0; i < BW_COUNT(names); i++) {
        CHECK(bw_board_keep_set(&board, names[i]));
        CHECK(!bw_board_keep_set(&board, names[i])); // it is kept

        CHECK(bw_same(board.scheme.sets[i].id, ids[i]));
        CHECK(bw_same(bw_board_set_id(&board, board.set), ids[i]));
        nudge();
    }
    bw_vec was[BW_MAX_ATTACKERS];
    for (int a = 0; a < 3; a++)
        was[a] = board.attackers[a];
    bw_board_attack(&board, bw_attack_set_count() + 3, 6);
    CHECK_INT(board.attacker_count, 3);
    for (int a = 1; a < 3; a++)
        CHECK_SAME(board.attackers[a].x, was[a].x);
    bw_board_attack(&board, bw_attack_set_count(), 6);
    CHECK(bw_board_drop_set(&board));
    CHECK_INT(board.scheme.set_count, 3);
    CHECK(bw_same(board.scheme.sets[0].id, ids[1]));
    CHECK_INT(board.attacker_count, 3);
    CHECK(!bw_board_drop_set(&board)); // the men are the coach's now
    for (int i = 3; i < BW_MAX_SETS; i++, nudge())
        CHECK(bw_board_keep_set(&board, "One more"));
    CHECK(!bw_board_keep_set(&board, "Too many"));
}

/// What lies under the fingers stays there, unless the field's edge is reached; nothing beyond it is
/// ever shown; marks keep their size, and tokens stand where the field has them.
static void zoom_keeps_what_is_under_the_fingers(void) {
    unsigned long long seed = 9;
    begin(1, BW_YARDS);
    const bw_window all = board.chart.window;
    for (int n = 0; n < 300; n++) {
        const double x = test_uniform(&seed, 60, 300);
        const double y = test_uniform(&seed, 60, 300);
        const double times = test_uniform(&seed, 0.5, 2.2);
        const bw_vec under = bw_view_place(&board.chart, bw_v(x, y));
        bw_board_zoom(&board, times, bw_v(x, y));
        bw_board_draw(&board, 500, 500);
        const bw_window w = board.chart.window;
        CHECK(board.zoom >= 1 && board.zoom <= 4);
        CHECK(w.left >= all.left - 1e-9 && w.right <= all.right + 1e-9);
        CHECK(w.bottom >= all.bottom - 1e-9 && w.top <= all.top + 1e-9);
        CHECK_NEAR((w.right - w.left) * board.zoom, all.right - all.left, 1e-9);
        const bw_vec p = bw_view_point(&board.chart, under);
        const bool edge = w.left - all.left < 1e-9 || all.right - w.right < 1e-9;
        if (!edge) CHECK_NEAR(p.x, x, 1e-6);
        for (int t = 0; t < board.view.token_count; t++) {
            bw_board_reveal(&board, t);
            bw_board_draw(&board, 500, 500);
            CHECK(!board.view.token[t].away);
        }
    }
    bw_board_zoom(&board, 0, bw_v(0, 0));
    bw_board_draw(&board, 500, 500);
    CHECK_SAME(board.chart.window.left, all.left);
    CHECK_SAME(board.chart.window.top, all.top);
}

/// Zoomed or not, a finger on a mark moves it by as much as the finger went.
static void a_drag_is_true_at_every_zoom(void) {
    begin(1, BW_YARDS);
    bw_board_zoom(&board, 3, bw_v(board.view.token[0].px, board.view.token[0].py));
    bw_board_draw(&board, 500, 500);
    const double scale = board.chart.scale;
    other = board;
    const bw_vec from = bw_v(board.view.token[0].px, board.view.token[0].py);
    bw_board_move(&board, 0, bw_view_place(&board.chart, bw_add(from, bw_v(-20, 30))));
    const double tenth = 0.05 * bw_board_unit(&board) + 1e-9;
    CHECK_NEAR(board.ball.x - other.ball.x, -20 / scale, tenth);
    CHECK_NEAR(board.ball.y - other.ball.y, -30 / scale, tenth);
}

/// How often the page has the figure of each level of danger.
static void count_figures(int found[BW_MAX_LEVELS]) {
    static const char *const levels[BW_MAX_LEVELS] = {"2", "5", "10", "20", "35"};
    const bw_ink *ink = (const bw_ink *)board.page;
    for (int l = 0; l < BW_MAX_LEVELS; l++)
        found[l] = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != BW_INK_TEXT || i->role != BW_ROLE_CONTOUR || i->style != BW_BOLD) continue;
        for (int l = 0; l < BW_MAX_LEVELS; l++) {
            const size_t length = strlen(levels[l]);
            found[l] +=
                length == (size_t)i->text && memcmp(bw_ink_string(i), levels[l], length) == 0;
        }
    }
}

/// Every level of danger has its figure on its line, on the chart and in the key below it.
static void danger_is_labelled(void) {
    begin(1, BW_YARDS);
    board.danger = true;
    for (int key = 0; key < 2; key++) {
        if (key)
            bw_board_key(&board, 500);
        else
            bw_board_draw(&board, 500, 500);
        int found[BW_MAX_LEVELS];
        count_figures(found);
        for (int l = 0; l < BW_MAX_LEVELS; l++)
            CHECK_INT(found[l], 1);
    }
}

/// The contour of a level runs well inside the picture.
static bool crosses(double level) {
    const bw_grid *g = &board.depths.grid;
    const int edge = 12; // cells
    for (int r = edge; r < g->rows - edge; r++) {
        for (int c = edge; c + 1 < g->columns - edge; c++) {
            const double *v = g->value + r * g->columns + c;
            if ((v[0] < level) != (v[1] < level)) return true;
        }
    }
    return false;
}

/// Of a part of the field too, wherever it is: a line that runs through it has its figure there.
static void danger_is_labelled_on_a_part(void) {
    int seen = 0;
    for (int place = 0; place < 25; place++) {
        begin(1, BW_YARDS);
        board.danger = true;
        bw_board_draw(&board, 500, 500);
        bw_board_zoom(&board, 3, bw_v(60 + 90 * (place % 5), 50 + 80 * bw_floor(place / 5.0)));
        bw_board_draw(&board, 500, 500);
        int found[BW_MAX_LEVELS];
        count_figures(found);
        for (int l = 0; l < BW_MAX_LEVELS; l++) {
            if (!crosses(board.depths.levels[l])) continue;
            CHECK_INT(found[l], 1);
            seen++;
        }
    }
    CHECK(seen > 20);
}

/// However narrow the key is, nothing of it runs out of it.
static void a_narrow_key_is_whole(void) {
    begin(1, BW_YARDS);
    board.danger = true;
    for (double width = 500; width > 140; width -= 24) {
        bw_board_key(&board, width);
        const bw_ink *ink = (const bw_ink *)board.page;
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
            if (i->kind != BW_INK_TEXT || i->align != BW_LEFT_ALIGN) continue;
            const double *at = bw_ink_numbers(i);
            CHECK(at[0] + bw_text_width(bw_ink_string(i), (size_t)i->text, i->size) <= width);
            CHECK(at[1] < ink->height);
        }
    }
}

/// The whole chart is its ground with its marks on it; the ground counts on only when it changes.
static void the_ground_is_drawn_once(void) {
    begin(1, BW_YARDS);
    board.danger = true;
    bw_board_draw(&board, 500, 500);
    const bw_ink *ink = (const bw_ink *)board.page;
    const int32_t all = ink->items, ground = board.view.ground;
    bw_board_draw_part(&board, 500, 500, BW_PART_GROUND);
    const int32_t under = ink->items;
    bw_board_draw_part(&board, 500, 500, BW_PART_MARKS);
    CHECK_INT(under + ink->items, all);
    bw_board_move(&board, 0, bw_v(6, 4));
    bw_board_run(&board, 0.2);
    bw_board_draw(&board, 500, 500);
    CHECK_INT(board.view.ground, ground);
    bw_board_zoom(&board, 1.5, bw_v(200, 200));
    bw_board_draw(&board, 500, 500);
    CHECK_INT(board.view.ground, ground + 1);
    board.danger = false;
    bw_board_draw(&board, 500, 500);
    CHECK_INT(board.view.ground, ground + 2);
}

int main(int argc, char **argv) {
    RUN(knobs_stay_within_the_readers_limits);
    RUN(a_turn_is_seen_at_once);
    RUN(men_come_and_go);
    RUN(a_set_is_kept_and_dropped);
    RUN(zoom_keeps_what_is_under_the_fingers);
    RUN(danger_is_labelled);
    RUN(danger_is_labelled_on_a_part);
    RUN(a_narrow_key_is_whole);
    RUN(the_ground_is_drawn_once);
    RUN(a_drag_is_true_at_every_zoom);
    return test_report(argc, argv);
}
