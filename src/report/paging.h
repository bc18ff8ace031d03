/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages filled from top to bottom. The whole is walked through for each page wanted and only that one
/// drawn; what stands before it is measured, which takes next to no time.
#ifndef BW_REPORT_PAGING_H
#define BW_REPORT_PAGING_H

#include "report/teach.h"

typedef struct bw_paging {
    const bw_teach *teach;
    bw_format format;
    bw_ink *out;   ///< where the wanted page is drawn
    int wanted;    ///< its number from 1; 0: only count
    int pages;     ///< of the whole, for the feet
    int page;      ///< being filled; after bw_paging_end how many there are
    uint32_t keys; ///< of this page and of those that carry it on
    bool charts, estimate;
    bool scaled;      ///< the page has its scale bar
    const char *head; ///< stands at the top of pages that carry it on
    bw_ink *ink;      ///< NULL while the page is not wanted: measure only
    double x, width;  ///< of the text
    double y, bottom; ///< next free line, and where the foot begins
    bw_sheet sheet;
    char foot[3 * BW_NAME_SIZE];
} bw_paging;

/// What fills the pages of a kind of paper, from the first to the last.
typedef void bw_paging_walk(bw_paging *p);

/// How many pages a walk fills.
int bw_paging_count(const bw_teach *teach, bw_paging_walk *walk);

/// Draws page 1 to `pages` of a walk. BW_NOT_FOUND: no such page; BW_NO_ROOM: it does not fit the ink.
bw_status bw_paging_draw(const bw_teach *teach, bw_paging_walk *walk, int page, int pages,
                         bw_ink *ink);

/// Starts a page. `keys` (bw_key_entry) for a page with charts, 0 for one without. `head` must live as long
/// as the page and those that carry it on; `estimate` marks it as a model's.
void bw_paging_page(bw_paging *p, uint32_t keys, const char *head, bool estimate);

/// Sees to it that `height` is left on the page, by going on to the next when it is not.
void bw_paging_room(bw_paging *p, double height);

/// A line at the head of a piece, bold, with the words below it kept on its page.
void bw_paging_heading(bw_paging *p, bw_tag tag, double size, const char *text);

/// A paragraph across the page, going on to the next where it must; `after` points are left below.
void bw_paging_text(bw_paging *p, bw_role role, double after, const char *text);

/// Draws the scale bar, once a page; all charts of a page have one scale.
void bw_paging_scale(bw_paging *p, double scale);

#endif
