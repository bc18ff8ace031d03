/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What several verbs do with a scheme: read it, apply --units, understand --stage and --ball.
#ifndef BW_CLI_LOAD_H
#define BW_CLI_LOAD_H

#include "cli/options.h"
#include "core/scheme.h"

/// Reads the scheme a verb names first and applies --units. BW_EXIT_OK, or the code after saying why.
int bw_load_scheme(const bw_args *args, bw_scheme *scheme);

/// Sets the scheme's unit from --units when given.
void bw_load_units(const bw_args *args, bw_scheme *scheme);

/// Index of the stage --stage names; the only one when not given. -1 after saying what is wrong;
/// *code then tells the exit code.
int bw_load_stage(const bw_args *args, const bw_scheme *scheme, int *code);

/// Where --ball is: a landmark's id or "x,y" in the people's unit. *landmark is -1 for a place.
/// BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_ball(const bw_args *args, const bw_scheme *scheme, bw_vec *ball, int *landmark);

/// A place "x,y" in the scheme's unit at *text, which moves past it.
bool bw_scan_place(const bw_scheme *scheme, const char **text, bw_vec *at);

#endif
