/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Writes src/draw/metrics_b612.c: the advance widths of the bundled font, so that the pure drawing
/// code can break lines without a font library. Usage: gen-metrics FONT-FOLDER > metrics_b612.c.
/// tests/paint/test_fonts.c checks that the file in the tree is what this writes.
#include <ft2build.h>
#include FT_FREETYPE_H
#include <stdio.h>
#include <stdlib.h>

static FT_Face open_face(FT_Library library, const char *folder, const char *file) {
    char path[4096];
    FT_Face face;
    snprintf(path, sizeof path, "%s/%s", folder, file);
    if (FT_New_Face(library, path, 0, &face)) {
        fprintf(stderr, "gen-metrics: cannot read the font %s\n", path);
        exit(3);
    }
    return face;
}

/// Advance of a glyph in thousandths of the type size.
static long advance(FT_Face face, FT_UInt glyph) {
    if (FT_Load_Glyph(face, glyph, FT_LOAD_NO_SCALE)) exit(3);
    return (face->glyph->metrics.horiAdvance * 1000 + face->units_per_EM / 2) / face->units_per_EM;
}

int main(int argc, char **argv) {
    FT_Library library;
    if (argc != 2) {
        fprintf(stderr, "usage: gen-metrics FONT-FOLDER\n");
        return 2;
    }
    if (FT_Init_FreeType(&library)) return 3;
    FT_Face regular = open_face(library, argv[1], "B612-Regular.otf");
    FT_Face bold = open_face(library, argv[1], "B612-Bold.otf");

    printf("/* SPDX-License-Identifier: GPL-3.0-or-later */\n"
           "/// Advance widths of B612 in thousandths of the type size, by rising code point. "
           "Regular and\n"
           "/// Bold share them (where they differ by rounding, the wider). Written by\n"
           "/// tools/gen-metrics.c; do not edit.\n"
           "#include \"draw/metrics.h\"\n\n"
           "// clang-format off\n"
           "const bw_glyph_width bw_advances[] = {\n");
    int count = 0;
    FT_UInt glyph;
    for (FT_ULong c = FT_Get_First_Char(regular, &glyph); glyph != 0;
         c = FT_Get_Next_Char(regular, c, &glyph)) {
        const FT_UInt other = FT_Get_Char_Index(bold, c);
        const int private_use = c >= 0xE000 && c <= 0xF8FF;
        if (c < 0x20 || private_use || c > 0xFFFF || other == 0) continue;
        const long a = advance(regular, glyph), b = advance(bold, other);
        printf("%s{0x%04lX, %ld},%s", count % 6 == 0 ? "    " : " ", c, a > b ? a : b,
               count % 6 == 5 ? "\n" : "");
        count++;
    }
    printf("%s};\n// clang-format on\n\nconst int bw_advance_count = %d;\n", count % 6 ? "\n" : "",
           count);
    FT_Done_FreeType(library);
    return 0;
}
