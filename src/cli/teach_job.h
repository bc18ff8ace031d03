/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the parts of teach are made of.
#ifndef BW_CLI_TEACH_JOB_H
#define BW_CLI_TEACH_JOB_H

#include "cli/options.h"
#include "paint/paint.h"
#include "report/teach.h"
#include "team/date.h"

/// Everything a part may need, made once.
typedef struct bw_teach_job {
    const bw_args *args;
    const char *folder;
    bw_scheme scheme;
    bw_weak_list weak;
    bw_teach teach;
    char date[BW_DATE_SIZE];
    const bw_theme *theme;
    bw_fonts *fonts;
    bw_ink *ink; ///< room for one page
} bw_teach_job;

#endif
