/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Any bytes as a sheet: the first says which one, and whether odd rows are kept. It is taken whole or refused with places and sentences;
/// cells that were read go out and come back the same; the team file is as it was, for all is taken back.
#define _XOPEN_SOURCE 700
#include "core/text.h"
#include "team/csv.h"
#include "team/import.h"
#include "team/roster.h"
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

static void fault_is_told(const bw_error *fault) {
    must(fault->message[0] != '\0' && fault->line >= 1 && fault->column >= 1,
         "a fault has a place");
    must(bw_text_plain(fault->message), "a fault can be shown");
}

/// A row out and in again.
static void comes_back(const bw_csv_row *row) {
    static bw_csv_row again;
    char *bytes = NULL;
    size_t length = 0;
    bw_csv csv;
    bw_error error;
    FILE *out = open_memstream(&bytes, &length);
    for (int i = 0; i < row->count; i++)
        bw_csv_put_text(out, i, row->cell[i]);
    bw_csv_end_row(out);
    fclose(out);
    const int empty = row->count == 1 && row->cell[0][0] == '\0'; // a blank line
    must(bw_csv_begin(&csv, bytes, length, &error) == BW_OK, "it begins");
    must(empty || bw_csv_next(&csv, &again, &error) == BW_OK, "it is read again");
    must(empty || again.count == row->count, "it has as many cells");
    for (int i = 0; !empty && i < row->count; i++)
        must(strcmp(again.cell[i], row->cell[i]) == 0, "each cell is the same");
    free(bytes);
}

static void read_rows(const char *text, size_t length) {
    static bw_csv_row row;
    bw_csv csv;
    bw_error error;
    if (bw_csv_begin(&csv, text, length, &error) != BW_OK) return;
    bw_status status;
    while ((status = bw_csv_next(&csv, &row, &error)) == BW_OK)
        comes_back(&row);
    if (status != BW_NOT_FOUND) fault_is_told(&error);
}

static char folder[] = "/tmp/fuzz-sheet.XXXXXX";
static bw_team *team;

static void remove_folder(void) {
    char path[64];
    bw_team_close(team);
    snprintf(path, sizeof path, "%s/t.team", folder);
    unlink(path);
    rmdir(folder);
}

/// A team file with number 12 on the roster.
static void open_team(void) {
    char path[64];
    bw_error error;
    const bw_player twelve = {.jersey = 12};
    must(mkdtemp(folder) != NULL, "a folder");
    snprintf(path, sizeof path, "%s/t.team", folder);
    must(bw_team_create(path, &error) == BW_OK, "a team file");
    must(bw_team_open(path, BW_TEAM_WRITE, &team, &error) == BW_OK, "opened");
    must(bw_team_put_player(team, &twelve, &error) == BW_OK, "a player");
    atexit(remove_folder);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static bw_import done;
    bw_error error = {0};
    if (size == 0) return 0;
    if (!team) open_team();
    const char *text = (const char *)data + 1;
    read_rows(text, size - 1);
    must(bw_team_begin(team, &error) == BW_OK, "begun");
    const bw_import_how how = {.now = 1795000000, .keep_odd = data[0] / BW_SHEET_COUNT % 2};
    const bw_status status = bw_team_import(team, (bw_csv_sheet)(data[0] % BW_SHEET_COUNT), text,
                                            size - 1, how, &done, &error);
    must(status != BW_OK || done.fault_count == 0, "taken or refused");
    if (status != BW_OK) must(error.message[0] != '\0', "a refusal says why");
    for (int i = 0; i < done.fault_count; i++)
        fault_is_told(&done.faults[i]);
    for (int i = 0; i < done.note_count; i++)
        fault_is_told(&done.notes[i]);
    if (status == BW_OK)
        must(done.added + done.changed + done.known == done.rows, "every row is counted");
    bw_team_end(team, BW_BAD_INPUT, &error);
    return 0;
}
