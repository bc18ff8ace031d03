/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team quiz: result codes put in and listed.
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "cli/team_json.h"
#include "core/text.h"
#include "team/date.h"
#include "team/quiz.h"
#include <stdlib.h>

static int keep(const bw_args *args) {
    bw_quiz_result result = {.time = bw_now()};
    bw_team *team;
    bw_error error;
    bool fresh;
    if (!bw_operand_int(args, 1, "the jersey number", 0, BW_MAX_JERSEY, &result.jersey))
        return BW_EXIT_USAGE;
    if (!bw_copy(result.code, sizeof result.code, args->operands[2]))
        return bw_usage(args->verb, "a result code is at most %d bytes long.",
                        BW_QUIZ_CODE_SIZE - 1);
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_add_quiz(team, &result, &fresh, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("This result of number %d is %s.", result.jersey, fresh ? "kept" : "known already");
    return bw_tell_facts(args, &(bw_fact){"added", fresh, NULL}, 1);
}

static void text_results(FILE *out, const bw_quiz_result *list, int count) {
    for (int i = 0; i < count; i++) {
        char when[32] = "";
        bw_text t = bw_text_in(when, sizeof when);
        if (list[i].time > 0) bw_put_time(&t, list[i].time);
        fprintf(out, "%3d  %-20s  %s\n", list[i].jersey, when, list[i].code);
    }
}

static void json_results(FILE *out, const bw_quiz_result *list, int count) {
    bw_json json = {.stream = out};
    bw_json_open(&json, '{');
    bw_json_key(&json, "quiz_results");
    bw_json_open(&json, '[');
    for (int i = 0; i < count; i++) {
        bw_json_open(&json, '{');
        bw_json_key(&json, "jersey");
        bw_json_number(&json, list[i].jersey);
        bw_json_time(&json, "time", list[i].time);
        bw_json_key(&json, "code");
        bw_json_text(&json, list[i].code);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

int bw_team_edit_quiz(const bw_args *args) {
    bw_team *team;
    bw_error error;
    bw_out out;
    bw_quiz_result *list;
    int count;
    if (args->operand_count == 3) return keep(args);
    if (args->operand_count == 2)
        return bw_usage(args->verb, "give the jersey number and the code, or neither.");
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_quizzes(team, -1, &list, &count, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    code = BW_EXIT_FILE;
    if (bw_out_open(args, &out)) {
        (bw_option_given(args, "json") ? json_results : text_results)(out.stream, list, count);
        code = bw_out_close(&out, BW_EXIT_OK);
    }
    free(list);
    return code;
}
