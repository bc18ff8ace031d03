/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Two entries cairo 1.16 leaves out of a tagged PDF's catalogue: that it is tagged, without which
/// readers ignore the tags, and its language (ISO 32000-1, 14.7.1 and 14.9.2). Private to this room.
#ifndef BW_PAINT_PDF_CATALOG_H
#define BW_PAINT_PDF_CATALOG_H

#include <stdbool.h>
#include <stdio.h>

/// Adds them to a finished PDF open for reading and writing. Only a file whose catalogue is its last
/// object is changed (cairo's always is); false when it is not, and the file is as it was.
bool bw_pdf_mark_tagged(FILE *file, const char *language);

#endif
