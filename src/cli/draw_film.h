/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson as a film, for draw --film.
#ifndef BW_CLI_DRAW_FILM_H
#define BW_CLI_DRAW_FILM_H

#include "cli/options.h"
#include "core/scheme.h"

/// Makes what the ending of --output asks for. Returns the exit code after saying what went wrong.
int bw_draw_film(const bw_args *args, const bw_scheme *scheme);

#endif
