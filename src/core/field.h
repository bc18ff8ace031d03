/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Field profiles: the published dimensions of one half of a field of play, as dated data.
/// Rules change each year; a profile names its source and date and nothing else may hard-wire a line.
#ifndef BW_CORE_FIELD_H
#define BW_CORE_FIELD_H

#include "core/vec.h"
#include <stdbool.h>

/// All lengths in metres; zero where a code has no such mark.
typedef struct bw_field {
    const char *id;     ///< stable identifier used in scheme files, e.g. "boys-nfhs"
    const char *name;   ///< what a coach would call it
    const char *source; ///< where the figures come from, and what is assumed
    const char *date;   ///< the season or date the source speaks of
    bool american;      ///< played in the United States alone, whose spelling its people read
    bool women;         ///< women and girls play on it, and no men
    double length;      ///< end line to end line
    double width;       ///< sideline to sideline
    double end_line;    ///< goal line to end line, behind the goal
    double midline;     ///< goal line to midline
    double crease;      ///< radius of the crease (goal circle), from the centre of the goal line
    double goal;        ///< inside width of the goal mouth
    double goal_depth;  ///< goal line to the back of the net
    double restraining; ///< goal line to the restraining line
    double box_half;    ///< half the width of the goal area
    double alley_half;  ///< centre line to the wing (alley) line
    double goal_mouth;  ///< radius of the goal-mouth arc in front of the line (NCAA men)
    double arc;         ///< radius of the 8 m arc, from the centre of the goal line (women)
    double fan;         ///< radius of the 12 m fan, from the centre of the goal line (women)
} bw_field;

/// Number of built-in profiles.
int bw_field_count(void);

/// Profile number `index`, 0 <= index < bw_field_count().
const bw_field *bw_field_at(int index);

/// Profile with this identifier, or NULL.
const bw_field *bw_field_find(const char *id);

/// True when p is on the defended half: within the sidelines, not past the end line or the midline.
/// A point on a boundary line is on the field.
bool bw_field_contains(const bw_field *field, bw_vec p);

/// Nearest point to p that is on the defended half. Exact under mirroring.
bw_vec bw_field_clamp(const bw_field *field, bw_vec p);

#endif
