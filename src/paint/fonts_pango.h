/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The inside of bw_fonts, for the painters of this room.
#ifndef BW_PAINT_FONTS_PANGO_H
#define BW_PAINT_FONTS_PANGO_H

#include <ft2build.h>
#include FT_FREETYPE_H
#include <pango/pangocairo.h>

struct bw_fonts {
    int files[2];       ///< descriptors of the in-memory font files, open to the end of the program
    FT_Library library; ///< of this set alone; has the faces open
    PangoFontMap *map;
    PangoFontDescription *faces[2]; ///< regular, bold
    struct bw_fonts *next;          ///< among those nobody has
};

#endif
