/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Making films for a verb: progress on a terminal, Ctrl-C, and what went wrong.
#ifndef BW_CLI_FILMS_H
#define BW_CLI_FILMS_H

#include "report/films.h"

/// Makes them while signals are watched. BW_EXIT_OK; BW_EXIT_INTERRUPTED after saying so, nothing left of
/// the films under way; or the code after saying what is wrong.
int bw_run_films(bw_films *films);

#endif
