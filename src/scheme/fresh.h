/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A complete starting scheme. Its numbers are common practice in the boys' high-school game, with no
/// published source but for the three-man triangle (fresh.c names it), and are the same at every level:
/// a coach edits from here.
#ifndef BW_SCHEME_FRESH_H
#define BW_SCHEME_FRESH_H

#include "core/scheme.h"

/// Fills *scheme with stages 1-2, 2-2, 2-1-2 and match-up, the eleven usual landmarks, three late men
/// and one lesson, for a field and a level (indices into bw_field_at and bw_level_at).
void bw_scheme_fresh(int field, int level, bw_scheme *scheme);

/// Keeps only the stage with this shape ("2-2" ...); BW_NOT_FOUND when there is none.
bw_status bw_scheme_only(bw_scheme *scheme, const char *shape);

#endif
