/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: every text in one revision of a scheme: names, calls, roles, captions, notes, ids.
/// Not the codes of spots, three letters or digits at most.
#ifndef BW_TEAM_SCHEME_TEXTS_H
#define BW_TEAM_SCHEME_TEXTS_H

#include "core/scheme.h"
#include "team/speech.h"

/// Goes over all of them. True when something was changed. An id that is changed becomes a new one that no
/// other has.
bool bw_scheme_texts(bw_scheme *scheme, int64_t revision, bw_hear hear, void *self);

#endif
