/* SPDX-License-Identifier: GPL-3.0-or-later */
/// PNG of one page.
#include "paint/cairo_page.h"
#include "paint/paint.h"
#include "paint/whole_file.h"

static cairo_status_t write_bytes(void *closure, const unsigned char *data, unsigned length) {
    FILE *stream = closure;
    return fwrite(data, 1, length, stream) == length ? CAIRO_STATUS_SUCCESS
                                                     : CAIRO_STATUS_WRITE_ERROR;
}

static bw_status write_png(cairo_surface_t *surface, const char *path, bw_text *why) {
    bw_whole_file file;
    bw_status status = bw_whole_open(&file, path, why);
    if (status != BW_OK) return status;
    const cairo_status_t cairo =
        cairo_surface_write_to_png_stream(surface, write_bytes, file.stream);
    if (cairo != CAIRO_STATUS_SUCCESS) {
        bw_put(why, "Cannot write ");
        bw_put(why, path);
        bw_put(why, ": ");
        bw_put(why, cairo_status_to_string(cairo));
        bw_put(why, ".");
        status = BW_FILE;
    }
    return bw_whole_close(&file, status, why);
}

bw_status bw_paint_png(const char *path, const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme,
                       double dpi, bw_text *why) {
    if (!(dpi >= BW_DPI_MIN && dpi <= BW_DPI_MAX)) {
        bw_put(why, "The resolution has to be between ");
        bw_put_int(why, BW_DPI_MIN);
        bw_put(why, " and ");
        bw_put_int(why, BW_DPI_MAX);
        bw_put(why, " dots per inch.");
        return BW_BAD_INPUT;
    }
    const double scale = dpi / 72;
    const int width = (int)(ink->width * scale + 0.5), height = (int)(ink->height * scale + 0.5);
    cairo_surface_t *surface = cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height);
    cairo_t *cr = cairo_create(surface);
    cairo_scale(cr, width / ink->width, height / ink->height);
    bw_status status = bw_cairo_page(cr, ink, fonts, theme, NULL, why);
    if (status == BW_OK) status = write_png(surface, path, why);
    cairo_destroy(cr);
    cairo_surface_destroy(surface);
    return status;
}
