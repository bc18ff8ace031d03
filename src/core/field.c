/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The built-in field profiles. Figures are written in the unit of their source, so that they can
/// be checked against it; what no source gives says "assumed".
#include "core/field.h"

#include "core/base.h"
#include "core/text.h"

#define YD(yards) ((yards)*BW_METRES_PER_YARD)
#define FT(feet) ((feet)*0.3048)

/// Inside measure, and the depth of the net, in every code.
#define FULL_GOAL .goal = FT(6), .goal_depth = FT(7)

static const bw_field profiles[] = {
    {.id = "boys-nfhs",
     .name = "Boys, high school (NFHS)",
     .source = "NFHS boys' field as printed by officials' associations and by US Lacrosse (2017 "
               "youth book, Rule 1): 110 by 60 yd, goals 80 yd apart, restraining line 20 yd from "
               "the goal line, crease 9 ft. Schools may mark it as narrow as 53 1/3 yd.",
     .date = "2017",
     .american = true,
     .length = YD(110),
     .width = YD(60),
     .end_line = YD(15),
     .midline = YD(40),
     .crease = FT(9),
     FULL_GOAL,
     .restraining = YD(20),
     .box_half = YD(20),
     .alley_half = YD(20)},
    {.id = "boys-nfhs-unified",
     .name = "Boys, high school, unified field (NFHS)",
     .source = "Unified field for boys and girls, US Lacrosse 2016, NFHS 2018, as tabled by "
               "officials in Georgia: 120 by 60 yd, goal line 15 yd from the end line, restraining "
               "line 25 yd from the goal line and 40 yd from the other one, crease 9 ft. May be as "
               "narrow as 53 1/3 yd. Goal area 40 yd wide: assumed, as on the classic field.",
     .date = "2018",
     .american = true,
     .length = YD(120),
     .width = YD(60),
     .end_line = YD(15),
     .midline = YD(45),
     .crease = FT(9),
     FULL_GOAL,
     .restraining = YD(25),
     .box_half = YD(20),
     .alley_half = YD(20)},
    {.id = "men-ncaa",
     .name = "Men, college (NCAA)",
     .source = "NCAA men's field as printed by officials' associations: 110 by 60 yd, goals 80 yd "
               "apart, restraining line 20 yd from the goal line, crease 9 ft; goal-mouth arc of "
               "6 ft, NCAA 12 September 2019.",
     .date = "2020",
     .american = true,
     .length = YD(110),
     .width = YD(60),
     .end_line = YD(15),
     .midline = YD(40),
     .crease = FT(9),
     FULL_GOAL,
     .restraining = YD(20),
     .box_half = YD(20),
     .alley_half = YD(20),
     .goal_mouth = FT(6)},
    {.id = "men-wl",
     .name = "Men, international (World Lacrosse)",
     .source =
         "World Lacrosse, Men's Lacrosse: Unified Field Dimensions and Markings: 110 by 60 m, "
         "goal line 12 m from the end line, crease 3 m. Restraining line, goal area and "
         "alley line are said to stay about as before; their exact places were not found: "
         "20 yd from the goal line and 20 yd either side of the centre are assumed.",
     .date = "undated, read as current",
     .length = 110,
     .width = 60,
     .end_line = 12,
     .midline = 43,
     .crease = 3,
     FULL_GOAL,
     .restraining = YD(20),
     .box_half = YD(20),
     .alley_half = YD(20)},
    {.id = "women",
     .name = "Women and girls",
     .source =
         "World Lacrosse women's field: 110 by 60 m, goal line 12 m from the end line (2016). "
         "NFHS and USA Lacrosse Rule 13 (2025): arc 8 m and fan 12 m beyond the goal circle, "
         "here 2.6 m (8.5 ft), so 10.6 and 14.6 m from the centre of the goal line. "
         "Restraining line 30 yd from the goal line, girls' classic field.",
     .date = "2025",
     .women = true,
     .length = 110,
     .width = 60,
     .end_line = 12,
     .midline = 43,
     .crease = 2.6,
     FULL_GOAL,
     .restraining = YD(30),
     .arc = 10.6,
     .fan = 14.6},
    {.id = "sixes",
     .name = "Sixes (World Lacrosse)",
     .source = "World Lacrosse, Six v Six rules, 17 November 2020, and a rules summary of 2024: 70 "
               "by 36 m, goal 6 by 6 ft. No source was found for the goal line 10 m from the end "
               "line or the crease of 3 m: both assumed. No restraining line.",
     .date = "2024",
     .length = 70,
     .width = 36,
     .end_line = 10,
     .midline = 25,
     .crease = 3,
     FULL_GOAL},
    {.id = "youth-small",
     .name = "Boys under 12, small-sided",
     .source = "US Lacrosse boys' youth rules 2019 and 2020, 12U and below: 60 by 35 yd. Goal line "
               "10 yd from the end line, crease 9 ft and goal 6 ft: assumed, no source was found. "
               "No restraining line.",
     .date = "2020",
     .american = true,
     .length = YD(60),
     .width = YD(35),
     .end_line = YD(10),
     .midline = YD(20),
     .crease = FT(9),
     FULL_GOAL}};

int bw_field_count(void) {
    return BW_COUNT(profiles);
}

const bw_field *bw_field_at(int index) {
    BW_ASSERT(index >= 0 && index < BW_COUNT(profiles));
    return &profiles[index];
}

const bw_field *bw_field_find(const char *id) {
    for (int i = 0; i < BW_COUNT(profiles); i++)
        if (bw_same(profiles[i].id, id)) return &profiles[i];
    return NULL;
}

bool bw_field_contains(const bw_field *field, bw_vec p) {
    return bw_abs(p.x) <= field->width / 2 && p.y >= -field->end_line && p.y <= field->midline;
}

bw_vec bw_field_clamp(const bw_field *field, bw_vec p) {
    const double half = field->width / 2;
    return bw_v(bw_clamp(p.x, -half, half), bw_clamp(p.y, -field->end_line, field->midline));
}
