/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The text of a scheme file in memory.
#ifndef BW_FILE_SOURCE_H
#define BW_FILE_SOURCE_H

#include <stddef.h>

/// The text a scheme was read from, kept so that later findings can name line and column.
typedef struct bw_source {
    char *text;
    size_t length;
} bw_source;

#endif
