/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The state of the board, and what can be read off it.
#ifndef BW_WEB_BOARD_STATE_H
#define BW_WEB_BOARD_STATE_H

#include "core/follow.h"
#include "core/shape.h"
#include "core/shot.h"
#include "draw/danger.h"
#include "draw/ink.h"
#include "draw/soundings.h"
#include "draw/theme.h"
#include "draw/view.h"
#include "scheme/error.h"
#include "scheme/lint.h"
#include "scheme/tree.h"

/// Seconds of one step of constant effort.
#define BW_BOARD_STEP BW_FOLLOW_STEP

enum {
    BW_BOARD_PAST = 64,  ///< steps of ball places remembered
    BW_BOARD_KEEPER = 1, ///< token of the goalkeeper
    BW_BOARD_MEN = 2,    ///< token of the first defender
    BW_BOARD_TOKENS = BW_BOARD_MEN + BW_MAX_SPOTS + BW_MAX_ATTACKERS, ///< attackers are the last
    BW_BOARD_INPUT = BW_DOCUMENT_BYTES, ///< bytes of one key or string: all that a file can have
    BW_BOARD_SAYING = 900               ///< bytes of the caption
};

/// What a defender's token does when it is moved.
typedef enum bw_board_mode {
    BW_BOARD_PLAY,  ///< for now alone (web/board_aside.h): he runs where the scheme says
    BW_BOARD_HOMES, ///< it sets his home; the chart shows the homes
    BW_BOARD_PINS   ///< it pins him for the landmark the ball is at
} bw_board_mode;

/// Where the attackers come from, beside the index of a set.
enum {
    BW_SET_NONE = -1, ///< there are none
    BW_SET_OWN = -2   ///< the coach put them where they are
};

/// The goalkeeper goes with the ball by himself, so he is never moved.
typedef enum bw_token_kind {
    BW_TOKEN_BALL,
    BW_TOKEN_DEFENDER,
    BW_TOKEN_ATTACKER,
    BW_TOKEN_KEEPER
} bw_token_kind;

/// One thing on the chart that has a button, and its line in the table of where everyone stands.
/// They are in the order they are read in: ball, goalkeeper, defenders, attackers.
typedef struct bw_token {
    int32_t kind;          ///< bw_token_kind
    int32_t index;         ///< of the spot or the attacker
    int32_t pinned;        ///< 1 when his place here was fixed by hand
    int32_t twin;          ///< a defender's mirror image: a spot, perhaps himself; else -1
    int32_t away;          ///< 1 when the chart shows another part of the field
    int32_t moved;         ///< 1 for a man moved by hand for now
    double px, py;         ///< its mark on the page of ink, points
    double at_x, at_y;     ///< its place there: a crowded mark stands beside it
    double reach;          ///< half its mark's size with what goes round it, points
    double x, y;           ///< where he belongs (ball and attackers: is), shown units, one decimal
    double late;           ///< seconds before he can be there, 0 when he is
    char code[BW_ID_SIZE]; ///< on the mark
    char name[BW_NAME_SIZE];   ///< "low left"
    char duty[BW_ID_SIZE * 2]; ///< "ball", "crease", "home", ...
    char place[64];            ///< "3.5 yd left, 2.5 yd out"
    char call[BW_NAME_SIZE];   ///< the word he calls
    char label[200];           ///< the whole in a sentence: the button's name
} bw_token;

