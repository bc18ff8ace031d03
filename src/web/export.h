/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Marks a function that JavaScript calls. Natively it is an ordinary function.
#ifndef BW_WEB_EXPORT_H
#define BW_WEB_EXPORT_H

#ifdef __wasm__
#define BW_EXPORT(name) __attribute__((export_name(#name)))
#else
#define BW_EXPORT(name)
#endif

#endif
