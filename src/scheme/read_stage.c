/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Stages and their spots.
#include "scheme/reading.h"
#include "scheme/sides.h"
#include "scheme/twin.h"

/// "2-1-2": rows of men that add up to the defenders, or "match-up".
static bool read_shape(bw_reading *r, int32_t node, bw_stage *stage) {
    char shape[BW_NAME_SIZE];
    if (!bw_take_name(r, node, shape, sizeof shape)) return false;
    stage->match_up = bw_same(shape, "match-up");
    bool fine = bw_copy(stage->shape, sizeof stage->shape, shape);
    if (stage->match_up) return true;
    const size_t length = bw_text_length(shape);
    fine = fine && length % 2 == 1;
    int sum = 0;
    for (size_t i = 0; i < length; i++) {
        const bool row = shape[i] >= '1' && shape[i] <= '6';
        fine = fine && (i % 2 == 0 ? row : shape[i] == '-');
        sum += row ? shape[i] - '0' : 0;
    }
    if (fine && sum == stage->defenders) return true;
    if (fine) {
        return bw_fail_number(r, node, " must add up to the stage's defenders, ", stage->defenders,
                              "");
    }
    return bw_fail(r, node, "the shape ", shape,
                   " must count the men in rows from the top down, such as \"2-1-2\", or be "
                   "\"match-up\"");
}

/// All that a spot says of itself; one that mirrors another waits for it.
static bool read_spot(bw_reading *r, int32_t node, bw_stage *stage, int index) {
    bw_spot *spot = &stage->spots[index];
    if (!bw_take_object(r, node, BW_NOUN_SPOT)) return false;
    const int32_t id = bw_member(r, node, "id"), name = bw_member(r, node, "name");
    const int32_t home = bw_member(r, node, "home"), mirror = bw_member(r, node, "mirror_of");
    const int32_t call = bw_member(r, node, "call");
    if (!bw_take_code(r, id, spot->id)) return false;
    for (int s = 0; s < index; s++) {
        if (bw_same(stage->spots[s].id, spot->id)) {
            return bw_fail(r, id, "there are two spots ", spot->id,
                           " in this stage; give each an id of its own");
        }
    }
    if (name && !bw_take_name(r, name, spot->name, sizeof spot->name)) return false;
    if (call && !bw_take_text(r, call, spot->call, sizeof spot->call)) return false;
    spot->derived = mirror != 0;
    if (home && mirror) {
        return bw_fail(r, home, "a spot with ", "mirror_of",
                       " takes its home from there; leave out \"home\"");
    }
    if (mirror) return true;
    if (!home) {
        return bw_fail(r, node, "a spot needs ", "home",
                       ", its place, or \"mirror_of\", the spot it mirrors");
    }
    if (!name) return bw_fail(r, node, "a spot needs the key ", "name", ", missing here");
    return bw_take_place(r, home, &spot->home);
}

/// What follows from the other side: the home, and the name and call unless they are given.
static bool read_mirror(bw_reading *r, int32_t node, bw_stage *stage, int index) {
    bw_spot *spot = &stage->spots[index];
    if (!spot->derived) return true;
    const char *ids[BW_MAX_SPOTS];
    for (int s = 0; s < stage->defenders; s++)
        ids[s] = stage->spots[s].id;
    const int32_t mirror = bw_member(r, node, "mirror_of");
    int other = 0;
    if (!bw_take_choice(r, mirror, "there is no spot", (bw_words){ids, stage->defenders}, &other))
        return false;
    const bw_spot *twin = &stage->spots[other];
    if (twin->derived) {
        return bw_fail(r, mirror, "the spot ", twin->id,
                       " has no home of its own to mirror; name one that has \"home\"");
    }
    spot->home = bw_mirror(twin->home);
    bool fits = spot->name[0] || bw_other_side(twin->name, spot->name, sizeof spot->name);
    if (!bw_member(r, node, "call"))
        fits = bw_other_side(twin->call, spot->call, sizeof spot->call) && fits;
    if (fits) return true;
    return bw_fail(r, node, "the name or call of ", twin->id,
                   " is too long to follow on the other side; give this spot its own");
}

static bool check_apart(bw_reading *r, int32_t node, const bw_stage *stage, int index) {
    const bw_vec home = stage->spots[index].home;
    for (int s = 0; s < index; s++) {
        if (home.x == stage->spots[s].home.x && home.y == stage->spots[s].home.y) {
            return bw_fail(r, node, "this spot has the same home as ", stage->spots[s].id,
                           "; move one of them");
        }
    }
    return true;
}

static bool read_spots(bw_reading *r, int32_t list, bw_stage *stage) {
    if (!bw_take_array(r, list, "a list of spots, one for each defender", stage->defenders,
                       stage->defenders))
        return false;
    int i = 0;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_spot(r, n, stage, i++) && good;
    if (!good) return false;
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n)) {
        if (!read_mirror(r, n, stage, i++)) return false;
    }
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n)) {
        if (!check_apart(r, n, stage, i++)) return false;
    }
    return true;
}

static bool read_stage(bw_reading *r, int32_t node, int index) {
    bw_stage *stage = &r->scheme->stages[index];
    if (!bw_take_object(r, node, BW_NOUN_STAGE)) return false;
    const int32_t defenders = bw_member(r, node, "defenders"), call = bw_member(r, node, "call");
    if (!bw_take_whole(r, defenders, 3, BW_MAX_SPOTS, &stage->defenders)) return false;
    const int before = index > 0 ? r->scheme->stages[index - 1].defenders : 0;
    if (stage->defenders <= before) {
        return bw_fail(r, defenders,
                       stage->defenders == before
                           ? "there are two stages with as many defenders; keep one"
                           : "the stages must stand in rising order of defenders; move this one up",
                       NULL, "");
    }
    bool good = read_shape(r, bw_member(r, node, "shape"), stage);
    if (call) good = bw_take_text(r, call, stage->call, sizeof stage->call) && good;
    r->spots_bad = !read_spots(r, bw_member(r, node, "spots"), stage);
    good = bw_read_rule(r, bw_member(r, node, "rule"), stage) && good;
    return bw_read_pins(r, bw_member(r, node, "pins"), stage) && good && !r->spots_bad;
}

bool bw_read_stages(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of stages", 1, BW_MAX_STAGES)) return false;
    int i = 0;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_stage(r, n, i++) && good;
    r->scheme->stage_count = i;
    if (r->count > 0) return good; // twins need every landmark and spot
    bw_find_twins(r->scheme);
    for (int g = 0; g < i; g++)
        bw_mirror_pins(r->scheme, &r->scheme->stages[g]);
    return true;
}
