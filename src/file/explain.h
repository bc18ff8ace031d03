/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Why a text is not JSON, in words that say what would be right. jansson's own name tokens.
#ifndef BW_FILE_EXPLAIN_H
#define BW_FILE_EXPLAIN_H

#include "file/document.h"
#include <jansson.h>

/// Writes the sentence of an error whose pointer is known, and its status. `at` is the byte at fault,
/// from bw_locate_offset.
void bw_explain(const bw_source *source, size_t at, const json_error_t *why, bw_error *error);

#endif
