/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The review of what was seen. With the model beside it, and as pages, it is a run (work_review.c).
#include "core/text.h"
#include "report/review_board.h"
#include "report/review_data.h"
#include "serve/route.h"
#include "serve/team_desk.h"
#include <stdlib.h>

static bw_reply write(const bw_ask *ask, const bw_review *review, int width) {
    const char *as = bw_target_value(&ask->target, "as");
    bw_bytes bytes = {NULL, 0};
    FILE *out = open_memstream(&bytes.data, &bytes.length);
    bool made = out != NULL;
    if (made && as)
        made = bw_review_board(out, review, width);
    else if (made)
        bw_review_json(out, review);
    if (out && fclose(out) == 0 && made) return bw_reply_bytes("application/json", bytes);
    if (out) free(bytes.data);
    return bw_reply_no_memory();
}

bw_reply bw_on_review(bw_site *site, bw_ask *ask) {
    const char *as = bw_target_value(&ask->target, "as");
    bw_reply answer;
    bw_error error;
    int width;
    if (!bw_target_number(&ask->target, "width", BW_REVIEW_NARROW, BW_REVIEW_WIDE, BW_REVIEW_WIDE,
                          &width) ||
        (as && !bw_same(as, "page")))
        return bw_reply_words(400, "width is from 300 to 640, and as can be page.");
    bw_team *team = bw_desk_open(site, ask, BW_TEAM_READ, &answer);
    if (!team) return answer;
    bw_review_data *data = malloc(sizeof *data);
    if (!data) {
        bw_team_close(team);
        return bw_reply_no_memory();
    }
    const bw_status status = bw_review_load(team, false, BW_YARDS, BW_UNWATCHED, data, &error);
    bw_team_close(team);
    answer = status == BW_OK ? write(ask, &data->review, width) : bw_desk_refusal(&error);
    bw_review_drop(data);
    free(data);
    return answer;
}
