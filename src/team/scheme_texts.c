/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/scheme_texts.h"
#include "core/text.h"
#include <stdio.h>
#include <string.h>

typedef struct reader {
    const char *scheme; ///< its name as it was
    int64_t revision;
    bw_hear hear;
    void *self;
    bool changed;
} reader;

/// What a text is: "lesson wall, caption of stop 2".
typedef struct label {
    const char *of, *id; ///< "lesson", its id; NULL where it is the scheme's own
    const char *what;
    int number; ///< 0: none
} label;

static bool hear(reader *r, const label *is, char *text, bool code) {
    char where[256], out[BW_NOTES_SIZE];
    bw_text t = bw_text_in(where, sizeof where);
    bw_put(&t, "scheme ");
    bw_put(&t, r->scheme);
    bw_put(&t, ", ");
    if (is->of) {
        bw_put(&t, is->of);
        bw_put(&t, " ");
        bw_put(&t, is->id);
        bw_put(&t, ", ");
    }
    bw_put(&t, is->what);
    if (is->number > 0) {
        bw_put(&t, " ");
        bw_put_int(&t, is->number);
    }
    const bw_speech speech = {.where = where,
                              .revision = r->revision,
                              .text = text,
                              .length = strlen(text),
                              .code = code};
    if (text[0] == '\0' || !r->hear(r->self, &speech, out)) return false;
    memcpy(text, out, strlen(out) + 1);
    r->changed = true;
    return true;
}

static void words(reader *r, const char *of, const char *id, const char *what, char *text) {
    hear(r, &(label){of, id, what, 0}, text, false);
}

/// An id in a list whose ids lie `stride` bytes apart: a new one, when it is to be changed.
static void identity(reader *r, const char *of, char *list, size_t stride, int count, int index) {
    char *id = list + stride * (size_t)index, heard[BW_ID_SIZE], was[BW_ID_SIZE];
    bw_copy(heard, sizeof heard, id);
    bw_copy(was, sizeof was, id);
    if (!hear(r, &(label){of, was, "its id", 0}, heard, true)) return;
    bool taken = true;
    for (int number = 1; taken; number++) {
        snprintf(id, BW_ID_SIZE, "x%d", number);
        taken = false;
        for (int i = 0; i < count; i++)
            taken = taken || (i != index && strcmp(list + stride * (size_t)i, id) == 0);
    }
}

static void lessons(reader *r, bw_scheme *s) {
    for (int i = 0; i < s->lesson_count; i++) {
        bw_lesson *l = &s->lessons[i];
        for (int k = 0; k < l->stop_count; k++)
            hear(r, &(label){"lesson", l->id, "caption of stop", k + 1}, l->stops[k].caption,
                 false);
        words(r, "lesson", l->id, "its name", l->name);
        identity(r, "lesson", s->lessons[0].id, sizeof *l, s->lesson_count, i);
    }
}

static void stages(reader *r, bw_scheme *s) {
    for (int i = 0; i < s->stage_count; i++) {
        char stage[16];
        snprintf(stage, sizeof stage, "%d", s->stages[i].defenders);
        words(r, "stage", stage, "its call", s->stages[i].call);
        for (int k = 0; k < s->stages[i].defenders; k++) {
            bw_spot *spot = &s->stages[i].spots[k];
            char id[48];
            snprintf(id, sizeof id, "%s, spot %s", stage, spot->id);
            words(r, "stage", id, "its name", spot->name);
            words(r, "stage", id, "its call", spot->call);
        }
    }
}

bool bw_scheme_texts(bw_scheme *s, int64_t revision, bw_hear hear_one, void *self) {
    char name[BW_NAME_SIZE];
    bw_copy(name, sizeof name, s->name);
    reader r = {name, revision, hear_one, self, false};
    words(&r, NULL, NULL, "its name", s->name);
    words(&r, NULL, NULL, "its id", s->id);
    words(&r, NULL, NULL, "its team", s->team);
    words(&r, NULL, NULL, "its notes", s->notes);
    for (int i = 0; i < s->landmark_count; i++) {
        words(&r, "landmark", s->landmarks[i].id, "its name", s->landmarks[i].name);
        identity(&r, "landmark", s->landmarks[0].id, sizeof s->landmarks[0], s->landmark_count, i);
    }
    for (int i = 0; i < s->set_count; i++) {
        words(&r, "attack set", s->sets[i].id, "its name", s->sets[i].name);
        identity(&r, "attack set", s->sets[0].id, sizeof s->sets[0], s->set_count, i);
    }
    stages(&r, s);
    for (int i = 0; i < s->late_count; i++)
        hear(&r, &(label){NULL, NULL, "role of late man", i + 1}, s->late[i].role, false);
    lessons(&r, s);
    return r.changed;
}
