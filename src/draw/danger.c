/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Tints, contours, figures on them, soundings between them.
#include "draw/danger.h"

#include "core/text.h"
#include "draw/metrics.h"
#include "draw/path.h"

bw_danger bw_danger_of(bw_grid grid) {
    return (bw_danger){.grid = grid, .count = 5, .levels = {0.02, 0.05, 0.1, 0.2, 0.35}};
}

/// How many levels a chance has reached.
static int reached(const bw_danger *danger, double chance) {
    int count = 0;
    while (count < danger->count && chance >= danger->levels[count]) {
        count++;
    }
    return count;
}

/// The tint between one level and the next; the highest is always the darkest.
static bw_role tint(const bw_danger *danger, int levels) {
    return levels == 0 ? BW_ROLE_PAPER : (bw_role)(BW_ROLE_BAND_5 - (danger->count - levels));
}

/// The tint at p: BW_ROLE_PAPER below the first level.
static bw_role danger_role(const bw_danger *danger, bw_vec p) {
    return tint(danger, reached(danger, bw_grid_value(&danger->grid, p)));
}

static void put_figure(bw_ink *ink, bw_weight weight, bw_vec at, double chance) {
    char digits[16];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_fixed(&t, 100 * chance, 0);
    bw_ink_text(ink, BW_ROLE_CONTOUR, weight, 9, BW_CENTRE_ALIGN, at.x,
                at.y + 9 * BW_CAP_HEIGHT / 2, digits);
}

/// A contour's figure at p on its line, as an obstacle for the soundings. False when something else is
/// there.
static bool label_at(bw_ink *ink, const bw_danger *danger, int level, bw_labels *labels,
                     const bw_view *view, bw_vec p) {
    const bw_vec at = bw_view_point(view, p);
    const bw_vec reach = bw_v(8, 5.5);
    if (!bw_labels_free(labels, (bw_box){at.x - reach.x, at.y - reach.y, 16, 11})) return false;
    bw_ink_fill(ink, tint(danger, level + 1));
    bw_path_rect(ink, at.x - reach.x, at.y - reach.y, 2 * reach.x, 2 * reach.y);
    put_figure(ink, BW_BOLD, at, danger->levels[level]);
    bw_labels_avoid(labels, at, reach);
    return true;
}

/// Where the contour crosses a ray from the goal, coming from outside.
static bool label_on_ray(bw_ink *ink, const bw_danger *danger, int level, bw_labels *labels,
                         const bw_view *view, bw_vec ray) {
    const bw_grid *grid = &danger->grid;
    for (double d = grid->bottom + grid->rows * grid->cell; d > 0; d -= grid->cell / 4) {
        if (bw_grid_value(grid, bw_scale(ray, d)) < danger->levels[level]) continue;
        return label_at(ink, danger, level, labels, view, bw_scale(ray, d));
    }
    return false;
}

/// Where it crosses a row of the grid, at the first place that is free, the topmost row first.
static bool label_on_row(bw_ink *ink, const bw_danger *danger, int level, bw_labels *labels,
                         const bw_view *view) {
    const bw_grid *grid = &danger->grid;
    for (int row = grid->rows - 1; row >= 0; row--) {
        const double *value = grid->value + row * grid->columns;
        for (int column = 1; column < grid->columns; column++) {
            const double from = value[column - 1] - danger->levels[level];
            const double to = value[column] - danger->levels[level];
            if ((from < 0) == (to < 0)) continue;
            const bw_vec p = bw_v(grid->left + (column - 1 + from / (from - to)) * grid->cell,
                                  grid->bottom + row * grid->cell);
            if (label_at(ink, danger, level, labels, view, p)) return true;
        }
    }
    return false;
}

/// A contour's figure, up-field and to the left, or on the first other side that is free; of a chart of
/// a part of the field, which none of these may cross, wherever the line runs.
static void label_contour(bw_ink *ink, const bw_danger *danger, int level, bw_labels *labels,
                          const bw_view *view) {
    static const bw_vec rays[] = {{-0.35, 1}, {0.35, 1}, {-0.9, 1}, {0.9, 1},
                                  {-2, 1},    {2, 1},    {0, 1}};
    for (int i = 0; i < BW_COUNT(rays); i++) {
        if (label_on_ray(ink, danger, level, labels, view, rays[i])) return;
    }
    label_on_row(ink, danger, level, labels, view);
}

/// True when no contour runs through the figure at p.
static bool between_contours(const bw_danger *danger, bw_vec p, const bw_view *view) {
    const int here = reached(danger, bw_grid_value(&danger->grid, p));
    for (int i = 0; i < 4; i++) {
        const bw_vec corner =
            bw_v(p.x + (i & 1 ? 8 : -8) / view->scale, p.y + (i & 2 ? 6 : -6) / view->scale);
        if (reached(danger, bw_grid_value(&danger->grid, corner)) != here) return false;
    }
    return here > 0;
}

