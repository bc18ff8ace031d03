/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Why a text is not JSON, in words that say what would be right. jansson's own name tokens.
#ifndef BW_FILE_EXPLAIN_H
#define BW_FILE_EXPLAIN_H

#include "file/source.h"
#include "scheme/error.h"
#include <jansson.h>

/// Writes the sentence of an error whose pointer is known, and its status. `at` is the byte at fault,
/// from bw_locate_offset.
void bw_explain(const bw_source *source, size_t at, const json_error_t *why, bw_error *error);

/// Whether jansson puts a refusal's position before the byte at fault rather than behind it: it gives that
/// byte back, or has not counted it, when it stands in a text and may not.
bool bw_stops_before(const json_error_t *why);

#endif
