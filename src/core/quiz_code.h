/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The result of a quiz as a short text that a player can read out, type or send: letters and digits with
/// a check sum, in groups of four. It names nobody: which document, which spot, how many, by how much,
/// which day.
///
/// 28 letters of the alphabet 0-9 A-Z without I, L, O and U carry 140 bits: version 4, document 32, spot
/// 18, day 16, asked 7, right 7, tries 7, bias x 9 and y 9, spread 8 (all three in decimetres), check 23.
#ifndef BW_CORE_QUIZ_CODE_H
#define BW_CORE_QUIZ_CODE_H

#include "core/base.h"
#include "core/text.h"
#include "core/vec.h"

enum {
    BW_QUIZ_LETTERS = 28,
    BW_QUIZ_CODE_BYTES = 28 + 6 + 1, ///< groups' hyphens and terminator counted in
    BW_QUIZ_CODE_MOST = 120          ///< bytes looked at when one is read
};

typedef struct bw_quiz_said {
    uint32_t document; ///< bw_quiz_document of the scheme's text
    char spot[4];      ///< 1 to 3 letters or digits
    int day;           ///< days since 1970-01-01, 0 to 65535
    int asked, right;  ///< questions, 0 to 127; right at most asked
    int tries;         ///< of them on a place, at most asked
    bw_vec bias;       ///< their mean error, m; more than 25.5 m is written as that
    double spread;     ///< m, likewise
} bw_quiz_said;

/// What stands for a document in a code: its bytes hashed.
uint32_t bw_quiz_document(const char *text, size_t length);

/// Writes the code. False, and nothing written, when a field is out of its range.
bool bw_quiz_write(const bw_quiz_said *said, bw_text *out);

/// Reads one, whatever its case, with blanks and hyphens anywhere, O for 0 and I or L for 1. BW_OK; or
/// BW_BAD_INPUT with one sentence in *why (may be NULL).
bw_status bw_quiz_read(const char *text, size_t length, bw_quiz_said *said, bw_text *why);

#endif
