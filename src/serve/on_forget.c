/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Forgetting a player from the page: first the places that speak of him, then what the coach chose.
#include "report/team_json.h"
#include "serve/route.h"
#include "serve/team_desk.h"
#include "serve/team_form.h"
#include "team/forget.h"

static bw_reply tell_places(const bw_places *places) {
    bw_reply_json out;
    if (places->count > BW_SENT_PLACES)
        return bw_reply_words(422, "There are more places than this page can show; use breakwater "
                                   "team forget.");
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_bool(&out.json, "named", places->named);
    bw_json_places(&out.json, places, NULL);
    return bw_reply_json_end(&out, 200);
}

bw_reply bw_on_places(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_places places;
    bw_sent_forget sent;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_READ, bw_form_forget, &sent, &answer);
    if (!team) return answer;
    const bw_status status = bw_team_places(team, sent.jersey, sent.name, &places, &error);
    answer = status == BW_OK ? tell_places(&places) : bw_desk_refusal(&error);
    bw_places_drop(&places);
    bw_team_close(team);
    return answer;
}

static bw_reply tell_forgotten(const bw_forgotten *what) {
    bw_reply_json out;
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_number(&out.json, "splits", what->splits);
    bw_json_put_number(&out.json, "quiz_results", what->quizzes);
    bw_json_put_number(&out.json, "breaks", what->marks);
    bw_json_put_number(&out.json, "texts", what->texts);
    bw_json_put_number(&out.json, "left", what->left);
    return bw_reply_json_end(&out, 200);
}

bw_reply bw_on_forget(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_forgotten what;
    bw_sent_forget sent;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_forget, &sent, &answer);
    if (!team) return answer;
    const bw_forget_how how = {sent.name, sent.strike, sent.seen, sent.places};
    const bw_status status = bw_team_forget(team, sent.jersey, &how, &what, &error);
    bw_team_close(team);
    return status == BW_OK ? tell_forgotten(&what) : bw_desk_refusal(&error);
}
