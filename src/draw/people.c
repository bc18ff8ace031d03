/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/people.h"

#include "draw/path.h"

void bw_people_attacker(bw_chart_people *people, bw_vec at) {
    people->attackers[people->attacker_count++] = at;
}

void bw_people_defender(bw_chart_people *people, bw_chart_man man) {
    people->defenders[people->defender_count++] = man;
}

void bw_people_ball(bw_chart_people *people, bw_vec at) {
    people->has_ball = true;
    people->ball = at;
}

void bw_people_avoid(const bw_chart_people *people, bw_labels *labels) {
    const double r = people->size.radius;
    for (int a = 0; a < people->attacker_count; a++)
        bw_labels_avoid(labels, people->attackers[a], bw_v(r, r));
    for (int d = 0; d < people->defender_count; d++) {
        const bw_chart_man *man = &people->defenders[d];
        bw_labels_avoid(labels, man->at, bw_mark_reach(people->size, man->code, man->duty));
    }
}

static void draw_defender(bw_ink *ink, bw_mark_size size, const bw_chart_man *man) {
    const double r = size.radius;
    bw_mark_defender(ink, size, man->at, man->code, man->duty);
    if (man->pinned) bw_mark_flag(ink, bw_v(man->at.x + r * 0.55, man->at.y - r * 0.9), r * 1.1);
}

static void draw_ball(bw_ink *ink, const bw_chart_people *people) {
    bw_mark_ball(ink, people->ball);
    if (!(people->ring > 0)) return;
    bw_ink_stroke(ink, BW_ROLE_BALL, people->ring_width);
    bw_path_circle(ink, people->ball, people->ring);
}

void bw_draw_people(bw_ink *ink, const bw_chart_people *people) {
    if (people->keeper_below) bw_mark_keeper(ink, people->size, people->keeper);
    for (int a = 0; a < people->attacker_count; a++)
        bw_mark_attacker(ink, people->size, people->attackers[a], a + 1);
    if (!people->keeper_below) bw_mark_keeper(ink, people->size, people->keeper);
    for (int d = 0; d < people->defender_count; d++)
        draw_defender(ink, people->size, &people->defenders[d]);
    if (people->has_ball) draw_ball(ink, people);
}
