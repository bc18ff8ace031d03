/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a file is that is no scheme, told by its first bytes, so that a refusal can say what was given.
#ifndef BW_SCHEME_KIND_H
#define BW_SCHEME_KIND_H

#include <stddef.h>

/// The sentence about a picture, a PDF, a team file or an archive; NULL for anything else.
const char *bw_file_kind(const char *bytes, size_t length);

#endif
