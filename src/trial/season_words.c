/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How counts are said: never a bare rate.
#include "core/maths.h"
#include "scheme/caption.h"
#include "trial/catalogue.h"
#include "trial/season.h"

bw_saying bw_may_say(int cases) {
    return cases < BW_RATE_COUNTS  ? BW_SAY_COUNTS
           : cases < BW_RATE_PLAIN ? BW_SAY_ROUGH
                                   : BW_SAY_PLAIN;
}

static const bw_voice voice = {0};

static const bw_sentence *counts_of(bw_count count) {
    return count.cases == 0  ? &bw_s_count_no_cases
           : count.hits == 0 ? &bw_s_count_none
                             : &bw_s_count_hits;
}

static const bw_sentence *rate_of(bw_count count) {
    if (count.cases == 0) return NULL;
    if (bw_may_say(count.cases) == BW_SAY_COUNTS) return &bw_s_rate_few;
    if (count.hits == 0) return &bw_s_rate_none;
    return bw_may_say(count.cases) == BW_SAY_ROUGH ? &bw_s_rate_rough : &bw_s_rate_plain;
}

void bw_say_count(bw_count count, const char *what, bw_text *out) {
    const bw_interval likely = bw_rate_interval(count);
    bw_put_sentence(out, voice, &bw_s_count, bw_as_part("counts", counts_of(count)),
                    bw_as_part("rate", rate_of(count)), bw_as_word("what", what),
                    bw_as_count("cases", count.cases), bw_as_count("hits", count.hits),
                    bw_as_in_100("share", bw_rate(count)), bw_as_in_100("low", likely.low),
                    bw_as_in_100("high", likely.high));
}

static bw_arg as_counts(const char *name, bw_count count) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_put_sentence(&own, voice, counts_of(count), bw_as_word("what", "breaks"),
                    bw_as_count("cases", count.cases), bw_as_count("hits", count.hits));
    return arg;
}

/// "12 fewer", "as many", "3 more": goals in 100 breaks.
static bw_arg as_change(const char *name, double change) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    const int goals = bw_in_100(bw_abs(change));
    bw_put_sentence(&own, voice,
                    goals == 0   ? &bw_s_change_none
                    : change < 0 ? &bw_s_change_fewer
                                 : &bw_s_change_more,
                    bw_as_count("goals", goals));
    return arg;
}

void bw_say_difference(bw_count now, bw_count before, bw_text *out) {
    const bw_arg was = as_counts("before", before);
    const bw_arg is = as_counts("after", now);
    if (now.cases < BW_RATE_COUNTS || before.cases < BW_RATE_COUNTS) {
        bw_put_sentence(out, voice, &bw_s_difference_few, was, is);
        return;
    }
    const bw_interval likely = bw_rate_difference(now, before);
    bw_put_sentence(out, voice, &bw_s_difference, was, is,
                    as_change("change", bw_rate(now) - bw_rate(before)),
                    as_change("least", likely.low), as_change("most", likely.high),
                    bw_as_part("verdict", likely.high < 0  ? &bw_s_verdict_fewer
                                          : likely.low > 0 ? &bw_s_verdict_more
                                                           : &bw_s_verdict_open));
}

static bw_arg as_seconds_of(const char *name, double seconds) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    if (!(seconds < 0)) bw_put_number(&own, seconds, 1);
    return arg;
}

void bw_say_entry(const bw_entry *e, bw_units units, bw_text *out) {
    bw_arg names;
    bw_text own = bw_own_word(&names, "names");
    for (int i = 0; i < e->out_count; i++) {
        if (i > 0) bw_put(&own, ", ");
        bw_put(&own, e->out[i]);
    }
    bw_put_sentence(out, voice, &bw_s_entry, bw_as_word("outcome", bw_outcome_words(e->outcome)),
                    bw_as_part("took", e->seconds < 0 ? NULL : &bw_s_entry_seconds),
                    bw_as_part("passing", e->passes < 0 ? NULL : &bw_s_entry_passes),
                    bw_as_part("shot", e->shot_known ? &bw_s_entry_shot : NULL),
                    bw_as_part("people", e->out_count > 0 ? &bw_s_entry_people : NULL),
                    as_seconds_of("seconds", e->seconds), bw_as_count("passes", e->passes),
                    bw_as_place("place", units, e->shot), names);
}
