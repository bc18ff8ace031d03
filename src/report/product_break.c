/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Products about a break: the test report, and the answer moment by moment.
#include "report/pages.h"
#include "report/product_part.h"
#include "report/test_json.h"

/// Plays the breaks; the first must have a result.
static bw_status play(bw_order *o, bool alone, bool weak, bw_text *why) {
    const int count = bw_test_set(&o->scheme, &o->def, o->seconds, alone, o->trials);
    o->trials[0].effort.with_weak = weak;
    const bw_status status = bw_order_run(o, count);
    if (status != BW_OK) return status;
    const bw_trial *first = o->trials;
    o->report = (bw_report){.ground = &o->ground,
                            .headline = first,
                            .standard = first,
                            .standard_count = count > 1 ? count : 0};
    if (first->status == BW_OK) return BW_OK;
    bw_put(why, first->why[0] ? first->why : "the break could not be tested");
    bw_put_char(why, '.');
    return first->status;
}

static bw_status report_page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_report_page(&o->report, number, o->paper, ink);
}

static bw_status report_text(const void *self, bw_text *out) {
    bw_report_text(&((const bw_order *)self)->report, out);
    return BW_OK;
}

static bool report_json(const void *self, FILE *out) {
    bw_test_json(out, &((const bw_order *)self)->report);
    return true;
}

bw_status bw_open_test(bw_order *o, bw_document *out, bw_text *why) {
    const bw_status status = play(o, o->alone, true, why);
    if (status != BW_OK) return status;
    out->pages.count = bw_report_pages(&o->report);
    out->pages.page = report_page;
    out->room = BW_REPORT_BYTES;
    out->text = report_text;
    out->json = report_json;
    return BW_OK;
}

static bw_status strip_page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_strip_page(&o->strip, number, o->paper, ink);
}

bw_status bw_open_strip(bw_order *o, bw_document *out, bw_text *why) {
    bw_status status = play(o, true, false, why);
    if (status != BW_OK) return status;
    status = bw_strip_build(o->trials, &o->strip);
    if (status != BW_OK) {
        bw_put(why, "no shot fits into ");
        bw_put_int(why, o->seconds);
        bw_put(why, " s, so there is nothing to draw; give more seconds.");
        return status;
    }
    out->pages.count = bw_strip_pages(&o->strip);
    out->pages.page = strip_page;
    return BW_OK;
}
