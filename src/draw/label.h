/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Words beside marks without collisions. Each label may stand at a few places round its mark; every
/// choice has a cost (covering something, leaving the chart, crossing a line, standing nearer to another
/// mark than to its own, standing at a less natural place), and labels are moved one at a time to the cheapest place until none gains.
/// Deterministic, and mirrored charts come out mirrored: the first choices are the side away from the
/// centre line.
#ifndef BW_DRAW_LABEL_H
#define BW_DRAW_LABEL_H

#include "draw/ink.h"
#include "draw/view.h"

enum {
    BW_MAX_LABELS = 48,
    BW_MAX_OBSTACLES = 64,
    BW_MAX_SHUNNED = 24,
    BW_MAX_CROSSINGS = 40,
    BW_MAX_RIVALS = 8
};

typedef struct bw_label {
    const char *text; ///< kept by pointer until bw_labels_draw
    double size;
    bw_role role;
    bw_weight weight;
    bw_vec at;      ///< middle of its mark
    bw_vec reach;   ///< half the mark's width and height
    double width;   ///< of the text
    bw_role ground; ///< of the patch under it, BW_ROLE_PAPER unless the caller changes it
    int place;      ///< chosen candidate
    bool left_out;  ///< there is no good place for it
} bw_label;

typedef struct bw_labels {
    bw_box bounds; ///< labels stay inside
    double middle; ///< x of the centre line
    int label_count, obstacle_count, shunned_count, crossing_count;
    bw_label labels[BW_MAX_LABELS];
    bw_box obstacles[BW_MAX_OBSTACLES];    ///< nothing may cover these
    bw_box shunned[BW_MAX_SHUNNED];        ///< better not to cover these
    bw_vec crossings[BW_MAX_CROSSINGS][2]; ///< better not to cross these
    int rival_count;
    bw_label rivals[BW_MAX_RIVALS]; ///< marks without a label, which must not seem to have one
} bw_labels;

void bw_labels_begin(bw_labels *labels, bw_box bounds, double middle);
/// Begins the labels of a chart, a little inside its border.
void bw_labels_begin_chart(bw_labels *labels, const bw_view *view);
/// Keeps labels off the goal and its net.
void bw_labels_avoid_goal(bw_labels *labels, const bw_field *field, const bw_view *view);
void bw_labels_avoid(bw_labels *labels, bw_vec at, bw_vec reach);
void bw_labels_shun(bw_labels *labels, bw_vec at, bw_vec reach);
void bw_labels_avoid_line(bw_labels *labels, bw_vec a, bw_vec b);
void bw_labels_rival(bw_labels *labels, bw_vec at, bw_vec reach);
void bw_labels_add(bw_labels *labels, const char *text, bw_weight weight, double size, bw_role role,
                   bw_vec at, bw_vec reach);

/// Chooses the places. Returns the number of labels that still cover something.
int bw_labels_place(bw_labels *labels);

/// Leaves out, the worst first, placed labels that still cover something or stand as near to another mark as
/// to their own: a word at the wrong man is worse than none.
void bw_labels_leave_out(bw_labels *labels);

/// True when a box covers no obstacle and no placed label.
bool bw_labels_free(const bw_labels *labels, bw_box box);

/// The box of a placed label's text, its cap height and descent included.
bw_box bw_label_box(const bw_labels *labels, int index);

/// Text on a patch of paper, so that lines under it do not run through the letters.
void bw_labels_draw(bw_ink *ink, const bw_labels *labels);

#endif
