/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Limits, status codes and the core's own assertion. Every other core header stands on this one.
#ifndef BW_CORE_BASE_H
#define BW_CORE_BASE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/// Hard limits of one scheme. Fixed so that a scheme is one flat block of memory, copyable and
/// comparable, with no allocation anywhere in the core.
enum {
    BW_MAX_SPOTS = 6,      ///< field defenders in one stage
    BW_MAX_ATTACKERS = 6,  ///< field attackers in one break
    BW_MAX_STAGES = 4,     ///< one each for 3, 4, 5 and 6 defenders
    BW_MAX_LANDMARKS = 24, ///< named ball locations
    BW_MAX_LATE = 4,       ///< defenders still recovering
    BW_MAX_LESSONS = 12,   ///< ordered walks kept in one scheme
    BW_MAX_STOPS = 40,     ///< ball stops in one lesson
    BW_MAX_SETS = 8,       ///< the coach's own attack sets
    BW_ID_SIZE = 16,       ///< bytes of an identifier, terminator included
    BW_NAME_SIZE = 64,     ///< bytes of a name or a call, terminator included
    BW_CAPTION_SIZE = 240, ///< bytes of a caption, terminator included
    BW_NOTES_SIZE = 2000   ///< bytes of the notes, terminator included
};

/// One list of outcomes: identifier, name, sentence. Codes are shared by every room and by JavaScript.
#define BW_STATUS_MAP(X)                                                                           \
    X(OK, "ok", "fine")                                                                            \
    X(BAD_INPUT, "bad-input", "the input is wrong")                                                \
    X(LIMIT, "limit", "a limit was reached")                                                       \
    X(NO_ROOM, "no-room", "the memory handed in is too small")                                     \
    X(NOT_FOUND, "not-found", "there is no such thing")                                            \
    X(UNREACHABLE, "unreachable", "no one can get there")                                          \
    X(FILE, "file", "a file or device failed")

typedef enum bw_status {
#define BW_X(id, name, text) BW_##id,
    BW_STATUS_MAP(BW_X)
#undef BW_X
        BW_STATUS_COUNT
} bw_status;

/// How it is said that memory is not to be had: as part of a sentence, and as one.
#define BW_NO_MEMORY "there is not enough memory"
#define BW_NO_MEMORY_SENTENCE "There is not enough memory."

/// A mistake of ours, never of the person using the program. Alive in every build: it costs one
/// branch, and wasm has no other way to say it.
#define BW_ASSERT(condition) ((condition) ? (void)0 : __builtin_trap())

#define BW_COUNT(array) ((int)(sizeof(array) / sizeof((array)[0])))

/// Exact by international definition.
#define BW_METRES_PER_YARD 0.9144

#endif
