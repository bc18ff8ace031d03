/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One way of reading every sheet: the header, then row by row, in one transaction.
#include "team/import.h"
#include "core/text.h"
#include "team/sheet/sheet.h"
#include "team/sql.h"
#include <stdlib.h>
#include <string.h>

static const bw_sheet_kind *kind_of(bw_csv_sheet sheet) {
    static const bw_sheet_kind *const kinds[] = {&bw_sheet_roster, &bw_sheet_splits,
                                                 &bw_sheet_breaks};
    return kinds[sheet];
}

const char *bw_sheet_id(int sheet) {
    return sheet >= 0 && sheet < BW_SHEET_COUNT ? kind_of((bw_csv_sheet)sheet)->id : NULL;
}

/// A file on its way in.
typedef struct job {
    bw_team *team;
    const bw_sheet_kind *kind;
    bw_import_how how;
    bw_known *known;
    int where[BW_CSV_COLUMNS]; ///< cell of each column of the sheet
    int columns;               ///< the header names
    bw_import *done;
    bw_error *error;
    bw_csv csv;
    bw_csv_row row;
    uint64_t shared[BW_SHARED_SIZE / sizeof(uint64_t)];
} job;

static void keep_fault(bw_import *done, const bw_error *fault) {
    if (done->fault_count < BW_MAX_FAULTS)
        done->faults[done->fault_count++] = *fault;
    else
        done->faults_left++;
}

static int column_named(const bw_sheet_kind *kind, const char *name) {
    for (int c = 0; c < kind->count; c++) {
        if (strcmp(kind->columns[c].name, name) == 0) return c;
    }
    return -1;
}

static void refuse_column(job *j, int cell, const char *message) {
    bw_error fault = {.status = BW_BAD_INPUT, .line = j->row.line, .column = j->row.column[cell]};
    bw_copy(fault.message, sizeof fault.message, message);
    keep_fault(j->done, &fault);
}

static void unknown_column(job *j, int cell) {
    char message[BW_MESSAGE_SIZE];
    bw_text t = bw_text_in(message, sizeof message);
    bw_put(&t, "there is no column \"");
    bw_put(&t, j->row.cell[cell]);
    bw_put(&t, "\" in the sheet \"");
    bw_put(&t, j->kind->id);
    bw_put(&t, "\"; there are ");
    for (int c = 0; c < j->kind->count; c++) {
        if (c > 0) bw_put(&t, c == j->kind->count - 1 ? " and " : ", ");
        bw_put(&t, j->kind->columns[c].name);
    }
    refuse_column(j, cell, message);
}

static void read_header(job *j) {
    for (int c = 0; c < j->kind->count; c++)
        j->where[c] = -1;
    while (j->row.count > 1 && j->row.cell[j->row.count - 1][0] == '\0')
        j->row.count--; // a separator at the end of the line
    j->columns = j->row.count;
    for (int cell = 0; cell < j->row.count; cell++) {
        const int column = column_named(j->kind, j->row.cell[cell]);
        if (column < 0)
            unknown_column(j, cell);
        else if (j->where[column] >= 0)
            refuse_column(j, cell, "this column is there twice");
        else
            j->where[column] = cell;
    }
    for (int c = 0; c < j->kind->count; c++) {
        char message[BW_MESSAGE_SIZE] = "";
        bw_text t = bw_text_in(message, sizeof message);
        if (j->where[c] >= 0 || !j->kind->columns[c].required) continue;
        bw_put(&t, "the column \"");
        bw_put(&t, j->kind->columns[c].name);
        bw_put(&t, "\" is missing; the first row names the columns");
        refuse_column(j, 0, message);
    }
}

/// Cells beyond the header's belong to no column: what stands in them would be lost. Empty ones, which some
/// spreadsheets write, are nothing.
static void extra_cell(const job *j, bw_error *fault) {
    for (int cell = j->columns; cell < j->row.count; cell++) {
        if (j->row.cell[cell][0] == '\0') continue;
        *fault =
            (bw_error){.status = BW_BAD_INPUT, .line = j->row.line, .column = j->row.column[cell]};
        bw_text t = bw_text_in(fault->message, sizeof fault->message);
        bw_put(&t, "\"");
        bw_put(&t, j->row.cell[cell]);
        bw_put(&t, "\" stands in no column: the first row names ");
        bw_put_int(&t, j->columns);
        bw_put(&t, ", and this row has more; a text with the separator in it stands in quotes");
        return;
    }
}

/// False when the team file itself failed.
static bool read_row(job *j) {
    bw_error fault = {.status = BW_OK};
    bw_cells cells = {.columns = j->kind->columns,
                      .row = &j->row,
                      .where = j->where,
                      .decimal_comma = j->csv.delimiter == ';',
                      .keep_odd = j->how.keep_odd,
                      .known = j->known,
                      .done = j->done,
                      .fault = &fault};
    *j->error = (bw_error){.status = BW_OK};
    for (int c = 0; c < j->kind->count; c++) {
        if (j->kind->columns[c].required && bw_cell_text(&cells, c)[0] == '\0')
            bw_cell_fault(&cells, c, "this cell is empty; every row needs it");
    }
    if (fault.status == BW_OK) extra_cell(j, &fault);
    if (j->row.count > 0 && fault.status == BW_OK)
        j->kind->store(j->team, &cells, j->shared, j->done, j->error);
    if (fault.status != BW_OK) keep_fault(j->done, &fault);
    return j->error->status == BW_OK;
}

static bw_status import_all(job *j) {
    bw_status status = bw_csv_next(&j->csv, &j->row, j->error);
    if (status == BW_NOT_FOUND)
        return bw_team_fail(j->error, BW_BAD_INPUT,
                            "the file is empty; its first row names the columns");
    if (status == BW_OK) read_header(j);
    if (j->done->fault_count > 0) return BW_BAD_INPUT;
    while (status == BW_OK && j->done->fault_count < BW_MAX_FAULTS) {
        status = bw_csv_next(&j->csv, &j->row, j->error);
        if (status != BW_OK) break;
        j->done->rows++;
        if (!read_row(j)) return j->error->status;
    }
    // A row that is no CSV ends the reading: where the next one begins is not known.
    if (status != BW_OK && status != BW_NOT_FOUND) {
        keep_fault(j->done, j->error);
        return j->error->status;
    }
    return j->done->fault_count > 0 ? BW_BAD_INPUT : BW_OK;
}

bw_status bw_team_import(bw_team *team, bw_csv_sheet sheet, const char *text, size_t length,
                         bw_import_how how, bw_import *done, bw_error *error) {
    *done = (bw_import){0};
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    *j = (job){.team = team, .kind = kind_of(sheet), .how = how, .done = done, .error = error};
    bw_status status = bw_csv_begin(&j->csv, text, length, error);
    if (status == BW_OK) status = bw_team_begin(team, error);
    if (status == BW_OK) {
        status = bw_known_load(team, how.now, &j->known, error);
        if (status == BW_OK) status = import_all(j);
        status = bw_team_end(team, status, error);
        if (status != BW_OK && done->fault_count > 0)
            bw_team_fail(error, BW_BAD_INPUT, "nothing was imported");
    }
    bw_known_drop(j->known);
    free(j);
    return status;
}
