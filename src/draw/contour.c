/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Marching squares on the grid with a ring of "below" round it, so that every contour closes.
#include "draw/contour.h"

/// A cell's edges, and for each of its 16 corner patterns the edges its one or two segments enter and
/// leave by, high ground on the left. Corners are bits: 1 lower left, 2 lower right, 4 upper right,
/// 8 upper left.
enum { BOTTOM, RIGHT, TOP, LEFT, NO_EDGE };

static const uint8_t segments[16][4] = {
    {NO_EDGE, NO_EDGE, NO_EDGE, NO_EDGE}, {BOTTOM, LEFT, NO_EDGE, NO_EDGE},
    {RIGHT, BOTTOM, NO_EDGE, NO_EDGE},    {RIGHT, LEFT, NO_EDGE, NO_EDGE},
    {TOP, RIGHT, NO_EDGE, NO_EDGE},       {BOTTOM, LEFT, TOP, RIGHT},
    {TOP, BOTTOM, NO_EDGE, NO_EDGE},      {TOP, LEFT, NO_EDGE, NO_EDGE},
    {LEFT, TOP, NO_EDGE, NO_EDGE},        {BOTTOM, TOP, NO_EDGE, NO_EDGE},
    {RIGHT, BOTTOM, LEFT, TOP},           {RIGHT, TOP, NO_EDGE, NO_EDGE},
    {LEFT, RIGHT, NO_EDGE, NO_EDGE},      {BOTTOM, RIGHT, NO_EDGE, NO_EDGE},
    {LEFT, BOTTOM, NO_EDGE, NO_EDGE},     {NO_EDGE, NO_EDGE, NO_EDGE, NO_EDGE},
};

/// The same saddles when their middle is high: the two highs join.
static const uint8_t joined[2][4] = {{BOTTOM, RIGHT, TOP, LEFT}, {LEFT, BOTTOM, RIGHT, TOP}};

/// One trace: which segments of which cells are done. Cells run from -1 to columns - 1.
typedef struct tracer {
    const bw_grid *grid;
    double level;
    uint8_t done[(BW_GRID_SIDE + 1) * (BW_GRID_SIDE + 1)];
} tracer;

static bool outside(const bw_grid *grid, int column, int row) {
    return column < 0 || row < 0 || column >= grid->columns || row >= grid->rows;
}

static bool high(const tracer *t, int column, int row) {
    return !outside(t->grid, column, row) &&
           t->grid->value[row * t->grid->columns + column] >= t->level;
}

static const uint8_t *cell_segments(const tracer *t, int column, int row) {
    const int bits = high(t, column, row) | high(t, column + 1, row) << 1 |
                     high(t, column + 1, row + 1) << 2 | high(t, column, row + 1) << 3;
    if (bits != 5 && bits != 10) return segments[bits];
    double sum = 0;
    for (int i = 0; i < 4; i++) {
        const int c = column + (i & 1), r = row + (i >> 1);
        if (outside(t->grid, c, r)) return segments[bits];
        sum += t->grid->value[r * t->grid->columns + c];
    }
    return sum >= 4 * t->level ? joined[bits == 10] : segments[bits];
}

/// Where the contour crosses an edge of a cell.
static bw_vec crossing(const tracer *t, int column, int row, int edge) {
    static const int ends[4][4] = {{0, 0, 1, 0}, {1, 0, 1, 1}, {0, 1, 1, 1}, {0, 0, 0, 1}};
    const bw_grid *g = t->grid;
    const int ac = column + ends[edge][0], ar = row + ends[edge][1];
    const int bc = column + ends[edge][2], br = row + ends[edge][3];
    const bw_vec a = bw_v(g->left + ac * g->cell, g->bottom + ar * g->cell);
    const bw_vec b = bw_v(g->left + bc * g->cell, g->bottom + br * g->cell);
    if (outside(g, ac, ar)) return b;
    if (outside(g, bc, br)) return a;
    const double va = g->value[ar * g->columns + ac], vb = g->value[br * g->columns + bc];
    return bw_lerp(a, b, (t->level - va) / (vb - va));
}

/// Follows one loop from segment `s` of a cell until it closes. Without `rims`, what runs through the
/// ring of cells round the grid, which is along the grid's edge, is left out.
static void follow(bw_ink *ink, tracer *t, int column, int row, int s, const bw_view *view,
                   bool rims) {
    const int columns = t->grid->columns, rows = t->grid->rows;
    bool down = false, broken = false;
    int edge = cell_segments(t, column, row)[2 * s];
    bw_vec last = bw_view_point(view, crossing(t, column, row, edge));
    for (;;) {
        t->done[(row + 1) * (columns + 1) + column + 1] |= (uint8_t)(1 << s);
        edge = cell_segments(t, column, row)[2 * s + 1];
        const bw_vec p = bw_view_point(view, crossing(t, column, row, edge));
        const bool ring = column < 0 || row < 0 || column >= columns - 1 || row >= rows - 1;
        const bool draw = rims || !ring;
        if (draw && !down) bw_ink_move(ink, last.x, last.y);
        if (draw) bw_ink_line(ink, p.x, p.y);
        down = draw;
        broken |= !draw;
        last = p;
        column += (edge == RIGHT) - (edge == LEFT);
        row += (edge == TOP) - (edge == BOTTOM);
        const int enter = (edge + 2) % 4;
        const uint8_t *next = cell_segments(t, column, row);
        s = next[0] == enter ? 0 : 1;
        BW_ASSERT(next[2 * s] == enter);
        if (t->done[(row + 1) * (columns + 1) + column + 1] & 1 << s) break;
    }
    if (!broken) bw_ink_shut(ink);
}

static void trace(bw_ink *ink, const bw_grid *grid, double level, const bw_view *view, bool rims) {
    BW_ASSERT(grid->columns >= 2 && grid->columns <= BW_GRID_SIDE);
    BW_ASSERT(grid->rows >= 2 && grid->rows <= BW_GRID_SIDE);
    tracer t = {.grid = grid, .level = level};
    for (int row = -1; row < grid->rows; row++) {
        for (int column = -1; column < grid->columns; column++) {
            const uint8_t *cell = cell_segments(&t, column, row);
            for (int s = 0; s < 2; s++) {
                const uint8_t done = t.done[(row + 1) * (grid->columns + 1) + column + 1];
                if (cell[2 * s] != NO_EDGE && !(done & 1 << s))
                    follow(ink, &t, column, row, s, view, rims);
            }
        }
    }
}

void bw_contour_area(bw_ink *ink, const bw_grid *grid, double level, const bw_view *view) {
    trace(ink, grid, level, view, true);
}

void bw_contour_line(bw_ink *ink, const bw_grid *grid, double level, const bw_view *view) {
    trace(ink, grid, level, view, false);
}

double bw_grid_value(const bw_grid *grid, bw_vec p) {
    const double x = bw_clamp((p.x - grid->left) / grid->cell, 0, grid->columns - 1);
    const double y = bw_clamp((p.y - grid->bottom) / grid->cell, 0, grid->rows - 1);
    int column = (int)x, row = (int)y;
    if (column > grid->columns - 2) column = grid->columns - 2;
    if (row > grid->rows - 2) row = grid->rows - 2;
    const double *v = grid->value + row * grid->columns + column;
    const double fx = x - column, fy = y - row;
    const double low = v[0] + (v[1] - v[0]) * fx;
    const double up = v[grid->columns] + (v[grid->columns + 1] - v[grid->columns]) * fx;
    return low + (up - low) * fy;
}
