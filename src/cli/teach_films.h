/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The films of teach: every lesson as MP4 and WebM with captions, and as GIF with --gif.
#ifndef BW_CLI_TEACH_FILMS_H
#define BW_CLI_TEACH_FILMS_H

#include "cli/teach_job.h"

/// Makes them in the folder `path`: "round.mp4", "round.webm", "round.vtt". A bw_teach_part's make.
int bw_teach_films(const bw_teach_job *job, const char *path, int *pages);

#endif
