/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a careful assistant would say about a valid scheme before practice.
#ifndef BW_SCHEME_LINT_H
#define BW_SCHEME_LINT_H

#include "core/scheme.h"
#include "scheme/error.h"

enum { BW_MAX_FINDINGS = 64 };

/// Findings stage by stage as the document has them, at most `room`; returns how many there are in all,
/// which may be more. About 0.1 ms.
int bw_scheme_lint(const bw_scheme *scheme, bw_finding *findings, int room);

#endif
