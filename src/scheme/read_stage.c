/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Stages: spots, rule and pins.
#include "scheme/reading.h"
#include "scheme/twin.h"

static const char *const stage_keys[] = {"defenders", "shape", "call", "spots", "rule", "pins"};
static const char *const spot_keys[] = {"id", "name", "home", "call", "mirror_of"};
static const char *const rule_keys[] = {"pickup", "cushion",     "shift",   "soft",      "area",
                                        "pull",   "hold_behind", "hold_at", "crease_at", "crease"};

static bool take_spot(bw_reading *r, const bw_stage *stage, int32_t node, int *index) {
    const char *ids[BW_MAX_SPOTS];
    for (int s = 0; s < stage->defenders; s++)
        ids[s] = stage->spots[s].id;
    return bw_take_choice(r, node, "spot", (bw_words){ids, stage->defenders}, index);
}

/// "2-1-2": digits that add up to the defenders, or "match-up".
static bool read_shape(bw_reading *r, int32_t node, bw_stage *stage) {
    if (!bw_take_text(r, node, stage->shape, sizeof stage->shape, false)) return false;
    stage->match_up = bw_same(stage->shape, "match-up");
    if (stage->match_up) return true;
    int sum = 0;
    bool fine = true;
    for (int i = 0; stage->shape[i]; i++) {
        char c = stage->shape[i];
        bool is_row = c >= '1' && c <= '6';
        fine = fine && (i % 2 == 0 ? is_row : c == '-');
        if (is_row) sum += c - '0';
        if (!stage->shape[i + 1]) fine = fine && is_row;
    }
    if (fine && sum == stage->defenders) return true;
    return bw_fail_number(r, node,
                          "a shape counts the men from the top down, such as 2-2, or is "
                          "\"match-up\"; this one must add up to ",
                          stage->defenders, "");
}

static bool read_spot(bw_reading *r, int32_t node, bw_stage *stage, int index) {
    bw_spot *spot = &stage->spots[index];
    int32_t member;
    if (!bw_take_object(r, node, "a spot such as {\"id\": \"LL\", ...}", BW_WORDS(spot_keys)))
        return false;
    if (!bw_take_member(r, node, "id", &member) || !bw_take_code(r, member, spot->id)) return false;
    for (int s = 0; s < index; s++) {
        if (bw_same(stage->spots[s].id, spot->id)) {
            return bw_fail(r, member, "the spot ", spot->id,
                           " is there twice; give each its own id");
        }
    }
    if (!bw_take_member(r, node, "name", &member)) return false;
    if (!bw_take_text(r, member, spot->name, sizeof spot->name, false)) return false;
    if ((member = bw_node_member(r->tree, node, "call")) &&
        !bw_take_text(r, member, spot->call, sizeof spot->call, true))
        return false;
    int32_t home = bw_node_member(r->tree, node, "home");
    spot->derived = bw_node_member(r->tree, node, "mirror_of") != 0;
    if (home && spot->derived) {
        return bw_fail(r, home, "a spot with ", "mirror_of",
                       " takes its home from there; leave this out");
    }
    if (spot->derived) return true;
    if (!home) return bw_fail(r, node, "the key ", "home", " is missing here");
    return bw_take_place(r, home, &spot->home);
}

static bool mirror_spot(bw_reading *r, int32_t node, bw_stage *stage, int index) {
    if (!stage->spots[index].derived) return true;
    int32_t mirror = bw_node_member(r->tree, node, "mirror_of");
    int other = 0;
    if (!take_spot(r, stage, mirror, &other)) return false;
    if (other == index || stage->spots[other].derived) {
        return bw_fail(r, mirror, "the spot ", stage->spots[other].id,
                       " has no home of its own to mirror; name one that has \"home\"");
    }
    stage->spots[index].home = bw_mirror(stage->spots[other].home);
    return true;
}

static bool check_apart(bw_reading *r, int32_t node, const bw_stage *stage, int index) {
    bw_vec home = stage->spots[index].home;
    for (int s = 0; s < index; s++) {
        if (home.x == stage->spots[s].home.x && home.y == stage->spots[s].home.y) {
            return bw_fail(r, node, "this spot has the very home of ", stage->spots[s].id,
                           "; move one of the two");
        }
    }
    return true;
}

static bool read_spots(bw_reading *r, int32_t list, bw_stage *stage) {
    if (!bw_take_array(r, list, "a list of spots, one for each defender", stage->defenders,
                       stage->defenders))
        return false;
    int i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!read_spot(r, n, stage, i)) return false;
    }
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!mirror_spot(r, n, stage, i)) return false;
    }
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!check_apart(r, n, stage, i)) return false;
    }
    return true;
}

static bool read_crease(bw_reading *r, int32_t node, bw_stage *stage) {
    const char *words[BW_MAX_SPOTS + 2] = {"farthest", "none"};
    for (int s = 0; s < stage->defenders; s++)
        words[2 + s] = stage->spots[s].id;
    int choice = 0;
    if (!bw_take_choice(r, node, "way to cover the crease", (bw_words){words, stage->defenders + 2},
                        &choice))
        return false;
    stage->rule.crease = choice == 0   ? BW_CREASE_FARTHEST
                         : choice == 1 ? BW_CREASE_NONE
                                       : choice - 2;
    return true;
}