static void put_soundings(bw_ink *ink, const bw_danger *danger, const bw_labels *labels,
                          double step, const bw_view *view) {
    const bw_window *w = &view->window;
    for (int j = 0; (j + 0.5) * step < w->top; j++) {
        for (int i = 0; (i + 0.5) * step < w->right; i++) {
            for (int side = -1; side <= 1; side += 2) {
                const bw_vec p = bw_v(side * (i + 0.5) * step, (j + 0.5) * step);
                const bw_vec at = bw_view_point(view, p);
                const bw_box box = {at.x - 12, at.y - 7, 24, 14}; // with air round it
                if (!between_contours(danger, p, view) || !bw_labels_free(labels, box)) continue;
                put_figure(ink, BW_REGULAR, at, bw_grid_value(&danger->grid, p));
            }
        }
    }
}

void bw_draw_depths(bw_ink *ink, const bw_danger *danger, const bw_view *view) {
    const bw_box *box = &view->box;
    BW_ASSERT(danger->count >= 1 && danger->count <= BW_MAX_LEVELS);
    bw_ink_clip(ink, box->x, box->y, box->width, box->height);
    for (int i = 0; i < danger->count; i++) {
        bw_ink_fill(ink, tint(danger, i + 1));
        bw_contour_area(ink, &danger->grid, danger->levels[i], view);
    }
    for (int i = 0; i < danger->count; i++) {
        bw_ink_stroke(ink, BW_ROLE_CONTOUR, 0.75);
        bw_contour_line(ink, &danger->grid, danger->levels[i], view);
    }
    bw_ink_unclip(ink);
}

void bw_draw_figures(bw_ink *ink, const bw_danger *danger, bw_labels *labels, bw_units units,
                     const bw_view *view) {
    const bw_box *box = &view->box;
    bw_ink_clip(ink, box->x, box->y, box->width, box->height);
    for (int i = 0; i < danger->count; i++) {
        label_contour(ink, danger, i, labels, view);
    }
    put_soundings(ink, danger, labels, 5 * bw_unit_length(units), view);
    bw_ink_unclip(ink);
    for (int i = 0; i < labels->label_count; i++) {
        const bw_box b = bw_label_box(labels, i);
        const bw_vec middle = bw_v(b.x + b.width / 2, b.y + b.height / 2);
        labels->labels[i].ground = danger_role(danger, bw_view_place(view, middle));
    }
}

void bw_draw_danger(bw_ink *ink, const bw_danger *danger, bw_labels *labels, bw_units units,
                    const bw_view *view) {
    bw_draw_depths(ink, danger, view);
    bw_draw_figures(ink, danger, labels, units, view);
}

static const char key_words[] = "or more goals in 100 free shots, by the model";
static const double swatch = 24, key_gap = 6;

/// The tints, each with the figure from which it begins. Returns their width.
static double draw_swatches(bw_ink *ink, double x, double y) {
    const double high = 13;
    const bw_danger danger = bw_danger_of((bw_grid){0});
    for (int i = 0; ink && i < danger.count; i++) {
        const double left = x + i * swatch;
        bw_ink_fill(ink, tint(&danger, i + 1));
        bw_path_rect(ink, left, y - high / 2, swatch, high);
        bw_ink_stroke(ink, BW_ROLE_CONTOUR, 0.75);
        bw_path_rect(ink, left, y - high / 2, swatch, high);
        put_figure(ink, BW_BOLD, bw_v(left + swatch / 2, y), danger.levels[i]);
    }
    return danger.count * swatch;
}

/// The legend in one row from (x, y), y its middle: each tint with the figure from which it begins, and
/// what the figures are. Returns its width in points; with ink NULL only measures.
static double draw_danger_key(bw_ink *ink, double x, double y) {
    const double at = draw_swatches(ink, x, y) + key_gap;
    if (ink)
        bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN, x + at,
                    y + 9 * BW_CAP_HEIGHT / 2, key_words);
    return at + bw_width(key_words, 9);
}

double bw_draw_danger_key_rows(bw_ink *ink, double x, double y, double width) {
    enum { MOST_LINES = 4 };
    const double row = 20, leading = 12;
    if (draw_danger_key(NULL, x, y) <= width) {
        draw_danger_key(ink, x, y + row / 2);
        return row;
    }
    draw_swatches(ink, x, y + row / 2);
    bw_span lines[MOST_LINES];
    const int count = bw_wrap(key_words, 9, width, lines, MOST_LINES);
    for (int i = 0; i < count && i < MOST_LINES; i++) {
        char words[sizeof key_words];
        bw_text t = bw_text_in(words, sizeof words);
        for (int c = 0; c < lines[i].length; c++)
            bw_put_char(&t, key_words[lines[i].start + c]);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN, x,
                    y + row + i * leading + 9 * BW_CAP_HEIGHT, words);
    }
    return row + count * leading;
}
