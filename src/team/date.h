/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Days and times as a team file and its CSV write them: ISO 8601, the times in UTC. The Gregorian
/// calendar, years 1970 to 9999.
#ifndef BW_TEAM_DATE_H
#define BW_TEAM_DATE_H

#include "core/text.h"
#include <stdint.h>

enum { BW_DATE_SIZE = 11 }; ///< "2026-04-11" and the terminator

/// A day that exists, written so.
bool bw_date_good(const char *text);

/// Today by this computer's calendar; with SOURCE_DATE_EPOCH in the environment the day of that second in
/// UTC, so that what is made again is the same (reproducible-builds.org, "SOURCE_DATE_EPOCH"). "" beyond
/// the year 9999.
void bw_today(char day[BW_DATE_SIZE]);

/// Days from 1970-01-01 to it; -1 when it is no such day.
int64_t bw_date_days(const char *text);

/// Appends "2026-04-11T18:05:00Z" for seconds since 1970; nothing for a time before that or beyond 9999.
void bw_put_time(bw_text *out, int64_t seconds);

/// Reads what bw_put_time() writes; also without seconds ("2026-04-11T18:05Z").
bool bw_time_read(const char *text, int64_t *seconds);

#endif
