/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/html.h"

void bw_put_html(bw_text *out, const char *s) {
    for (; *s; s++) {
        switch (*s) {
        case '&': bw_put(out, "&amp;"); break;
        case '<': bw_put(out, "&lt;"); break;
        case '>': bw_put(out, "&gt;"); break;
        case '"': bw_put(out, "&quot;"); break;
        default: bw_put_char(out, *s);
        }
    }
}

void bw_put_html_number(bw_text *out, const char *name, double value) {
    bw_put_char(out, ' ');
    bw_put(out, name);
    bw_put(out, "=\"");
    bw_put_number(out, value, 1);
    bw_put_char(out, '"');
}

void bw_put_html_json(bw_text *out, const char *json) {
    for (; *json; json++) {
        if (*json == '<')
            bw_put(out, "\\u003c");
        else
            bw_put_char(out, *json);
    }
}
