/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whether two names of an opponent are likely one, written twice.
#ifndef BW_TEAM_OPPONENT_H
#define BW_TEAM_OPPONENT_H

#include <stdbool.h>

/// The same but for case, blanks and stops; one a part of the other, of four letters or more; or one letter in
/// five apart, three at most, from the other or from its begin. Capitals beyond ASCII count as other letters.
bool bw_opponents_near(const char *a, const char *b);

#endif
