/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ink list as SVG 1.1 with real text, headings and figures that assistive technology can read.
/// Pure, so that the hand-out and the board can make the very same pictures.
#ifndef BW_DRAW_SVG_H
#define BW_DRAW_SVG_H

#include "core/text.h"
#include "draw/ink.h"
#include "draw/theme.h"

/// The font family the text asks for; a page or a style sheet has to bring it.
#define BW_SVG_FAMILY "B612"

/// Appends one <svg> element. `style` goes into a <style> element as it stands; NULL or "": none.
/// out->full tells when it did not fit.
void bw_svg(const bw_ink *ink, const bw_theme *theme, const char *style, bw_text *out);

/// Appends the page's elements alone, for a page that brings its own <svg> and style sheet: in the place
/// of colours they have the classes "f-ROLE" (fill) and "s-ROLE" (stroke), with the names of bw_role_name.
void bw_svg_pieces(const bw_ink *ink, bw_text *out);

#endif
