/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Writing and reading are each other's inverse: a canonical file keeps its bytes, and what is in
/// memory keeps its meaning.
#include "harness.h"
#include "invariants.h"
#include "scheme/fresh.h"
#include "scheme/twin.h"
#include "scheme_text.h"

static bw_scheme scheme, again, mirrored;
static bw_error error;

/// Reads the text of a scheme; ends up in `again`.
static char *read_back(const bw_scheme *from) {
    char *text = text_change(text_of_scheme(from), "", "");
    const bw_status status = bw_document_parse(text, strlen(text), &again, &error);
    CHECK_INT(status, BW_OK);
    if (status != BW_OK) fprintf(stderr, "  %s: %s\n", error.pointer, error.message);
    return text;
}

/// write(read(write(x))) == write(x).
static void comes_back(const bw_scheme *from) {
    char *first = read_back(from);
    CHECK(first[0] != '\0');
    CHECK(text_same(text_of_scheme(&again), first));
    const char *fault = scheme_fault(&again);
    CHECK_TEXT(fault ? fault : "whole", "whole");
    free(first);
}

static void file_keeps_its_bytes(const char *name) {
    size_t length;
    char *text = text_of_file(name, &length);
    CHECK_INT(bw_document_parse(text, length, &scheme, &error), BW_OK);
    CHECK(text_same(text_of_scheme(&scheme), text));
    free(text);
}

static void canonical_files_keep_their_bytes(void) {
    file_keeps_its_bytes("examples/terns.json");
    file_keeps_its_bytes("tests/scheme/valid/fresh.json");
    file_keeps_its_bytes("tests/scheme/valid/every-key.json");
    file_keeps_its_bytes("tests/scheme/valid/metres.json");
}

static void fresh_schemes_come_back(void) {
    for (int field = 0; field < bw_field_count(); field++) {
        for (int level = 0; level < bw_level_count(); level++) {
            for (int unit = 0; unit < 2; unit++) {
                bw_scheme_fresh(field, level, &scheme);
                scheme.units = unit ? BW_METRES : BW_YARDS;
                comes_back(&scheme);
                bw_scheme_mirror(&scheme, &mirrored);
                comes_back(&mirrored);
                CHECK_INT(again.lead, BW_LEFT);
            }
        }
    }
}

/// Turned round twice, a scheme with pins and a lead is written as it was.
static void a_mirrored_scheme_comes_back(void) {
    static const char *const files[] = {"examples/terns.json", "tests/scheme/valid/every-key.json",
                                        "tests/scheme/valid/metres.json"};
    for (int i = 0; i < BW_COUNT(files); i++) {
        size_t length;
        char *text = text_of_file(files[i], &length);
        CHECK_INT(bw_document_parse(text, length, &scheme, &error), BW_OK);
        bw_scheme_mirror(&scheme, &mirrored);
        comes_back(&mirrored);
        for (int g = 0; g < again.stage_count; g++) {
            CHECK(memcmp(again.stages[g].pinned, scheme.stages[g].pinned,
                         sizeof scheme.stages[g].pinned) == 0);
        }
        bw_scheme_mirror(&again, &mirrored);
        CHECK(text_same(text_of_scheme(&mirrored), text));
        free(text);
    }
}

/// A ball or a man dragged to the line stands on it; the file must still be readable in either unit.
static void places_on_the_lines_come_back(void) {
    for (int field = 0; field < bw_field_count(); field++) {
        for (int unit = 0; unit < 2; unit++) {
            bw_scheme_fresh(field, 0, &scheme);
            scheme.units = unit ? BW_METRES : BW_YARDS;
            const bw_field *f = bw_field_at(field);
            scheme.landmarks[0].at = bw_field_clamp(f, bw_v(1000, 1000));
            scheme.landmarks[9].at = bw_field_clamp(f, bw_v(-1000, -1000));
            scheme.lessons[0].stops[0].at_landmark = false;
            scheme.lessons[0].stops[0].ball = bw_field_clamp(f, bw_v(-1000, 1000));
            bw_find_twins(&scheme);
            comes_back(&scheme);
        }
    }
}

