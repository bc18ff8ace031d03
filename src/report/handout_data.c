/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The block of data the hand-out's program reads: {"format", "version", "edition", "passSolid", "spot",
/// "weak": [[stage, from, to, spot, weakness], ...], "scheme": {...}}: landmarks by index, "from" -1 for
/// no landmark.
#include "core/quiz_code.h"
#include "report/handout_parts.h"
#include "report/html.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include <stdlib.h>

/// A spot not late himself still has half the weakness: the unit turns with him.
static const double with_the_unit = 0.5;

static double weakness(const bw_weak *weak, double most, int spot) {
    const double share = most > 0 ? weak->cost / most : 0;
    for (int i = 0; i < weak->men; i++) {
        if (weak->man[i].spot == spot) return share;
    }
    return share * with_the_unit;
}

static void put_weak(const bw_handout_job *job) {
    const bw_weak_list *list = job->teach->weak;
    const double most = list->count > 0 ? list->weak[0].cost : 0;
    bw_text *out = job->out;
    bool comma = false;
    for (int i = 0; i < list->count; i++) {
        const bw_weak *weak = &list->weak[i];
        if (weak->to_at < 0) continue;
        for (int s = 0; s < job->teach->scheme->stages[weak->stage].defenders; s++) {
            bw_put(out, comma ? ",[" : "[");
            comma = true;
            bw_put_int(out, weak->stage);
            bw_put_char(out, ',');
            bw_put_int(out, weak->from_at);
            bw_put_char(out, ',');
            bw_put_int(out, weak->to_at);
            bw_put_char(out, ',');
            bw_put_int(out, s);
            bw_put_char(out, ',');
            bw_put_number(out, weakness(weak, most, s), 3);
            bw_put_char(out, ']');
        }
    }
}

/// The scheme as players get it: without the coach's notes.
static void put_scheme(const bw_handout_job *job, bw_scheme *scheme, bw_text *text) {
    *scheme = *job->teach->scheme;
    scheme->notes[0] = '\0';
    bw_scheme_write(scheme, text);
    bw_text *out = job->out;
    bw_put(out, "{\"format\":\"breakwater-handout\",\"version\":1,\"edition\":");
    bw_put_int(out, bw_quiz_document(text->data, text->used));
    bw_put(out, ",\"passSolid\":");
    bw_put(out, job->ink->lines == BW_PASS_SOLID ? "true" : "false");
    bw_put(out, ",\"spot\":\"");
    bw_put(out, job->teach->spot ? job->teach->spot : "");
    bw_put(out, "\",\"weak\":[");
    put_weak(job);
    bw_put(out, "],\"scheme\":");
    bw_put_html_json(out, text->data);
    bw_put_char(out, '}');
}

void bw_handout_data(const bw_handout_job *job) {
    bw_scheme *scheme = malloc(sizeof *scheme);
    char *memory = malloc(BW_DOCUMENT_BYTES);
    if (scheme && memory) {
        bw_text text = bw_text_in(memory, BW_DOCUMENT_BYTES);
        put_scheme(job, scheme, &text);
        job->out->full = job->out->full || text.full;
    } else {
        job->out->full = true;
    }
    free(memory);
    free(scheme);
}
