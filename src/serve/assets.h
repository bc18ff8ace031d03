/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The page and its parts, as bytes inside the program (board/pages.cmake). There is no other place
/// that a served file can come from.
#ifndef BW_SERVE_ASSETS_H
#define BW_SERVE_ASSETS_H

#include <stddef.h>

typedef struct bw_asset {
    const char *path; ///< as asked for, e.g. "/board.js"
    const char *type; ///< of its content
    const unsigned char *begin, *end;
} bw_asset;

/// Number `index` of those that are served; NULL past the last.
const bw_asset *bw_asset_at(int index);

/// The one at exactly this path, or NULL. "/" is the page.
const bw_asset *bw_asset_find(const char *path);

/// Bytes it has.
size_t bw_asset_length(const bw_asset *asset);

/// The self-contained page, which is saved and handed on rather than served.
const bw_asset *bw_asset_one_file(void);

#endif
