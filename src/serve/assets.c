/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/assets.h"

#include "core/base.h"
#include <string.h>

/// The bytes of an embedded file lie from its symbol up to the one that ends it.
#define EMBEDDED(name) extern const unsigned char bw_board_##name[], bw_board_##name##_end[]
EMBEDDED(page);
EMBEDDED(script);
EMBEDDED(style);
EMBEDDED(core);
EMBEDDED(regular);
EMBEDDED(bold);
EMBEDDED(example);
EMBEDDED(worker);
EMBEDDED(icon);
EMBEDDED(file);
#define BYTES(name) bw_board_##name, bw_board_##name##_end

static const bw_asset assets[] = {
    {"/", "text/html; charset=utf-8", BYTES(page)},
    {"/board.js", "text/javascript; charset=utf-8", BYTES(script)},
    {"/board.css", "text/css; charset=utf-8", BYTES(style)},
    {"/core.wasm", "application/wasm", BYTES(core)},
    {"/regular.otf", "font/otf", BYTES(regular)},
    {"/bold.otf", "font/otf", BYTES(bold)},
    {"/example.json", "application/json", BYTES(example)},
    {"/worker.js", "text/javascript; charset=utf-8", BYTES(worker)},
    {"/icon.svg", "image/svg+xml", BYTES(icon)},
};

static const bw_asset one_file = {"/breakwater-board.html", "text/html; charset=utf-8",
                                  BYTES(file)};

const bw_asset *bw_asset_at(int index) {
    return index >= 0 && index < BW_COUNT(assets) ? &assets[index] : NULL;
}

const bw_asset *bw_asset_find(const char *path) {
    for (int i = 0; i < BW_COUNT(assets); i++) {
        if (strcmp(assets[i].path, path) == 0) return &assets[i];
    }
    return NULL;
}

size_t bw_asset_length(const bw_asset *asset) {
    return (size_t)(asset->end - asset->begin);
}

const bw_asset *bw_asset_one_file(void) {
    return &one_file;
}
