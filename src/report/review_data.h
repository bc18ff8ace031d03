/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Everything one review needs, out of a team file.
#ifndef BW_REPORT_REVIEW_DATA_H
#define BW_REPORT_REVIEW_DATA_H

#include "report/review.h"
#include "team/games.h"
#include "team/revisions.h"
#include "team/settings.h"
#include "trial/watcher.h"

typedef struct bw_review_data {
    char name[BW_SETTING_SIZE], about[BW_SETTING_SIZE];
    bw_entry *entries;
    double *forecast; ///< one a break; NULL: the model was not played
    bw_game *games;
    bw_revision *revisions;
    bw_season_name *game_names, *revision_names;
    int entry_count, game_count, revision_count;
    bw_scheme scheme; ///< the newest, for its field
    bool has_scheme;
    bw_season season;
    bw_review review; ///< points into all of the above
} bw_review_data;

/// Reads and counts; with `modelled` the model is played beside, which takes seconds and is told of kinds
/// of break. Compared are the two newest revisions that breaks were played under.
/// BW_OK, or a sentence in *error (BW_LIMIT: cancelled). *data is to be dropped in either case.
bw_status bw_review_load(bw_team *team, bool modelled, bw_units units, bw_watcher watch,
                         bw_review_data *data, bw_error *error);

/// Frees what *data points to.
void bw_review_drop(bw_review_data *data);

#endif
