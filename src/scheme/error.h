/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The one clear sentence with which bad input is met, and where in the document it applies.
#ifndef BW_SCHEME_ERROR_H
#define BW_SCHEME_ERROR_H

#include "core/base.h"

enum { BW_POINTER_SIZE = 160, BW_MESSAGE_SIZE = 320 };

typedef struct bw_error {
    bw_status status;
    char pointer[BW_POINTER_SIZE]; ///< JSON Pointer (RFC 6901); "" is the whole document
    char message[BW_MESSAGE_SIZE]; ///< what is wrong and what would be right, one sentence
    int line;                      ///< from 1; 0 when not known (the browser)
    int column;                    ///< in characters, from 1; 0 when not known
} bw_error;

typedef enum bw_severity { BW_NOTE, BW_WARNING, BW_ERROR } bw_severity;

/// One thing `check` has to say about a valid scheme.
typedef struct bw_finding {
    bw_severity severity;
    char pointer[BW_POINTER_SIZE]; ///< the place in the document that would change
    char message[BW_MESSAGE_SIZE]; ///< one plain sentence, figures with units
    char remedy[BW_MESSAGE_SIZE];  ///< what would fix it, one plain sentence
    int line;
    int column;
} bw_finding;

#endif
