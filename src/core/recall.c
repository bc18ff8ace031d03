/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/recall.h"

#include "core/hash.h"
#include "core/ramp.h"

static const double usual_ease = 2.5, least_ease = 1.3;

bw_card bw_card_new(double weakness) {
    const double w = bw_clamp(weakness, 0, 1);
    return (bw_card){.weakness = w, .ease = usual_ease - w * (usual_ease - least_ease)};
}

static int whole_up(double days) {
    return (int)-bw_floor(-days + 1e-9); // the hair: tenths have no exact double
}

void bw_card_answer(bw_card *card, int quality, int day) {
    static const double longest = 3650; // ten years: nobody asks later
    const int q = quality < 0 ? 0 : quality > 5 ? 5 : quality;
    card->answers++;
    if (q < 3) {
        card->streak = 0;
        card->interval = 1;
    } else {
        const int before = card->interval;
        card->streak++;
        card->interval = card->streak == 1   ? 1
                         : card->streak == 2 ? 6
                                             : whole_up(bw_min(before * card->ease, longest));
        card->ease = bw_max(card->ease + 0.1 - (5 - q) * (0.08 + (5 - q) * 0.02), least_ease);
    }
    card->due = day + card->interval;
}

int bw_recall_quality(double marks) {
    if (marks >= 1) return 5;
    if (marks >= 0.75) return 4;
    if (marks >= 0.5) return 3;
    return marks >= 0.25 ? 2 : marks > 0 ? 1 : 0;
}

static bool ready(const bw_card *card, int day) {
    return card->answers == 0 || card->due <= day;
}

static uint64_t lot(uint64_t seed, int index) {
    return bw_hash_u64(bw_hash_u64(BW_HASH_START, seed), (uint64_t)index);
}

/// Whether card a is asked before card b.
static bool before(const bw_card *cards, int a, int b, int day, uint64_t seed) {
    const bw_card *x = &cards[a], *y = &cards[b];
    const bool now = ready(x, day);
    if (now != ready(y, day)) return now;
    if (!now && x->due != y->due) return x->due < y->due;
    if (x->weakness != y->weakness) return x->weakness > y->weakness;
    if (x->ease != y->ease) return x->ease < y->ease;
    const uint64_t p = lot(seed, a), q = lot(seed, b);
    return p != q ? p < q : a < b;
}

int bw_recall_pick(const bw_card *cards, int count, int day, uint64_t seed, int most, int *out) {
    BW_ASSERT(count >= 0 && count <= BW_MAX_CARDS);
    bool taken[BW_MAX_CARDS] = {false};
    int picked = 0;
    while (picked < most && picked < count) {
        int best = -1;
        for (int i = 0; i < count; i++) {
            if (!taken[i] && (best < 0 || before(cards, i, best, day, seed))) best = i;
        }
        taken[best] = true;
        out[picked++] = best;
    }
    return picked;
}

double bw_recall_marks(double distance, double tolerance) {
    return bw_ramp(3 - 2 * distance / tolerance);
}

bool bw_recall_may_swap(const bw_where_asked *asked, int a, int b) {
    const bw_vec to_a = asked->station[a].at, to_b = asked->station[b].at;
    const double ordered =
        bw_max(bw_distance(asked->home[a], to_a), bw_distance(asked->home[b], to_b));
    const double swapped =
        bw_max(bw_distance(asked->home[a], to_b), bw_distance(asked->home[b], to_a));
    return a != b && swapped <= ordered + BW_METRES_PER_YARD;
}

/// The answer beside one man's place.
static bw_mark_given beside(const bw_where_asked *asked, int spot, bw_vec answer) {
    bw_mark_given given = {.mate = -1};
    given.error = bw_sub(answer, asked->station[spot].at);
    given.distance = bw_length(given.error);
    given.tolerance = bw_max(asked->tolerance[spot], asked->finger);
    given.marks = bw_recall_marks(given.distance, given.tolerance);
    given.verdict = given.marks >= 1  ? BW_VERDICT_RIGHT
                    : given.marks > 0 ? BW_VERDICT_NEAR
                                      : BW_VERDICT_OFF;
    return given;
}

bw_mark_given bw_recall_score(const bw_where_asked *asked, bw_vec answer) {
    bw_mark_given best = beside(asked, asked->spot, answer);
    for (int s = 0; s < asked->count && best.verdict != BW_VERDICT_RIGHT; s++) {
        if (!bw_recall_may_swap(asked, asked->spot, s)) continue;
        bw_mark_given swap = beside(asked, s, answer);
        if (swap.verdict != BW_VERDICT_RIGHT) continue;
        if (best.verdict == BW_VERDICT_SWAP && best.distance <= swap.distance) continue;
        best = swap;
        best.verdict = BW_VERDICT_SWAP;
        best.mate = s;
    }
    return best;
}

void bw_tally_add(bw_tally *tally, bw_vec error) {
    tally->tries++;
    tally->sum = bw_add(tally->sum, error);
    tally->squares += bw_length2(error);
}

bw_vec bw_tally_bias(const bw_tally *tally) {
    return tally->tries > 0 ? bw_scale(tally->sum, 1.0 / tally->tries) : bw_v(0, 0);
}

double bw_tally_spread(const bw_tally *tally) {
    if (tally->tries == 0) return 0;
    const double mean = tally->squares / tally->tries;
    return bw_sqrt(bw_max(mean - bw_length2(bw_tally_bias(tally)), 0));
}
