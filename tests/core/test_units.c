/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/base.h"
#include "core/units.h"
#include "harness.h"

static char room[64];

static const char *length(bw_units units, double metres) {
    bw_text t = bw_text_in(room, sizeof room);
    bw_say_length(units, metres, &t);
    return room;
}

static void a_length_is_said_in_the_unit_of_the_people(void) {
    CHECK_TEXT(length(BW_YARDS, 3 * BW_METRES_PER_YARD), "3.0 yd");
    CHECK_TEXT(length(BW_METRES, 3), "3.0 m");
    CHECK_TEXT(length(BW_METRES, -0.04), "0.0 m");
}

static void a_speed_is_said_in_the_unit_of_the_people(void) {
    bw_text t = bw_text_in(room, sizeof room);
    bw_say_speed(BW_YARDS, 7.3 * BW_METRES_PER_YARD, &t);
    CHECK_TEXT(room, "7.3 yd/s");
    t = bw_text_in(room, sizeof room);
    bw_say_speed(BW_METRES, 7.3, &t);
    CHECK_TEXT(room, "7.3 m/s");
}

static void a_time_is_said_with_one_decimal(void) {
    bw_text t = bw_text_in(room, sizeof room);
    bw_say_seconds(2.4, &t);
    CHECK_TEXT(room, "2.4 s");
}

static void a_share_is_said_in_whole_hundredths_halves_away_from_zero(void) {
    CHECK(bw_in_100(0.125) == 13);
    CHECK(bw_in_100(0) == 0);
    CHECK(bw_in_100(1) == 100);
    CHECK(bw_in_100(0.283) == 28);
}

static void a_length_comes_back_from_the_unit_it_is_shown_in(void) {
    for (int i = -20; i <= 20; i++) {
        const double metres = i * 0.37;
        CHECK_NEAR(bw_in_unit(BW_YARDS, metres) * bw_unit_length(BW_YARDS), metres, 1e-12);
        CHECK(bw_in_unit(BW_METRES, metres) == metres);
    }
}

int main(int argc, char **argv) {
    RUN(a_length_is_said_in_the_unit_of_the_people);
    RUN(a_speed_is_said_in_the_unit_of_the_people);
    RUN(a_time_is_said_with_one_decimal);
    RUN(a_share_is_said_in_whole_hundredths_halves_away_from_zero);
    RUN(a_length_comes_back_from_the_unit_it_is_shown_in);
    return test_report(argc, argv);
}
