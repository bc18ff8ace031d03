/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sentences of this room (draw/catalogue.def), as bw_s_NAME.
#ifndef BW_DRAW_CATALOGUE_H
#define BW_DRAW_CATALOGUE_H

#include "core/sentence.h"

#define BW_SENTENCE(id, text) extern const bw_sentence bw_s_##id;
#include "draw/catalogue.def"
#undef BW_SENTENCE

#endif
