/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team quiz: result codes put in and listed.
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/quiz_code.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "scheme/quiz_words.h"
#include "team/date.h"
#include "team/quiz.h"
#include <stdlib.h>

/// The code as it was typed, in the one way it is kept; says what is wrong with it.
static bool read_code(const char *typed, bw_quiz_result *result) {
    char words[160];
    bw_text why = bw_text_in(words, sizeof words);
    bw_text code = bw_text_in(result->code, sizeof result->code);
    bw_quiz_said said;
    if (bw_quiz_read(typed, bw_text_length(typed), &said, &why) == BW_OK)
        return bw_quiz_write(&said, &code);
    bw_say_error("%s", words);
    return false;
}

static int keep(const bw_args *args) {
    bw_quiz_result result = {.time = bw_now()};
    bw_team *team;
    bw_error error;
    bool fresh;
    if (!bw_operand_int(args, 1, "the jersey number", 0, BW_MAX_JERSEY, &result.jersey))
        return BW_EXIT_USAGE;
    if (!read_code(args->operands[2], &result)) return BW_EXIT_WRONG;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_add_quiz(team, &result, &fresh, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("This result of number %d is %s.", result.jersey, fresh ? "kept" : "known already");
    return bw_tell_facts(args, &(bw_fact){"added", fresh, NULL}, 1);
}

/// "LL, 5 of 8; stands 2.0 yd too deep": what a code says, nothing when it is none of a hand-out's.
static void put_said(const char *code, bw_text *out) {
    bw_quiz_said said;
    char where[80];
    bw_text t = bw_text_in(where, sizeof where);
    if (bw_quiz_read(code, bw_text_length(code), &said, NULL) != BW_OK) return;
    bw_put(out, said.spot);
    bw_put(out, ", ");
    bw_put_int(out, said.right);
    bw_put(out, " of ");
    bw_put_int(out, said.asked);
    if (said.tries < BW_TRIES_FOR_BIAS) return;
    bw_say_offset(BW_YARDS, said.bias, &t);
    bw_put(out, t.used ? "; over " : "; leans to no side over ");
    bw_put_int(out, said.tries);
    bw_put(out, t.used ? " places stands " : " places");
    bw_put(out, where);
}

static void text_results(FILE *out, const bw_quiz_result *list, int count) {
    for (int i = 0; i < count; i++) {
        char when[32] = "", words[160] = "";
        bw_text t = bw_text_in(when, sizeof when);
        if (list[i].time > 0) bw_put_time(&t, list[i].time);
        bw_text said = bw_text_in(words, sizeof words);
        put_said(list[i].code, &said);
        fprintf(out, "%3d  %-20s  %s  %s\n", list[i].jersey, when, list[i].code, words);
    }
}

/// The same as members; none when it says nothing.
static void json_said(bw_json *json, const char *code) {
    bw_quiz_said said;
    if (bw_quiz_read(code, bw_text_length(code), &said, NULL) != BW_OK) return;
    const struct {
        const char *key;
        double value;
    } numbers[] = {{"day", said.day},        {"asked", said.asked},     {"right", said.right},
                   {"places", said.tries},   {"bias_x_m", said.bias.x}, {"bias_y_m", said.bias.y},
                   {"spread_m", said.spread}};
    bw_json_put_text(json, "spot", said.spot);
    for (int i = 0; i < BW_COUNT(numbers); i++) {
        bw_json_key(json, numbers[i].key);
        bw_json_number(json, numbers[i].value);
    }
}

static void json_results(FILE *out, const bw_quiz_result *list, int count) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "quiz_results", '[');
    for (int i = 0; i < count; i++) {
        bw_json_open(&json, '{');
        bw_json_put_number(&json, "jersey", list[i].jersey);
        bw_json_time(&json, "time", list[i].time);
        bw_json_put_text(&json, "code", list[i].code);
        json_said(&json, list[i].code);
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
