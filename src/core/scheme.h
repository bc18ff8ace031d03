/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A scheme: how one team stands and moves when it defends short-handed. Plain data in one flat
/// block: no pointers, so it can be copied, hashed and handed across to JavaScript whole.
/// Lengths are metres whatever unit the file used. Filled by scheme/read.h or scheme/fresh.h,
/// which see to it that every index is in range and every position on the field.
#ifndef BW_CORE_SCHEME_H
#define BW_CORE_SCHEME_H

#include "core/base.h"
#include "core/units.h"
#include "core/vec.h"

/// Which way a dead tie goes (a ball exactly on the centre line, two spots exactly as near).
typedef enum bw_side { BW_RIGHT, BW_LEFT } bw_side;

/// What a spot does now.
typedef enum bw_duty {
    BW_DUTY_BALL,     ///< takes the ball carrier
    BW_DUTY_ADJACENT, ///< next to the ball, one pass away
    BW_DUTY_CREASE,   ///< covers the crease
    BW_DUTY_BACKSIDE, ///< away from the ball, two passes or more
    BW_DUTY_HOLD,     ///< holds his post while the ball is behind
    BW_DUTY_MAN,      ///< has a man (numbers are even)
    BW_DUTY_COUNT
} bw_duty;

/// A named ball location.
typedef struct bw_landmark {
    char id[BW_ID_SIZE];
    char name[BW_NAME_SIZE];
    bw_vec at;
    int twin; ///< index of its mirror image; its own index when it lies on the centre line; -1 if none
    int derived; ///< 1 when the file gave only "mirror_of"; the writer leaves the position out again
} bw_landmark;

/// One defender's named place in a stage.
typedef struct bw_spot {
    char id[BW_ID_SIZE]; ///< 1 to 3 letters or digits
    char name[BW_NAME_SIZE];
    char call[BW_NAME_SIZE]; ///< the word he calls
    bw_vec home;
    int twin;    ///< index of the mirror spot in the same stage, itself, or -1
    int derived; ///< 1 when the home follows from "mirror_of"
} bw_spot;

enum { BW_CREASE_FARTHEST = -1, BW_CREASE_NONE = -2 };

/// The few numbers from which every position follows: metres and shares; core/rule_params.def has the usual.
typedef struct bw_rule {
    double pickup;    ///< how far from the goal the ball is met straight in front
    double cushion;   ///< gap the man on the ball leaves to it
    double shift;     ///< share of the ball's sideways move the unit makes, [0, 1]
    double soft;      ///< how much nearer the goal the ball is met on the wings, [0, 1]
    double area;      ///< how far from his place a spot looks for an attacker
    double pull;      ///< share of the way he shades to him, [0, 1]
    bool hold_behind; ///< the low pair hold while the ball is behind the goal
    bw_vec hold_at;   ///< where the right one of the low pair holds
    bw_vec crease_at; ///< where the crease is covered from
    int crease; ///< BW_CREASE_FARTHEST, BW_CREASE_NONE, or the index of the spot that always has it
} bw_rule;

/// How the unit stands with `defenders` in.
typedef struct bw_stage {
    int defenders;           ///< 3 to 6; also the number of spots
    char shape[BW_ID_SIZE];  ///< from the top down, e.g. "2-1-2"; "match-up" for man to man
    bool match_up;           ///< every spot takes a man when attackers are given
    char call[BW_NAME_SIZE]; ///< the word that calls the stage
    bw_spot spots[BW_MAX_SPOTS];
    bw_rule rule;
    /// pinned[l][s]: the coach fixed spot s at landmark l by hand; pins[l][s] is the place.
    /// 1 = given in the file, 2 = follows by mirror from the twin, 0 = not pinned.
    uint8_t pinned[BW_MAX_LANDMARKS][BW_MAX_SPOTS];
    bw_vec pins[BW_MAX_LANDMARKS][BW_MAX_SPOTS];
} bw_stage;

/// A defender still recovering.
typedef struct bw_late {
    char role[BW_NAME_SIZE]; ///< e.g. "first midfielder"
    double behind;           ///< metres he has to run to his spot when the break starts
    int take_count; ///< spots he may take, best first; 0 = he takes the nearest man ("match")
    char takes[BW_MAX_SPOTS][BW_ID_SIZE]; ///< spot codes in the stage he completes
} bw_late;

/// One stop of a lesson.
typedef struct bw_stop {
    bool at_landmark; ///< true: `landmark` holds; false: `ball`
    int landmark;
    bw_vec ball;
    double pause;                  ///< seconds to stand at this stop, [0, 60], default 2
    char caption[BW_CAPTION_SIZE]; ///< empty: made from the duties
} bw_stop;

/// An ordered walk through a stage.
typedef struct bw_lesson {
    char id[BW_ID_SIZE];
    char name[BW_NAME_SIZE];
    int defenders; ///< the stage it walks
    int stop_count;
    bw_stop stops[BW_MAX_STOPS];
} bw_lesson;

/// An attack set of the coach's own, beside the built-in ones.
typedef struct bw_set {
    char id[BW_ID_SIZE];
    char name[BW_NAME_SIZE];
    int count; ///< 3 to 6
    bw_vec at[BW_MAX_ATTACKERS];
} bw_set;

typedef struct bw_scheme {
    char id[BW_NAME_SIZE]; ///< document id: keeps two documents' working copies apart; may be empty
    char name[BW_NAME_SIZE]; ///< e.g. "Harbour"
    char team[BW_NAME_SIZE]; ///< may be empty
    int field;               ///< index into bw_field_at()
    int level;               ///< index into bw_level_at()
    bw_units units;          ///< the unit the file's own lengths are in, and the people's default
    bw_side lead;            ///< which side takes a dead tie
    int landmark_count;
    bw_landmark landmarks[BW_MAX_LANDMARKS];
    int stage_count;
    bw_stage stages[BW_MAX_STAGES]; ///< by rising number of defenders
    int late_count;
    bw_late late[BW_MAX_LATE];
    int set_count;
    bw_set sets[BW_MAX_SETS];
    int lesson_count;
    bw_lesson lessons[BW_MAX_LESSONS];
    char notes[BW_NOTES_SIZE];
} bw_scheme;

/// Index of the stage with this many defenders, or -1.
int bw_scheme_stage(const bw_scheme *scheme, int defenders);

/// Index of the landmark with this id, or -1.
int bw_scheme_landmark(const bw_scheme *scheme, const char *id);

/// Index of the lesson with this id, or -1.
int bw_scheme_lesson(const bw_scheme *scheme, const char *id);

/// Index of the spot with this id in a stage, or -1.
int bw_stage_spot(const bw_stage *stage, const char *id);

/// Where the ball is at a stop, m.
bw_vec bw_stop_ball(const bw_scheme *scheme, const bw_stop *stop);

/// The word for a duty: "ball", "adjacent", ...
const char *bw_duty_name(bw_duty duty);

/// The practice rule: every default named in bw_rule.
bw_rule bw_rule_default(void);

/// The left-right mirror image: positions mirrored, tie side flipped, order of everything kept.
/// mirror(mirror(s)) == s to the last bit.
void bw_scheme_mirror(const bw_scheme *scheme, bw_scheme *out);

#endif
