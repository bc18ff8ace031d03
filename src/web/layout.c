/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/layout.h"

#include "web/board_rule.h"
#include "web/lesson.h"
#include <stddef.h>

typedef struct field {
    const char *name, *kind;
    size_t offset, size, one; ///< one: bytes of one value
} field;

#define I32(type, name)                                                                            \
    { #name, "i32", offsetof(type, name), sizeof((type *)0)->name, 4 }
#define F64(type, name)                                                                            \
    { #name, "f64", offsetof(type, name), sizeof((type *)0)->name, 8 }
#define TEXT(type, name)                                                                           \
    { #name, "text", offsetof(type, name), sizeof((type *)0)->name, 1 }

static const field ink[] = {
    I32(bw_ink, used),  I32(bw_ink, items),  I32(bw_ink, status),
    F64(bw_ink, width), F64(bw_ink, height),
};
static const field item[] = {
    I32(bw_ink_item, kind),    I32(bw_ink_item, role), I32(bw_ink_item, bytes),
    I32(bw_ink_item, numbers), I32(bw_ink_item, text), I32(bw_ink_item, style),
    I32(bw_ink_item, align),   F64(bw_ink_item, size), F64(bw_ink_item, dash),
};
static const field token[] = {
    I32(bw_token, kind),  I32(bw_token, index),  I32(bw_token, pinned), I32(bw_token, twin),
    I32(bw_token, away),  I32(bw_token, moved),  F64(bw_token, px),     F64(bw_token, py),
    F64(bw_token, at_x),  F64(bw_token, at_y),   F64(bw_token, reach),  F64(bw_token, x),
    F64(bw_token, y),     F64(bw_token, late),   TEXT(bw_token, code),  TEXT(bw_token, name),
    TEXT(bw_token, duty), TEXT(bw_token, place), TEXT(bw_token, call),  TEXT(bw_token, label),
};
static const field view[] = {
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
    {"token", "token", offsetof(bw_board_view, token), sizeof((bw_board_view *)0)->token,
     sizeof(bw_token)},
};
static const field knob[] = {
    F64(bw_board_knob, low),   F64(bw_board_knob, high),     F64(bw_board_knob, step),
    F64(bw_board_knob, value), TEXT(bw_board_knob, key),     TEXT(bw_board_knob, name),
    TEXT(bw_board_knob, unit), TEXT(bw_board_knob, meaning),
};
static const field stop[] = {
    I32(bw_lesson_stop, made),   F64(bw_lesson_stop, pause),    F64(bw_lesson_stop, come),
    TEXT(bw_lesson_stop, place), TEXT(bw_lesson_stop, caption),
};
static const field lessons[] = {
    I32(bw_lesson_view, lesson),    I32(bw_lesson_view, stop),     I32(bw_lesson_view, stop_count),
    I32(bw_lesson_view, recording), I32(bw_lesson_view, playing),  F64(bw_lesson_view, seconds),
    F64(bw_lesson_view, at),        TEXT(bw_lesson_view, name),    TEXT(bw_lesson_view, about),
    TEXT(bw_lesson_view, now),      TEXT(bw_lesson_view, caption), TEXT(bw_lesson_view, refused),
    TEXT(bw_lesson_view, spot),     TEXT(bw_lesson_view, call),
};
/// The stops lie behind the lessons' own fields; the page reads them one by one, when they change.
static const field stops[] = {
    {"stops", "stop", offsetof(bw_lesson_view, stops), sizeof((bw_lesson_view *)0)->stops,
     sizeof(bw_lesson_stop)},
};
static const field finding[] = {
    I32(bw_finding, severity),
    TEXT(bw_finding, pointer),
    TEXT(bw_finding, message),
    TEXT(bw_finding, remedy),
};
static const field error[] = {
    I32(bw_error, status),
    TEXT(bw_error, pointer),
    TEXT(bw_error, message),
};

_Static_assert(sizeof(bw_severity) == 4 && sizeof(bw_status) == 4, "enumerations are read as i32");
_Static_assert(sizeof(bw_ink) % 8 == 0 && sizeof(bw_ink_item) % 8 == 0, "doubles follow the heads");

static const struct block {
    const char *name;
    size_t size;
    const field *fields;
    int count;
} blocks[] = {
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

static void put_quoted(bw_text *out, const char *word) {
    bw_put_char(out, '"');
    bw_put(out, word);
    bw_put_char(out, '"');
}

static void put_block(bw_text *out, const struct block *block) {
    put_quoted(out, block->name);
    bw_put(out, ":{\"size\":");
    bw_put_int(out, (long long)block->size);
    bw_put(out, ",\"fields\":{");
    for (int i = 0; i < block->count; i++) {
        const field *f = &block->fields[i];
        if (i > 0) bw_put_char(out, ',');
        put_quoted(out, f->name);
        bw_put(out, ":[");
        bw_put_int(out, (long long)f->offset);
        bw_put_char(out, ',');
        put_quoted(out, f->kind);
        bw_put_char(out, ',');
        bw_put_int(out, (long long)(f->size / f->one));
        bw_put_char(out, ']');
    }
    bw_put(out, "}}");
}

void bw_put_layout(bw_text *out) {
    bw_put_char(out, '{');
    for (int i = 0; i < BW_COUNT(blocks); i++) {
        if (i > 0) bw_put_char(out, ',');
        put_block(out, &blocks[i]);
    }
    bw_put_char(out, '}');
}
