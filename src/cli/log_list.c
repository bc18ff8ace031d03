/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/log_list.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "report/team_json.h"
#include "team/breaks.h"
#include "trial/season.h"
#include <limits.h>
#include <stdlib.h>
#include <string.h>

/// "17  6v4  shot saved, 7 s, 3 passes, shot from 4.0 yd left, 9.0 yd out, out of place: TL  (note)".
static void print_entry(FILE *out, const bw_entry *e, bw_units units) {
    char line[512];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_entry(e, units, &t);
    fprintf(out, "%5lld  %dv%d  %s", (long long)e->order, e->offence, e->defence, line);
    if (e->note[0]) fprintf(out, "  (%s)", e->note);
    fputc('\n', out);
}

int bw_print_entry(const bw_args *args, const bw_entry *entry) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_json json = {.stream = out.stream};
        bw_json_entry(&json, entry, bw_team_units(args));
        bw_json_end(&json);
    } else {
        print_entry(out.stream, entry, bw_team_units(args));
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

static int print_list(const bw_args *args, const bw_entry *list, int count) {
    const bw_units units = bw_team_units(args);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (!bw_option_given(args, "json")) {
        for (int i = 0; i < count; i++)
            print_entry(out.stream, &list[i], units);
        return bw_out_close(&out, BW_EXIT_OK);
    }
    bw_json json = {.stream = out.stream};
    bw_json_open(&json, '{');
    bw_json_key(&json, "breaks");
    bw_json_open(&json, '[');
    for (int i = 0; i < count; i++)
        bw_json_entry(&json, &list[i], units);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_log_list(const bw_args *args) {
    int game = 0, last = 0, count;
    bw_team *team;
    bw_error error;
    bw_entry *list;
    if (!bw_option_int(args, "game", 1, INT_MAX, &game) ||
        !bw_option_int(args, "last", 1, 999999, &last))
        return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    const bw_entry_filter filter = {.game = game};
    if (bw_team_entries(team, &filter, &list, &count, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    const int first = last > 0 && last < count ? count - last : 0;
    code = print_list(args, list + first, count - first);
    if (count == 0) bw_say("There is no break in the log yet.");
    free(list);
    return code;
}
