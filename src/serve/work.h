/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Heavy work that the page asks for: a test, or pages on paper. One kind a row of a table; to add one,
/// write its row.
#ifndef BW_SERVE_WORK_H
#define BW_SERVE_WORK_H

#include "draw/theme.h"
#include "report/product.h"
#include "serve/scratch.h"
#include "serve/target.h"

/// Everything one run needs, in one block of some MB.
typedef struct bw_work {
    const struct bw_work_kind *kind;
    const char *team; ///< the team file; NULL: none
    bw_target target; ///< what was asked for, for kinds that know more words
    const bw_level *level;
    const bw_theme *theme;
    bw_order order; ///< its watch is the job's, and every kind's
} bw_work;

typedef struct bw_work_kind {
    const char *id;      ///< as asked for, ?kind=
    const char *product; ///< which of report/product it is; NULL: a film
    const char *type;    ///< of its result: JSON, PDF or a film
    const char *ending;  ///< of a file of it
} bw_work_kind;

/// Number `index`; NULL past the last.
const bw_work_kind *bw_work_kind_at(int index);

/// Reads what is asked for: the kind and the break in the target's values (offence, defence, set, start,
/// late, seconds, level, seed as the verb test has them; quick=1; paper; theme; large=1 and spot for what
/// is handed out; lesson, by its id, for a film; stage, keep, within, spacing, mix, practice, tries and
/// breaks, as the verb tune has them, for better spots; seen=1 and width for a review), the scheme in the
/// body where the kind is made from one. On BW_OK *out is the caller's
/// to free.
bw_status bw_work_read(const bw_target *target, const char *team, const char *body, size_t length,
                       bw_work **out, bw_error *error);

/// Makes the result. One sentence in *why when the answer is not BW_OK.
bw_status bw_work_make(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);

/// The document's JSON, which the caller frees. BW_NO_ROOM: no memory.
bw_status bw_work_json(const bw_document *document, bw_bytes *result);

/// A lesson as a film. Private to this room, as are these.
bw_status bw_make_film(bw_work *work, bw_bytes *result, bw_text *why);

/// Fills in what is wrong, one sentence of three pieces without its full stop. BW_BAD_INPUT.
bw_status bw_work_refuse(bw_error *error, const char *what, const char *name, const char *rest);

/// Level, paper and theme among the target's values.
bw_status bw_work_read_look(const bw_target *target, bw_work *work, bw_error *error);

/// The break, what a tuning may change, and the look, for a scheme already read.
bw_status bw_work_read_order(bw_work *work, bw_error *error);

#endif
