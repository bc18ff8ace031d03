/* SPDX-License-Identifier: GPL-3.0-or-later */
/// From a parsed document to a scheme: every key known, every index in range, every length finite and
/// on the field, the left side filled in from the right. What is wrong is reported with its JSON Pointer
/// and, for an unknown word, the nearest known one.
#ifndef BW_SCHEME_READ_H
#define BW_SCHEME_READ_H

#include "core/scheme.h"
#include "scheme/tree.h"

/// BW_OK, or BW_BAD_INPUT / BW_LIMIT with *error, the first thing wrong, filled and *scheme unspecified.
bw_status bw_scheme_read(const bw_tree *tree, bw_scheme *scheme, bw_error *error);

/// The same, going on behind what is wrong wherever the rest can still be judged: the first `room` (one or
/// more) in the order of reading, and in *count how many there are. What may only follow from another
/// fault, such as the name of a landmark that could not be read, is not counted.
bw_status bw_scheme_read_all(const bw_tree *tree, bw_scheme *scheme, bw_error *errors, int room,
                             int *count);

#endif
