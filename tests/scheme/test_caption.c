/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Captions: plain words, short sentences, left and right as the defender sees them.
#include "harness.h"
#include "scheme/caption.h"
#include "scheme/fresh.h"
#include "scheme/style.h"
#include <ctype.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

static const double yd = BW_METRES_PER_YARD;

enum { LONGEST_SENTENCE = 16 };

static const bw_scheme *fresh(void) {
    static bw_scheme scheme;
    bw_scheme_fresh(0, 3, &scheme);
    return &scheme;
}

static const char *place(bw_units units, bw_vec at) {
    static char room[80];
    bw_text text = bw_text_in(room, sizeof room);
    bw_say_place(units, at, &text);
    return room;
}

/// On his own page a man is told what the unit's caption says of him: same place, same duty.
static void a_player_is_told_what_the_unit_is(void) {
    const bw_scheme *scheme = fresh();
    const bw_stage *stage = &scheme->stages[1];
    bw_plan plan;
    bw_plan_build(scheme, 1, &plan);
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_station stations[BW_MAX_SPOTS];
        const bw_vec at = scheme->landmarks[l].at;
        bw_where(&plan, at, NULL, 0, stations);
        for (int s = 0; s < stage->defenders; s++) {
            char room[300];
            bw_text text = bw_text_in(room, sizeof room);
            bw_say_you(scheme, 1, s, &stations[s], at, &text);
            CHECK(strncmp(room, "Ball ", 5) == 0);
            CHECK(room[text.used - 1] == '.');
            char job[300];
            bw_text words = bw_text_in(job, sizeof job);
            bw_say_your_job(scheme, 1, s, &stations[s], at, &words);
            CHECK(strstr(room, job) != NULL);
            CHECK(bw_style_sentence(job) <= BW_SENTENCE_WORDS);
            CHECK(bw_style_jargon(room) == NULL);
            CHECK(strstr(room, " he ") == NULL && strstr(room, " his ") == NULL);
            const bool quiet =
                stations[s].duty == BW_DUTY_ADJACENT || stations[s].duty == BW_DUTY_BACKSIDE;
            CHECK_INT(strstr(room, stage->spots[s].call) != NULL, !quiet);
            if (stations[s].duty == BW_DUTY_HOLD) CHECK(strstr(room, ": hold your post") != NULL);
            if (stations[s].duty == BW_DUTY_CREASE) CHECK(strstr(room, "the crease") != NULL);
        }
    }
}

static void places_are_said_from_the_goal(void) {
    CHECK_TEXT(place(BW_YARDS, bw_v(3.5 * yd, 2.5 * yd)), "3.5 yd right, 2.5 yd out");
    CHECK_TEXT(place(BW_YARDS, bw_v(-3.5 * yd, 2.5 * yd)), "3.5 yd left, 2.5 yd out");
    CHECK_TEXT(place(BW_YARDS, bw_v(0, -5 * yd)), "in the middle, 5.0 yd behind");
    CHECK_TEXT(place(BW_YARDS, bw_v(-9 * yd, 0)), "9.0 yd left, on the goal line");
    CHECK_TEXT(place(BW_METRES, bw_v(4, 12)), "4.0 m right, 12.0 m out");
    // What rounds to nothing is said as nothing, on either side.
    CHECK_TEXT(place(BW_YARDS, bw_v(0.04 * yd, -0.04 * yd)), "in the middle, on the goal line");
    CHECK_TEXT(place(BW_YARDS, bw_v(-0.04 * yd, 0.04 * yd)), "in the middle, on the goal line");
}

static const char *ball(const bw_scheme *scheme, bw_vec at) {
    static char room[120];
    bw_text text = bw_text_in(room, sizeof room);
    bw_say_ball(scheme, at, &text);
    return room;
}

static void the_ball_has_its_landmarks_name(void) {
    const bw_scheme *scheme = fresh();
    for (int l = 0; l < scheme->landmark_count; l++) {
        CHECK_TEXT(ball(scheme, scheme->landmarks[l].at), scheme->landmarks[l].name);
        bw_vec near = bw_add(scheme->landmarks[l].at, bw_v(0.2, -0.2));
        CHECK_TEXT(ball(scheme, near), scheme->landmarks[l].name);
    }
}

