/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who goes where: fixed choices stand, the quickest go where runs are tight, and what cannot be is said.
#include "harness.h"
#include "scheme/fresh.h"
#include "tune/who.h"

static bw_scheme scheme;
enum { MEN = 12 };
static bw_candidate men[MEN];

/// Twelve men who can play anything, each a little quicker than the one before.
static void everybody(void) {
    bw_scheme_fresh(0, 3, &scheme);
    for (int m = 0; m < MEN; m++) {
        men[m] = (bw_candidate){.jersey = m + 1, .legs = {6.5 + 0.2 * m, 1.2}};
        for (int p = 0; p < BW_LINEUP_PLACES; p++)
            men[m].may[p] = true;
    }
}

static void the_quickest_are_chosen(void) {
    everybody();
    bw_who who;
    int unfilled;
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_OK);
    CHECK_INT(who.place_count, 6);
    CHECK_INT(who.spots, 4);
    for (int p = 0; p < who.place_count; p++) {
        // Six places and twelve men: nobody of the slow half.
        CHECK(who.place[p].man >= MEN / 2);
        CHECK(who.place[p].second >= 0);
        CHECK(who.place[p].swap >= -1e-9);
        CHECK(who.place[p].cost <= who.worst + 1e-12);
    }
}

/// The middle man of the 2-1-2 is never made to run: that is no tight run of 0 s, and does not hide how much
/// time the others have.
static void an_idle_spot_is_told(void) {
    enum { FIVE = 2, MIDDLE = 2 };
    everybody();
    CHECK_TEXT(scheme.stages[FIVE].spots[MIDDLE].id, "M");
    for (int m = 0; m < MEN; m++)
        men[m].legs.vmax = 9; // quick enough for time to spare everywhere
    bw_who who;
    int unfilled;
    CHECK_INT(bw_who_choose(&scheme, FIVE, men, MEN, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_OK);
    double worst = -100;
    for (int p = 0; p < who.place_count; p++) {
        CHECK_INT(who.place[p].idle, p == MIDDLE);
        if (p != MIDDLE) worst = who.place[p].cost > worst ? who.place[p].cost : worst;
    }
    CHECK_NEAR(who.place[MIDDLE].cost, 0, 0);
    CHECK_NEAR(who.worst, worst, 0);
    CHECK(who.worst < 0);
}

static void fixed_choices_stand(void) {
    everybody();
    men[0].fixed[2] = true;
    bw_who who;
    int unfilled;
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_OK);
    CHECK_INT(who.place[2].man, 0);
    CHECK(who.place[2].fixed && who.place[2].second < 0);
    men[1].fixed[2] = true;
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_BAD_INPUT);
}

static void what_cannot_be_is_said(void) {
    everybody();
    for (int m = 0; m < MEN; m++)
        men[m].may[3] = false;
    bw_who who;
    int unfilled;
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_NOT_FOUND);
    CHECK_INT(unfilled, 3);
    everybody();
    CHECK_INT(bw_who_choose(&scheme, 1, men, 3, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled),
              BW_NOT_FOUND);
    CHECK_INT(unfilled, -1);
}

typedef struct steps {
    int count, last, of, cancel_at;
    atomic_bool cancel;
} steps;

static void count_step(void *self, int done, int of) {
    steps *s = self;
    CHECK_INT(done, s->last + 1);
    s->last = done;
    s->of = of;
    s->count++;
    if (s->count == s->cancel_at) atomic_store(&s->cancel, true);
}

/// By worth every man with legs of his own is tried in every place, which is told step by step.
static void worth_is_told_of_and_cancelled(void) {
    everybody();
    for (int m = 1; m < MEN; m++)
        men[m].legs.vmax = 0;
    bw_who who;
    int unfilled;
    steps s = {.cancel_at = 0};
    const bw_watcher watch = {count_step, &s, &s.cancel};
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_WORTH, watch, &who, &unfilled), BW_OK);
    CHECK_INT(s.of, 2 + who.place_count);
    CHECK_INT(s.count, s.of);
    s = (steps){.cancel_at = 2};
    CHECK_INT(bw_who_choose(&scheme, 1, men, MEN, BW_WHO_WORTH, watch, &who, &unfilled), BW_LIMIT);
    CHECK_INT(s.count, 2);
}

static void places_and_their_codes(void) {
    bw_scheme_fresh(0, 3, &scheme);
    char name[BW_LINEUP_PLACES][BW_NAME_SIZE], codes[BW_MAX_SPOTS + 1][BW_ID_SIZE];
    CHECK_INT(bw_who_places(&scheme, 1, name), 6);
    CHECK_TEXT(name[0], scheme.stages[1].spots[0].name);
    CHECK_TEXT(name[4], scheme.late[0].role);
    bw_who_codes(&scheme, 1, 0, codes);
    CHECK_TEXT(codes[0], scheme.stages[1].spots[0].id);
    CHECK_TEXT(codes[1], "");
    bw_who_codes(&scheme, 1, 4, codes);
    CHECK_TEXT(codes[0], scheme.late[0].takes[0]);
}

int main(int argc, char **argv) {
    RUN(the_quickest_are_chosen);
    RUN(an_idle_spot_is_told);
    RUN(fixed_choices_stand);
    RUN(what_cannot_be_is_said);
    RUN(worth_is_told_of_and_cancelled);
    RUN(places_and_their_codes);
    return test_report(argc, argv);
}
