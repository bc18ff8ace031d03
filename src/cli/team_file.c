/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/team_file.h"
#include "cli/out.h"
#include "cli/say.h"
#include "core/text.h"
#include "file/json_stream.h"
#include "file/open.h"
#include "team/csv.h"
#include "team/date.h"
#include "team/export.h"
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

int bw_open_team(const bw_args *args, bw_team_mode mode, bw_team **team) {
    bw_error error;
    const char *path = args->operands[0];
    if (bw_team_open(path, mode, team, &error) == BW_OK) return BW_EXIT_OK;
    return bw_say_refusal(path, &error);
}

int bw_team_refusal(bw_team *team, const char *path, const bw_error *error) {
    bw_team_close(team);
    return bw_say_refusal(path, error);
}

bw_units bw_team_units(const bw_args *args) {
    const char *unit = bw_option_text(args, "units");
    return unit && strcmp(unit, "m") == 0 ? BW_METRES : BW_YARDS;
}

bool bw_operand_int(const bw_args *args, int operand, const char *what, int low, int high,
                    int *out) {
    const char *text = args->operands[operand];
    if (bw_scan_whole(text, low, high, out)) return true;
    bw_usage(args->verb, "%s is a whole number from %d to %d, not \"%s\".", what, low, high, text);
    return false;
}

int64_t bw_now(void) {
    const time_t now = time(NULL);
    return now > 0 ? (int64_t)now : 0;
}

bool bw_option_date(const bw_args *args, char *date, size_t room) {
    const char *given = bw_option_text(args, "date");
    if (given) {
        if (bw_copy(date, room, given) && bw_date_good(date)) return true;
        bw_usage(args->verb, "--date is a day such as 2026-04-11, not \"%s\".", given);
        return false;
    }
    const time_t now = time(NULL);
    struct tm day;
    bw_copy(date, room, "");
    if (localtime_r(&now, &day) && strftime(date, room, "%Y-%m-%d", &day) > 0) return true;
    bw_usage(args->verb, "this machine does not know the day; give --date.");
    return false;
}

/// The whole file, at most one byte more than a sheet may have. NULL after saying why.
static char *read_sheet(const char *path, size_t *length) {
    const bool standard = strcmp(path, "-") == 0;
    bw_error error;
    FILE *in = standard ? stdin : bw_file_open(path, "sheet", &error);
    if (!in) {
        bw_say_error("%s: %s.", path, error.message);
        return NULL;
    }
    const size_t most = (size_t)BW_CSV_BYTES + 1;
    char *text = malloc(most);
    *length = text ? fread(text, 1, most, in) : 0;
    const bool failed = !text || ferror(in);
    if (!standard) fclose(in);
    if (!failed) return text;
    bw_say_error("%s: it cannot be read: %s.", path, text ? strerror(errno) : BW_NO_MEMORY);
    free(text);
    return NULL;
}

int bw_tell_facts(const bw_args *args, const bw_fact *facts, int count) {
    bw_out out;
    if (!bw_option_given(args, "json")) return BW_EXIT_OK;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    bw_json json = bw_json_to(out.stream);
    bw_json_open(&json, '{');
    for (int i = 0; i < count; i++) {
        bw_json_key(&json, facts[i].key);
        if (facts[i].text)
            bw_json_text(&json, facts[i].text);
        else
            bw_json_number(&json, facts[i].number);
    }
    bw_json_close(&json, '}');
    bw_json_end(&json);
    return bw_out_close(&out, BW_EXIT_OK);
}

static void json_places(bw_json *json, const char *key, const bw_error *list, int count) {
    bw_json_put_open(json, key, '[');
    for (int i = 0; i < count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "line", list[i].line);
        bw_json_put_number(json, "column", list[i].column);
        bw_json_put_text(json, "message", list[i].message);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static int json_import(const bw_args *args, const bw_import *done, int code) {
    bw_out out;
    if (!bw_option_given(args, "json")) return code;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    bw_json json = bw_json_to(out.stream);
    bw_json_open(&json, '{');
    const bool taken = done->fault_count == 0;
    bw_json_put_number(&json, "rows", done->rows);
    bw_json_put_number(&json, "added", taken ? done->added : 0);
    bw_json_put_number(&json, "changed", taken ? done->changed : 0);
    bw_json_put_number(&json, "unchanged", taken ? done->known : 0);
    json_places(&json, "faults", done->faults, done->fault_count);
    json_places(&json, "notes", done->notes, taken ? done->note_count : 0);
    bw_json_close(&json, '}');
    bw_json_end(&json);
    return bw_out_close(&out, code);
}

static int said_faults(const char *path, const bw_import *done) {
    for (int i = 0; i < done->fault_count; i++)
        bw_say_refusal(path, &done->faults[i]);
    if (done->fault_count == BW_MAX_FAULTS) bw_say("%s: there may be more.", path);
    bw_say("%s: nothing was imported; put these right and import it again.", path);
    return BW_EXIT_WRONG;
}

static void say_taken(const char *path, bw_csv_sheet sheet, const bw_import *done) {
    for (int i = 0; i < done->note_count; i++)
        bw_say("%s:%d: %s.", path, done->notes[i].line, done->notes[i].message);
    if (done->notes_left > 0) bw_say("%s: and %d more like these.", path, done->notes_left);
    bw_say("%s: %d row%s of %s: %d added, %d changed, %d unchanged.", path, done->rows,
           done->rows == 1 ? "" : "s", bw_sheet_id(sheet), done->added, done->changed, done->known);
}

int bw_import_sheet(const bw_args *args, bw_team *team, bw_csv_sheet sheet, const char *path) {
    size_t length;
    char *text = read_sheet(path, &length);
    if (!text) {
        bw_team_close(team);
        return BW_EXIT_FILE;
    }
    bw_import done;
    bw_error error;
    const bw_import_how how = {.now = bw_now(), .keep_odd = bw_option_given(args, "keep-odd")};
    const bw_status status = bw_team_import(team, sheet, text, length, how, &done, &error);
    free(text);
    if (done.fault_count > 0) {
        bw_team_close(team);
        return json_import(args, &done, said_faults(path, &done));
    }
    if (status != BW_OK) return bw_team_refusal(team, path, &error);
    bw_team_close(team);
    say_taken(path, sheet, &done);
    return json_import(args, &done, BW_EXIT_OK);
}

/// The sheet as bytes, which the caller frees, so that a failure leaves nothing half written.
static bw_status export_bytes(bw_team *team, bw_csv_sheet sheet, bw_units units, char **bytes,
                              size_t *length, bw_error *error) {
    *error = (bw_error){.status = BW_NO_ROOM, .message = BW_NO_MEMORY};
    FILE *stream = open_memstream(bytes, length);
    if (!stream) return BW_NO_ROOM;
    const bw_status status = bw_team_export(team, sheet, units, stream, error);
    return fclose(stream) == 0 ? status : BW_NO_ROOM;
}

int bw_export_sheet(const bw_args *args, bw_csv_sheet sheet) {
    bw_team *team;
    bw_error error;
    char *bytes = NULL;
    size_t length = 0;
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    const bw_status status =
        export_bytes(team, sheet, bw_team_units(args), &bytes, &length, &error);
    code = status == BW_OK ? bw_out_bytes(args, bytes, length)
                           : bw_say_refusal(args->operands[0], &error);
    free(bytes);
    bw_team_close(team);
    return code;
}
