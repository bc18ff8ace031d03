/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Names as they read from the other side of the field.
#ifndef BW_SCHEME_SIDES_H
#define BW_SCHEME_SIDES_H

#include <stdbool.h>
#include <stddef.h>

/// Copies a name with the words left and right exchanged, in small letters, capitals or with a capital
/// first: "low left" becomes "low right". Words that only contain them ("bright") stay. Returns
/// whether it fitted.
bool bw_other_side(const char *name, char *to, size_t room);

#endif
