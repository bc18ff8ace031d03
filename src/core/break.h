/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A break: the situation to test, and the state it goes through. bw_break_default() gives a def with
/// every field sane; bw_break_begin() makes it a break with everyone in place at time 0.
#ifndef BW_CORE_BREAK_H
#define BW_CORE_BREAK_H

#include "core/ground.h"

enum { BW_MEN = BW_MAX_ATTACKERS + BW_MAX_SPOTS, BW_MAX_SECONDS = 10 };

/// What to test. Copied; nothing is kept of it by pointer.
typedef struct bw_break_def {
    int offence;          ///< attackers, 3 to 6; default 6
    int defence;          ///< defenders in when it starts, 3 to offence; default 4
    char set[BW_ID_SIZE]; ///< attack set; default "2-2-2"
    char
        start[BW_ID_SIZE]; ///< landmark where the ball is; the nearest attacker is put there; "top"
    int late_count;        ///< men recovering, in order; default 0; those beyond even numbers idle
    double late[BW_MAX_LATE]; ///< metres each has still to run to his spot, (0, 100]
    bool late_from_scheme;    ///< take late_count and late[] from the scheme; default true
    bool set_already;         ///< defenders begin where the ball has them, at rest; default true
    bool keep_zone; ///< at even numbers stay in the scheme's stage when it has one; default false
    uint64_t seed;  ///< of the roll-outs; default 1
    bw_legs legs[BW_MAX_SPOTS]; ///< a defender's own legs; vmax 0 = the level's
} bw_break_def;

bw_break_def bw_break_default(void);

/// Everyone and everything that changes. Men 0..5 attack, 6..11 defend, those in first, then the late
/// men in order. Structure of arrays, so that a step over all men is one straight loop.
typedef struct bw_state {
    double x[BW_MEN], y[BW_MEN];                           ///< where, m
    double u[BW_MEN], v[BW_MEN];                           ///< velocity, m/s
    double ex[BW_MAX_SPOTS], ey[BW_MAX_SPOTS];             ///< a defender's last effort, m/s
    double to_x[BW_MAX_ATTACKERS], to_y[BW_MAX_ATTACKERS]; ///< where an attacker is bound
    int32_t tick;                                          ///< time since the start
    int8_t holder;                                         ///< attacker with the ball
    int8_t in;                                             ///< defenders counted in
    int8_t matched;                                        ///< 1: man to man, job[] holds men
    int8_t place[BW_MAX_ATTACKERS];                        ///< place an attacker is at or bound for
    int8_t moving[BW_MAX_ATTACKERS];                       ///< 0: he stands where he is bound
    int8_t counted[BW_MAX_SPOTS];                          ///< 1: this defender is in
    int8_t job[BW_MAX_SPOTS];                              ///< his spot in the stage, or his man
} bw_state;

/// The defenders' strides side by side, so that one loop moves all of them.
typedef struct bw_paces {
    double fade[BW_STEP_TABLE][BW_MAX_SPOTS];
    double coast[BW_STEP_TABLE][BW_MAX_SPOTS];
    double drive[BW_STEP_TABLE][BW_MAX_SPOTS];
    double ahead_coast[BW_MAX_SPOTS];
    double ahead_gain[BW_MAX_SPOTS];
    double vmax[BW_MAX_SPOTS];
} bw_paces;

/// A break about to be played. Const once begun: the searches copy `start`.
typedef struct bw_break {
    const bw_ground *ground; ///< not owned
    bw_break_def def;
    int attackers;
    int defenders; ///< in and late together, at most 6
    int start_landmark;
    int reaction[BW_MAX_SPOTS + 1]; ///< ticks before a man reacts, by number of defenders in
    bw_vec late_spot[BW_MAX_SPOTS]; ///< where a late man runs until he is counted in
    int late_takes[BW_MAX_SPOTS];   ///< index of that late man in the scheme, -1 if none
    bw_paces paces;
    bw_state start;
} bw_break;

/// Puts everyone in place. `why` may be NULL; otherwise one sentence when the answer is not BW_OK:
/// BW_NOT_FOUND no such set, landmark or stage; BW_BAD_INPUT numbers that make no break.
bw_status bw_break_begin(const bw_ground *ground, const bw_break_def *def, bw_break *out,
                         bw_text *why);

/// Where every defender should be for a ball at `ball`, in the hands of attacker `man`: the targets
/// of the moment, in tx and ty [BW_MAX_SPOTS]. Late men not yet in: the spot they run to.
void bw_break_stations(const bw_break *b, const bw_state *s, bw_vec ball, int man, double *tx,
                       double *ty);

/// The same again a step later, man to man, when only the attackers in `ran` (a bit each, the man with
/// the ball not among them) can have moved since tx and ty were filled.
void bw_break_follow(const bw_break *b, const bw_state *s, bw_vec ball, unsigned ran, double *tx,
                     double *ty);

/// Counts in every late man who has come near his spot, and gives everyone his new job. True when the
/// unit changed.
bool bw_break_join(const bw_break *b, bw_state *s, bw_vec ball);

static inline bw_vec bw_man(const bw_state *s, int man) {
    return bw_v(s->x[man], s->y[man]);
}

#endif
