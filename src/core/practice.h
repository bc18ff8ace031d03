/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice plan: who stands where in each round, who feeds, who waits, and what fits into the time.
/// Players take the places in one endless row, so that after any round no one has had two turns more
/// than another, and one who comes to several spots comes to each about as often. Cost: players x rounds.
#ifndef BW_CORE_PRACTICE_H
#define BW_CORE_PRACTICE_H

#include "core/base.h"

enum {
    BW_PRACTICE_PLAYERS = 40,
    BW_PRACTICE_GOALS = 4,
    BW_PRACTICE_FEEDERS = 6,
    BW_PRACTICE_ROUNDS = 48,
    BW_PRACTICE_NOBODY = -1
};

/// How fast a round is played; the same order as the script's.
enum { BW_ROUND_WALK, BW_ROUND_HALF, BW_ROUND_FULL, BW_ROUND_KINDS };

typedef struct bw_practice_def {
    int players;                  ///< 4 to BW_PRACTICE_PLAYERS, goalkeepers not counted
    int spots;                    ///< 1 to BW_MAX_SPOTS
    int goals;                    ///< goals, or areas with marks for one; 1 to BW_PRACTICE_GOALS
    double minutes;               ///< all there is
    double lap_s[BW_ROUND_KINDS]; ///< once through the script, s
} bw_practice_def;

typedef struct bw_round {
    int kind;
    double at_s, lasts_s;                         ///< begins, and lasts without the change after it
    bool drink;                                   ///< a break for water comes before it
    int8_t spot[BW_PRACTICE_GOALS][BW_MAX_SPOTS]; ///< player, or BW_PRACTICE_NOBODY: a cone
    int feeder_count;                             ///< at each goal
    int8_t feeder[BW_PRACTICE_GOALS][BW_PRACTICE_FEEDERS];
} bw_round;

typedef struct bw_practice {
    int goals;       ///< used; fewer than asked for when the players do not suffice
    int cycle;       ///< rounds until everyone has had a turn
    int round_count; ///< 0: not even one fits
    bw_round rounds[BW_PRACTICE_ROUNDS];
    double game_s; ///< what is left for the game at the end, 0: none
    double used_s; ///< rounds, changes and breaks; used_s + game_s is never more than the minutes
    double need_s; ///< everyone once at each pace, with a game of BW_PRACTICE_GAME seconds
    bool whole[BW_ROUND_KINDS]; ///< everyone has a turn at this pace
    int fewest, most;           ///< turns of a player at the spots
    int turns[BW_PRACTICE_PLAYERS];
    int feeds[BW_PRACTICE_PLAYERS];
} bw_practice;

/// Seconds, all assumed: to change places after a round; of a break for water, and how long play may go
/// on without one; of the shortest game worth having; of all rounds at full speed together.
#define BW_PRACTICE_CHANGE 20.0
#define BW_PRACTICE_DRINK 120.0
#define BW_PRACTICE_DRY 1200.0
#define BW_PRACTICE_GAME 300.0
#define BW_PRACTICE_LIVE 900.0

/// Makes the plan: as much of walk, half and full speed for everyone as fits, then more turns at full
/// speed, then the game. BW_BAD_INPUT: a number out of its range.
bw_status bw_practice_plan(const bw_practice_def *def, bw_practice *plan);

#endif
