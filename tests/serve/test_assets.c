/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the program carries is the page: whole, of the right kinds, and found by exact path only.
#include "harness.h"
#include "serve/assets.h"
#include <stdbool.h>

static void every_part_is_there(void) {
    int count = 0;
    for (; bw_asset_at(count); count++) {
        const bw_asset *asset = bw_asset_at(count);
        CHECK(asset->path[0] == '/');
        CHECK(bw_asset_length(asset) > 400);
        CHECK(bw_asset_find(asset->path) == asset);
    }
    CHECK_INT(count, 9);
    CHECK(bw_asset_at(-1) == NULL);
}

static bool begins(const bw_asset *asset, const char *bytes, size_t length) {
    return bw_asset_length(asset) >= length && memcmp(asset->begin, bytes, length) == 0;
}

static bool holds(const bw_asset *asset, const char *words) {
    const size_t n = strlen(words);
    for (const unsigned char *at = asset->begin; at + n <= asset->end; at++) {
        if (memcmp(at, words, n) == 0) return true;
    }
    return false;
}

static void parts_are_what_they_say(void) {
    CHECK(begins(bw_asset_find("/"), "<!doctype html>", 15));
    CHECK(begins(bw_asset_find("/core.wasm"), "\0asm\1\0\0\0", 8));
    CHECK(begins(bw_asset_find("/bold.otf"), "OTTO", 4));
    CHECK(begins(bw_asset_find("/worker.js"), "\"use strict\";", 13));
    CHECK(begins(bw_asset_find("/example.json"), "{", 1));
    CHECK(begins(bw_asset_find("/icon.svg"), "<svg ", 5));
    CHECK(begins(bw_asset_one_file(), "<!doctype html>", 15));
}

/// The served page has no script in it and names its parts by relative addresses; the one file needs
/// no other.
static void the_page_comes_in_two_forms(void) {
    const bw_asset *page = bw_asset_find("/");
    CHECK(holds(page, "<script type=\"module\" src=\"board.js\"></script>"));
    CHECK(holds(page, "script-src 'self' 'wasm-unsafe-eval'"));
    CHECK(!holds(page, "unsafe-inline") && !holds(page, "'unsafe-eval'") &&
          !holds(page, "<script>"));
    CHECK(!holds(bw_asset_one_file(), "src=\"board.js\""));
}

static void other_paths_are_not_there(void) {
    const char *wrong[] = {"",
                           "board.js",
                           "/board.js/",
                           "//board.js",
                           "/BOARD.JS",
                           "/index.html",
                           "/../etc/passwd",
                           "/board.js?",
                           "/breakwater-board.html"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++)
        CHECK(bw_asset_find(wrong[i]) == NULL);
}

int main(int argc, char **argv) {
    RUN(every_part_is_there);
    RUN(parts_are_what_they_say);
    RUN(the_page_comes_in_two_forms);
    RUN(other_paths_are_not_there);
    return test_report(argc, argv);
}
