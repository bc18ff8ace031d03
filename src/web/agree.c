/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/agree.h"

#include "core/hash.h"
#include "core/random.h"
#include "scheme/fresh.h"
#include "web/board_rule.h"
#include "web/export.h"

/// Too large for WebAssembly's stack.
static bw_board alone;

/// One number a statement: the order in which arguments are made is the compiler's own.
static double between(bw_random *r, double low, double high) {
    return low + (high - low) * bw_random_unit(r);
}

static int below(bw_random *r, int n) {
    return (int)(bw_random_next(r) % (uint64_t)n);
}

static uint64_t hash_text(uint64_t hash, const char *text) {
    for (; *text; text++)
        hash = bw_hash_u64(hash, (unsigned char)*text);
    return bw_hash_u64(hash, 0);
}

static uint64_t hash_ink(uint64_t hash, const bw_ink *ink) {
    hash = bw_hash_double(bw_hash_double(hash, ink->width), ink->height);
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        hash = bw_hash_u64(hash, (uint64_t)item->kind << 32 | (uint64_t)item->role);
        hash = bw_hash_double(hash, item->size);
        for (int n = 0; n < item->numbers; n++)
            hash = bw_hash_double(hash, bw_ink_numbers(item)[n]);
        for (int n = 0; n < item->text; n++)
            hash = bw_hash_u64(hash, (unsigned char)bw_ink_string(item)[n]);
    }
    return hash;
}

static uint64_t hash_view(uint64_t hash, const bw_board_view *view) {
    hash = hash_text(hash_text(hash_text(hash, view->title), view->caption), view->last);
    for (int i = 0; i < view->token_count; i++) {
        const bw_token *t = &view->token[i];
        hash = bw_hash_double(bw_hash_double(hash, t->px), t->py);
        hash = bw_hash_double(bw_hash_double(bw_hash_double(hash, t->x), t->y), t->late);
        hash = hash_text(hash_text(hash, t->label), t->duty);
    }
    return hash;
}

static void zoom(bw_board *board, bw_random *r) {
    if (!(board->chart.scale > 0)) return; // nothing was drawn yet
    const double times = between(r, 0.3, 2.5), x = between(r, 0, 300), y = between(r, 0, 300);
    bw_board_zoom(board, times, bw_v(x, y));
    bw_board_pan(board, bw_v(y - 150, x - 150));
}

/// Field: a little past it on every side, so that holding a place on the field is tried as well.
static void act(bw_board *board, bw_random *r) {
    const double x = between(r, -30, 30), y = between(r, -15, 35);
    const bw_vec at = bw_v(x, y);
    switch (below(r, 11)) {
    case 0: bw_board_show(board, below(r, board->scheme.stage_count)); break;
    case 1: {
        const int set = below(r, 7) - 1, men = 1 + below(r, BW_MAX_ATTACKERS);
        bw_board_attack(board, set, men);
        break;
    }
    case 2: bw_board_ball_to(board, below(r, board->scheme.landmark_count)); break;
    case 3:
        board->mirrored = below(r, 4) > 0;
        bw_board_set_mode(board, (bw_board_mode)(1 + below(r, 2)));
        bw_board_move(board, BW_BOARD_MEN + below(r, board->plan.spots), bw_scale(at, 0.4));
        bw_board_set_mode(board, BW_BOARD_PLAY);
        break;
    case 4: board->danger = below(r, 8) == 0; break;
    case 5: {
        const int knob = below(r, 9);
        const double value = between(r, -1, 14);
        bw_board_turn(board, knob, value);
        break;
    }
    case 6:
        if (board->attacker_count > 3) bw_board_remove_man(board, 1);
        bw_board_add_man(board);
        break;
    case 7: zoom(board, r); break;
    default: bw_board_move(board, 0, at);
    }
    for (int n = below(r, 12); n > 0; n--)
        bw_board_run(board, between(r, 0, 0.12));
}

uint64_t bw_agree(bw_board *board, uint32_t seed, int scenes) {
    uint64_t hash = BW_HASH_START;
    bw_random r = {seed};
    bw_board_reset(board);
    for (int i = 0; i < scenes; i++) {
        if (i % 50 == 0) { // edits pile up; begin again with a clean scheme
            bw_scheme_fresh(0, below(&r, 5), &board->scheme);
            board->open = true;
            board->ball = board->scheme.landmarks[0].at;
            bw_board_show(board, 0);
        }
        act(board, &r);
        bw_board_say(board);
        const double width = between(&r, 200, 900), height = between(&r, 200, 700);
        bw_board_draw(board, width, height);
        hash = hash_view(hash, &board->view);
        hash = hash_ink(hash, (const bw_ink *)board->page);
    }
    return hash;
}

BW_EXPORT(bw_agree_alone)
uint64_t bw_agree_alone(int seed, int scenes) {
    return bw_agree(&alone, (uint32_t)seed, scenes);
}
