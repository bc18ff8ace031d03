/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The hand-out: one HTML page for a player's phone that needs nothing else. The page, its style and its
/// program are made when Breakwater is built (tools/build-handout.mjs); here the scheme, the pictures and
/// the words are put in, so that with scripts off every picture, key, role and answer is there.
#ifndef BW_REPORT_HANDOUT_H
#define BW_REPORT_HANDOUT_H

#include "report/teach.h"

enum { BW_HANDOUT_BYTES = 8 * 1024 * 1024 }; ///< more than the fullest scheme's page takes

/// The page. `ink` is used for drawing. BW_NO_ROOM when `out` is too small.
bw_status bw_handout(const bw_teach *teach, bw_ink *ink, bw_text *out);

#endif