static void elsewhere_the_ball_is_said_by_place(void) {
    static bw_scheme scheme;
    scheme = *fresh();
    scheme.landmark_count = 0;
    CHECK_TEXT(ball(&scheme, bw_v(0, -4)), "behind the goal");
    CHECK_TEXT(ball(&scheme, bw_v(-6, -3)), "behind the goal on the left");
    CHECK_TEXT(ball(&scheme, bw_v(10, 6)), "on the right wing");
    CHECK_TEXT(ball(&scheme, bw_v(-10, 6)), "on the left wing");
    CHECK_TEXT(ball(&scheme, bw_v(1, 14)), "up top");
    CHECK_TEXT(ball(&scheme, bw_v(7, 14)), "up top on the right");
    CHECK_TEXT(ball(&scheme, bw_v(0, 5)), "in front of the goal");
}

/// Words a caption may use besides the coach's own names: the trade's and plain English.
static const char *const vocabulary[] = {
    "a",        "and",      "are",   "at",     "backside", "ball",      "behind", "crease", "drops",
    "everyone", "extended", "for",   "front",  "goal",     "goal-line", "has",    "have",   "high",
    "his",      "hold",     "holds", "in",     "is",       "adjacent",  "left",   "line",   "low",
    "man",      "meets",    "men",   "middle", "moves",    "of",        "on",     "others", "out",
    "pair",     "plays",    "post",  "right",  "softly",   "stay",      "stays",  "takes",  "take",
    "the",      "their",    "to",    "top",    "up",       "waits",     "wing",   "yd",     "m"};

static bool has_word(const char *text, const char *word) {
    size_t n = strlen(word);
    for (const char *p = text; *p; p++) {
        bool start = p == text || p[-1] == ' ';
        if (start && strncasecmp(p, word, n) == 0 && (p[n] == ' ' || p[n] == '\0')) return true;
    }
    return false;
}

static bool known(const bw_scheme *scheme, int stage, const char *word) {
    if (isdigit((unsigned char)word[0])) return true;
    for (int i = 0; i < BW_COUNT(vocabulary); i++) {
        if (strcasecmp(vocabulary[i], word) == 0) return true;
    }
    for (int s = 0; s < scheme->stages[stage].defenders; s++) {
        if (has_word(scheme->stages[stage].spots[s].name, word)) return true;
    }
    for (int l = 0; l < scheme->landmark_count; l++) {
        if (has_word(scheme->landmarks[l].name, word)) return true;
    }
    return false;
}

/// Full stops end sentences; the ones inside figures do not.
static bool ends_sentence(const char *p) {
    return *p == '.' && (p[1] == ' ' || p[1] == '\0');
}

static void check_style(const bw_scheme *scheme, int stage, const char *text) {
    const char *p = text;
    CHECK(*p != '\0');
    while (*p) {
        int words = 0;
        CHECK(isupper((unsigned char)*p));
        while (*p && !ends_sentence(p)) {
            char word[64];
            size_t n = 0;
            while (*p && *p != ' ' && !ends_sentence(p) && n + 1 < sizeof word) {
                if (*p != ',') word[n++] = *p;
                p++;
            }
            word[n] = '\0';
            words++;
            CHECK(n > 0);
            if (!known(scheme, stage, word)) fprintf(stderr, "unknown word \"%s\"\n", word);
            CHECK(known(scheme, stage, word));
            if (*p == ' ') p++;
        }
        CHECK(*p == '.');
        if (words > LONGEST_SENTENCE) fprintf(stderr, "too long: %s\n", text);
        CHECK(words <= LONGEST_SENTENCE);
        if (*p == '.') p++;
        if (*p == ' ') p++;
    }
}

static const char *caption(const bw_scheme *scheme, int stage, bw_vec at, const bw_vec *men,
                           int count, bw_station *out) {
    static char room[600];
    bw_plan plan;
    bw_plan_build(scheme, stage, &plan);
    bw_where(&plan, at, men, count, out);
    bw_text text = bw_text_in(room, sizeof room);
    bw_say_unit(scheme, stage, out, at, &text);
    CHECK(!text.full);
    return room;
}

static void sentences_are_short_and_plain(void) {
    const bw_scheme *scheme = fresh();
    unsigned long long random = 5;
    for (int g = 0; g < scheme->stage_count; g++) {
        for (int k = 0; k < 300; k++) {
            bw_vec at = k < scheme->landmark_count
                            ? scheme->landmarks[k].at
                            : bw_v(test_uniform(&random, -20, 20), test_uniform(&random, -12, 25));
            bw_vec men[6];
            for (int a = 0; a < 6; a++)
                men[a] = bw_v(test_uniform(&random, -15, 15), test_uniform(&random, -5, 15));
            bw_station out[BW_MAX_SPOTS];
            check_style(scheme, g, caption(scheme, g, at, men, k % 2 ? 6 : 0, out));
            for (int s = 0; s < scheme->stages[g].defenders; s++) {
                char room[200];
                bw_text text = bw_text_in(room, sizeof room);
                bw_say_job(scheme, g, s, &out[s], &text);
                check_style(scheme, g, room);
            }
        }
    }
}

