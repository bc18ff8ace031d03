/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/csv.h"
#include "core/text.h"
#include <string.h>

static const char byte_order_mark[] = "\xef\xbb\xbf";

/// What begins a formula, or the guard against one.
static const char guarded[] = "=+-@\t\r'";

/// A comma unless another stands more often in the first line that has anything in it.
static char delimiter_of(const bw_csv *csv) {
    size_t at = csv->at;
    int commas = 0, semicolons = 0, tabs = 0;
    bool quoted = false;
    while (at < csv->length && (csv->text[at] == '\n' || csv->text[at] == '\r'))
        at++;
    for (; at < csv->length && (quoted || csv->text[at] != '\n'); at++) {
        const char c = csv->text[at];
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        commas += c == ',';
        semicolons += c == ';';
        tabs += c == '\t';
    }
    if (semicolons > commas && semicolons >= tabs) return ';';
    return tabs > commas ? '\t' : ',';
}

bw_status bw_csv_begin(bw_csv *csv, const char *text, size_t length, bw_error *error) {
    *csv = (bw_csv){.text = text, .length = length, .line = 1, .delimiter = ','};
    if (length > BW_CSV_BYTES) {
        *error = (bw_error){.status = BW_LIMIT, .line = 1, .column = 1};
        bw_copy(error->message, sizeof error->message, "the file is larger than 8 MB");
        return BW_LIMIT;
    }
    if (length >= 3 && memcmp(text, byte_order_mark, 3) == 0) csv->at = 3;
    csv->delimiter = delimiter_of(csv);
    return BW_OK;
}

/// A row being read.
typedef struct reading {
    bw_csv *csv;
    bw_csv_row *row;
    bw_error *error;
    size_t line_start; ///< of the line `at` is on
} reading;

static bool more(const bw_csv *csv) {
    return csv->at < csv->length;
}

static char here(const bw_csv *csv) {
    return more(csv) ? csv->text[csv->at] : '\0';
}

static bool at_line_end(const bw_csv *csv) {
    if (!more(csv) || here(csv) == '\n') return true;
    return here(csv) == '\r' && csv->at + 1 < csv->length && csv->text[csv->at + 1] == '\n';
}

static int column_of(const reading *r, size_t at) {
    int column = 1;
    for (size_t i = r->line_start; i < at; i++)
        column += ((unsigned char)r->csv->text[i] & 0xc0) != 0x80;
    return column;
}

static bool refuse(const reading *r, bw_status status, const char *message) {
    *r->error =
        (bw_error){.status = status, .line = r->csv->line, .column = column_of(r, r->csv->at)};
    bw_copy(r->error->message, sizeof r->error->message, message);
    return false;
}

static void pass_line_end(reading *r) {
    bw_csv *csv = r->csv;
    if (here(csv) == '\r') csv->at++;
    if (more(csv)) csv->at++;
    csv->line++;
    r->line_start = csv->at;
}

static const char nul[] = "there is a zero byte in the file; save it as plain CSV text (UTF-8)";

/// Between quotes, where a quote is written twice and a line may end.
static bool read_quoted(reading *r, bw_text *cell) {
    bw_csv *csv = r->csv;
    bool closed = false;
    for (csv->at++; more(csv); csv->at++) {
        if (here(csv) == '"') {
            csv->at++;
            closed = here(csv) != '"';
            if (closed) break;
        }
        if (here(csv) == '\0') return refuse(r, BW_BAD_INPUT, nul);
        bw_put_char(cell, here(csv));
        if (here(csv) != '\n') continue;
        csv->line++;
        r->line_start = csv->at + 1;
    }
    if (!closed) return refuse(r, BW_BAD_INPUT, "a quoted cell is not closed");
    while (here(csv) == ' ')
        csv->at++;
    if (here(csv) == csv->delimiter || at_line_end(csv)) return true;
    return refuse(r, BW_BAD_INPUT,
                  "after a quoted cell comes the next separator; a quote inside one is written "
                  "twice");
}

static bool read_bare(reading *r, bw_text *cell) {
    bw_csv *csv = r->csv;
    for (; here(csv) != csv->delimiter && !at_line_end(csv); csv->at++) {
        if (here(csv) == '"')
            return refuse(r, BW_BAD_INPUT,
                          "a cell with a quote in it stands in quotes, its own quote twice");
        if (here(csv) == '\0') return refuse(r, BW_BAD_INPUT, nul);
        bw_put_char(cell, here(csv));
    }
    while (cell->used > 0 && cell->data[cell->used - 1] == ' ')
        cell->data[--cell->used] = '\0';
    return true;
}

static void unguard(char *cell) {
    if (cell[0] == '\'' && cell[1] != '\0' && strchr(guarded, cell[1]))
        memmove(cell, cell + 1, strlen(cell));
}

static bool read_cell(reading *r) {
    bw_csv_row *row = r->row;
    if (row->count == BW_CSV_COLUMNS) return refuse(r, BW_LIMIT, "a row has at most 24 cells");
    char *text = row->cell[row->count];
    bw_text cell = bw_text_in(text, BW_CSV_CELL);
    while (here(r->csv) == ' ')
        r->csv->at++;
    const size_t begin = r->csv->at;
    row->column[row->count++] = column_of(r, begin);
    if (!(here(r->csv) == '"' ? read_quoted(r, &cell) : read_bare(r, &cell))) return false;
    if (cell.full) return refuse(r, BW_LIMIT, "a cell is longer than 511 bytes");
    if (!bw_text_plain(text))
        return refuse(r, BW_BAD_INPUT, "a cell is one line of UTF-8 text without tabs");
    unguard(text);
    return true;
}

bw_status bw_csv_next(bw_csv *csv, bw_csv_row *row, bw_error *error) {
    reading r = {csv, row, error, csv->at};
    while (more(csv) && at_line_end(csv))
        pass_line_end(&r);
    if (!more(csv)) return BW_NOT_FOUND;
    row->line = csv->line;
    row->count = 0;
    if (++csv->rows > BW_CSV_ROWS) {
        refuse(&r, BW_LIMIT, "the file has more than 20,000 rows");
        return error->status;
    }
    while (read_cell(&r)) {
        if (here(csv) == csv->delimiter) {
            csv->at++;
            continue;
        }
        pass_line_end(&r);
        return BW_OK;
    }
    return error->status;
}

static void separate(FILE *out, int index) {
    if (index > 0) fputc(',', out);
}

void bw_csv_put_text(FILE *out, int index, const char *text) {
    separate(out, index);
    const size_t length = strlen(text);
    const bool guard = length > 0 && strchr(guarded, text[0]);
    const bool blank = length > 0 && (text[0] == ' ' || text[length - 1] == ' ');
    const bool mark = strncmp(text, byte_order_mark, 3) == 0; // at a file's begin it would be none
    const bool quote = blank || mark || strpbrk(text, ",;\"\r\n");
    if (quote) fputc('"', out);
    if (guard) fputc('\'', out);
    for (const char *c = text; *c; c++) {
        if (*c == '"') fputc('"', out);
        fputc(*c, out);
    }
    if (quote) fputc('"', out);
}

void bw_csv_put_number(FILE *out, int index, bool known, double value) {
    separate(out, index);
    char digits[32];
    bw_text text = bw_text_in(digits, sizeof digits);
    if (known) bw_put_number(&text, value, 4);
    fputs(digits, out);
}

void bw_csv_end_row(FILE *out) {
    fputs("\r\n", out);
}
