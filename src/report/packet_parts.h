/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the files of the packet share. Private to packet*.c.
#ifndef BW_REPORT_PACKET_PARTS_H
#define BW_REPORT_PACKET_PARTS_H

#include "core/shape.h"
#include "report/paging.h"

enum { BW_PACKET_LINE = 1024 };

/// Between two columns.
#define BW_PACKET_GUTTER 20.0

void bw_packet_idea(bw_paging *p);
void bw_packet_stage(bw_paging *p, int stage);
void bw_packet_rotations(bw_paging *p, int stage);
void bw_packet_spot(bw_paging *p, int stage, int spot);
void bw_packet_weak(bw_paging *p);

/// The unit at home, as a figure, in a view of the page.
void bw_packet_homes(const bw_paging *p, int stage, const bw_view *view);

/// “call”, in quotation marks.
void bw_put_call(bw_text *out, const char *call);

/// "Top centre to left wing"
void bw_say_weak(const bw_weak *weak, bw_text *out);

/// A paragraph of body text in a column from (x, y); returns its height. With ink NULL only measures.
double bw_put_column(bw_ink *ink, bw_role role, bw_weight weight, double x, double y, double width,
                     const char *text);

/// A spot's disc with its middle at height y, from x on: returns how far right of x words may stand.
double bw_put_disc(bw_ink *ink, const char *code, double x, double y);

/// Two columns, or one where the page is narrow; and how wide each is.
int bw_packet_columns(const bw_paging *p, double *width);

/// The unit's run when the ball goes from one place to another.
typedef struct bw_run_chart {
    const bw_scheme *scheme;
    int stage;
    bw_vec from, to;
} bw_run_chart;

/// Draws it `wide` points wide, border included, with its top left corner at (x, y); with ink NULL only
/// measures. Returns its height.
double bw_packet_run(bw_ink *ink, const bw_run_chart *run, double x, double y, double wide);

/// Points per metre of a chart that wide.
double bw_packet_scale(const bw_scheme *scheme, double wide);

/// Keys of a page of such charts.
uint32_t bw_packet_run_keys(const bw_stage *stage);

#endif
