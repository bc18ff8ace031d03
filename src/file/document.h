/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Scheme files on disk: reading with line and column, writing whole or not at all. jansson parses.
#ifndef BW_FILE_DOCUMENT_H
#define BW_FILE_DOCUMENT_H

#include "core/scheme.h"
#include "file/source.h"
#include "scheme/tree.h"
#include <stddef.h>

/// Reads a scheme file; "-" is standard input. On failure *error says why in one sentence
/// (BW_BAD_INPUT, BW_LIMIT, or BW_FILE when it cannot be read) and *source is empty.
bw_status bw_document_load(const char *path, bw_scheme *scheme, bw_source *source, bw_error *error);

/// The same, with all that is wrong that can be told at once (scheme/read.h): the first `room`, and in
/// *count how many there are; 0 when it could be read.
bw_status bw_document_examine(const char *path, bw_scheme *scheme, bw_source *source,
                              bw_error *errors, int room, int *count);

/// Reads any JSON into a tree, which keeps the limits (scheme/tree.h). On failure *error says why, with
/// line and column.
bw_status bw_tree_parse(const char *text, size_t length, bw_tree *tree, bw_error *error);

/// Reads a scheme from text in memory.
/// The text may hold anything; it is not changed.
bw_status bw_document_parse(const char *text, size_t length, bw_scheme *scheme, bw_error *error);

void bw_source_drop(bw_source *source);

/// Writes bytes to a temporary file beside `path`, flushes, renames. Nothing half-written is ever
/// seen under the name. "-" writes to standard output.
bw_status bw_file_save(const char *path, const void *bytes, size_t length, bw_error *error);

/// Whether bw_file_save could write there now, as far as one can know without doing it: for work that
/// takes minutes. Leaves everything as it was.
bw_status bw_file_can_save(const char *path, bw_error *error);

/// Writes a scheme in canonical form.
bw_status bw_document_save(const char *path, const bw_scheme *scheme, bw_error *error);

#endif
