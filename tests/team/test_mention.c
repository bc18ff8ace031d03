/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a text speaks of a player: each way of writing him is found, and words that only look like it are not.
#include "core/text.h"
#include "team/mention.h"

#include "harness.h"
#include <stdlib.h>
#include <string.h>

/// The text with every mention in brackets: "!" behind a whole name, "#" a number, "." initials.
static const char *marked(const bw_player *player, const char *name, const char *text) {
    static char out[1024];
    static const char *const signs[BW_SAYS_COUNT] = {"!", "", ".", "#"};
    bw_called called;
    bw_mention *list = NULL;
    int count = 0;
    size_t at = 0;
    bw_text t = bw_text_in(out, sizeof out);
    bw_called_of(player, name, &called);
    CHECK(bw_mentions(&called, text, strlen(text), &list, &count));
    for (int i = 0; i < count; i++) {
        bw_put_n(&t, text + at, list[i].from - at);
        bw_put(&t, "[");
        bw_put_n(&t, text + list[i].from, list[i].to - list[i].from);
        bw_put(&t, "]");
        bw_put(&t, signs[list[i].kind]);
        at = list[i].to;
    }
    bw_put(&t, text + at);
    free(list);
    return out;
}

static const bw_player quillon = {.jersey = 12, .initials = "Q.Z.", .name = "Quillon Zimmer"};
static const bw_player ann = {.jersey = 5, .name = "Ann Lee"};
static const bw_player zoe = {.jersey = 7, .name = "Zoë Ångström"};
static const bw_player jo = {.jersey = 0, .initials = "J", .name = "Jo Ng"};

static void names(void) {
    CHECK_TEXT(marked(&quillon, NULL, "Zimmer was late"), "[Zimmer] was late");
    CHECK_TEXT(marked(&quillon, NULL, "QUILLON  ZIMMER, zimmer, quillon"),
               "[QUILLON  ZIMMER]!, [zimmer, quillon]!");
    CHECK_TEXT(marked(&quillon, NULL, "quillon_zimmer-late Zimmer's"),
               "[quillon_zimmer]!-late [Zimmer]'s");
    CHECK_TEXT(marked(&quillon, NULL, "to Quillon. Zimmer shot"), "to [Quillon]. [Zimmer] shot");
    CHECK_TEXT(marked(&quillon, NULL, "Q. Zimmer; Zimmer, Q. shot"),
               "[Q. Zimmer]; [Zimmer, Q.] shot");
    CHECK_TEXT(marked(&quillon, NULL, "the Zimmers; Zimmerman"), "the [Zimmers]; [Zimmerman]");
    CHECK_TEXT(marked(&quillon, "Theo Quill", "Quill, Theo"), "[Quill, Theo]!");
    CHECK_TEXT(marked(&ann, NULL, "Lee asleep in Leeds; anna, Anne, fleet"),
               "[Lee] asleep in Leeds; anna, Anne, fleet");
    CHECK_TEXT(marked(&ann, NULL, "the Lees' dog"), "the [Lees]' dog");
    CHECK_TEXT(marked(&jo, NULL, "Jo ran; Jo Ng ran; j ran"), "Jo ran; [Jo Ng]! ran; j ran");
}

static void accents(void) {
    CHECK_TEXT(marked(&zoe, NULL, "ZOË ÅNGSTRÖM"), "[ZOË ÅNGSTRÖM]!");
    CHECK_TEXT(marked(&zoe, NULL, "Zoe\xcc\x88 A\xcc\x8angstro\xcc\x88m."),
               "[Zoe\xcc\x88 A\xcc\x8angstro\xcc\x88m]!.");
    CHECK_TEXT(marked(&zoe, NULL, "zoe angstrom"), "[zoe angstrom]");
    CHECK_TEXT(marked(&zoe, NULL, "Zo\xc2\xad\xc3\xab here"), "[Zo\xc2\xad\xc3\xab] here");
    const bw_player soren = {.jersey = 3, .name = "Søren Łuk"};
    CHECK_TEXT(marked(&soren, NULL, "soren, luk"), "[soren, luk]");
    const bw_player strauss = {.jersey = 3, .name = "Emil Strauß"};
    CHECK_TEXT(marked(&strauss, NULL, "EMIL STRAUSS"), "[EMIL STRAUSS]!");
    const bw_player greek = {.jersey = 3, .name = "Νίκος Ωδείου"};
    CHECK_TEXT(marked(&greek, NULL, "ΝΊΚΟΣ ΩΔΕΊΟΥ"), "[ΝΊΚΟΣ ΩΔΕΊΟΥ]!");
}

static void initials(void) {
    CHECK_TEXT(marked(&quillon, NULL, "q.z. Q. Z. Q Z QZ qz q z"),
               "[q.z.]. [Q. Z.]. [Q Z]. [QZ]. [qz]. q z");
    const bw_player ida = {.jersey = 3, .initials = "IT"};
    CHECK_TEXT(marked(&ida, NULL, "it is IT, i.t. bit"), "it is [IT]., [i.t.]. bit");
    CHECK_TEXT(marked(&ida, NULL, "ITs kit"), "ITs kit");
}

static void numbers(void) {
    CHECK_TEXT(marked(&quillon, NULL, "#12 # 12 no 12 No. 12 number 12 nr.12 no12"),
               "#[12]# # [12]# no [12]# No. [12]# number [12]# nr.[12]# no[12]#");
    CHECK_TEXT(marked(&quillon, NULL, "nos. 7, 12 and 12; 12 yd, 12.5, #120, #112; 12:30"),
               "nos. 7, [12]# and [12]#; 12 yd, 12.5, #120, #112; 12:30");
    CHECK_TEXT(marked(&quillon, NULL, "\xe2\x84\x96 12 \xef\xbc\x83\xef\xbc\x91\xef\xbc\x92"),
               "\xe2\x84\x96 [12]# \xef\xbc\x83[\xef\xbc\x91\xef\xbc\x92]#");
}

static void same_names(void) {
    CHECK(bw_called_same("Ann Lee", "LEE, Ann"));
    CHECK(!bw_called_same("Ann Lee", "Ann Ann") && !bw_called_same("Ann Ann", "Ann Lee"));
    CHECK(!bw_called_same("", "") && !bw_called_same("Ann Lee", "Ann Lee Vale"));
}

int main(int argc, char **argv) {
    RUN(names);
    RUN(accents);
    RUN(initials);
    RUN(numbers);
    RUN(same_names);
    return test_report(argc, argv);
}
