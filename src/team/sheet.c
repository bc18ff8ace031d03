/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/sheet.h"
#include "core/text.h"
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

const char *bw_cell(const bw_cells *cells, int column) {
    const int at = cells->where[column];
    return at >= 0 && at < cells->row->count ? cells->row->cell[at] : "";
}

bool bw_cell_fault(bw_cells *cells, int column, const char *format, ...) {
    if (cells->fault->status != BW_OK) return false;
    const int at = cells->where[column];
    bw_error *e = cells->fault;
    *e = (bw_error){.status = BW_BAD_INPUT, .line = cells->row->line, .column = 1};
    if (at >= 0 && at < cells->row->count) e->column = cells->row->column[at];
    const int used = snprintf(e->message, sizeof e->message, "%s: ", cells->columns[column].name);
    va_list list;
    va_start(list, format);
    vsnprintf(e->message + used, sizeof e->message - (size_t)used, format, list);
    va_end(list);
    return false;
}

/// Digits with a sign and a point where they may stand; no exponent, no blank.
static bool number(const char *text, bool point, double *out) {
    const char *p = text + (text[0] == '-' || text[0] == '+');
    const size_t whole = strspn(p, "0123456789");
    size_t places = 0;
    p += whole;
    if (point && *p == '.') {
        places = strspn(p + 1, "0123456789");
        p += 1 + places;
    }
    if (whole + places == 0 || whole > 15 || places > 20 || *p) return false;
    *out = strtod(text, NULL);
    return true;
}

bool bw_cell_int(bw_cells *cells, int column, int64_t low, int64_t high, int64_t *out) {
    const char *text = bw_cell(cells, column);
    if (text[0] == '\0') return true;
    double value;
    if (number(text, false, &value) && value >= (double)low && value <= (double)high) {
        *out = (int64_t)value;
        return true;
    }
    return bw_cell_fault(cells, column, "a whole number from %lld to %lld, not \"%s\"",
                         (long long)low, (long long)high, text);
}

bool bw_cell_real(bw_cells *cells, int column, double *out) {
    const char *text = bw_cell(cells, column);
    if (text[0] == '\0' || number(text, true, out)) return true;
    return bw_cell_fault(cells, column, "a number such as 3.1, not \"%s\"", text);
}

bool bw_cell_copy(bw_cells *cells, int column, char *to, size_t room) {
    if (bw_copy(to, room, bw_cell(cells, column))) return true;
    return bw_cell_fault(cells, column, "at most %d bytes long", (int)room - 1);
}

bool bw_cell_word(const char **at, char *word, size_t room) {
    *at += strspn(*at, " ");
    const size_t length = strcspn(*at, " ");
    bw_text out = bw_text_in(word, room);
    bw_put_n(&out, *at, length);
    *at += length;
    return length > 0;
}
