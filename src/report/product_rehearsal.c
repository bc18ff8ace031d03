/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice script and plan of the stages asked for.
#include "report/product_part.h"
#include <stdlib.h>

static bw_status page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_rehearsal_page(&o->rehearsal, number, o->paper, ink);
}

static bw_status put_text(const void *self, bw_text *out) {
    bw_rehearsal_text(&((const bw_order *)self)->rehearsal, out);
    return BW_OK;
}

static bool put_json(const void *self, FILE *out) {
    bw_rehearsal_json(out, &((const bw_order *)self)->rehearsal);
    return true;
}

static bw_status build(const bw_order *o, bw_rehearsal_stage *stage, void *memory, bw_text *why) {
    const int index = stage->script.stage;
    const bw_status status = bw_script_build(&o->scheme, index, o->plain ? NULL : &o->weak, memory,
                                             bw_script_size(), &stage->script, why);
    if (status != BW_OK) {
        bw_put_char(why, '.');
        return BW_BAD_INPUT;
    }
    stage->def = o->practice;
    stage->def.spots = o->scheme.stages[index].defenders;
    for (int p = 0; p < BW_PACE_COUNT; p++)
        stage->def.lap_s[p] = stage->script.seconds[p];
    return bw_practice_plan(&stage->def, &stage->plan);
}

bw_status bw_open_rehearsal(bw_order *o, bw_document *out, bw_text *why) {
    bw_rehearsal *r = &o->rehearsal;
    void *memory = malloc(bw_script_size());
    bw_status status = memory ? BW_OK : BW_NO_ROOM;
    r->scheme = &o->scheme;
    for (int i = 0; i < r->stage_count && status == BW_OK; i++)
        status = build(o, &r->stages[i], memory, why);
    free(memory);
    if (status != BW_OK) return status;
    out->pages.count = bw_rehearsal_pages(r);
    out->pages.page = page;
    out->room = BW_REHEARSAL_BYTES;
    out->text = put_text;
    out->json = put_json;
    return BW_OK;
}
