/* SPDX-License-Identifier: GPL-3.0-or-later */
/// An answer played again, moment by moment: for the chart, the film strip and the board.
#ifndef BW_CORE_REPLAY_H
#define BW_CORE_REPLAY_H

#include "core/whatif.h"

enum { BW_MAX_FRAMES = 160 };

/// Everyone at one moment. Moments are at most 0.2 s apart; each ply's first and last are there.
typedef struct bw_frame {
    double at_s;
    int ply; ///< index in the answer
    bw_vec ball;
    bool flying; ///< the ball is between two men, or on its way to the goal
    int holder;  ///< attacker who has it, or threw it
    bw_vec attackers[BW_MAX_ATTACKERS];
    bw_vec defenders[BW_MAX_SPOTS]; ///< those in first, then the late men
    bool in[BW_MAX_SPOTS];          ///< counted in
    int job[BW_MAX_SPOTS];          ///< spot in the stage of the moment, or his man when matched
    int stage;                      ///< defenders in
    bool matched;                   ///< numbers are even: job[] holds attackers
    bw_vec place[BW_MAX_SPOTS]; ///< where the ball, or its coming place in flight, has a defender
    double late[BW_MAX_SPOTS];  ///< seconds until he could be there and stay; 0 while not in
} bw_frame;

/// Frames of a break's answer into frames[0 .. room-1]; *count gets how many. BW_NO_ROOM: the first
/// `room` are there.
bw_status bw_replay(const bw_break *b, const bw_answer *answer, bw_frame *frames, int room,
                    int *count);

/// A rotation as an answer of one pass, with its frames: from the moment it is thrown to the catch.
bw_status bw_replay_rotation(const bw_break *b, const bw_rotation *rotation, bw_answer *answer,
                             bw_frame *frames, int room, int *count);

#endif
