/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/catalogue.h"

#define BW_SENTENCE(id, text) const bw_sentence bw_s_##id = {text};
#include "draw/catalogue.def"
