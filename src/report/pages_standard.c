/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The third sheet: the standard set of breaks as a table, worst first.
#include "report/pages_part.h"
#include "trial/ranking.h"
#include "trial/sentences.h"
#include "trial/words.h"

static const double first_column = 120, row_height = 15.5;

static double column_width(const bw_ranking *table) {
    return (BW_BLOCK_WIDTH - first_column) / table->columns;
}

static void put_head(const bw_report *r, const bw_ranking *table, const bw_sheet *sheet, double y) {
    const double x = sheet->block.x;
    bw_put_cell(sheet->ink, BW_BOLD, BW_LEFT_ALIGN, x, y, "Break and set");
    for (int c = 0; c < table->columns; c++) {
        const int l = bw_scheme_landmark(r->ground->scheme, table->start[c]);
        bw_line_of(sheet->ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SMALL,
                   x + first_column + c * column_width(table), y, column_width(table) - 8,
                   r->ground->scheme->landmarks[l].name);
    }
    bw_put_rule(sheet->ink, sheet, y + 5);
}

static void put_row(const bw_ranking *table, const bw_ranking_row *row, const bw_sheet *sheet,
                    double y) {
    char line[64];
    const double x = sheet->block.x;
    bw_text t = bw_text_in(line, sizeof line);
    bw_put_int(&t, row->offence);
    bw_put(&t, "v");
    bw_put_int(&t, row->defence);
    bw_put_cell(sheet->ink, BW_BOLD, BW_LEFT_ALIGN, x, y, line);
    bw_put_cell(sheet->ink, BW_REGULAR, BW_LEFT_ALIGN, x + 34, y, row->set);
    for (int c = 0; c < table->columns; c++) {
        const bw_trial *cell = row->cell[c];
        if (!cell) continue;
        const double at = x + first_column + c * column_width(table);
        t = bw_text_in(line, sizeof line);
        bw_put_int(&t, bw_in_100(cell->curve.plateau));
        bw_put_cell(sheet->ink, BW_BOLD, BW_RIGHT_ALIGN, at + 20, y, line);
        t = bw_text_in(line, sizeof line);
        bw_put_fixed(&t, cell->curve.bought_s, 1);
        bw_put(&t, cell->curve.ever_beaten ? " s" : " s +");
        bw_put_cell(sheet->ink, BW_REGULAR, BW_LEFT_ALIGN, at + 28, y, line);
    }
}

void bw_page_standard(const bw_report *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    bw_ranking table;
    bw_ranking_build(r->standard, r->standard_count, &table);
    bw_put_estimate(sheet);
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width,
               "The standard set of breaks, worst first");
    char line[400];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_standard(&table, &t);
    double y = b->y + 20;
    y += bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                      b->width, line);
    y += 18;
    put_head(r, &table, sheet, y);
    y += 19;
    for (int i = 0; i < table.rows && y < b->y + b->height; i++, y += row_height)
        put_row(&table, &table.row[i], sheet, y);
}
