/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A logged break: what can be true and what cannot, and the words of its outcome.
#include "core/entry.h"

#include "harness.h"

static bw_entry good_entry(void) {
    bw_entry e = bw_entry_default();
    bw_copy(e.client, sizeof e.client, "phone-1.7_a");
    return e;
}

static bool accepted(const bw_entry *e) {
    char memory[200];
    bw_text why = bw_text_in(memory, sizeof memory);
    const bool fine = bw_entry_check(e, &why) == BW_OK;
    CHECK_INT(fine, why.used == 0);
    CHECK_INT(bw_entry_check(e, NULL) == BW_OK, fine);
    return fine;
}

static void outcomes_have_words(void) {
    for (int i = 0; i < BW_OUTCOME_COUNT; i++) {
        CHECK_INT(bw_outcome_find(bw_outcome_id((bw_outcome)i)), i);
        CHECK(bw_outcome_words((bw_outcome)i)[0] != '\0');
    }
    CHECK_INT(bw_outcome_find("goals"), BW_OUTCOME_COUNT);
    CHECK_INT(bw_outcome_find(""), BW_OUTCOME_COUNT);
    CHECK(!bw_outcome_id(BW_OUTCOME_COUNT));
    CHECK(bw_outcome_shot(BW_OUTCOME_GOAL) && bw_outcome_shot(BW_OUTCOME_SAVE));
    CHECK(!bw_outcome_shot(BW_OUTCOME_WHISTLE) && !bw_outcome_shot(BW_OUTCOME_COUNT));
}

static void numbers_are_bounded(void) {
    bw_entry e = good_entry();
    CHECK(accepted(&e));
#define REFUSED(field, value)                                                                      \
    do {                                                                                           \
        bw_entry f = e;                                                                            \
        f.field = value;                                                                           \
        CHECK(!accepted(&f));                                                                      \
    } while (0)
    REFUSED(offence, 2);
    REFUSED(offence, 7);
    REFUSED(defence, 1);
    REFUSED(defence, 7);
    REFUSED(outcome, BW_OUTCOME_COUNT);
    REFUSED(outcome, (bw_outcome)-1);
    REFUSED(seconds, 120.5);
    REFUSED(seconds, NAN);
    REFUSED(passes, -2);
    REFUSED(passes, 51);
    REFUSED(time, -1);
    REFUSED(time, BW_LAST_TIME + 1);
    REFUSED(game, -1);
    REFUSED(stage, 2);
    REFUSED(stage, 7);
    REFUSED(out_count, 7);
    REFUSED(out_count, -1);
#undef REFUSED
    e.seconds = 0;
    e.passes = 0;
    e.shot_known = true;
    e.shot = bw_v(-4, 9);
    CHECK(accepted(&e));
    e.shot.x = NAN;
    CHECK(!accepted(&e));
    e.shot = bw_v(0, -26);
    CHECK(!accepted(&e));
}

static void words_are_checked(void) {
    bw_entry e = good_entry();
    bw_copy(e.client, sizeof e.client, "");
    CHECK(!accepted(&e));
    bw_copy(e.client, sizeof e.client, "a b");
    CHECK(!accepted(&e));
    e = good_entry();
    e.out_count = 2;
    bw_copy(e.out[0], BW_ID_SIZE, "TL");
    bw_copy(e.out[1], BW_ID_SIZE, "12");
    CHECK(accepted(&e));
    bw_copy(e.out[1], BW_ID_SIZE, "TL");
    CHECK(!accepted(&e));
    CHECK(bw_entry_who("0") && bw_entry_who("99") && bw_entry_who("112") && bw_entry_who("M") &&
          bw_entry_who("C1"));
    CHECK(!bw_entry_who("") && !bw_entry_who("07") && !bw_entry_who("1000") &&
          !bw_entry_who("FOUR") && !bw_entry_who("a-b") && !bw_entry_who("\xc3\xa9"));
    e = good_entry();
    bw_copy(e.note, sizeof e.note, "late slide\nand");
    CHECK(!accepted(&e));
    bw_copy(e.note, sizeof e.note, "caf\xc3\xa9");
    CHECK(accepted(&e));
}

static void likeness_sees_every_field(void) {
    bw_entry e = good_entry();
    e.shot_known = true;
    e.seconds = 4;
    e.out_count = 1;
    bw_copy(e.out[0], BW_ID_SIZE, "TL");
#define DIFFERS(change)                                                                            \
    do {                                                                                           \
        bw_entry f = e;                                                                            \
        f.change;                                                                                  \
        CHECK(!bw_entry_same(&e, &f));                                                             \
    } while (0)
    DIFFERS(client[0] = 'q');
    DIFFERS(game = 1);
    DIFFERS(time = 1);
    DIFFERS(offence = 5);
    DIFFERS(defence = 5);
    DIFFERS(outcome = BW_OUTCOME_GOAL);
    DIFFERS(seconds = 5);
    DIFFERS(seconds = -1);
    DIFFERS(passes = 1);
    DIFFERS(shot_known = false);
    DIFFERS(shot.x = 1);
    DIFFERS(shot.y = 1);
    DIFFERS(out_count = 0);
    DIFFERS(out[0][0] = 'B');
    DIFFERS(stage = 4);
    DIFFERS(revision = 4);
    DIFFERS(note[0] = 'a');
#undef DIFFERS
    bw_entry f = e;
    f.order = 9;
    CHECK(bw_entry_same(&e, &f));
}

int main(int argc, char **argv) {
    RUN(outcomes_have_words);
    RUN(numbers_are_bounded);
    RUN(words_are_checked);
    RUN(likeness_sees_every_field);
    return test_report(argc, argv);
}
