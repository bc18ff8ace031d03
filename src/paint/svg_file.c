/* SPDX-License-Identifier: GPL-3.0-or-later */
/// SVG of one page with the font inside, so that it looks the same wherever it is opened.
#include "draw/svg.h"
#include "paint/paint.h"
#include "paint/whole_file.h"

#include <stdlib.h>

static size_t base64_size(size_t bytes) {
    return (bytes + 2) / 3 * 4;
}

static void put_base64(bw_text *out, const unsigned char *data, size_t size) {
    static const char digits[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    for (size_t i = 0; i < size; i += 3) {
        const unsigned b = i + 1 < size ? data[i + 1] : 0, c = i + 2 < size ? data[i + 2] : 0;
        const unsigned bits = (unsigned)data[i] << 16 | b << 8 | c;
        const char four[4] = {digits[bits >> 18], digits[bits >> 12 & 63],
                              i + 1 < size ? digits[bits >> 6 & 63] : '=',
                              i + 2 < size ? digits[bits & 63] : '='};
        bw_put_n(out, four, 4);
    }
}

static void put_face(bw_text *out, int bold) {
    size_t size;
    const unsigned char *data = bw_font_file(bold, &size);
    bw_put(out, "@font-face{font-family:" BW_SVG_FAMILY ";font-weight:");
    bw_put(out, bold ? "700" : "400");
    bw_put(out, ";src:url(data:font/otf;base64,");
    put_base64(out, data, size);
    bw_put(out, ")}");
}

bw_status bw_paint_svg(const char *path, const bw_ink *ink, const bw_theme *theme, bw_text *why) {
    size_t regular, bold;
    bw_font_file(0, &regular);
    bw_font_file(1, &bold);
    const size_t style_room = base64_size(regular) + base64_size(bold) + 256;
    // An item of ink grows less than eightfold as text: 9 bytes a number against 8, and its attributes.
    const size_t room = style_room + 8 * (size_t)ink->used + 4096;
    char *style_data = malloc(style_room), *data = malloc(room);
    bw_status status = ink->status == BW_OK && style_data && data ? BW_OK : BW_NO_ROOM;
    if (status != BW_OK) {
        bw_put(why, BW_NO_MEMORY_SENTENCE);
    } else {
        bw_text style = bw_text_in(style_data, style_room);
        bw_text out = bw_text_in(data, room);
        put_face(&style, 0);
        put_face(&style, 1);
        bw_svg(ink, theme, style.data, &out);
        BW_ASSERT(!style.full && !out.full);
        bw_whole_file file;
        status = bw_whole_open(&file, path, why);
        if (status == BW_OK) {
            fwrite(out.data, 1, out.used, file.stream);
            status = bw_whole_close(&file, status, why);
        }
    }
    free(style_data);
    free(data);
    return status;
}
