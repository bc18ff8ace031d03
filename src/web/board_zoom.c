/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How much of the field the chart shows, and which part.
#include "web/board.h"

static const double most = 4;    // times
static const double inside = 14; // points from the edge that a shown token keeps

static double middle(double low, double high) {
    return (low + high) / 2;
}

bw_window bw_board_window(const bw_board *board) {
    const bw_window all = bw_window_unit(&board->scheme);
    const double zoom = bw_clamp(board->zoom, 1, most);
    const double wide = (all.right - all.left) / (2 * zoom);
    const double tall = (all.top - all.bottom) / (2 * zoom);
    if (zoom <= 1) return all;
    const double x = bw_clamp(board->centre.x, all.left + wide, all.right - wide);
    const double y = bw_clamp(board->centre.y, all.bottom + tall, all.top - tall);
    return (bw_window){x - wide, x + wide, y - tall, y + tall};
}

static bw_vec centre_of(bw_window w) {
    return bw_v(middle(w.left, w.right), middle(w.bottom, w.top));
}

void bw_board_zoom(bw_board *board, double times, bw_vec point) {
    const bw_vec under = bw_view_place(&board->chart, point);
    const bw_vec was = centre_of(bw_board_window(board));
    const double zoom = bw_clamp(board->zoom * times, 1, most);
    board->centre = bw_add(under, bw_scale(bw_sub(was, under), board->zoom / zoom));
    board->zoom = zoom;
    board->centre = centre_of(bw_board_window(board));
}

void bw_board_pan(bw_board *board, bw_vec by) {
    const bw_vec was = centre_of(bw_board_window(board));
    board->centre = bw_sub(was, bw_v(by.x / board->chart.scale, -by.y / board->chart.scale));
    board->centre = centre_of(bw_board_window(board));
}

bool bw_board_away(const bw_board *board, bw_vec point) {
    const bw_box *box = &board->chart.box;
    return point.x < box->x || point.x > box->x + box->width || point.y < box->y ||
           point.y > box->y + box->height;
}

bw_vec bw_board_inside(const bw_board *board, bw_vec point) {
    const bw_box *box = &board->chart.box;
    return bw_v(bw_clamp(point.x, box->x + inside, box->x + box->width - inside),
                bw_clamp(point.y, box->y + inside, box->y + box->height - inside));
}

void bw_board_reveal(bw_board *board, int token) {
    const bw_token *one = &board->view.token[token];
    const bw_vec at = bw_v(one->px, one->py);
    if (one->away) bw_board_pan(board, bw_sub(bw_board_inside(board, at), at));
}
