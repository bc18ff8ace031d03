/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/layout.h"

#include "trial/trial.h"
#include "web/abi.h"
#include "web/board_rule.h"
#include "web/lesson.h"
#include "web/log.h"
#include "web/page_list.h"
#include "web/tester_say.h"

#define I32 BW_ABI_I32
#define F64 BW_ABI_F64
#define TEXT BW_ABI_TEXT
#define NAMED BW_ABI_VALUE

static const bw_abi_field ink[] = {
    I32(bw_ink, used),  I32(bw_ink, items),  I32(bw_ink, status),
    F64(bw_ink, width), F64(bw_ink, height),
};
static const bw_abi_field item[] = {
    I32(bw_ink_item, kind),    I32(bw_ink_item, role), I32(bw_ink_item, bytes),
    I32(bw_ink_item, numbers), I32(bw_ink_item, text), I32(bw_ink_item, style),
    I32(bw_ink_item, align),   F64(bw_ink_item, size), F64(bw_ink_item, dash),
};
static const bw_abi_field token[] = {
    I32(bw_token, kind),  I32(bw_token, index),  I32(bw_token, pinned), I32(bw_token, twin),
    I32(bw_token, away),  I32(bw_token, moved),  F64(bw_token, px),     F64(bw_token, py),
    F64(bw_token, at_x),  F64(bw_token, at_y),   F64(bw_token, reach),  F64(bw_token, x),
    F64(bw_token, y),     F64(bw_token, late),   TEXT(bw_token, code),  TEXT(bw_token, name),
    TEXT(bw_token, duty), TEXT(bw_token, place), TEXT(bw_token, call),  TEXT(bw_token, label),
};
static const bw_abi_field view[] = {
    I32(bw_board_view, token_count),
    I32(bw_board_view, finding_count),
    I32(bw_board_view, stage),
    I32(bw_board_view, landmark),
    I32(bw_board_view, running),
    I32(bw_board_view, mirrored),
    I32(bw_board_view, mode),
    I32(bw_board_view, danger),
    I32(bw_board_view, attackers),
    I32(bw_board_view, metres),
    I32(bw_board_view, set),
    I32(bw_board_view, own_set),
    I32(bw_board_view, lines),
    I32(bw_board_view, ground),
    I32(bw_board_view, can_add),
    I32(bw_board_view, can_keep),
    I32(bw_board_view, ghosts),
    I32(bw_board_view, moved),
    F64(bw_board_view, zoom),
    F64(bw_board_view, width),
    F64(bw_board_view, height),
    TEXT(bw_board_view, title),
    TEXT(bw_board_view, caption),
    TEXT(bw_board_view, last),
    BW_ABI_BLOCKS(bw_board_view, token, "token", bw_token),
};
static const bw_abi_field knob[] = {
    F64(bw_board_knob, low),   F64(bw_board_knob, high),     F64(bw_board_knob, step),
    F64(bw_board_knob, value), TEXT(bw_board_knob, key),     TEXT(bw_board_knob, name),
    TEXT(bw_board_knob, unit), TEXT(bw_board_knob, meaning),
};
static const bw_abi_field stop[] = {
    I32(bw_lesson_stop, made),   F64(bw_lesson_stop, pause),    F64(bw_lesson_stop, come),
    TEXT(bw_lesson_stop, place), TEXT(bw_lesson_stop, caption),
};
static const bw_abi_field lessons[] = {
    I32(bw_lesson_view, lesson),    I32(bw_lesson_view, stop),     I32(bw_lesson_view, stop_count),
    I32(bw_lesson_view, recording), I32(bw_lesson_view, playing),  F64(bw_lesson_view, seconds),
    F64(bw_lesson_view, at),        TEXT(bw_lesson_view, name),    TEXT(bw_lesson_view, about),
    TEXT(bw_lesson_view, now),      TEXT(bw_lesson_view, caption), TEXT(bw_lesson_view, refused),
    TEXT(bw_lesson_view, spot),     TEXT(bw_lesson_view, call),
};
/// The stops lie behind the lessons' own fields; the page reads them one by one, when they change.
static const bw_abi_field stops[] = {
    BW_ABI_BLOCKS(bw_lesson_view, stops, "stop", bw_lesson_stop),
};
static const bw_abi_field finding[] = {
    I32(bw_finding, severity),
    TEXT(bw_finding, pointer),
    TEXT(bw_finding, message),
    TEXT(bw_finding, remedy),
};
static const bw_abi_field error[] = {
    I32(bw_error, status),
    TEXT(bw_error, pointer),
    TEXT(bw_error, message),
};

