/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Text and lengths put into HTML and inline SVG.
#ifndef BW_REPORT_HTML_H
#define BW_REPORT_HTML_H

#include "core/text.h"

/// Text of an element or of an attribute in double quotes.
void bw_put_html(bw_text *out, const char *s);

/// ` NAME="VALUE"` with at most one decimal.
void bw_put_html_number(bw_text *out, const char *name, double value);

/// Text inside a script element of type application/json: what is JSON stays the same JSON, and nothing
/// in it can end the element.
void bw_put_html_json(bw_text *out, const char *json);

#endif
