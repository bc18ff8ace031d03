/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Marks a function that JavaScript calls, and says which numbers it may be handed. Natively it is an ordinary function.
#ifndef BW_WEB_EXPORT_H
#define BW_WEB_EXPORT_H

#include <stdbool.h>

#ifdef __wasm__
#define BW_EXPORT(name) __attribute__((export_name(#name)))
#else
#define BW_EXPORT(name)
#endif

/// Whether a number that JavaScript hands over can be meant: points of a page, yards, metres, seconds and
/// goals are all far below a million. What cannot, NaN and infinities among it, does nothing.
static inline bool bw_page_number(double x) {
    return x >= -1e6 && x <= 1e6;
}

#endif
