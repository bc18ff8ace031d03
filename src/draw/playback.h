/* SPDX-License-Identifier: GPL-3.0-or-later */
/// An answer at any time between its frames, as a film shows it: everyone's path since the step began,
/// and a tether with the seconds for each man who is late to his place.
#ifndef BW_DRAW_PLAYBACK_H
#define BW_DRAW_PLAYBACK_H

#include "draw/sequence.h"

/// The frame `at_s` seconds after the break began, held to the sequence: places and seconds between
/// two frames in a straight line, the step as in the later of them, everything else as in the earlier.
bw_frame bw_frame_at(const bw_sequence *sequence, double at_s);

/// Draws the chart at that time, with distances outside its border when `figures`. Only men late by
/// bw_is_late are shown so; men not yet counted in are not.
void bw_draw_playback(bw_ink *ink, const bw_sequence *sequence, double at_s, const bw_view *view,
                      bw_mark_size size, bool figures);

#endif
