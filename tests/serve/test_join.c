/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Join codes, sessions and rates on a clock of the test's own: brute force, reuse, age, limits.
#include "harness.h"
#include "serve/rate.h"
#include "serve/session.h"
#include <stdio.h>
#include <string.h>

static bw_join join;

static void begin(void) {
    memset(&join, 0, sizeof join);
    CHECK(bw_join_renew(&join, 0));
}

static void codes_are_eight_of_twenty_consonants_and_spread_evenly(void) {
    int seen[128] = {0};
    for (int i = 0; i < 2000; i++) {
        begin();
        CHECK_INT(strlen(join.code), 8);
        for (const char *c = join.code; *c; c++)
            seen[(int)*c]++;
    }
    int letters = 0;
    for (int c = 0; c < 128; c++) {
        if (!seen[c]) continue;
        letters++;
        CHECK(strchr("BCDFGHJKLMNPQRSTVWXZ", c) != NULL);
        CHECK(seen[c] > 640 && seen[c] < 960); // 800 expected, standard deviation 28
    }
    CHECK_INT(letters, 20);
}

static void a_code_lets_one_in_and_no_second(void) {
    begin();
    char code[BW_CODE_SIZE];
    strcpy(code, join.code);
    CHECK_INT(bw_join_try(&join, code, "10.0.0.1", 5), BW_JOIN_IN);
    CHECK(strcmp(code, join.code) != 0);
    CHECK_INT(bw_join_try(&join, code, "10.0.0.2", 6), BW_JOIN_WRONG);
}

static void how_it_is_typed_does_not_matter(void) {
    begin();
    char typed[40];
    const char *c = join.code;
    snprintf(typed, sizeof typed, " %c%c-%c%c%c %c%c%c-", c[0] | 32, c[1], c[2], c[3], c[4] | 32,
             c[5], c[6], c[7]);
    CHECK_INT(bw_join_try(&join, typed, "10.0.0.1", 1), BW_JOIN_IN);
    begin();
    snprintf(typed, sizeof typed, "%sB", join.code);
    CHECK_INT(bw_join_try(&join, typed, "10.0.0.1", 1), BW_JOIN_WRONG);
    snprintf(typed, sizeof typed, "%.7s", join.code);
    CHECK_INT(bw_join_try(&join, typed, "10.0.0.1", 1), BW_JOIN_WRONG);
    CHECK_INT(bw_join_try(&join, "", "10.0.0.1", 1), BW_JOIN_WRONG);
}

static void a_code_grows_old_after_ten_minutes(void) {
    begin();
    char code[BW_CODE_SIZE];
    strcpy(code, join.code);
    CHECK(bw_join_keep(&join, BW_CODE_SECONDS - 1));
    CHECK_TEXT(join.code, code);
    CHECK_NEAR(bw_join_left(&join, BW_CODE_SECONDS - 1), 1, 1e-9);
    CHECK_INT(bw_join_try(&join, code, "10.0.0.1", BW_CODE_SECONDS), BW_JOIN_WRONG);
    CHECK(bw_join_keep(&join, BW_CODE_SECONDS));
    CHECK(strcmp(join.code, code) != 0);
}

static void five_wrong_tries_and_the_address_waits(void) {
    begin();
    for (int i = 0; i < BW_CODE_TRIES; i++)
        CHECK_INT(bw_join_try(&join, "BBBBBBBB", "10.0.0.9", i), BW_JOIN_WRONG);
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.9", 10), BW_JOIN_WAIT);
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.9", 4 + BW_CODE_WAIT - 0.1), BW_JOIN_WAIT);
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.8", 11), BW_JOIN_IN); // another does not
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.9", 4 + BW_CODE_WAIT), BW_JOIN_IN);
}

/// Wrong codes from wherever change nothing for whoever has the right one.
static void tries_from_everywhere_leave_the_code_as_it_is(void) {
    begin();
    char code[BW_CODE_SIZE], address[BW_ADDRESS_SIZE];
    strcpy(code, join.code);
    for (int i = 0; i < BW_JOIN_ADDRESSES - 1; i++) {
        snprintf(address, sizeof address, "fd00::%x", i);
        CHECK_INT(bw_join_try(&join, "BBBBBBBB", address, 1 + i * 0.01), BW_JOIN_WRONG);
    }
    CHECK_TEXT(join.code, code);
    CHECK_INT(bw_join_try(&join, code, "10.0.0.1", 12), BW_JOIN_IN);
}

/// However many addresses somebody has, in a minute he has no more tries than the places there are allow;
/// and none of his addresses is forgotten to let another in.
static void tries_from_everywhere_have_an_end(void) {
    begin();
    char address[BW_ADDRESS_SIZE];
    int wrong = 0;
    for (int round = 0; round < 10; round++) {
        for (int i = 0; i < 3 * BW_JOIN_ADDRESSES; i++) {
            snprintf(address, sizeof address, "fd00::%x", i);
            wrong += bw_join_try(&join, "BBBBBBBB", address, 1) == BW_JOIN_WRONG;
        }
    }
    CHECK_INT(wrong, BW_CODE_TRIES * BW_JOIN_ADDRESSES);
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.1", 2), BW_JOIN_WAIT);
    CHECK_INT(bw_join_try(&join, join.code, "10.0.0.1", 1 + BW_CODE_WAIT), BW_JOIN_IN);
}

static void no_code_opens_while_there_is_none(void) {
    memset(&join, 0, sizeof join);
    CHECK_INT(bw_join_try(&join, "", "10.0.0.1", 1), BW_JOIN_WRONG);
    CHECK_INT(bw_join_try(&join, "BBBBBBBB", "10.0.0.1", 1), BW_JOIN_WRONG);
    CHECK_NEAR(bw_join_left(&join, 1), 0, 0);
}

