/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Between a place in the text and a place in the document, for text that may be broken.
#ifndef BW_FILE_LOCATE_H
#define BW_FILE_LOCATE_H

#include "file/source.h"
#include "scheme/error.h"

/// Fills the pointer, line and column of an error at a byte offset: the innermost value that has
/// begun there. Works on any bytes; a pointer that could not be shown is left empty. Returns the
/// offset of the byte that line and column name.
size_t bw_locate_offset(const bw_source *source, size_t offset, bw_error *error);

/// Line and column of the value a JSON Pointer names; of its nearest existing parent when it is
/// not there. Columns count characters.
void bw_source_locate(const bw_source *source, const char *pointer, int *line, int *column);

#endif
