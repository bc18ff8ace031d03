/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the board's module tells of its memory and constants, in the form of web/abi.h.
#ifndef BW_WEB_LAYOUT_H
#define BW_WEB_LAYOUT_H

#include "core/text.h"

void bw_put_layout(bw_text *out);

#endif
