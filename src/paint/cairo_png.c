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

/// Paints onto a new RGB surface over `pixels` (cairo's own memory when NULL). On success the surface
/// is the caller's.
static bw_status paint(const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme, int width,
                       int height, uint32_t *pixels, cairo_surface_t **out, bw_text *why) {
    cairo_surface_t *surface =
        pixels ? cairo_image_surface_create_for_data((unsigned char *)pixels, CAIRO_FORMAT_RGB24,
                                                     width, height, 4 * width)
               : cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height);
    cairo_t *cr = cairo_create(surface);
    cairo_scale(cr, width / ink->width, height / ink->height);
    const bw_status status = bw_cairo_page(cr, ink, fonts, theme, NULL, why);
    cairo_destroy(cr);
    cairo_surface_flush(surface);
    if (status == BW_OK)
        *out = surface;
    else
        cairo_surface_destroy(surface);
    return status;
}

bw_status bw_paint_pixels(const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme, int width,
                          int height, uint32_t *pixels, bw_text *why) {
    cairo_surface_t *surface;
    if (width < 1 || height < 1 || width > 20000 || height > 20000) {
        bw_put(why, "A picture has to be between 1 and 20000 pixels wide and high.");
        return BW_LIMIT;
    }
    const bw_status status = paint(ink, fonts, theme, width, height, pixels, &surface, why);
    if (status == BW_OK) cairo_surface_destroy(surface);
    return status;
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
    cairo_surface_t *surface;
    bw_status status = paint(ink, fonts, theme, width, height, NULL, &surface, why);
    if (status != BW_OK) return status;
    status = write_png(surface, path, why);
    cairo_surface_destroy(surface);
    return status;
}
