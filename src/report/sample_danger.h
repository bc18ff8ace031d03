/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The danger of a free shot at a scheme's level, sampled for the drawing room, which knows no shots.
#ifndef BW_REPORT_SAMPLE_DANGER_H
#define BW_REPORT_SAMPLE_DANGER_H

#include "core/scheme.h"
#include "draw/danger.h"
#include "draw/view.h"

/// Chances over a window of the field. The surface stays valid until the thread's next call.
bw_danger bw_sample_danger(const bw_scheme *scheme, bw_window window);

#endif
