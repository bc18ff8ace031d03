/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/keys.h"

static const bw_key scheme[] = {
    {"format", true}, {"version", true}, {"id", false},   {"name", true},     {"team", false},
    {"field", true},  {"units", true},   {"level", true}, {"lead", false},    {"landmarks", true},
    {"stages", true}, {"late", false},   {"sets", false}, {"lessons", false}, {"notes", false}};
static const bw_key landmark[] = {
    {"id", true}, {"name", false}, {"at", false}, {"mirror_of", false}};
static const bw_key stage[] = {{"defenders", true}, {"shape", true}, {"call", false},
                               {"spots", true},     {"rule", false}, {"pins", false}};
static const bw_key spot[] = {
    {"id", true}, {"name", false}, {"home", false}, {"mirror_of", false}, {"call", false}};
static const bw_key rule[] = {
#define RULE_NUMBER(ID, key, ...) {#key, false},
#include "core/rule_params.def"
    {"hold_behind", false}, {"hold_at", false}, {"crease_at", false}, {"crease", false}};
static const bw_key late[] = {{"role", true}, {"behind", true}, {"takes", true}};
static const bw_key set[] = {{"id", true}, {"name", true}, {"at", true}};
static const bw_key lesson[] = {{"id", true}, {"name", true}, {"stage", true}, {"stops", true}};
static const bw_key stop[] = {{"ball", true}, {"pause", false}, {"caption", false}};

#define KEYS(name, article)                                                                        \
    { #name, article, name, BW_COUNT(name) }

static const bw_keys nouns[BW_NOUN_COUNT] = {
    [BW_NOUN_SCHEME] = KEYS(scheme, "a scheme"), [BW_NOUN_LANDMARK] = KEYS(landmark, "a landmark"),
    [BW_NOUN_STAGE] = KEYS(stage, "a stage"),    [BW_NOUN_SPOT] = KEYS(spot, "a spot"),
    [BW_NOUN_RULE] = KEYS(rule, "a rule"),       [BW_NOUN_LATE] = KEYS(late, "a late man"),
    [BW_NOUN_SET] = KEYS(set, "an attack set"),  [BW_NOUN_LESSON] = KEYS(lesson, "a lesson"),
    [BW_NOUN_STOP] = KEYS(stop, "a stop"),
};

const bw_keys *bw_keys_of(bw_noun noun) {
    BW_ASSERT(noun < BW_NOUN_COUNT);
    return &nouns[noun];
}
