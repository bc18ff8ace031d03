/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/names.h"
#include "core/attack_set.h"
#include <string.h>

static void put_landmarks(FILE *out, const bw_scheme *scheme) {
    for (int i = 0; i < scheme->landmark_count; i++)
        fprintf(out, "%s\n", scheme->landmarks[i].id);
}

static void put_stages(FILE *out, const bw_scheme *scheme) {
    for (int i = 0; i < scheme->stage_count; i++)
        fprintf(out, "%d\n", scheme->stages[i].defenders);
}

static void put_sets(FILE *out, const bw_scheme *scheme) {
    for (int i = 0; i < scheme->set_count; i++)
        fprintf(out, "%s\n", scheme->sets[i].id);
    for (int i = 0; i < bw_attack_set_count(); i++)
        fprintf(out, "%s\n", bw_attack_set_at(i)->id);
}

static void put_lessons(FILE *out, const bw_scheme *scheme) {
    for (int i = 0; i < scheme->lesson_count; i++)
        fprintf(out, "%s\n", scheme->lessons[i].id);
}

/// Of each stage; what several stages have comes up as often, and shells offer it once.
static void put_spots(FILE *out, const bw_scheme *scheme) {
    for (int i = 0; i < scheme->stage_count; i++) {
        for (int s = 0; s < scheme->stages[i].defenders; s++)
            fprintf(out, "%s\n", scheme->stages[i].spots[s].id);
    }
}

static const struct {
    const char *kind;
    void (*put)(FILE *out, const bw_scheme *scheme);
} kinds[] = {{"landmarks", put_landmarks},
             {"stages", put_stages},
             {"sets", put_sets},
             {"lessons", put_lessons},
             {"spots", put_spots}};

const char *bw_names_choice(int index) {
    return index < BW_COUNT(kinds) ? kinds[index].kind : NULL;
}

void bw_names_put(FILE *out, const bw_scheme *scheme, const char *kind) {
    for (int i = 0; i < BW_COUNT(kinds); i++) {
        if (strcmp(kinds[i].kind, kind) == 0) kinds[i].put(out, scheme);
    }
}
