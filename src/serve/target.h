/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The target of a request line, as it came: a plain path and named values. Nothing is cleaned up:
/// what is not plain is refused, for there is nothing here whose address is not.
#ifndef BW_SERVE_TARGET_H
#define BW_SERVE_TARGET_H

#include "core/base.h"

enum { BW_PATH_SIZE = 64, BW_VALUE_NAME_SIZE = 16, BW_VALUE_SIZE = 96, BW_MAX_VALUES = 16 };

typedef struct bw_named_value {
    char name[BW_VALUE_NAME_SIZE]; ///< small letters
    char value[BW_VALUE_SIZE];     ///< printable ASCII, already decoded
} bw_named_value;

typedef struct bw_target {
    char path[BW_PATH_SIZE]; ///< begins with "/"; letters, digits, "-", "_", "." and single "/"
    int value_count;
    bw_named_value values[BW_MAX_VALUES];
} bw_target;

/// Reads "/api/jobs?kind=test&late=20%2C30". BW_BAD_INPUT: not of that form (two slashes, two dots,
/// "%" in the path, a whole address, a name twice ...); BW_LIMIT: too long or too many values.
bw_status bw_target_read(const char *text, bw_target *target);

/// The value with this name, or NULL.
const char *bw_target_value(const bw_target *target, const char *name);

/// A whole number in [low, high], `standard` when the value is not there. False when it is none.
bool bw_target_number(const bw_target *target, const char *name, int low, int high, int standard,
                      int *out);

#endif
