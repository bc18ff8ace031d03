/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/handout.h"

#include "report/handout_parts.h"
#include "report/html.h"

/// The page made by tools/build-handout.mjs (cmake/Pages.cmake embeds it).
extern const unsigned char bw_handout_template[], bw_handout_template_end[];

/// "Port Merrow Terns: Harbour".
static void handout_title(const bw_handout_job *job) {
    const bw_scheme *scheme = job->teach->scheme;
    if (scheme->team[0]) {
        bw_put_html(job->out, scheme->team);
        bw_put(job->out, ": ");
    }
    bw_put_html(job->out, scheme->name);
}

static void put_date(const bw_handout_job *job) {
    bw_put_html(job->out, job->teach->date);
}

static const struct piece {
    const char *name;
    void (*put)(const bw_handout_job *job);
} pieces[] = {
    {"title", handout_title},      {"date", put_date},
    {"marks", bw_handout_marks},   {"key", bw_handout_key},
    {"stages", bw_handout_stages}, {"answers", bw_handout_answers},
    {"data", bw_handout_data},
};

/// Length of the mark "{{name}}" at `s`, with the piece it asks for; 0 when there is none.
static size_t mark_at(const char *s, const struct piece **piece) {
    for (int i = 0; s[0] == '{' && s[1] == '{' && i < BW_COUNT(pieces); i++) {
        const size_t length = bw_text_length(pieces[i].name);
        size_t k = 0;
        while (k < length && s[2 + k] == pieces[i].name[k])
            k++;
        if (k < length || s[2 + k] != '}' || s[3 + k] != '}') continue;
        *piece = &pieces[i];
        return length + 4;
    }
    return 0;
}

bw_status bw_handout(const bw_teach *teach, bw_ink *ink, bw_text *out) {
    bw_handout_job job = {.teach = teach, .ink = ink, .out = out};
    for (int s = 0; s < teach->scheme->stage_count; s++)
        bw_plan_build(teach->scheme, s, &job.plan[s]);
    // One zero byte follows what is embedded, so a mark may be looked for up to the end.
    const char *at = (const char *)bw_handout_template;
    const char *end = (const char *)bw_handout_template_end, *from = at;
    while (at < end) {
        const struct piece *piece = NULL;
        const size_t length = mark_at(at, &piece);
        if (length == 0) {
            at++;
            continue;
        }
        bw_put_n(out, from, (size_t)(at - from));
        piece->put(&job);
        from = at += length;
    }
    bw_put_n(out, from, (size_t)(end - from));
    return out->full || ink->status != BW_OK ? BW_NO_ROOM : BW_OK;
}
