/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Three pages as pictures, against the PNGs in tests/golden/png: what the traces cannot see (the font,
/// the painter). Tolerance: a pixel counts as different when a channel is off by more than 40 of 255,
/// and 1 pixel in 1000 may be. With BW_REGOLDEN set the pictures are written instead.
#include "core/text.h"
#include "draw/book.h"
#include "harness.h"
#include "paint/paint.h"
#include "tests/draw/pages.h"

#include <cairo/cairo.h>

enum { DPI = 60, FAR = 40 };
static const double share = 0.001;

static bw_scheme terns;
static bw_fonts *fonts;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];
static char why_data[400];
static bw_text why;

static int channel_distance(uint32_t a, uint32_t b) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
        const int d = abs((int)(a >> shift & 255) - (int)(b >> shift & 255));
        most = d > most ? d : most;
    }
    return most;
}

/// Share of pixels that differ, or 1 when the sizes do.
static double difference(const uint32_t *pixels, int width, int height, cairo_surface_t *golden) {
    if (cairo_image_surface_get_width(golden) != width ||
        cairo_image_surface_get_height(golden) != height)
        return 1;
    const unsigned char *rows = cairo_image_surface_get_data(golden);
    const int stride = cairo_image_surface_get_stride(golden);
    int different = 0;
    for (int y = 0; y < height; y++) {
        const uint32_t *row = (const uint32_t *)(const void *)(rows + (size_t)y * (size_t)stride);
        for (int x = 0; x < width; x++) {
            different += channel_distance(row[x], pixels[y * width + x]) > FAR;
        }
    }
    return (double)different / (width * height);
}

static bw_ink *draw_page(int page) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_book_page(&terns, page, BW_LETTER, ink), BW_OK);
    return ink;
}

static void check_picture(int page, const char *theme) {
    char name[64];
    snprintf(name, sizeof name, "tests/golden/png/page-%02d-%s.png", page, theme);
    const char *path = tree_path(name);
    const bw_theme *colours = bw_theme_find(theme);
    bw_ink *ink = draw_page(page);
    if (getenv("BW_REGOLDEN")) {
        CHECK_INT(bw_paint_png(path, ink, fonts, colours, DPI, &why), BW_OK);
        return;
    }
    const int width = (int)(ink->width * DPI / 72 + 0.5);
    const int height = (int)(ink->height * DPI / 72 + 0.5);
    uint32_t *pixels = malloc(sizeof *pixels * (size_t)width * (size_t)height);
    CHECK_INT(bw_paint_pixels(ink, fonts, colours, width, height, pixels, &why), BW_OK);
    cairo_surface_t *golden = cairo_image_surface_create_from_png(path);
    CHECK_INT(cairo_surface_status(golden), CAIRO_STATUS_SUCCESS);
    const double found = difference(pixels, width, height, golden);
    if (found > share) fprintf(stderr, "%s: %.4f of the pixels differ\n", name, found);
    CHECK(found <= share);

    // The test can fail: another page, or this one moved by half a point, is not taken for it.
    bw_paint_pixels(draw_page(page + 1), fonts, colours, width, height, pixels, &why);
    CHECK(difference(pixels, width, height, golden) > 10 * share);
    ink = draw_page(page);
    ink->width += 1;
    bw_paint_pixels(ink, fonts, colours, width, height, pixels, &why);
    CHECK(difference(pixels, width, height, golden) > share);
    cairo_surface_destroy(golden);
    free(pixels);
}

static void pages_match_their_pictures(void) {
    check_picture(1, "chart");
    check_picture(8, "chart");
    check_picture(8, "mono");
}

int main(int argc, char **argv) {
    why = bw_text_in(why_data, sizeof why_data);
    fonts = bw_fonts_open(&why);
    CHECK(fonts != NULL);
    if (fonts && load_terns(&terns)) RUN(pages_match_their_pictures);
    bw_fonts_close(fonts);
    return test_report(argc, argv);
}
