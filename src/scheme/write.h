/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The canonical form of a scheme: fixed key order, two-space indent, short arrays on one line,
/// lengths in the scheme's own unit with at most four decimals. write(read(write(s))) gives the same
/// bytes, and so does a file that was written here and read back.
#ifndef BW_SCHEME_WRITE_H
#define BW_SCHEME_WRITE_H

#include "core/scheme.h"
#include "core/text.h"

/// Appends the document, with a final newline. out->full tells when it did not fit.
void bw_scheme_write(const bw_scheme *scheme, bw_text *out);

#endif
