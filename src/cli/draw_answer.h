/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The film strip of the offence's answer: `draw --answer`.
#ifndef BW_CLI_DRAW_ANSWER_H
#define BW_CLI_DRAW_ANSWER_H

#include "cli/options.h"
#include "core/scheme.h"
#include "draw/sheet.h"

/// Searches the answer to the break the options choose and paints its moments. Returns the exit code.
int bw_draw_answer(const bw_args *args, const bw_scheme *scheme, bw_paper paper);

#endif