/// What the page reads after each call; its layout is told by bw_board_layout (web/layout.h).
typedef struct bw_board_view {
    int32_t token_count;
    int32_t finding_count; ///< at most BW_MAX_FINDINGS
    int32_t stage;
    int32_t landmark; ///< the ball is exactly at this one, else -1
    int32_t running;  ///< 1 while somebody is not where he belongs
    int32_t mirrored; ///< 1: an edit on one side changes the other
    int32_t mode;     ///< bw_board_mode
    int32_t danger;   ///< 1: the danger of a shot is drawn
    int32_t attackers;
    int32_t metres;       ///< 1 when shown units are metres
    int32_t set;          ///< of the attackers: an index, BW_SET_NONE or BW_SET_OWN
    int32_t own_set;      ///< 1 when that is a set of the scheme's own
    int32_t lines;        ///< bw_lines
    int32_t ground;       ///< counts on when what lies under the marks has changed
    int32_t can_add;      ///< 1 when there is room for one attacker more
    int32_t can_keep;     ///< 1 when they can be kept as a set of the scheme's own
    int32_t ghosts;       ///< suggested homes that lie elsewhere than today's
    int32_t moved;        ///< men moved by hand for now
    double zoom;          ///< 1 for the whole field
    double width, height; ///< of the page of ink, points
    char title[160];      ///< "2-2 harbour, ball at top centre"
    char caption[BW_BOARD_SAYING];
    char last[160]; ///< who is there last: "Top left is the last to be there, in 1.4 s."
    bw_token token[BW_BOARD_TOKENS];
} bw_board_view;

typedef struct bw_board {
    bw_board_view view;
    bw_scheme scheme;
    int stage;
    bw_board_mode mode;
    bool mirrored, danger, open; ///< open: a scheme is there
    bw_vec ball;
    bw_vec attackers[BW_MAX_ATTACKERS];
    int attacker_count;
    int set; ///< as in the view

    bw_vec ghost[BW_MAX_SPOTS]; ///< homes that are suggested (web/board_ghost.h)
    bool ghosted[BW_MAX_SPOTS];
    bw_soundings soundings; ///< round one of them (web/board_soundings.h)
    int ghost_stage;        ///< number of defenders of their stage, 0 for none

    bool aside[BW_MAX_SPOTS]; ///< moved by hand for now (web/board_aside.h)
    bw_vec aside_at[BW_MAX_SPOTS];
    bw_vec ruled[BW_MAX_SPOTS]; ///< where the scheme has everyone, whoever is moved

    int lines;     ///< bw_lines of every picture
    double zoom;   ///< 1 to 4
    bw_vec centre; ///< of what is shown, once zoomed

    bw_plan plan;
    bw_legs legs;
    bw_station station[BW_MAX_SPOTS]; ///< for the ball where it is
    bw_body body[BW_MAX_SPOTS];       ///< at the last whole step
    bw_vec effort[BW_MAX_SPOTS];
    bw_body shown[BW_MAX_SPOTS]; ///< now
    double spare;                ///< seconds since the last whole step
    bw_vec past[BW_BOARD_PAST];  ///< the ball at each step, the newest at `newest`
    int newest, delay;           ///< delay: steps of reaction
    int unseen;                  ///< steps until the men have seen the ball where it is now

    bw_view chart;
    bw_shot_table shots;
    int shots_level, shots_field; ///< what the tables were filled for, -1 for nothing
    double chance[BW_GRID_SIDE * BW_GRID_SIDE];
    bw_danger depths;  ///< the danger of a shot on the chart, on these chances
    uint64_t surveyed; ///< what the ground was when view.ground counted last
    bw_finding findings[BW_MAX_FINDINGS];

    bw_error error; ///< of the last document refused
    bw_tree tree;
    bw_scheme reading; ///< a document is read here first, so that a bad one harms nothing
    char input[BW_BOARD_INPUT];
    char output[BW_DOCUMENT_BYTES];
    double page[BW_INK_PAGE_BYTES / sizeof(double)];
} bw_board;

/// Metres in one shown unit.
double bw_board_unit(const bw_board *board);

/// The landmark the ball is exactly at, or -1.
int bw_board_landmark(const bw_board *board);

/// The landmark nearest to the ball.
int bw_board_nearest(const bw_board *board);

/// Forgets every suggestion.
void bw_board_put_away(bw_board *board);

#endif
