/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the model forecasts for logged breaks.
#ifndef BW_REPORT_REVIEW_FORECAST_H
#define BW_REPORT_REVIEW_FORECAST_H

#include "core/entry.h"
#include "team/team.h"
#include "trial/watcher.h"

/// Fills forecast[count] with the chance of a goal within ten seconds, typical play, of each break: a mean
/// over attack sets and ball starts for its numbers under the scheme of its day (the newest when none is
/// noted); negative where the scheme has no stage for the numbers. Each pair of numbers and revision is a
/// kind, played once; the watch is told of kinds. BW_NO_ROOM without memory; BW_LIMIT: cancelled.
bw_status bw_forecast_breaks(bw_team *team, const bw_entry *entries, int count, bw_watcher watch,
                             double *forecast);

#endif
