/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The cautions: all there for every level and field, each with its publisher, in words that fit a sheet
/// and a terminal; contact follows the age.
#include "core/field.h"
#include "core/level.h"
#include "draw/sheet.h"
#include "harness.h"
#include "report/cautions.h"
#include "report/column.h"
#include "tests/draw/layout.h"

static bw_scheme scheme;
static _Alignas(16) char memory[BW_INK_PAGE_BYTES];

/// Calls `look` for every level on every field.
static void each(void (*look)(void)) {
    for (int level = 0; level < bw_level_count(); level++) {
        for (int field = 0; field < bw_field_count(); field++) {
            scheme.level = level;
            scheme.field = field;
            look();
        }
    }
}

static void whole(void) {
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution c = bw_caution_for(&scheme, i);
        const char *parts[] = {c.id, c.topic, c.text, c.brief, c.source};
        for (int p = 0; p < 5; p++)
            CHECK(parts[p] && parts[p][0]);
        CHECK(strpbrk(c.source, "0123456789") != NULL);
        CHECK(strlen(c.brief) < 60);
        CHECK(strchr(c.text, '%') == NULL);
        CHECK(c.text[strlen(c.text) - 1] == '.');
        for (int k = 0; k < i; k++)
            CHECK(strcmp(c.id, bw_caution_for(&scheme, k).id) != 0);
    }
}

static void all_are_there(void) {
    each(whole);
}

static const char *contact(const char *level, const char *field) {
    scheme.level = scheme.field = 0;
    while (strcmp(bw_level_at(scheme.level)->id, level) != 0)
        scheme.level++;
    while (strcmp(bw_field_at(scheme.field)->id, field) != 0)
        scheme.field++;
    return bw_caution_for(&scheme, 0).text;
}

static void contact_follows_age_and_game(void) {
    CHECK(strstr(contact("youth-u11", "boys-nfhs"), "No body checks"));
    CHECK(strstr(contact("youth-u13", "youth-small"), "No body checks"));
    CHECK(strstr(contact("youth-u15", "boys-nfhs"), "within 3 yd"));
    CHECK(strstr(contact("high-school", "boys-nfhs"), "within 5 yd"));
    CHECK(strstr(contact("college", "men-ncaa"), "head or neck"));
    CHECK(strstr(contact("college", "women"), "No body checks"));
    CHECK(strstr(bw_caution_for(&scheme, 1).text, "eye protection"));
}

static void fits(void) {
    static char room[BW_CAUTIONS_BYTES];
    bw_text t = bw_text_in(room, sizeof room);
    bw_cautions_text(&scheme, &t);
    CHECK(!t.full);
    CHECK(strstr(room, "licensed medical staff decide"));
    for (char *line = room, *end; (end = strchr(line, '\n')); line = end + 1) {
        *end = '\0';
        CHECK(bw_columns(line) <= 78);
    }
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    static const double types[] = {BW_TYPE_SMALL, 11, BW_TYPE_TEXT};
    for (int i = 0; i < 3; i++) {
        bw_ink_page(ink, 612, 792);
        const double high = bw_put_cautions(ink, &scheme, 36, 36, BW_BLOCK_WIDTH, types[i]);
        CHECK_SAME(high, bw_put_cautions(NULL, &scheme, 0, 0, BW_BLOCK_WIDTH, types[i]));
        CHECK(high < (i == 0 ? 350 : 450));
        const layout l = layout_of(ink, (bw_box){36, 36, BW_BLOCK_WIDTH, high});
        CHECK(l.texts > 30);
        CHECK(l.smallest >= 9);
        CHECK_INT(l.outside, 0);
        CHECK_INT(l.over, 0);
        if (l.outside || l.over) fprintf(stderr, "%s\n", l.where);
    }
    CHECK(bw_put_cautions_brief(NULL, &scheme, 0, 0, BW_BLOCK_WIDTH) < 70);
}

static void they_fit_sheet_and_terminal(void) {
    each(fits);
}

int main(int argc, char **argv) {
    RUN(all_are_there);
    RUN(contact_follows_age_and_game);
    RUN(they_fit_sheet_and_terminal);
    return test_report(argc, argv);
}
