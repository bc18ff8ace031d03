/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The offence's best sequence on the chart: all of it as numbered passes, carries, cuts and a shot,
/// or one moment of it with everyone's path since the moment before. To scale.
#ifndef BW_DRAW_SEQUENCE_H
#define BW_DRAW_SEQUENCE_H

#include "core/replay.h"
#include "draw/ink.h"
#include "draw/marks.h"
#include "draw/view.h"

/// An answer with the frames bw_replay made of it. Nothing is kept.
typedef struct bw_sequence {
    const bw_break *b;
    const bw_answer *answer;
    const bw_frame *frames;
    int count; ///< frames, at least 1
} bw_sequence;

/// What a defender's disc says: the code of the spot he began at; "+1", "+2" for the late men.
const char *bw_defender_code(const bw_break *b, int defender);

/// The window for all pictures of this sequence: everyone who plays in it and the crease, symmetric,
/// whole units on its edges. Late men run into it from outside.
bw_window bw_window_sequence(const bw_sequence *sequence);

/// The whole sequence: attackers where they begin with their cuts, the ball's way with order numbers
/// and times, defenders where they are when the shot is taken with their paths and a ghost where they
/// began. Returns how many labels cover something.
int bw_draw_sequence(bw_ink *ink, const bw_sequence *sequence, const bw_view *view,
                     bw_mark_size size, bool figures);

/// The moment of frame `to` with paths and ball way since frame `from` <= to.
void bw_draw_moment(bw_ink *ink, const bw_sequence *sequence, int from, int to, const bw_view *view,
                    bw_mark_size size);

/// The same in two halves, for what comes between: the field with paths and ball way; then the people and
/// the border.
void bw_draw_moment_ways(bw_ink *ink, const bw_sequence *sequence, int from, int to,
                         const bw_view *view, bw_mark_size size);
void bw_draw_moment_people(bw_ink *ink, const bw_sequence *sequence, int at, const bw_view *view,
                           bw_mark_size size, bool figures);

/// Frames worth a picture, as indices into frames[]: the start, the end of every ply, and moments in
/// between where a ply is long. At most `room`; returns how many.
int bw_pick_moments(const bw_sequence *sequence, int *picked, int room);

#endif