_Static_assert(sizeof(bw_severity) == 4 && sizeof(bw_status) == 4, "enumerations are read as i32");
_Static_assert(sizeof(bw_ink) % 8 == 0 && sizeof(bw_ink_item) % 8 == 0, "doubles follow the heads");

static const bw_abi_block blocks[] = {
    {"ink", sizeof(bw_ink), ink, BW_COUNT(ink)},
    {"item", sizeof(bw_ink_item), item, BW_COUNT(item)},
    {"token", sizeof(bw_token), token, BW_COUNT(token)},
    {"view", sizeof(bw_board_view), view, BW_COUNT(view)},
    {"knob", sizeof(bw_board_knob), knob, BW_COUNT(knob)},
    {"stop", sizeof(bw_lesson_stop), stop, BW_COUNT(stop)},
    {"lessons", sizeof(bw_lesson_view), lessons, BW_COUNT(lessons)},
    {"stops", sizeof(bw_lesson_view), stops, BW_COUNT(stops)},
    {"finding", sizeof(bw_finding), finding, BW_COUNT(finding)},
    {"error", sizeof(bw_error), error, BW_COUNT(error)},
};

static const bw_abi_value list[] = {
    NAMED(BW_LIST_, STAGES), NAMED(BW_LIST_, LANDMARKS), NAMED(BW_LIST_, SETS),
    NAMED(BW_LIST_, ROLES),  NAMED(BW_LIST_, SHAPES),    NAMED(BW_LIST_, SCHEME),
};
static const bw_abi_value about[] = {
    NAMED(BW_ABOUT_, ID),
    NAMED(BW_ABOUT_, NAME),
    NAMED(BW_ABOUT_, TEAM),
    NAMED(BW_ABOUT_, LEVEL),
};
static const bw_abi_value kind[] = {
    NAMED(BW_TOKEN_, BALL),
    NAMED(BW_TOKEN_, DEFENDER),
    NAMED(BW_TOKEN_, ATTACKER),
    NAMED(BW_TOKEN_, KEEPER),
};
static const bw_abi_value part[] = {NAMED(BW_PART_, GROUND), NAMED(BW_PART_, MARKS)};
static const bw_abi_value mode[] = {NAMED(BW_BOARD_, PLAY), NAMED(BW_BOARD_, HOMES),
                                    NAMED(BW_BOARD_, PINS)};
static const bw_abi_value set[] = {NAMED(BW_SET_, NONE), NAMED(BW_SET_, OWN)};
static const bw_abi_value crease[] = {NAMED(BW_CREASE_, FARTHEST), NAMED(BW_CREASE_, NONE)};
static const bw_abi_value theme[] = {NAMED(BW_THEME_, CHART), NAMED(BW_THEME_, SUN),
                                     NAMED(BW_THEME_, DARK), NAMED(BW_THEME_, MONO)};
static const bw_abi_value lines[] = {NAMED(BW_, RUN_SOLID), NAMED(BW_, PASS_SOLID)};
static const bw_abi_value ink_kind[] = {
    NAMED(BW_INK_, FILL), NAMED(BW_INK_, STROKE), NAMED(BW_INK_, TEXT),
    NAMED(BW_INK_, CLIP), NAMED(BW_INK_, UNCLIP),
};
static const bw_abi_value verb[] = {NAMED(BW_, MOVE), NAMED(BW_, LINE), NAMED(BW_, CURVE),
                                    NAMED(BW_, SHUT)};
static const bw_abi_value cap[] = {NAMED(BW_CAP_, FLAT), NAMED(BW_CAP_, ROUND)};
static const bw_abi_value weight[] = {NAMED(BW_, REGULAR), NAMED(BW_, BOLD)};
static const bw_abi_value align[] = {NAMED(BW_, LEFT_ALIGN), NAMED(BW_, CENTRE_ALIGN),
                                     NAMED(BW_, RIGHT_ALIGN)};
