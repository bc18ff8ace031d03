/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Between a place in the text and a place in the document, for text that may be broken.
#ifndef BW_FILE_LOCATE_H
#define BW_FILE_LOCATE_H

#include "file/document.h"

/// Fills the pointer, line and column of an error at a byte offset: the innermost value that has
/// begun there. Works on any bytes; a pointer that could not be shown is left empty. Returns the
/// offset of the byte that line and column name.
size_t bw_locate_offset(const bw_source *source, size_t offset, bw_error *error);

#endif