static bw_sessions sessions;

static void sessions_are_found_by_their_whole_secret(void) {
    memset(&sessions, 0, sizeof sessions);
    CHECK(bw_sessions_find(&sessions, "", 2) == NULL);
    CHECK(bw_sessions_start(&sessions, "", 0) == NULL);
    CHECK(bw_sessions_launch(&sessions));
    char token[BW_SECRET_SIZE];
    strcpy(token, sessions.launch);
    const bw_session *coach = bw_sessions_start(&sessions, token, 0);
    CHECK(coach && coach->rights == BW_COACH);
    CHECK(bw_sessions_start(&sessions, token, 0) == NULL);
    const bw_session *player = bw_sessions_admit(&sessions, "10.0.0.1", "17", 1);
    CHECK(player && player->rights == BW_PLAYER && player->id != coach->id);
    CHECK(bw_sessions_find(&sessions, player->secret, 2) == player);
    char part[BW_SECRET_SIZE];
    strcpy(part, player->secret);
    part[31] = '\0';
    CHECK(bw_sessions_find(&sessions, part, 2) == NULL);
    CHECK(!bw_sessions_remove(&sessions, coach->id)); // only players are removed
    char gone[BW_SECRET_SIZE];
    strcpy(gone, player->secret);
    CHECK(bw_sessions_remove(&sessions, player->id));
    CHECK(bw_sessions_find(&sessions, gone, 2) == NULL);
    CHECK(bw_sessions_find(&sessions, "", 2) == NULL);
}

/// Opens another of the coach's windows.
static const bw_session *open_window(double now) {
    char token[BW_SECRET_SIZE];
    CHECK(bw_sessions_launch(&sessions));
    strcpy(token, sessions.launch);
    return bw_sessions_start(&sessions, token, now);
}

/// As many windows and devices as there are places, and as many again: the last is always let in, and of
/// those before it the ones that are in use stay in.
static void there_is_always_room_for_one_more(void) {
    memset(&sessions, 0, sizeof sessions);
    char first[BW_SECRET_SIZE], phone[BW_SECRET_SIZE], second[BW_SECRET_SIZE];
    double now = 0;
    for (int i = 0; i < 2 * BW_MAX_COACHES; i++) {
        const bw_session *coach = open_window(++now);
        CHECK(coach && coach->rights == BW_COACH);
        if (i == 0) strcpy(first, coach->secret);
        if (i == 1) strcpy(second, coach->secret);
        CHECK(bw_sessions_find(&sessions, first, ++now) != NULL);
    }
    CHECK(bw_sessions_find(&sessions, second, now) == NULL);
    for (int i = 0; i < 2 * BW_MAX_PLAYERS; i++) {
        const bw_session *player =
            bw_sessions_admit(&sessions, "10.0.0.1", "a name that is longer than its place", ++now);
        CHECK(player && player->rights == BW_PLAYER);
        if (i == 0) strcpy(phone, player->secret);
        CHECK(bw_sessions_find(&sessions, phone, ++now) != NULL);
    }
    CHECK(bw_sessions_find(&sessions, first, now) != NULL); // devices took no window's place
    bw_sessions_remove_players(&sessions);
    CHECK(bw_sessions_find(&sessions, phone, now) == NULL);
    CHECK(bw_sessions_find(&sessions, first, now) != NULL);
}

/// A team meeting's worth of both stays in whole.
static void a_hundred_windows_and_a_hundred_devices_are_all_in(void) {
    static char secrets[200][BW_SECRET_SIZE];
    memset(&sessions, 0, sizeof sessions);
    for (int i = 0; i < 100; i++) {
        strcpy(secrets[i], open_window(i)->secret);
        strcpy(secrets[100 + i], bw_sessions_admit(&sessions, "10.0.0.1", "", i)->secret);
    }
    for (int i = 0; i < 200; i++)
        CHECK(bw_sessions_find(&sessions, secrets[i], 200) != NULL);
}

static void a_burst_is_let_through_and_then_so_many_a_second(void) {
    static bw_rate_limit rate = {.burst = 10, .per_second = 2};
    int through = 0;
    for (int i = 0; i < 30; i++)
        through += bw_rate_allow(&rate, "10.0.0.1", 100);
    CHECK_INT(through, 10);
    CHECK(bw_rate_allow(&rate, "10.0.0.2", 100));
    for (int i = 0; i < 30; i++)
        through += bw_rate_allow(&rate, "10.0.0.1", 103);
    CHECK_INT(through, 16);
    for (int i = 0; i < 30; i++)
        through += bw_rate_allow(&rate, "10.0.0.1", 9000);
    CHECK_INT(through, 26);
}

int main(int argc, char **argv) {
    RUN(codes_are_eight_of_twenty_consonants_and_spread_evenly);
    RUN(a_code_lets_one_in_and_no_second);
    RUN(how_it_is_typed_does_not_matter);
    RUN(a_code_grows_old_after_ten_minutes);
    RUN(five_wrong_tries_and_the_address_waits);
    RUN(tries_from_everywhere_leave_the_code_as_it_is);
    RUN(tries_from_everywhere_have_an_end);
    RUN(no_code_opens_while_there_is_none);
    RUN(sessions_are_found_by_their_whole_secret);
    RUN(there_is_always_room_for_one_more);
    RUN(a_hundred_windows_and_a_hundred_devices_are_all_in);
    RUN(a_burst_is_let_through_and_then_so_many_a_second);
    return test_report(argc, argv);
}
