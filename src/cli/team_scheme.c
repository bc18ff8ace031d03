/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team scheme: revisions saved, listed and written out again.
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/text.h"
#include "file/document.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include "team/date.h"
#include "team/revisions.h"
#include <stdlib.h>

static int save(const bw_args *args) {
    static bw_scheme scheme;
    bw_source source;
    bw_error error;
    bw_team *team;
    int64_t revision;
    bool fresh;
    const char *note = bw_option_text(args, "note");
    if (bw_document_load(args->operands[1], &scheme, &source, &error) != BW_OK)
        return bw_say_refusal(args->operands[1], &error);
    bw_source_drop(&source);
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_save_scheme(team, &scheme, bw_now(), note ? note : "", &revision, &fresh, &error) !=
        BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("\"%s\" is %s revision %lld.", scheme.name, fresh ? "now" : "already",
           (long long)revision);
    const bw_fact facts[] = {{"revision", (double)revision, NULL}, {"added", fresh, NULL}};
    return bw_tell_facts(args, facts, BW_COUNT(facts));
}

static void print_revisions(FILE *out, const bw_revision *list, int count) {
    for (int i = 0; i < count; i++) {
        char when[32] = "";
        bw_text t = bw_text_in(when, sizeof when);
        if (list[i].time > 0) bw_put_time(&t, list[i].time);
        fprintf(out, "%4lld  %-20s  %-20s  %s\n", (long long)list[i].id, when, list[i].scheme,
                list[i].note);
    }
}

static void json_revisions(FILE *out, const bw_revision *list, int count) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "revisions", '[');
    for (int i = 0; i < count; i++) {
        bw_json_open(&json, '{');
        bw_json_put_number(&json, "revision", (double)list[i].id);
        bw_json_put_text(&json, "scheme", list[i].scheme);
        bw_json_time(&json, "time", list[i].time);
        bw_json_put_text(&json, "hash", list[i].hash);
        bw_json_put_text(&json, "note", list[i].note);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

static int list(const bw_args *args, bw_team *team) {
    bw_revision *all;
    bw_error error;
    int count;
    if (bw_team_revisions(team, &all, &count, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_out out;
    int code = BW_EXIT_FILE;
    if (bw_out_open(args, &out)) {
        (bw_option_given(args, "json") ? json_revisions : print_revisions)(out.stream, all, count);
        code = bw_out_close(&out, BW_EXIT_OK);
    }
    if (count == 0) bw_say("There is no scheme in %s yet.", args->operands[0]);
    free(all);
    return code;
}

static int write_out(const bw_args *args, bw_team *team, int revision) {
    static bw_scheme scheme;
    static char bytes[BW_DOCUMENT_BYTES];
    bw_error error;
    if (bw_team_scheme(team, revision, &scheme, NULL, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_text text = bw_text_in(bytes, sizeof bytes);
    bw_scheme_write(&scheme, &text);
    return bw_out_bytes(args, bytes, text.used);
}

int bw_team_edit_scheme(const bw_args *args) {
    if (args->operand_count > 1) return save(args);
    int revision = 0;
    bw_team *team;
    if (!bw_option_int(args, "revision", 1, 1000000, &revision)) return BW_EXIT_USAGE;
    const int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    return revision > 0 ? write_out(args, team, revision) : list(args, team);
}
