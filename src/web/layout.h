/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How the blocks that JavaScript reads lie in memory, told by C itself, so that nobody types an offset
/// twice: {"ink":{"size":64,"fields":{"used":[4,"i32",1], ...}}, ...}. A field is its offset, the kind
/// of one value (i32, f64, text, or the name of another block) and how many there are (bytes for text).
#ifndef BW_WEB_LAYOUT_H
#define BW_WEB_LAYOUT_H

#include "core/text.h"

void bw_put_layout(bw_text *out);

#endif