static void every_man_is_spoken_of(void) {
    const bw_scheme *scheme = fresh();
    for (int g = 0; g < scheme->stage_count; g++) {
        for (int l = 0; l < scheme->landmark_count; l++) {
            bw_station out[BW_MAX_SPOTS];
            const char *text = caption(scheme, g, scheme->landmarks[l].at, NULL, 0, out);
            for (int s = 0; s < scheme->stages[g].defenders; s++) {
                if (out[s].duty == BW_DUTY_HOLD || out[s].duty == BW_DUTY_MAN) continue;
                char name[BW_NAME_SIZE];
                bw_copy(name, sizeof name, scheme->stages[g].spots[s].name);
                char first[BW_NAME_SIZE];
                bw_copy(first, sizeof first, name);
                first[0] = (char)toupper((unsigned char)first[0]);
                CHECK(strstr(text, name) || strstr(text, first));
            }
        }
    }
}

static int by_text(const void *a, const void *b) {
    return strcmp(a, b);
}

/// The words of a caption in alphabetical order, "left" and "right" changed over when asked.
static void sorted_words(const char *text, bool swap, char words[120][24], int *count) {
    *count = 0;
    while (*text && *count < 120) {
        char *word = words[*count];
        size_t n = strcspn(text, " ,.");
        memset(word, 0, 24);
        for (size_t i = 0; i < n && i < 23; i++)
            word[i] = (char)tolower((unsigned char)text[i]);
        if (swap && strcmp(word, "left") == 0)
            strcpy(word, "right");
        else if (swap && strcmp(word, "right") == 0)
            strcpy(word, "left");
        if (n > 0) ++*count;
        text += n + (text[n] != '\0');
    }
    qsort(words, (size_t)*count, 24, by_text);
}

static void mirrored_ball_swaps_left_and_right(void) {
    const bw_scheme *scheme = fresh();
    static char right[120][24], left[120][24];
    for (int g = 0; g < scheme->stage_count; g++) {
        for (int l = 0; l < scheme->landmark_count; l++) {
            bw_vec at = scheme->landmarks[l].at;
            if (at.x == 0) continue;
            bw_station out[BW_MAX_SPOTS];
            int n, m;
            sorted_words(caption(scheme, g, at, NULL, 0, out), false, right, &n);
            sorted_words(caption(scheme, g, bw_mirror(at), NULL, 0, out), true, left, &m);
            CHECK_INT(n, m);
            for (int i = 0; i < n && i < m; i++)
                CHECK_TEXT(left[i], right[i]);
        }
    }
}

/// Common practice, no source: ball behind, the low pair hold, a high man drops to the crease.
static void ball_behind_reads_as_coaches_say_it(void) {
    const bw_scheme *scheme = fresh();
    bw_station out[BW_MAX_SPOTS];
    int x = bw_scheme_landmark(scheme, "x");
    CHECK(x >= 0);
    if (x < 0) return;
    const char *text =
        caption(scheme, bw_scheme_stage(scheme, 4), scheme->landmarks[x].at, NULL, 0, out);
    CHECK(strstr(text, "The low pair hold.") != NULL);
    CHECK(strstr(text, "drops to the crease.") != NULL);
    CHECK(strstr(text, "stays high on the backside.") != NULL);
}

static void a_job_says_what_and_where(void) {
    const bw_scheme *scheme = fresh();
    int stage = bw_scheme_stage(scheme, 4);
    bw_station hold = {bw_v(-3 * yd, 1.5 * yd), BW_DUTY_HOLD, -1};
    char room[200], want[200];
    bw_text text = bw_text_in(room, sizeof room);
    bw_say_job(scheme, stage, 0, &hold, &text);
    char name[BW_NAME_SIZE];
    bw_copy(name, sizeof name, scheme->stages[stage].spots[0].name);
    name[0] = (char)toupper((unsigned char)name[0]);
    snprintf(want, sizeof want, "%s holds his post, 3.0 yd left, 1.5 yd out.", name);
    CHECK_TEXT(room, want);
}

int main(int argc, char **argv) {
    RUN(a_player_is_told_what_the_unit_is);
    RUN(places_are_said_from_the_goal);
    RUN(the_ball_has_its_landmarks_name);
    RUN(elsewhere_the_ball_is_said_by_place);
    RUN(sentences_are_short_and_plain);
    RUN(every_man_is_spoken_of);
    RUN(mirrored_ball_swaps_left_and_right);
    RUN(ball_behind_reads_as_coaches_say_it);
    RUN(a_job_says_what_and_where);
    return test_report(argc, argv);
}
