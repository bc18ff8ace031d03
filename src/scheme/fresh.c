/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The starting scheme. Homes and landmarks are common practice of the boys' high-school game, no
/// source, but for the three-man triangle: point about 12 yd above the goal line, backs about 2 yd
/// above it and 3 ft wide of the posts (T. Hallissey, "Fast Break Defense", 2016), the backs moved
/// half a yard wider to keep out of the crease.
#include "scheme/fresh.h"
#include "core/field.h"
#include "core/text.h"
#include "scheme/twin.h"

#define YD BW_METRES_PER_YARD

typedef struct named_place {
    const char *id, *name;
    double x, y; ///< yards
} named_place;

static const named_place landmarks[] = {
    {"top", "top centre", 0, 15},
    {"tl", "top left", -9, 14},
    {"tr", "top right", 9, 14},
    {"wl", "left wing", -13, 7},
    {"wr", "right wing", 13, 7},
    {"gl", "left goal-line extended", -9, 0},
    {"gr", "right goal-line extended", 9, 0},
    {"bl", "behind left", -5, -5},
    {"br", "behind right", 5, -5},
    {"x", "behind the goal", 0, -6},
    {"hole", "the hole", 0, 8},
};

/// Spots of every stage, each pair left then right.
static const named_place three[] = {
    {"BL", "left back", -2.5, 2.25}, {"BR", "right back", 2.5, 2.25}, {"P", "point", 0, 12}};
static const named_place four[] = {{"LL", "low left", -3.5, 2.5},
                                   {"LR", "low right", 3.5, 2.5},
                                   {"TL", "top left", -5.5, 13},
                                   {"TR", "top right", 5.5, 13}};
static const named_place five[] = {{"LL", "low left", -3.5, 2.5},
                                   {"LR", "low right", 3.5, 2.5},
                                   {"M", "middle", 0, 6},
                                   {"TL", "top left", -5.5, 13},
                                   {"TR", "top right", 5.5, 13}};
static const named_place six[] = {{"LL", "low left", -3.5, 2.5}, {"LR", "low right", 3.5, 2.5},
                                  {"WL", "wing left", -7.5, 6},  {"WR", "wing right", 7.5, 6},
                                  {"TL", "top left", -4, 12},    {"TR", "top right", 4, 12}};

static bw_vec yards(double x, double y) {
    return bw_v(x * YD, y * YD);
}

/// A place on this field, a margin inside its lines. Small fields bring the far places in.
static bw_vec on_field(const bw_field *field, double x, double y) {
    const double margin = 1 * YD;
    bw_vec p = yards(x, y);
    double wide = field->width / 2 - margin;
    return bw_v(bw_clamp(p.x, -wide, wide),
                bw_clamp(p.y, -field->end_line + margin, field->midline - margin));
}

static void add_stage(bw_scheme *scheme, const bw_field *field, const char *shape,
                      const named_place *spots, int count, const char *call) {
    bw_stage *stage = &scheme->stages[scheme->stage_count++];
    stage->defenders = count;
    stage->match_up = bw_same(shape, "match-up");
    bw_copy(stage->shape, sizeof stage->shape, shape);
    bw_copy(stage->call, sizeof stage->call, call);
    stage->rule = bw_rule_default();
    for (int s = 0; s < count; s++) {
        bw_spot *spot = &stage->spots[s];
        bw_copy(spot->id, sizeof spot->id, spots[s].id);
        bw_copy(spot->name, sizeof spot->name, spots[s].name);
        bw_copy(spot->call, sizeof spot->call, spots[s].name);
        spot->home = on_field(field, spots[s].x, spots[s].y);
    }
    int middle = bw_stage_spot(stage, "M");
    if (middle >= 0) stage->rule.crease = middle;
}

static void add_late(bw_scheme *scheme, const char *role, double behind_yards, const char *first,
                     const char *second) {
    bw_late *late = &scheme->late[scheme->late_count++];
    bw_copy(late->role, sizeof late->role, role);
    late->behind = behind_yards * YD;
    if (first) bw_copy(late->takes[late->take_count++], BW_ID_SIZE, first);
    if (second) bw_copy(late->takes[late->take_count++], BW_ID_SIZE, second);
}

static void add_lesson(bw_scheme *scheme) {
    static const char *const path[] = {"top", "tr", "wr", "gr", "x", "gl", "wl", "tl", "top"};
    bw_lesson *lesson = &scheme->lessons[scheme->lesson_count++];
    bw_copy(lesson->id, sizeof lesson->id, "round");
    bw_copy(lesson->name, sizeof lesson->name, "Once round the goal");
    lesson->defenders = 4;
    for (int i = 0; i < BW_COUNT(path); i++) {
        bw_stop *stop = &lesson->stops[lesson->stop_count++];
        stop->at_landmark = true;
        stop->landmark = bw_scheme_landmark(scheme, path[i]);
        stop->ball = scheme->landmarks[stop->landmark].at;
        stop->pause = 2;
    }
}

void bw_scheme_fresh(int field_index, int level, bw_scheme *scheme) {
    const bw_field *field = bw_field_at(field_index);
    *scheme = (bw_scheme){.field = field_index, .level = level, .units = BW_YARDS};
    bw_copy(scheme->name, sizeof scheme->name, "Starting scheme");
    for (int i = 0; i < BW_COUNT(landmarks); i++) {
        bw_landmark *landmark = &scheme->landmarks[scheme->landmark_count++];
        bw_copy(landmark->id, sizeof landmark->id, landmarks[i].id);
        bw_copy(landmark->name, sizeof landmark->name, landmarks[i].name);
        landmark->at = on_field(field, landmarks[i].x, landmarks[i].y);
    }
    add_stage(scheme, field, "1-2", three, BW_COUNT(three), "three in");
    add_stage(scheme, field, "2-2", four, BW_COUNT(four), "four in");
    add_stage(scheme, field, "2-1-2", five, BW_COUNT(five), "five in");
    add_stage(scheme, field, "match-up", six, BW_COUNT(six), "match up");
    add_late(scheme, "first midfielder", 20, "TL", "TR");
    add_late(scheme, "second midfielder", 30, "M", NULL);
    add_late(scheme, "third midfielder", 40, NULL, NULL);
    bw_find_twins(scheme);
    add_lesson(scheme);
}

bw_status bw_scheme_only(bw_scheme *scheme, const char *shape) {
    for (int g = 0; g < scheme->stage_count; g++) {
        if (!bw_same(scheme->stages[g].shape, shape)) continue;
        scheme->stages[0] = scheme->stages[g];
        scheme->stage_count = 1;
        scheme->late_count = 0;
        int kept = 0;
        for (int i = 0; i < scheme->lesson_count; i++) {
            if (scheme->lessons[i].defenders == scheme->stages[0].defenders) {
                scheme->lessons[kept++] = scheme->lessons[i];
            }
        }
        scheme->lesson_count = kept;
        return BW_OK;
    }
    return BW_NOT_FOUND;
}
