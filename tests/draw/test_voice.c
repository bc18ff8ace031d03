/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The book's words for a women's field and one of the United States.
#include "core/field.h"
#include "draw/book_words.h"
#include "scheme/fresh.h"
#include "voice.h"

static const listed catalogue[] = {
#define BW_SENTENCE(id, text) {#id, text},
#include "draw/catalogue.def"
};

static char room[2000];

static void every_sentence_suits_every_voice(void) {
    check_catalogue(catalogue, BW_COUNT(catalogue));
}

static void check_stages(const char *field) {
    const bw_field *f = bw_field_find(field);
    bw_scheme scheme;
    bw_scheme_fresh((int)(f - bw_field_at(0)), 3, &scheme);
    scheme.late[0].take_count = 0;
    for (int i = 0; i < scheme.stage_count; i++) {
        for (int how = 0; how < 2; how++) {
            scheme.stages[i].rule.hold_behind = how == 0;
            scheme.stages[i].rule.crease = how == 0 ? BW_CREASE_FARTHEST : 0;
            bw_text t = bw_text_in(room, sizeof room);
            bw_say_rule(&scheme, i, &t);
            bw_say_completes(&scheme, i, &t);
            CHECK(t.used > 0);
            check_suits(room, bw_voice_of(&scheme), field);
        }
    }
}

static void rules_suit_the_field(void) {
    check_stages("women");
    check_stages("boys-nfhs");
}

int main(int argc, char **argv) {
    RUN(every_sentence_suits_every_voice);
    RUN(rules_suit_the_field);
    return test_report(argc, argv);
}
