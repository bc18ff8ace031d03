/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A text as a QR picture: rows of modules, and half-block characters for a terminal.
#ifndef BW_SERVE_QR_H
#define BW_SERVE_QR_H

#include "core/text.h"

enum { BW_QR_SIDE = 57, BW_QR_TEXT = 16 * 1024 };

typedef struct bw_qr {
    int side;
    bool dark[BW_QR_SIDE][BW_QR_SIDE]; ///< row by row, from the top
} bw_qr;

/// False when the text is too long for a picture of BW_QR_SIDE modules (about 150 letters).
bool bw_qr_make(const char *text, bw_qr *qr);

/// For a terminal: two rows of modules a line, with the quiet edge of four modules, dark modules as
/// spaces between light blocks. BW_QR_TEXT bytes hold any.
void bw_qr_put(const bw_qr *qr, bw_text *out);

#endif
