/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The review of what was seen. With the model beside it, and as pages, it is a run (work.c).
#include "core/text.h"
#include "report/review_board.h"
#include "serve/route.h"
#include "serve/team_desk.h"
#include "serve/work.h"
#include <stdlib.h>

/// The team is ours to close.
static bw_reply write(bw_team *team, bw_order *order) {
    char room[BW_MESSAGE_SIZE];
    bw_text why = bw_text_in(room, sizeof room);
    bw_document review;
    bw_bytes bytes;
    order->team = team;
    order->units = BW_YARDS;
    bw_status status = bw_product_open(bw_product_find("review"), order, &review, &why);
    bw_team_close(team);
    if (status != BW_OK) return bw_desk_refusal(&order->error);
    status = bw_work_json(&review, &bytes);
    bw_document_close(&review);
    return status == BW_OK ? bw_reply_bytes("application/json", bytes) : bw_reply_no_memory();
}

bw_reply bw_on_review(bw_site *site, bw_ask *ask) {
    const char *as = bw_target_value(&ask->target, "as");
    bw_reply answer;
    int width;
    if (!bw_target_number(&ask->target, "width", BW_REVIEW_NARROW, BW_REVIEW_WIDE, BW_REVIEW_WIDE,
                          &width) ||
        (as && !bw_same(as, "page")))
        return bw_reply_words(400, "width is from 300 to 640, and as can be page.");
    bw_order *order = calloc(1, sizeof *order);
    if (!order) return bw_reply_no_memory();
    order->width = as ? width : 0;
    bw_team *team = bw_desk_open(site, ask, BW_TEAM_READ, &answer);
    if (team) answer = write(team, order);
    free(order);
    return answer;
}
