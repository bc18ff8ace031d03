/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is handed out, through a printer that knows black and white only: every word still has both
/// inside its box, and marks that mean something are still there.
#include "harness.h"
#include "paint/paint.h"
#include "report/cards.h"
#include "report/packet.h"
#include "report/quiz_sheet.h"
#include "report/wall.h"
#include "tests/report/pages.h"

enum { DPI = 144 };

/// Least share of a word's box that is ink, and that is not.
static const double least = 0.05;

static bw_scheme terns;
static bw_weak_list weak;
static bw_fonts *fonts;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];
static char why_data[400];
static bw_text why;

typedef bw_status draw_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

/// A page in black and white.
typedef struct picture {
    int width, height;
    uint32_t *pixels; ///< 1 is black
} picture;

static picture print(const bw_ink *ink, const bw_theme *theme) {
    picture p = {.width = (int)(ink->width * DPI / 72), .height = (int)(ink->height * DPI / 72)};
    const size_t count = (size_t)p.width * (size_t)p.height;
    p.pixels = malloc(sizeof *p.pixels * count);
    CHECK_INT(bw_paint_pixels(ink, fonts, theme, p.width, p.height, p.pixels, &why), BW_OK);
    for (size_t i = 0; i < count; i++) {
        const uint32_t c = p.pixels[i];
        const double grey = 0.299 * (c >> 16 & 255) + 0.587 * (c >> 8 & 255) + 0.114 * (c & 255);
        p.pixels[i] = grey < 128;
    }
    return p;
}

/// Share of black in a box of the page.
static double black(const picture *p, bw_box box) {
    const double scale = DPI / 72.0;
    int count = 0, dark = 0;
    for (int y = (int)(box.y * scale); y < (box.y + box.height) * scale; y++) {
        for (int x = (int)(box.x * scale); x < (box.x + box.width) * scale; x++) {
            if (x < 0 || y < 0 || x >= p->width || y >= p->height) continue;
            count++;
            dark += p->pixels[y * p->width + x] != 0;
        }
    }
    return count ? (double)dark / count : 0;
}

/// Words that are no longer there.
static int lost(const bw_ink *ink, const bw_theme *theme) {
    const picture p = print(ink, theme);
    int count = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != BW_INK_TEXT || i->text == 0) continue;
        const double share = black(&p, text_box(i));
        count += share < least || share > 1 - least;
    }
    free(p.pixels);
    return count;
}

static void check_pages(const bw_teach *teach, draw_page *draw, int pages) {
    const bw_theme *theme = bw_theme_at(BW_THEME_CHART);
    for (int page = 1; page <= pages; page += pages > 8 ? 4 : 1) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        CHECK_INT(draw(teach, page, pages, ink), BW_OK);
        CHECK_INT(lost(ink, theme), 0);
        // The ball is no word, and is still there.
        const picture p = print(ink, theme);
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
            if (i->kind != BW_INK_FILL || i->role != BW_ROLE_BALL || draw == bw_wall_page) continue;
            const bw_box box = path_box(i);
            CHECK(black(&p, box) > 0.4);
        }
        free(p.pixels);
    }
}

static void nothing_is_lost_in_black_and_white(void) {
    made_up_weak(&terns, &weak);
    const bw_teach teach = {.scheme = &terns,
                            .weak = &weak,
                            .date = "2026-04-18",
                            .seed = 1,
                            .card_width = BW_CARD_WIDTH,
                            .card_height = BW_CARD_HEIGHT};
    check_pages(&teach, bw_packet_page, bw_packet_pages(&teach));
    check_pages(&teach, bw_cards_page, 2);
    check_pages(&teach, bw_quiz_page, bw_quiz_pages(&teach));
    check_pages(&teach, bw_wall_page, 1);

    // The test can fail: words in a pale grey are lost.
    bw_theme pale = *bw_theme_at(BW_THEME_CHART);
    pale.colour[BW_ROLE_SOFT_TEXT] = 0x909090;
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_packet_page(&teach, 9, bw_packet_pages(&teach), ink), BW_OK);
    CHECK(lost(ink, &pale) > 5);
}

int main(int argc, char **argv) {
    why = bw_text_in(why_data, sizeof why_data);
    fonts = bw_fonts_open(&why);
    CHECK(fonts != NULL);
    if (fonts && load_terns(&terns)) RUN(nothing_is_lost_in_black_and_white);
    bw_fonts_close(fonts);
    return test_report(argc, argv);
}
