/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/qr.h"

#include <qrencode.h>

bool bw_qr_make(const char *text, bw_qr *qr) {
    QRcode *code = QRcode_encodeString8bit(text, 0, QR_ECLEVEL_M);
    if (!code) return false;
    qr->side = code->width;
    const bool fits = code->width <= BW_QR_SIDE;
    for (int i = 0; fits && i < code->width * code->width; i++)
        qr->dark[i / code->width][i % code->width] = code->data[i] & 1;
    QRcode_free(code);
    return fits;
}

static bool light(const bw_qr *qr, int row, int column) {
    return row < 0 || column < 0 || row >= qr->side || column >= qr->side || !qr->dark[row][column];
}

void bw_qr_put(const bw_qr *qr, bw_text *out) {
    enum { EDGE = 4 };
    for (int row = -EDGE; row < qr->side + EDGE; row += 2) {
        for (int column = -EDGE; column < qr->side + EDGE; column++) {
            const bool above = light(qr, row, column);
            const bool below = light(qr, row + 1, column) && row + 1 < qr->side + EDGE;
            bw_put(out, above && below ? "\u2588" : above ? "\u2580" : below ? "\u2584" : " ");
        }
        bw_put_char(out, '\n');
    }
}
