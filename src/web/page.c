/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/page.h"

#include "core/level.h"
#include "core/text.h"
#include "draw/svg.h"
#include "scheme/kind.h"
#include "scheme/tree_build.h"
#include "web/export.h"
#include "web/layout.h"

/// The one board, in no other memory than the module's own.
static bw_board board;
static char layout[12288];
static char name[3 * BW_NAME_SIZE];

bw_board *bw_page_board(void) {
    return &board;
}

BW_EXPORT(bw_page_layout)
const char *bw_page_layout(void) {
    bw_text out = bw_text_in(layout, sizeof layout);
    bw_put_layout(&out);
    BW_ASSERT(!out.full);
    bw_board_reset(&board);
    return layout;
}

BW_EXPORT(bw_page_view)
const bw_board_view *bw_page_view(void) {
    return &board.view;
}

BW_EXPORT(bw_page_findings)
const bw_finding *bw_page_findings(void) {
    return board.findings;
}

BW_EXPORT(bw_page_error)
const bw_error *bw_page_error(void) {
    return &board.error;
}

BW_EXPORT(bw_page_ink)
const void *bw_page_ink(void) {
    return board.page;
}

BW_EXPORT(bw_page_input)
char *bw_page_input(void) {
    return board.input;
}

BW_EXPORT(bw_page_input_room)
int bw_page_input_room(void) {
    return sizeof board.input;
}

BW_EXPORT(bw_page_output)
const char *bw_page_output(void) {
    return board.output;
}

static size_t given(int length) {
    BW_ASSERT(length >= 0 && length <= (int)sizeof board.input);
    return (size_t)length;
}

BW_EXPORT(bw_page_feed)
void bw_page_feed(int event, double value) {
    bw_tree_feed(&board.tree, event, board.input, sizeof board.input, value);
}

BW_EXPORT(bw_page_kind)
const char *bw_page_kind(int length) {
    const char *kind = bw_file_kind(board.input, given(length));
    return kind ? kind : "";
}

BW_EXPORT(bw_page_take)
int bw_page_take(int keep) {
    return (int)bw_board_take(&board, keep != 0);
}

BW_EXPORT(bw_page_save)
int bw_page_save(void) {
    return board.open ? bw_board_save(&board) : 0;
}

BW_EXPORT(bw_page_stage)
void bw_page_stage(int stage) {
    if (board.open && stage >= 0 && stage < board.scheme.stage_count) bw_board_show(&board, stage);
}

BW_EXPORT(bw_page_mode)
void bw_page_mode(int mode) {
    if (board.open && mode >= BW_BOARD_PLAY && mode <= BW_BOARD_PINS)
        bw_board_set_mode(&board, (bw_board_mode)mode);
}

BW_EXPORT(bw_page_mirror)
void bw_page_mirror(int mirrored) {
    board.mirrored = mirrored != 0;
}

BW_EXPORT(bw_page_danger)
void bw_page_danger(int danger) {
    board.danger = danger != 0;
}

BW_EXPORT(bw_page_lines)
void bw_page_lines(int lines) {
    board.lines = lines == BW_PASS_SOLID ? BW_PASS_SOLID : BW_RUN_SOLID;
}

BW_EXPORT(bw_page_attack)
void bw_page_attack(int set, int men) {
    if (board.open && men <= BW_MAX_ATTACKERS) bw_board_attack(&board, set, men);
}

BW_EXPORT(bw_page_ball_to)
void bw_page_ball_to(int landmark) {
    if (board.open && landmark >= 0 && landmark < board.scheme.landmark_count)
        bw_board_ball_to(&board, landmark);
}

/// A token there is, and a place that is one.
static bool movable(int token, bw_vec at) {
    return board.open && token >= 0 &&
           token < BW_BOARD_MEN + board.plan.spots + board.attacker_count && bw_page_number(at.x) &&
           bw_page_number(at.y);
}

BW_EXPORT(bw_page_drag)
void bw_page_drag(int token, double px, double py) {
    if (movable(token, bw_v(px, py))) bw_board_drag(&board, token, bw_v(px, py));
}

BW_EXPORT(bw_page_put)
void bw_page_put(int token, double x, double y) {
    if (movable(token, bw_v(x, y)))
        bw_board_move(&board, token, bw_scale(bw_v(x, y), bw_board_unit(&board)));
}

