/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board's whole state: one scheme on a chart, the ball and the attackers where the coach put
/// them, and the unit running after the ball at its real speed. The page only passes on what fingers
/// do and paints what comes back: every position, word and picture is made here.
///
/// Places cross the border as `bw_vec` metres inside and in the people's unit (yards or metres) where
/// a function says "shown". One block of memory, no allocation; the caller owns it.
#ifndef BW_WEB_BOARD_H
#define BW_WEB_BOARD_H

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

/// Everything closed, edits mirrored.
void bw_board_reset(bw_board *board);

/// Takes over the document fed into board->tree. On a refusal board->error says why and what was open
/// stays open. Keeps the stage (by its number of defenders), the ball and the attackers when `keep`.
bw_status bw_board_take(bw_board *board, bool keep);

/// Writes the canonical document into board->output; its length in bytes.
int bw_board_save(bw_board *board);

/// Shows a stage, 0 <= index < stage_count; the men stand where they belong.
void bw_board_show(bw_board *board, int stage);

void bw_board_set_mode(bw_board *board, bw_board_mode mode);

/// Moves a token to a place in metres, held on the field and rounded to a tenth of the shown unit.
/// A defender is moved for now alone when nobody edits, the goalkeeper never.
void bw_board_move(bw_board *board, int token, bw_vec at);

/// Moves a token to a point of the page of ink, held inside the picture with its whole mark.
void bw_board_drag(bw_board *board, int token, bw_vec point);

/// Moves a token by metres; the ball of the mode Pins to the next landmark that way, if there is one.
void bw_board_nudge(bw_board *board, int token, bw_vec by);

/// Where the goalkeeper stands: in the mouth, for the ball where it is.
bw_vec bw_board_keeper(const bw_board *board);

/// The landmark the ball is exactly at, or -1.
int bw_board_landmark(const bw_board *board);

/// Ball to landmark number `landmark`.
void bw_board_ball_to(bw_board *board, int landmark);

/// The first `men` attackers of a set: an index into the built-in sets, then the scheme's own; -1
/// takes them all away.
void bw_board_attack(bw_board *board, int set, int men);

/// One attacker more, where there is most room. No more than BW_MAX_ATTACKERS.
void bw_board_add_man(bw_board *board);

/// Takes one away; those after him move up a number.
void bw_board_remove_man(bw_board *board, int attacker);

/// Keeps the attackers as they stand as a set of the scheme, with an id out of its name. False
/// when they cannot be kept, or with a name that is empty or too long.
bool bw_board_keep_set(bw_board *board, const char *name);

/// They stand as the coach put them, are enough for a set, and the scheme has room for one more.
bool bw_board_can_keep(const bw_board *board);

/// Takes the set that the attackers came from out of the scheme, when it is one of its own; the men
/// stay where they are.
bool bw_board_drop_set(bw_board *board);

/// Id of set number `index`, "" past the last one.
const char *bw_board_set_id(const bw_board *board, int index);

/// Lets `seconds` go by, at most a quarter of one at a time.
void bw_board_run(bw_board *board, double seconds);

/// Puts everyone where he belongs at once.
void bw_board_settle(bw_board *board);

/// Takes away the pin of a spot at the landmark the ball is at, and its mirror image.
void bw_board_unpin(bw_board *board, int spot);

/// Goes to what a finding is about: its stage, and its landmark when it names one.
void bw_board_visit(bw_board *board, int finding);

/// Makes the field larger by a factor (1 to 4 in all); what lies at this page point stays there.
void bw_board_zoom(bw_board *board, double times, bw_vec point);

/// Moves the field on the page by points, as far as it goes.
void bw_board_pan(bw_board *board, bw_vec by);

/// Moves the field so that a token is in the picture.
void bw_board_reveal(bw_board *board, int token);

/// The part of the field that is shown.
bw_window bw_board_window(const bw_board *board);

/// The point of the picture nearest to a page point, so far from its edge that a mark is whole there.
bw_vec bw_board_inside(const bw_board *board, bw_vec point);

/// True for a page point outside the picture, as last drawn.
bool bw_board_away(const bw_board *board, bw_vec point);

/// Fills view.token and the words from the state.
void bw_board_say(bw_board *board);

/// Draws the chart, at most `width` by `height` points, with its marks into board->page, and sets
/// view.width, view.height and the tokens' page points.
void bw_board_draw(bw_board *board, double width, double height);

/// The same with its top left corner at (x, y) of a page that is begun.
void bw_board_draw_at(bw_board *board, bw_ink *ink, double x, double y, double width, double height,
                      int parts);

/// The same, only some of it.
enum { BW_PART_GROUND = 1, BW_PART_MARKS = 2 };
void bw_board_draw_part(bw_board *board, double width, double height, int parts);

/// The chart as a picture that explains itself, `width` points wide, into board->page: scheme and team, stage
/// with its call, where the ball is, chart, key, unit, and `edition`, a line saying of when it is ("": none).
void bw_board_picture(bw_board *board, double width, const char *edition);

/// The key of what the chart shows from the corner (x, y) down; its height, points.
double bw_board_put_key(const bw_board *board, bw_ink *ink, double x, double y, double width);

/// Draws the key of what the chart shows, `width` points wide, into board->page; the page's height is
/// in the ink.
void bw_board_key(bw_board *board, double width);

/// Metres in one shown unit.
double bw_board_unit(const bw_board *board);

/// Steps of reaction and everything else that follows from scheme, stage and attackers. Private to
/// the board's own files.
void bw_board_prepare(bw_board *board);

/// Where everyone belongs, for the ball and the attackers as they are, and who is moved where he was
/// put. Private likewise.
void bw_board_place_unit(bw_board *board);

#endif