static const bw_abi_value word[] = {
    NAMED(BW_TEST_WORD_, SITUATION), NAMED(BW_TEST_WORD_, LATE_MEN), NAMED(BW_TEST_WORD_, WORTH),
    NAMED(BW_TEST_WORD_, BOUGHT),    NAMED(BW_TEST_WORD_, PLATEAU),  NAMED(BW_TEST_WORD_, MISSING),
    NAMED(BW_TEST_WORD_, ANSWER),    NAMED(BW_TEST_WORD_, FAULTS),   NAMED(BW_TEST_WORD_, LIMIT),
    NAMED(BW_TEST_WORD_, STEP),      NAMED(BW_TEST_WORD_, ROTATION), NAMED(BW_TEST_WORD_, COST),
    NAMED(BW_TEST_WORD_, BEHIND),    NAMED(BW_TEST_WORD_, RANGE),    NAMED(BW_TEST_WORD_, PROGRESS),
    NAMED(BW_TEST_WORD_, COMPARE),   NAMED(BW_TEST_WORD_, LATE_MAN), NAMED(BW_TEST_WORD_, OWNER),
    NAMED(BW_TEST_WORD_, LEVEL),     NAMED(BW_TEST_WORD_, LEVELS),   NAMED(BW_TEST_WORD_, FILM),
    NAMED(BW_TEST_WORD_, REFUSAL),
};
static const bw_abi_value figure[] = {
    NAMED(BW_TEST_, BEST),        NAMED(BW_TEST_, TYPICAL),     NAMED(BW_TEST_, ERROR),
    NAMED(BW_TEST_, SETTLED),     NAMED(BW_TEST_, LATE_S),      NAMED(BW_TEST_, EVEN_S),
    NAMED(BW_TEST_, PLATEAU),     NAMED(BW_TEST_, BOUGHT_S),    NAMED(BW_TEST_, HOLDS),
    NAMED(BW_TEST_, MISSING_S),   NAMED(BW_TEST_, ANSWER_S),    NAMED(BW_TEST_, ANSWER_WORTH),
    NAMED(BW_TEST_, ROLLOUTS),    NAMED(BW_TEST_, STEP_KIND),   NAMED(BW_TEST_, STEP_WHO),
    NAMED(BW_TEST_, STEP_AT),     NAMED(BW_TEST_, STEP_END),    NAMED(BW_TEST_, STEP_CHANCE),
    NAMED(BW_TEST_, WEAK_COST),   NAMED(BW_TEST_, WEAK_USE),    NAMED(BW_TEST_, WEAK_CHANCE),
    NAMED(BW_TEST_, WEAK_MOVING), NAMED(BW_TEST_, WEAK_SET),    NAMED(BW_TEST_, FILM_STEP),
    NAMED(BW_TEST_, ASK_OFFENCE), NAMED(BW_TEST_, ASK_DEFENCE), NAMED(BW_TEST_, ASK_SET),
    NAMED(BW_TEST_, ASK_START),   NAMED(BW_TEST_, ASK_LATE),    NAMED(BW_TEST_, PART),
    NAMED(BW_TEST_, PART_DONE),   NAMED(BW_TEST_, PART_OF),
};
static const bw_abi_value trial_part[] = {
    NAMED(BW_TRIAL_, TYPICAL), NAMED(BW_TRIAL_, EVEN), NAMED(BW_TRIAL_, BEST),
    NAMED(BW_TRIAL_, WEAK),    NAMED(BW_TRIAL_, DONE),
};
static const bw_abi_value log_field[] = {
    NAMED(BW_LOG_, OFFENCE), NAMED(BW_LOG_, DEFENCE), NAMED(BW_LOG_, OUTCOME),
    NAMED(BW_LOG_, SECONDS), NAMED(BW_LOG_, PASSES),  NAMED(BW_LOG_, SHOT_X),
    NAMED(BW_LOG_, SHOT_Y),
};
static const bw_abi_value outcome[] = {NAMED(BW_LOG_OUTCOME_, ID), NAMED(BW_LOG_OUTCOME_, WORDS),
                                       NAMED(BW_LOG_OUTCOME_, SHOT)};

#define ENUMERATION(name)                                                                          \
    { #name, name, BW_COUNT(name) }

static const bw_abi_enumeration enumerations[] = {
    ENUMERATION(list),       ENUMERATION(about),     ENUMERATION(kind),    ENUMERATION(part),
    ENUMERATION(mode),       ENUMERATION(set),       ENUMERATION(crease),  ENUMERATION(theme),
    ENUMERATION(lines),      ENUMERATION(ink_kind),  ENUMERATION(verb),    ENUMERATION(cap),
    ENUMERATION(weight),     ENUMERATION(align),     ENUMERATION(word),    ENUMERATION(figure),
    ENUMERATION(trial_part), ENUMERATION(log_field), ENUMERATION(outcome),
};

void bw_put_layout(bw_text *out) {
    bw_put_abi(out, blocks, BW_COUNT(blocks), enumerations, BW_COUNT(enumerations));
}
