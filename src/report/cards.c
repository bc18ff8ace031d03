/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sheets of cards: where each lies, front and back, and where to cut.
#include "report/cards.h"

#include "draw/key.h"
#include "draw/path.h"
#include "report/card.h"
#include "trial/words.h"

static const double quiet = 3 * 72 / 25.4; // edge of a card that stays empty
static const double mark_gap = 2;          // from a card to its cut marks
static const double mark_long = 8;

/// How the cards of a sheet lie.
typedef struct lay {
    int columns, rows;
    double x, y; ///< of the first one's corner
} lay;

static bw_sheet open_sheet(const bw_teach *teach, int page, int pages, bw_ink *ink,
                           const char *name) {
    const bw_format format = bw_teach_format(teach);
    const bw_foot foot = {.name = name,
                          .keys = BW_KEY_YOU | BW_KEY_BALL,
                          .charts = true,
                          .date = teach->date,
                          .page = page,
                          .pages = pages};
    return bw_sheet_open(ink, &format, &foot);
}

static lay lay_out(const bw_teach *teach, const bw_box *block) {
    const double marks = 2 * (mark_gap + mark_long);
    lay l = {.columns = (int)((block->width - marks) / teach->card_width),
             .rows = (int)((block->height - marks) / teach->card_height)};
    l.x = block->x + (block->width - l.columns * teach->card_width) / 2;
    l.y = block->y + (block->height - l.rows * teach->card_height) / 2;
    return l;
}

/// A card at (x, y) less its quiet edge.
static bw_box inside_of(const bw_teach *teach, double x, double y) {
    return (bw_box){x + quiet, y + quiet, teach->card_width - 2 * quiet,
                    teach->card_height - 2 * quiet};
}

int bw_cards_on_sheet(const bw_teach *teach) {
    const bw_sheet sheet = open_sheet(teach, 1, 1, NULL, "");
    const lay l = lay_out(teach, &sheet.block);
    const bw_pocket_card card = {.scheme = teach->scheme, .inside = inside_of(teach, 0, 0)};
    return bw_card_holds(&card) ? l.columns * l.rows : 0;
}

/// Card number `index` of all that are wanted into *card; false when there are not so many.
static bool find_card(const bw_teach *teach, int index, bw_pocket_card *card) {
    for (int s = 0; s < teach->scheme->stage_count; s++) {
        const int only = bw_teach_spot(teach, s);
        for (int i = 0; i < teach->scheme->stages[s].defenders; i++) {
            if (only != -1 && only != i) continue;
            if (index-- > 0) continue;
            *card = (bw_pocket_card){.scheme = teach->scheme, .stage = s, .spot = i};
            return true;
        }
    }
    return false;
}

int bw_cards_pages(const bw_teach *teach) {
    const int each = bw_cards_on_sheet(teach);
    int cards = 0;
    bw_pocket_card card;
    while (find_card(teach, cards, &card))
        cards++;
    return each > 0 ? 2 * ((cards + each - 1) / each) : 0;
}

/// A pair of lines out of each end of every cut, none inside a card.
static void put_marks(bw_ink *ink, const bw_teach *teach, const lay *l) {
    const double right = l->x + l->columns * teach->card_width;
    const double bottom = l->y + l->rows * teach->card_height;
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.75);
    for (int c = 0; c <= l->columns; c++) {
        const double x = l->x + c * teach->card_width;
        bw_path_segment(ink, bw_v(x, l->y - mark_gap), bw_v(x, l->y - mark_gap - mark_long));
        bw_path_segment(ink, bw_v(x, bottom + mark_gap), bw_v(x, bottom + mark_gap + mark_long));
    }
    for (int r = 0; r <= l->rows; r++) {
        const double y = l->y + r * teach->card_height;
        bw_path_segment(ink, bw_v(l->x - mark_gap, y), bw_v(l->x - mark_gap - mark_long, y));
        bw_path_segment(ink, bw_v(right + mark_gap, y), bw_v(right + mark_gap + mark_long, y));
    }
}

bw_status bw_cards_page(const bw_teach *teach, int page, int pages, bw_ink *ink) {
    if (page < 1 || page > pages) return BW_NOT_FOUND;
    const bool back = page % 2 == 0;
    char name[3 * BW_NAME_SIZE];
    bw_text t = bw_text_in(name, sizeof name);
    bw_put(&t, back ? "Back. " : "Front. ");
    bw_say_owner(teach->scheme, &t);
    bw_sheet sheet = open_sheet(teach, page, pages, ink, name);
    const lay l = lay_out(teach, &sheet.block);
    const int each = l.columns * l.rows;
    if (each == 0) return BW_NOT_FOUND;
    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    put_marks(ink, teach, &l);
    bw_ink_end(ink);
    bw_pocket_card card;
    for (int i = 0; i < each && find_card(teach, (page - 1) / 2 * each + i, &card); i++) {
        const int along = i % l.columns, down = i / l.columns;
        // Turned over the long edge, left comes to lie where right was.
        const int column = back ? l.columns - 1 - along : along;
        card.inside =
            inside_of(teach, l.x + column * teach->card_width, l.y + down * teach->card_height);
        if (back)
            bw_card_back(ink, &card);
        else
            bw_card_front(ink, &card);
        const double scale = i == 0 ? bw_card_scale(&card, back) : 0;
        if (scale > 0) bw_sheet_scale(&sheet, teach->scheme->units, scale);
    }
    const bw_format format = bw_teach_format(teach);
    bw_sheet_close(&sheet, &format);
    return (bw_status)ink->status;
}
