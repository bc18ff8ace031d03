/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Left-right twins: which landmark or spot is the mirror image of which.
#ifndef BW_SCHEME_TWIN_H
#define BW_SCHEME_TWIN_H

#include "core/scheme.h"

/// Sets `twin` of every landmark and spot from where they lie: the index of the exact mirror image,
/// its own on the centre line, -1 when there is none.
void bw_find_twins(bw_scheme *scheme);

/// Pins every twin that has no pin of its own with the mirror image of the pin that was given
/// (pinned = 2). Twins must be known.
void bw_mirror_pins(const bw_scheme *scheme, bw_stage *stage);

#endif