static bool read_rule(bw_reading *r, int32_t node, bw_stage *stage) {
    bw_rule *rule = &stage->rule;
    int32_t n;
    if (!bw_take_object(r, node, "an object with the rule's numbers", BW_WORDS(rule_keys)))
        return false;
#define MEMBER(key) ((n = bw_node_member(r->tree, node, key)) != 0)
    if (MEMBER("pickup") && !bw_take_length(r, n, 4, 25, &rule->pickup)) return false;
    if (MEMBER("cushion") && !bw_take_length(r, n, 0, 6, &rule->cushion)) return false;
    if (MEMBER("shift") && !bw_take_number(r, n, 0, 1, "", &rule->shift)) return false;
    if (MEMBER("soft") && !bw_take_number(r, n, 0, 1, "", &rule->soft)) return false;
    if (MEMBER("area") && !bw_take_length(r, n, 0, 10, &rule->area)) return false;
    if (MEMBER("pull") && !bw_take_number(r, n, 0, 1, "", &rule->pull)) return false;
    if (MEMBER("hold_behind") && !bw_take_flag(r, n, &rule->hold_behind)) return false;
    if (MEMBER("hold_at")) {
        if (!bw_take_place(r, n, &rule->hold_at)) return false;
        if (rule->hold_at.x <= 0 || rule->hold_at.y < 0) {
            return bw_fail(r, n,
                           "this is where the right one of the low pair holds: x must be above 0 "
                           "and y at least 0",
                           NULL, "");
        }
    }
    if (MEMBER("crease_at") && !bw_take_place(r, n, &rule->crease_at)) return false;
    if (MEMBER("crease") && !read_crease(r, n, stage)) return false;
#undef MEMBER
    return true;
}

static bool read_pins_at(bw_reading *r, int32_t node, int landmark, bw_stage *stage) {
    const char *ids[BW_MAX_SPOTS];
    for (int s = 0; s < stage->defenders; s++)
        ids[s] = stage->spots[s].id;
    if (!bw_take_object(r, node, "an object with a place for each pinned spot",
                        (bw_words){ids, stage->defenders}))
        return false;
    for (int s = 0; s < stage->defenders; s++) {
        int32_t n = bw_node_member(r->tree, node, ids[s]);
        if (!n) continue;
        if (!bw_take_place(r, n, &stage->pins[landmark][s])) return false;
        stage->pinned[landmark][s] = 1;
    }
    return true;
}

static bool read_pins(bw_reading *r, int32_t node, bw_stage *stage) {
    const char *ids[BW_MAX_LANDMARKS];
    for (int l = 0; l < r->scheme->landmark_count; l++)
        ids[l] = r->scheme->landmarks[l].id;
    if (!bw_take_object(r, node, "an object with the pins at each landmark",
                        (bw_words){ids, r->scheme->landmark_count}))
        return false;
    for (int l = 0; l < r->scheme->landmark_count; l++) {
        int32_t n = bw_node_member(r->tree, node, ids[l]);
        if (n && !read_pins_at(r, n, l, stage)) return false;
    }
    return true;
}

static bool read_stage(bw_reading *r, int32_t node, int index) {
    bw_stage *stage = &r->scheme->stages[index];
    int32_t n;
    if (!bw_take_object(r, node, "a stage such as {\"defenders\": 4, ...}", BW_WORDS(stage_keys)))
        return false;
    if (!bw_take_member(r, node, "defenders", &n)) return false;
    if (!bw_take_whole(r, n, 3, BW_MAX_SPOTS, &stage->defenders)) return false;
    if (index > 0 && stage->defenders <= r->scheme->stages[index - 1].defenders) {
        return bw_fail(r, n,
                       "stages go by rising number of defenders, one stage for each number; this "
                       "one is out of order",
                       NULL, "");
    }
    if (!bw_take_member(r, node, "shape", &n) || !read_shape(r, n, stage)) return false;
    if ((n = bw_node_member(r->tree, node, "call")) &&
        !bw_take_text(r, n, stage->call, sizeof stage->call, true))
        return false;
    if (!bw_take_member(r, node, "spots", &n) || !read_spots(r, n, stage)) return false;
    stage->rule = bw_rule_default();
    if ((n = bw_node_member(r->tree, node, "rule")) && !read_rule(r, n, stage)) return false;
    if ((n = bw_node_member(r->tree, node, "pins")) && !read_pins(r, n, stage)) return false;
    return true;
}

bool bw_read_stages(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of stages", 1, BW_MAX_STAGES)) return false;
    int i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!read_stage(r, n, i)) return false;
    }
    r->scheme->stage_count = i;
    bw_find_twins(r->scheme);
    for (int g = 0; g < i; g++)
        bw_mirror_pins(r->scheme, &r->scheme->stages[g]);
    return true;
}