/// Figures with more places than a file keeps settle in the first writing, on both sides alike.
static void dragged_homes_come_back(void) {
    unsigned long long state = 5;
    for (int round = 0; round < 400; round++) {
        bw_scheme_fresh(round % bw_field_count(), 0, &scheme);
        scheme.units = round % 2 ? BW_METRES : BW_YARDS;
        bw_stage *stage = &scheme.stages[1];
        const double x = test_uniform(&state, 0.1, 12), y = test_uniform(&state, -8, 18);
        stage->spots[1].home = bw_v(x, y);
        stage->spots[0].home = bw_v(-x, y);
        stage->spots[0].derived = round % 3 == 0;
        const int landmark = (int)(test_random(&state) % (unsigned)scheme.landmark_count);
        const double px = test_uniform(&state, -12, 12), py = test_uniform(&state, -8, 18);
        stage->pinned[landmark][2] = 1;
        stage->pins[landmark][2] = bw_v(px, py);
        stage->rule.pickup = test_uniform(&state, 4, 22);
        bw_find_twins(&scheme);
        bw_mirror_pins(&scheme, stage);
        comes_back(&scheme);
        CHECK_SAME(again.stages[1].spots[0].home.x, -again.stages[1].spots[1].home.x);
        CHECK(memcmp(again.stages[1].pinned, stage->pinned, sizeof stage->pinned) == 0);
    }
}

static void fill(char *to, size_t room, char with) {
    memset(to, with, room - 1);
    to[room - 1] = '\0';
}

/// An id that no other has: a letter for the list and a number, in as many bytes as fit.
static void number(char *to, size_t width, char letter, int n) {
    snprintf(to, width + 1, "%c%0*d", letter, (int)width - 1, n);
}

static bw_vec spread(int n) {
    return bw_v(-9.1234 + n % 7 * 2.9876, -4.5678 + n / 7 * 1.1111);
}

/// The most that a scheme can hold, every text as long as it may be, fits into a file and comes back.
static void the_fullest_scheme_comes_back(void) {
    bw_scheme_fresh(0, 0, &scheme);
    fill(scheme.id, sizeof scheme.id, 'i');
    fill(scheme.name, sizeof scheme.name, '"');
    fill(scheme.team, sizeof scheme.team, '\\');
    fill(scheme.notes, sizeof scheme.notes, '\n');
    scheme.landmark_count = BW_MAX_LANDMARKS;
    for (int l = 0; l < BW_MAX_LANDMARKS; l++) {
        number(scheme.landmarks[l].id, BW_ID_SIZE - 1, 'l', l);
        fill(scheme.landmarks[l].name, BW_NAME_SIZE, 'n');
        scheme.landmarks[l].at = spread(l);
        scheme.landmarks[l].derived = 0;
    }
    for (int g = 0; g < BW_MAX_STAGES; g++) {
        bw_stage *stage = &scheme.stages[g];
        fill(stage->call, sizeof stage->call, 'c');
        for (int s = 0; s < stage->defenders; s++) {
            number(stage->spots[s].id, 3, 's', s);
            fill(stage->spots[s].name, BW_NAME_SIZE, '"');
            fill(stage->spots[s].call, BW_NAME_SIZE, '"');
            stage->spots[s].home = spread(30 + s);
            for (int l = 0; l < BW_MAX_LANDMARKS; l++) {
                stage->pinned[l][s] = 1;
                stage->pins[l][s] = spread(l + s);
            }
        }
    }
    scheme.late_count = BW_MAX_LATE;
    for (int i = 0; i < BW_MAX_LATE; i++) {
        fill(scheme.late[i].role, BW_NAME_SIZE, 'r');
        scheme.late[i].behind = 91.44;
        scheme.late[i].take_count = BW_MAX_SPOTS;
        for (int t = 0; t < BW_MAX_SPOTS; t++)
            number(scheme.late[i].takes[t], 3, 's', t);
    }
    scheme.set_count = BW_MAX_SETS;
    for (int i = 0; i < BW_MAX_SETS; i++) {
        number(scheme.sets[i].id, BW_ID_SIZE - 1, 'e', i);
        fill(scheme.sets[i].name, BW_NAME_SIZE, '"');
        scheme.sets[i].count = BW_MAX_ATTACKERS;
        for (int k = 0; k < BW_MAX_ATTACKERS; k++)
            scheme.sets[i].at[k] = spread(k);
    }
    scheme.lesson_count = BW_MAX_LESSONS;
    for (int i = 0; i < BW_MAX_LESSONS; i++) {
        bw_lesson *lesson = &scheme.lessons[i];
        number(lesson->id, BW_ID_SIZE - 1, 'w', i);
        fill(lesson->name, BW_NAME_SIZE, '"');
        lesson->defenders = 6;
        lesson->stop_count = BW_MAX_STOPS;
        for (int k = 0; k < BW_MAX_STOPS; k++) {
            lesson->stops[k] = (bw_stop){.ball = spread(k), .pause = 12.3456};
            fill(lesson->stops[k].caption, BW_CAPTION_SIZE, '"');
        }
    }
    bw_find_twins(&scheme);
    comes_back(&scheme);
}

