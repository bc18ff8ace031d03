/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The cautions of every practice sheet: contact, shots and kit, heat, water, lightning, head, chest and
/// the emergency plan. Each names who published it; all defer to the governing body's rules and to
/// licensed medical staff. Reminders in our own words, not medical advice.
#ifndef BW_REPORT_CAUTIONS_H
#define BW_REPORT_CAUTIONS_H

#include "core/scheme.h"
#include "core/text.h"
#include "draw/ink.h"

enum { BW_CAUTIONS = 8 };

/// One caution in words that stay valid for the life of the program.
typedef struct bw_caution {
    const char *id;     ///< "contact", "shots", "heat", ...: for JSON
    const char *topic;  ///< "Contact"
    const char *text;   ///< one to three short sentences
    const char *brief;  ///< the same in a few words, without a full stop
    const char *source; ///< publisher and year
} bw_caution;

/// Caution number `index`, 0 to BW_CAUTIONS - 1, as it is for this scheme: contact and kit by its level
/// and field.
bw_caution bw_caution_for(const bw_scheme *scheme, int index);

/// The sentence that ends them: whose word goes before this.
const char *bw_cautions_defer(void);

/// Who the publishers are whose names are shortened in `source`.
const char *bw_cautions_publishers(void);

/// Upper bound of bw_cautions_text, bytes.
enum { BW_CAUTIONS_BYTES = 4096 };

/// All of them for a terminal of 78 columns.
void bw_cautions_text(const bw_scheme *scheme, bw_text *out);

/// All of them as a block in two columns under a heading, from its top left corner, in type of this
/// size (the publishers at 9). Returns the height it takes; with ink NULL only measures. At the sheet's
/// full width at most 350 pt in 10 pt type, 450 pt in 12 pt.
double bw_put_cautions(bw_ink *ink, const bw_scheme *scheme, double x, double y, double width,
                       double type);

/// The few-words form as one small paragraph, for sheets with no room for the block. Returns its height;
/// with ink NULL only measures.
double bw_put_cautions_brief(bw_ink *ink, const bw_scheme *scheme, double x, double y,
                             double width);

#endif
