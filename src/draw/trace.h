/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ink list as plain text, one line an item, lengths rounded to a tenth of a point: what tests
/// compare, and what a person reads when a picture is wrong. Long and curved paths are told by their box
/// and a hash.
#ifndef BW_DRAW_TRACE_H
#define BW_DRAW_TRACE_H

#include "core/text.h"
#include "draw/ink.h"

/// Appends the page. out->full tells when it did not fit.
void bw_trace(const bw_ink *ink, bw_text *out);

#endif
