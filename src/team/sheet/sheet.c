/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/sheet/sheet.h"
#include "core/text.h"
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

const char *bw_cell_text(const bw_cells *cells, int column) {
    const int at = cells->where[column];
    return at >= 0 && at < cells->row->count ? cells->row->cell[at] : "";
}

/// printf-style, cut at a whole character where it must be.
static void put_message(bw_error *e, const char *begin, const char *format, va_list list) {
    char rest[2 * BW_CSV_CELL];
    vsnprintf(rest, sizeof rest, format, list);
    bw_text t = bw_text_in(e->message, sizeof e->message);
    bw_put(&t, begin);
    bw_put(&t, rest);
}

bool bw_cell_fault(bw_cells *cells, int column, const char *format, ...) {
    if (cells->fault->status != BW_OK) return false;
    const int at = cells->where[column];
    bw_error *e = cells->fault;
    *e = (bw_error){.status = BW_BAD_INPUT, .line = cells->row->line, .column = 1};
    if (at >= 0 && at < cells->row->count) e->column = cells->row->column[at];
    char begin[32];
    snprintf(begin, sizeof begin, "%s: ", cells->columns[column].name);
    va_list list;
    va_start(list, format);
    put_message(e, begin, format, list);
    va_end(list);
    return false;
}

bool bw_cell_odd(bw_cells *cells, int column, const bw_odd *odd) {
    if (!cells->keep_odd)
        return bw_cell_fault(cells, column,
                             "%s; put it right, or import with --keep-odd to keep it as it is",
                             odd->message);
    bw_cell_note(cells, "kept as it is: %s", odd->message);
    return true;
}

void bw_cell_note(bw_cells *cells, const char *format, ...) {
    bw_import *done = cells->done;
    if (done->note_count == BW_MAX_FAULTS) {
        done->notes_left++;
        return;
    }
    bw_error *note = &done->notes[done->note_count++];
    *note = (bw_error){.line = cells->row->line, .column = 1};
    va_list list;
    va_start(list, format);
    put_message(note, "", format, list);
    va_end(list);
}

/// Digits with a sign and one of `points` where it may stand; no exponent, no blank.
static bool number(const char *text, const char *points, double *out) {
    const char *p = text + (text[0] == '-' || text[0] == '+');
    const size_t whole = strspn(p, "0123456789");
    size_t places = 0;
    p += whole;
    const size_t point = (size_t)(p - text);
    const bool broken = *p && strchr(points, *p);
    if (broken) {
        places = strspn(p + 1, "0123456789");
        p += 1 + places;
    }
    char plain[48];
    if (whole + places == 0 || whole > 15 || places > 20 || *p) return false;
    bw_copy(plain, sizeof plain, text); // 15 digits, 20 places, sign and point fit
    if (broken) plain[point] = '.';
    *out = strtod(plain, NULL);
    return true;
}

bool bw_cell_int(bw_cells *cells, int column, int64_t low, int64_t high, int64_t *out) {
    const char *text = bw_cell_text(cells, column);
    if (text[0] == '\0') return true;
    double value;
    if (number(text, "", &value) && value >= (double)low && value <= (double)high) {
        *out = (int64_t)value;
        return true;
    }
    return bw_cell_fault(cells, column, "a whole number from %lld to %lld, not \"%s\"",
                         (long long)low, (long long)high, text);
}

bool bw_cell_real(bw_cells *cells, int column, double *out) {
    const char *text = bw_cell_text(cells, column);
    if (text[0] == '\0' || number(text, cells->decimal_comma ? ".," : ".", out)) return true;
    return bw_cell_fault(cells, column, "a number such as %s, not \"%s\"",
                         cells->decimal_comma ? "3,1" : "3.1", text);
}

bool bw_cell_copy(bw_cells *cells, int column, char *to, size_t room) {
    if (bw_copy(to, room, bw_cell_text(cells, column))) return true;
    return bw_cell_fault(cells, column, "at most %d bytes long", (int)room - 1);
}

bool bw_cell_word(const char **at, char *word, size_t room) {
    *at += strspn(*at, " ,");
    const size_t length = strcspn(*at, " ,");
    bw_text out = bw_text_in(word, room);
    bw_put_n(&out, *at, length);
    *at += length;
    return length > 0;
}