static void strings_are_escaped(void) {
    bw_scheme_fresh(0, 0, &scheme);
    snprintf(scheme.name, sizeof scheme.name, "a \"b\" \\c/ \xc3\xa9 \xf0\x9f\x98\x80 \\u0041");
    snprintf(scheme.notes, sizeof scheme.notes, "one\ntwo \\n \"three\"\n");
    comes_back(&scheme);
    CHECK_TEXT(again.name, scheme.name);
    CHECK_TEXT(again.notes, scheme.notes);
    CHECK(strstr(text_of_scheme(&scheme), "\"notes\": \"one\\ntwo \\\\n \\\"three\\\"\\n\"") !=
          NULL);
}

/// What follows from a twin is left out; what differs from it stays, also when it is empty.
static void followers(void) {
    char *text = text_change(text_small, "\"mirror_of\": \"BR\"}",
                             "\"mirror_of\": \"BR\", \"name\": \"left back\", \"call\": \"left\"}");
    CHECK_INT(bw_document_parse(text, strlen(text), &scheme, &error), BW_OK);
    CHECK(strstr(text_of_scheme(&scheme), "{\"id\": \"BL\", \"mirror_of\": \"BR\"}") != NULL);
    comes_back(&scheme);
    CHECK_TEXT(again.stages[0].spots[1].call, "left");
    free(text);

    text = text_change(text_small, "\"mirror_of\": \"BR\"}",
                       "\"mirror_of\": \"BR\", \"name\": \"other back\", \"call\": \"\"}");
    CHECK_INT(bw_document_parse(text, strlen(text), &scheme, &error), BW_OK);
    comes_back(&scheme);
    CHECK_TEXT(again.stages[0].spots[1].name, "other back");
    CHECK_TEXT(again.stages[0].spots[1].call, "");
    free(text);
}

/// Too little room is told, not written past.
static void room_runs_out(void) {
    bw_scheme_fresh(0, 0, &scheme);
    const size_t whole = strlen(text_of_scheme(&scheme));
    char *room = malloc(whole + 1);
    for (size_t size = 1; size <= whole + 1; size += 97) {
        bw_text out = bw_text_in(room, size);
        bw_scheme_write(&scheme, &out);
        CHECK(out.full == (size < whole + 1));
        CHECK(strlen(room) < size);
    }
    free(room);
}

int main(int argc, char **argv) {
    RUN(canonical_files_keep_their_bytes);
    RUN(fresh_schemes_come_back);
    RUN(a_mirrored_scheme_comes_back);
    RUN(places_on_the_lines_come_back);
    RUN(dragged_homes_come_back);
    RUN(the_fullest_scheme_comes_back);
    RUN(strings_are_escaped);
    RUN(followers);
    RUN(room_runs_out);
    return test_report(argc, argv);
}
