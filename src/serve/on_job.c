/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Heavy runs: started, looked at, cancelled, and their files fetched.
#include "core/text.h"
#include "serve/route.h"
#include <stdlib.h>

static const char *state_name(bw_job_state state) {
    switch (state) {
    case BW_JOB_RUNNING: return "running";
    case BW_JOB_DONE: return "done";
    case BW_JOB_FAILED: return "failed";
    case BW_JOB_CANCELLED: return "cancelled";
    default: return "none";
    }
}

static bw_reply tell(const bw_job_view *view, int status) {
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_number(&out.json, "id", view->id);
    bw_json_put_text(&out.json, "state", state_name(view->state));
    bw_json_put_number(&out.json, "done", view->done);
    bw_json_put_number(&out.json, "count", view->count);
    bw_json_put_text(&out.json, "kind", view->kind->id);
    bw_json_put_text(&out.json, "ending", view->kind->ending);
    bw_json_put_text(&out.json, "message", view->why);
    return bw_reply_json_end(&out, status);
}

static bw_reply no_job(void) {
    return bw_reply_words(404, "There is no such run, or another came after it.");
}

bw_reply bw_on_job_start(bw_site *site, bw_ask *ask) {
    bw_work *work;
    bw_error error;
    const bw_status status =
        bw_work_read(&ask->target, site->team, ask->body, ask->length, &work, &error);
    if (status == BW_NO_ROOM) return bw_reply_error(500, &error);
    if (status != BW_OK) return bw_reply_error(422, &error);
    bw_job_view view;
    if (bw_job_start(&site->job, work, &view)) return tell(&view, 202);
    free(work);
    return bw_reply_words(409, "Another run is going on; wait for it or cancel it first.");
}

bw_reply bw_on_job(bw_site *site, bw_ask *ask) {
    bw_job_view view;
    return bw_job_look(&site->job, ask->id, &view) ? tell(&view, 200) : no_job();
}

bw_reply bw_on_job_cancel(bw_site *site, bw_ask *ask) {
    return bw_job_cancel(&site->job, ask->id) ? bw_reply_words(202, "It will stop.") : no_job();
}

bw_reply bw_on_job_file(bw_site *site, bw_ask *ask) {
    bw_job_view view;
    bw_bytes bytes;
    if (!bw_job_look(&site->job, ask->id, &view)) return no_job();
    if (view.state != BW_JOB_DONE) return bw_reply_words(409, "It is not finished.");
    if (bw_job_result(&site->job, ask->id, &bytes)) return bw_reply_bytes(view.kind->type, bytes);
    if (bw_job_look(&site->job, ask->id, &view)) return bw_reply_no_memory();
    return no_job(); // another began between the two looks
}
