/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Heavy work that the page asks for: a test, or pages on paper. One kind a row of a table; to add one,
/// write its function and its row.
#ifndef BW_SERVE_WORK_H
#define BW_SERVE_WORK_H

#include "draw/theme.h"
#include "report/battery.h"
#include "report/test_set.h"
#include "report/test_text.h"
#include "scheme/error.h"
#include "serve/press.h"
#include "serve/target.h"
#include "tune/tune.h"

/// Everything one run needs, in one block of about 2 MB.
typedef struct bw_work {
    const struct bw_work_kind *kind;
    const char *team; ///< the team file; NULL: none
    bool seen_only;   ///< a review without the model
    int width;        ///< of a review's pictures, points
    bw_target target; ///< what was asked for, for kinds that know more words
    bw_scheme scheme;
    bw_break_def def; ///< the headline break
    int seconds;      ///< for the answer
    bool alone;       ///< without the standard set
    bw_tuning tuning; ///< for the kinds that suggest better spots
    const bw_level *level;
    bw_paper paper;
    const bw_theme *theme;
    bw_ground ground;
    bw_battery battery; ///< its watch is the caller's, and every kind's
    bw_report report;
    bw_trial trials[BW_TEST_MAX];
} bw_work;

typedef struct bw_work_kind {
    const char *id;     ///< as asked for, ?kind=
    const char *type;   ///< of its result
    const char *ending; ///< of a file of it
    /// Reads words of its own from the target, the scheme being read; NULL when it has none.
    bw_status (*read)(bw_work *work, bw_error *error);
    /// Makes the result. One sentence in *why when the answer is not BW_OK.
    bw_status (*make)(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
    bool of_team; ///< made from the team file, not from a scheme
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

/// A refusal of what was asked for, its sentence in three pieces. Always BW_BAD_INPUT. Private to this room.
bw_status bw_work_refuse(bw_error *error, const char *what, const char *name, const char *rest);

/// What is handed out: packet, pocket cards, quiz, wall sheets. Private to this room, as are these.
bw_status bw_make_packet(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
bw_status bw_make_cards(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
bw_status bw_make_quiz(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
bw_status bw_make_wall(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);

/// A lesson as a film.
bw_status bw_make_film(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);

/// Better spots for a stage: as JSON, and as sheets.
bw_status bw_work_read_tuning(bw_work *work, bw_error *error);
bw_status bw_make_tuning(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
bw_status bw_make_tuning_sheets(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);

/// The season's review: for the page, and on paper.
bw_status bw_make_review(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);
bw_status bw_make_review_pages(bw_work *work, bw_press *press, bw_bytes *result, bw_text *why);

/// Level, paper and theme among the target's values.
bw_status bw_work_read_look(const bw_target *target, bw_work *work, bw_error *error);

/// The break among the target's values, for a scheme already read.
bw_status bw_work_read_break(const bw_target *target, bw_work *work, bw_error *error);

#endif
