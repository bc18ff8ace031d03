/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/cautions.h"

#include "core/base.h"
#include "core/field.h"
#include "core/level.h"
#include "report/column.h"

enum { CONTACT, SHOTS };

static const bw_caution common[BW_CAUTIONS] = {
    {"contact", "Contact", NULL, NULL, NULL},
    {"shots", "Shots and kit", NULL, NULL, NULL},
    {"heat", "Heat",
     "Build up to heat over 10 to 14 days. Fit work, rest and kit to the weather by your region's "
     "table. Have means to cool a player ready.",
     "heat: by your region's table, cooling ready", "NATA 2002, 2015"},
    {"water", "Water",
     "Water within reach. Drink to need, and not far beyond it. A break at least every 20 min (our "
     "own figure).",
     "water at hand, a break every 20 min", "NATA 2017"},
    {"lightning", "Lightning",
     "Thunder, or a strike in sight: all inside. Wait 30 min from the last; each new one starts "
     "the wait again.",
     "thunder: inside, 30 min from the last", "NFHS 2014"},
    {"head", "Head",
     "A suspected concussion is out at once and not back that day; back in steps, cleared by "
     "licensed medical staff.",
     "suspected concussion: out for the day", "Amsterdam consensus 2022"},
    {"chest", "Chest",
     "A blow to the chest can stop the heart; only quick defibrillation helps. Have an AED at "
     "practice. A player collapses: call for help, use it at once.",
     "collapse after a chest blow: AED at once", "US Lacrosse 2012"},
    {"plan", "Emergency plan",
     "Written for this field and rehearsed: who calls, who brings AED and kit, who meets the "
     "ambulance.",
     "emergency plan: who calls, who fetches, who meets", "NATA 2024"},
};

/// What differs by who plays: words of a caution.
typedef struct words {
    const char *text, *brief, *source;
} words;

static words contact_for(const bw_scheme *scheme) {
    if (bw_same(bw_field_at(scheme->field)->id, "women"))
        return (words){"No body checks. Stick checks as the rules allow at this age: none to 10U, "
                       "modified at 12U, transitional at 14U. Nobody stands in a shooter's space.",
                       "no body checks, no one in the shooting space",
                       "USA Lacrosse girls' rules 2022"};
    const char *level = bw_level_at(scheme->level)->id;
    if (bw_same(level, "youth-u11") || bw_same(level, "youth-u13"))
        return (words){
            "No body checks at 12U and below: place, legal holds and pushes. No take-out "
            "checks at any youth age. Nobody is hit who cannot see it coming.",
            "no body checks at 12U and below, no take-outs", "USA Lacrosse boys' rules 2017"};
    if (bw_same(level, "youth-u15"))
        return (words){"Checks only on the carrier or within 3 yd of a loose ball, from front or "
                       "side, between waist and neck, both hands on the stick. No take-outs. "
                       "Nobody is hit who cannot see it coming.",
                       "checks from the front, below the neck; no take-outs",
                       "USA Lacrosse boys' rules 2017"};
    if (bw_same(level, "high-school"))
        return (words){"Checks only on the carrier or within 5 yd of a loose ball, from front or "
                       "side, between waist and neck, both hands on the stick. Nobody is hit who "
                       "cannot see it coming.",
                       "checks from the front, below the neck", "NFHS boys' rule 5-3, 2014"};
    return (words){"Checks only as the current rule book allows, none to the head or neck. Nobody "
                   "is hit who cannot see it coming.",
                   "checks by the book, none to the head or neck", "NCAA men's rules 2023"};
}

static words shots_for(const bw_scheme *scheme) {
    if (bw_same(bw_field_at(scheme->field)->id, "women"))
        return (words){"No live shot without full kit: goalkeeper's chest to NOCSAE ND200, eye "
                       "protection for all; stamped balls (ND049). Nobody behind the goal or in "
                       "line with a shot.",
                       "no live shot without full kit and eye protection",
                       "NOCSAE 2014, 2017; ASTM"};
    return (words){"No live shot without full kit (chest: NOCSAE ND200) and stamped balls (ND049). "
                   "Nobody behind the goal or in line with a shot: young men's were measured at 70 "
                   "mph.",
                   "no live shot without full kit, goalkeeper first",
                   "NOCSAE 2014, 2017; Vincent 2015"};
}

bw_caution bw_caution_for(const bw_scheme *scheme, int index) {
    BW_ASSERT(index >= 0 && index < BW_CAUTIONS);
    bw_caution c = common[index];
    if (index > SHOTS) return c;
    const words w = index == CONTACT ? contact_for(scheme) : shots_for(scheme);
    c.text = w.text;
    c.brief = w.brief;
    c.source = w.source;
    return c;
}

const char *bw_cautions_defer(void) {
    return "Reminders, not medical advice. Your governing body's current rules and licensed "
           "medical "
           "staff decide; where they say otherwise, follow them.";
}

const char *bw_cautions_publishers(void) {
    return "NATA: National Athletic Trainers' Association. NFHS: National Federation of State High "
           "School Associations. NOCSAE: National Operating Committee on Standards for Athletic "
           "Equipment. Amsterdam: consensus statement on concussion in sport, 6th conference.";
}

void bw_cautions_text(const bw_scheme *scheme, bw_text *out) {
    enum { LINE = 640, INDENT = 16, WIDTH = 78 };
    bw_put(out, "Cautions\n");
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution c = bw_caution_for(scheme, i);
        char line[LINE];
        bw_text t = bw_text_in(line, sizeof line);
        bw_put(&t, c.text);
        bw_put(&t, " [");
        bw_put(&t, c.source);
        bw_put(&t, "]");
        bw_put_left(out, c.topic, INDENT);
        bw_put_wrapped(out, line, INDENT, INDENT, WIDTH);
    }
    bw_put_wrapped(out, bw_cautions_defer(), 0, 0, WIDTH);
    bw_put_wrapped(out, bw_cautions_publishers(), 0, 0, WIDTH);
}
