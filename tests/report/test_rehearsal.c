/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rehearsal on paper and on the terminal: every word large enough, on the sheet and clear of the
/// others, in order, for fresh schemes and for schemes with the longest names, few players and many.
#include "harness.h"
#include "report/column.h"
#include "report/rehearsal.h"
#include "scheme/fresh.h"
#include "tests/draw/layout.h"

static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
static _Alignas(16) char work[512 * 1024];
static bw_scheme scheme;
static bw_rehearsal r;
static bw_weak_list weak;

static void add_stage(int stage, int players, int goals, int minutes) {
    bw_rehearsal_stage *s = &r.stages[r.stage_count++];
    CHECK_INT(bw_script_build(&scheme, stage, &weak, work, sizeof work, &s->script, NULL), BW_OK);
    s->def = (bw_practice_def){.players = players,
                               .spots = scheme.stages[stage].defenders,
                               .goals = goals,
                               .minutes = minutes};
    for (int p = 0; p < BW_PACE_COUNT; p++)
        s->def.lap_s[p] = s->script.seconds[p];
    CHECK_INT(bw_practice_plan(&s->def, &s->plan), BW_OK);
}

/// Names, calls and codes as long as the file may have them.
static void lengthen(char *text, size_t room, char letter) {
    for (size_t i = 0; i + 1 < room; i++)
        text[i] = i % 9 == 8 ? ' ' : letter;
    text[room - 2] = letter;
    text[room - 1] = '\0';
}

static void with_long_names(void) {
    lengthen(scheme.name, sizeof scheme.name, 'W');
    lengthen(scheme.team, sizeof scheme.team, 'M');
    for (int l = 0; l < scheme.landmark_count; l++)
        lengthen(scheme.landmarks[l].name, sizeof scheme.landmarks[l].name, 'm');
    for (int i = 0; i < scheme.stage_count; i++) {
        bw_stage *stage = &scheme.stages[i];
        lengthen(stage->call, sizeof stage->call, 'M');
        for (int s = 0; s < stage->defenders; s++) {
            lengthen(stage->spots[s].name, sizeof stage->spots[s].name, 'w');
            lengthen(stage->spots[s].call, sizeof stage->spots[s].call, 'm');
        }
    }
}

static void begin(unsigned long long *seed, bool long_names) {
    const int level = (int)(test_random(seed) % 5);
    bw_scheme_fresh((int)(test_random(seed) % 7), level, &scheme);
    if (long_names) with_long_names();
    weak.count = 0;
    double cost = 0.02;
    for (int k = 0; k < 2 * BW_WEAK_EACH; k++) {
        const int a = (int)(test_random(seed) % (unsigned)scheme.landmark_count);
        const int b = (int)(test_random(seed) % (unsigned)scheme.landmark_count);
        weak.weak[weak.count++] = (bw_weak){
            .stage = k % 2, .from_at = a, .to_at = b, .cost = cost *= test_uniform(seed, 0.4, 1)};
    }
    memset(&r, 0, sizeof r);
    r.scheme = &scheme;
}

static void look_at_pages(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    const int pages = bw_rehearsal_pages(&r);
    CHECK(pages >= 1 + 2 * r.stage_count);
    for (int page = 1; page <= pages; page++) {
        for (int paper = 0; paper < BW_PAPER_COUNT; paper++) {
            CHECK_INT(bw_rehearsal_page(&r, page, (bw_paper)paper, ink), BW_OK);
            const layout l = layout_of(ink, (bw_box){36, 36, ink->width - 72, ink->height - 72});
            CHECK_INT(ink->open, 0);
            CHECK(l.texts > 5);
            CHECK(l.smallest >= 9);
            CHECK_INT(l.outside, 0);
            CHECK_INT(l.over, 0);
            if (l.outside || l.over) fprintf(stderr, "page %d: %s\n", page, l.where);
        }
    }
    CHECK_INT(bw_rehearsal_page(&r, 0, BW_LETTER, ink), BW_NOT_FOUND);
    CHECK_INT(bw_rehearsal_page(&r, pages + 1, BW_LETTER, ink), BW_NOT_FOUND);
}

static void look_at_text(void) {
    static char room[BW_REHEARSAL_BYTES];
    bw_text t = bw_text_in(room, sizeof room);
    bw_rehearsal_text(&r, &t);
    CHECK(!t.full);
    CHECK(strchr(room, '%') == NULL);
    for (char *line = room, *end; (end = strchr(line, '\n')); line = end + 1) {
        *end = '\0';
        CHECK(bw_columns(line) <= 80);
        if (bw_columns(line) > 80) fprintf(stderr, "wide: %s\n", line);
        CHECK(line == end || end[-1] != ' ');
    }
}

static void every_sheet_can_be_read(void) {
    unsigned long long seed = 3;
    for (int n = 0; n < 24; n++) {
        begin(&seed, n % 4 == 3);
        const int stages = n % 3 == 0 ? 3 : 1;
        for (int i = 0; i < stages; i++) {
            const int stage = stages == 3 ? i : (int)(test_random(&seed) % 4);
            const int players = 4 + (int)(test_random(&seed) % 37);
            const int goals = 1 + (int)(test_random(&seed) % 4);
            const int minutes = 1 + (int)(test_random(&seed) % 120);
            add_stage(stage, players, goals, minutes);
        }
        look_at_pages();
        look_at_text();
    }
}

/// Read page after page, the stops come in order, none left out and none twice.
static void the_stops_come_in_order(void) {
    unsigned long long seed = 12;
    begin(&seed, false);
    add_stage(1, 18, 2, 40);
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    int next = 1, rounds = 0;
    for (int page = 1; page <= bw_rehearsal_pages(&r); page++) {
        CHECK_INT(bw_rehearsal_page(&r, page, BW_LETTER, ink), BW_OK);
        for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
            if (item->kind != BW_INK_TEXT || item->size != BW_TYPE_TEXT || !item->style) continue;
            int number = 0, used = 0;
            char text[200] = "";
            snprintf(text, sizeof text, "%.*s", (int)item->text, bw_ink_string(item));
            if (sscanf(text, "%d. %n", &number, &used) == 1 && used > 0) CHECK_INT(number, next++);
            if (sscanf(text, "Round %d,", &number) == 1) CHECK_INT(number, ++rounds);
        }
    }
    CHECK_INT(next - 1, r.stages[0].script.stop_count);
    CHECK_INT(rounds, r.stages[0].plan.round_count);
}

int main(int argc, char **argv) {
    RUN(every_sheet_can_be_read);
    RUN(the_stops_come_in_order);
    return test_report(argc, argv);
}
