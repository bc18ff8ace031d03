/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How counts are said: never a bare rate.
#include "core/maths.h"
#include "scheme/caption.h"
#include "trial/season.h"
#include "trial/words.h"

bw_saying bw_may_say(int cases) {
    return cases < BW_RATE_COUNTS  ? BW_SAY_COUNTS
           : cases < BW_RATE_PLAIN ? BW_SAY_ROUGH
                                   : BW_SAY_PLAIN;
}

static void put_counts(bw_count count, const char *what, bw_text *out) {
    if (count.cases == 0) {
        bw_put(out, "no ");
        bw_put(out, what);
    } else if (count.hits == 0) {
        bw_put(out, "none in ");
        bw_put_int(out, count.cases);
    } else {
        bw_put_int(out, count.hits);
        bw_put(out, " of ");
        bw_put_int(out, count.cases);
    }
}

void bw_say_count(bw_count count, const char *what, bw_text *out) {
    put_counts(count, what, out);
    if (count.cases == 0) return;
    const bw_interval likely = bw_rate_interval(count);
    if (bw_may_say(count.cases) == BW_SAY_COUNTS) {
        bw_put(out, ", too few to say");
        return;
    }
    if (count.hits == 0) {
        bw_put(out, "; could still be up to ");
        bw_say_in_100(likely.high, out);
        return;
    }
    bw_put(out, bw_may_say(count.cases) == BW_SAY_ROUGH ? ", roughly " : ", about ");
    bw_put_int(out, bw_in_100(bw_rate(count)));
    bw_put(out, " in 100 (likely ");
    bw_put_int(out, bw_in_100(likely.low));
    bw_put(out, " to ");
    bw_put_int(out, bw_in_100(likely.high));
    bw_put(out, ")");
}

/// "12 fewer", "as many", "3 more": goals in 100 breaks.
static void put_change(double change, bw_text *out) {
    const int goals = bw_in_100(bw_abs(change));
    if (goals == 0) {
        bw_put(out, "as many");
        return;
    }
    bw_put_int(out, goals);
    bw_put(out, change < 0 ? " fewer" : " more");
}

void bw_say_difference(bw_count now, bw_count before, bw_text *out) {
    bw_put(out, "Before: ");
    put_counts(before, "breaks", out);
    bw_put(out, ". After: ");
    put_counts(now, "breaks", out);
    bw_put(out, ". ");
    if (now.cases < BW_RATE_COUNTS || before.cases < BW_RATE_COUNTS) {
        bw_put(out, "Too few to say: each side needs at least ten breaks.");
        return;
    }
    const bw_interval likely = bw_rate_difference(now, before);
    bw_put(out, "In 100 breaks that is ");
    put_change(bw_rate(now) - bw_rate(before), out);
    bw_put(out, "; anything from ");
    put_change(likely.low, out);
    bw_put(out, " to ");
    put_change(likely.high, out);
    bw_put(out, " fits what was seen. ");
    if (likely.high < 0)
        bw_put(out, "Fewer goals, and more than chance alone would make; but rivals, score and who "
                    "was on changed too.");
    else if (likely.low > 0)
        bw_put(out, "More goals, and more than chance alone would make; but rivals, score and "
                    "who was on changed too.");
    else
        bw_put(out, "Too few to say whether the change did it.");
}

void bw_say_entry(const bw_entry *e, bw_units units, bw_text *out) {
    bw_put(out, bw_outcome_words(e->outcome));
    if (!(e->seconds < 0)) {
        bw_put(out, ", ");
        bw_put_number(out, e->seconds, 1);
        bw_put(out, " s");
    }
    if (e->passes >= 0) {
        bw_put(out, ", ");
        bw_put_int(out, e->passes);
        bw_put(out, e->passes == 1 ? " pass" : " passes");
    }
    if (e->shot_known) {
        bw_put(out, ", shot from ");
        bw_say_place(units, e->shot, out);
    }
    for (int i = 0; i < e->out_count; i++) {
        bw_put(out, i == 0 ? ", out of place: " : ", ");
        bw_put(out, e->out[i]);
    }
}