BW_EXPORT(bw_page_nudge)
void bw_page_nudge(int token, double dx, double dy) {
    if (movable(token, bw_v(dx, dy)) && (dx != 0 || dy != 0))
        bw_board_nudge(&board, token, bw_scale(bw_v(dx, dy), bw_board_unit(&board)));
}

BW_EXPORT(bw_page_unpin)
void bw_page_unpin(int spot) {
    if (board.open) bw_board_unpin(&board, spot);
}

BW_EXPORT(bw_page_visit)
void bw_page_visit(int finding) {
    if (board.open && finding >= 0 && finding < board.view.finding_count)
        bw_board_visit(&board, finding);
}

BW_EXPORT(bw_page_run)
void bw_page_run(double seconds) {
    if (board.open && bw_page_number(seconds)) bw_board_run(&board, seconds);
}

BW_EXPORT(bw_page_settle)
void bw_page_settle(void) {
    if (board.open) bw_board_settle(&board);
}

BW_EXPORT(bw_page_say)
void bw_page_say(void) {
    bw_board_say(&board);
}

BW_EXPORT(bw_page_draw)
void bw_page_draw(double width, double height) {
    if (bw_page_number(width) && bw_page_number(height)) bw_board_draw(&board, width, height);
}

BW_EXPORT(bw_page_draw_part)
void bw_page_draw_part(double width, double height, int parts) {
    if (bw_page_number(width) && bw_page_number(height))
        bw_board_draw_part(&board, width, height, parts);
}

BW_EXPORT(bw_page_picture)
void bw_page_picture(double width, int edition) {
    if (!board.open || !(width >= 300 && width <= 2000)) return;
    if (edition < 0 || edition >= (int)sizeof board.input) return;
    board.input[edition] = '\0';
    bw_board_picture(&board, width, board.input);
}

BW_EXPORT(bw_page_key)
void bw_page_key(double width) {
    if (bw_page_number(width)) bw_board_key(&board, width);
}

static bool known(int theme) {
    return theme >= 0 && theme < BW_THEME_COUNT;
}

BW_EXPORT(bw_page_svg)
int bw_page_svg(int theme, int style) {
    if (!board.open || !known(theme) || style < 0 || style >= (int)sizeof board.input) return 0;
    bw_text out = bw_text_in(board.output, sizeof board.output);
    board.input[style] = '\0';
    bw_svg((const bw_ink *)board.page, bw_theme_at((bw_theme_id)theme), board.input, &out);
    return out.full ? 0 : (int)out.used;
}

static const char *stage_name(const bw_stage *stage) {
    bw_text out = bw_text_in(name, sizeof name);
    bw_put_int(&out, stage->defenders);
    bw_put(&out, " in");
    return name;
}

static const char *about_scheme(const bw_scheme *scheme, int index) {
    switch (index) {
    case BW_ABOUT_ID: return scheme->id;
    case BW_ABOUT_NAME: return scheme->name;
    case BW_ABOUT_TEAM: return scheme->team;
    case BW_ABOUT_LEVEL: return bw_level_at(scheme->level)->name;
    default: return "";
    }
}

BW_EXPORT(bw_page_name)
const char *bw_page_name(int list, int index) {
    const bw_scheme *scheme = &board.scheme;
    if (index < 0) return "";
    if (list == BW_LIST_ROLES) return index < BW_ROLE_COUNT ? bw_role_name((bw_role)index) : "";
    if (!board.open) return "";
    switch (list) {
    case BW_LIST_STAGES:
        return index < scheme->stage_count ? stage_name(&scheme->stages[index]) : "";
    case BW_LIST_LANDMARKS:
        return index < scheme->landmark_count ? scheme->landmarks[index].name : "";
    case BW_LIST_SHAPES: return index < scheme->stage_count ? scheme->stages[index].shape : "";
    case BW_LIST_SETS: return bw_board_set_id(&board, index);
    case BW_LIST_SCHEME: return about_scheme(scheme, index);
    default: return "";
    }
}

BW_EXPORT(bw_page_colour)
int bw_page_colour(int theme, int role) {
    if (!known(theme) || role < 0 || role >= BW_ROLE_COUNT) return 0;
    return (int)bw_theme_at((bw_theme_id)theme)->colour[role];
}

BW_EXPORT(bw_page_weight)
double bw_page_weight(int theme) {
    return known(theme) ? bw_theme_at((bw_theme_id)theme)->weight : 1;
}

BW_EXPORT(bw_page_theme)
const char *bw_page_theme(int theme) {
    return known(theme) ? bw_theme_at((bw_theme_id)theme)->id : "";
}
