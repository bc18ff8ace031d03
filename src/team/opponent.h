/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How likely two names of an opponent are one, written twice.
#ifndef BW_TEAM_OPPONENT_H
#define BW_TEAM_OPPONENT_H

/// The same but for case, blanks and stops; one a part of the other, of four letters or more; or one letter in
/// five apart, three at most, from the other or from its begin. Capitals beyond ASCII count as other letters.
/// How many letters they are apart, 0 for the same or a part; -1 when they are hardly one name.
int bw_opponents_apart(const char *a, const char *b);

#endif
