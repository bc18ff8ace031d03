/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What painting pages takes: fonts, and room for the ink of one page. One thread at a time.
#ifndef BW_PAINT_PRESS_H
#define BW_PAINT_PRESS_H

#include "draw/ink.h"
#include "paint/fonts.h"

typedef struct bw_press {
    bw_fonts *fonts;
    bw_ink *ink;
} bw_press;

/// Opens what is not open yet. BW_FILE: no fonts, BW_NO_ROOM: no memory; one sentence in *why then, and it
/// is to be closed all the same.
bw_status bw_press_open(bw_press *press, bw_text *why);

void bw_press_close(bw_press *press);

#endif
