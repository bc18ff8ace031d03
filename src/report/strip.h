/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The film strip: the answer moment by moment, four pictures to a sheet, everyone's path to scale.
#ifndef BW_REPORT_STRIP_H
#define BW_REPORT_STRIP_H

#include "core/replay.h"
#include "draw/sheet.h"
#include "trial/trial.h"

enum { BW_STRIP_MOMENTS = 40, BW_STRIP_CELLS = 4 };

/// An answer made ready to be shown. About 45 kB.
typedef struct bw_strip {
    const bw_trial *trial;
    int frame_count;
    bw_frame frames[BW_MAX_FRAMES];
    int moment_count;
    int moments[BW_STRIP_MOMENTS]; ///< indices into frames
} bw_strip;

/// Replays the trial's answer. BW_NOT_FOUND: it has none, no shot fits in the time.
bw_status bw_strip_build(const bw_trial *trial, bw_strip *strip);

int bw_strip_pages(const bw_strip *strip);

/// Draws page 1 to bw_strip_pages() into `ink`. BW_NOT_FOUND: no such page; BW_NO_ROOM: ink->need
/// tells how many bytes it takes.
bw_status bw_strip_page(const bw_strip *strip, int page, bw_paper paper, bw_ink *ink);

#endif
