/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What teach makes its files from.
#ifndef BW_CLI_TEACH_JOB_H
#define BW_CLI_TEACH_JOB_H

#include "cli/options.h"
#include "report/product.h"

typedef struct bw_teach_job {
    const bw_args *args;
    const char *folder;
    const bw_theme *theme;
    bw_press press;
    bw_order order;
} bw_teach_job;

#endif
