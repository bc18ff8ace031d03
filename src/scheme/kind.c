/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/kind.h"

#include "core/base.h"

#define PICTURE(name) "this is a picture (" name "), not a scheme; a scheme is a .json file"

/// The first bytes as each format's own specification has them.
static const struct {
    const char *first;
    size_t length;
    const char *second; ///< four bytes at byte 8, or NULL
    const char *words;
} kinds[] = {
    {"\x89PNG\r\n\x1a\n", 8, NULL, PICTURE("PNG")},
    {"\xff\xd8\xff", 3, NULL, PICTURE("JPEG")},
    {"GIF87a", 6, NULL, PICTURE("GIF")},
    {"GIF89a", 6, NULL, PICTURE("GIF")},
    {"RIFF", 4, "WEBP", PICTURE("WebP")},
    {"%PDF-", 5, NULL, "this is a PDF, not a scheme; a scheme is a .json file"},
    {"SQLite format 3", 16, NULL,
     "this is a database, as a team file is, not a scheme; a scheme is a .json file"},
    {"PK\x03\x04", 4, NULL,
     "this is a packed file (zip, or an office document), not a scheme; a scheme is a .json file"},
};

static bool same(const char *a, const char *b, size_t length) {
    for (size_t i = 0; i < length; i++) {
        if (a[i] != b[i]) return false;
    }
    return true;
}

const char *bw_file_kind(const char *bytes, size_t length) {
    for (int k = 0; k < BW_COUNT(kinds); k++) {
        const char *second = kinds[k].second;
        if (length < kinds[k].length || !same(bytes, kinds[k].first, kinds[k].length)) continue;
        if (!second || (length >= 12 && same(bytes + 8, second, 4))) return kinds[k].words;
    }
    return NULL;
}
