/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/card.h"

#include "core/shape.h"
#include "core/text.h"
#include "draw/book_words.h"
#include "draw/chart.h"
#include "draw/marks.h"
#include "draw/metrics.h"
#include "draw/path.h"

enum { LINE = 4 * BW_NAME_SIZE };

static const double head = 27; // disc, name and words
static const double gap = 7;
static const double row_most = 10, row_least = 9.2; // from one line of a list to the next
static const double list_wide = 109;                // number, duty, sideways, out
static const double chart_least = 60;
static const double ring = 6; // round a ball place's number

static void put_bold(bw_ink *ink, bw_role role, double size, double x, double y, double width,
                     const char *text) {
    bw_line_of(ink, role, BW_BOLD, size, x, y, width, text);
}

/// Disc, name and his own word; below them the stage and its word.
static void put_head(bw_ink *ink, const bw_pocket_card *card) {
    const bw_box *in = &card->inside;
    const bw_stage *stage = &card->scheme->stages[card->stage];
    const bw_spot *spot = &stage->spots[card->spot];
    const bw_mark_size size = {.radius = 9.5, .type = 10.5, .label = BW_CARD_TYPE};
    const double reach = bw_mark_reach(size, spot->id, BW_NO_DUTY).x + 1;
    const double x = in->x + 2 * reach + 6, right = in->x + in->width;
    char words[LINE];
    bw_mark_defender(ink, size, bw_v(in->x + reach, in->y + 11), spot->id, BW_NO_DUTY);
    bw_text t = bw_text_in(words, sizeof words);
    if (spot->call[0]) {
        bw_put(&t, "\xE2\x80\x9C");
        bw_put(&t, spot->call);
        bw_put(&t, "\xE2\x80\x9D");
    }
    const double half = (right - x) / 2;
    const double call = bw_min(bw_width(words, BW_CARD_HEAD_TYPE) + 1, half);
    put_bold(ink, BW_ROLE_TEXT, BW_CARD_HEAD_TYPE, right - call, in->y + 9, call, words);
    put_bold(ink, BW_ROLE_TEXT, BW_CARD_HEAD_TYPE, x, in->y + 9, right - x - call - 6, spot->name);
    t = bw_text_in(words, sizeof words);
    bw_say_stage(stage, &t);
    if (stage->call[0]) {
        bw_put(&t, " \xE2\x80\x9C");
        bw_put(&t, stage->call);
        bw_put(&t, "\xE2\x80\x9D");
    }
    put_bold(ink, BW_ROLE_SOFT_TEXT, BW_CARD_TYPE, x, in->y + 20, right - x, words);
}

/// Where he stands for each landmark, and what he does there.
static void find_places(const bw_pocket_card *card, bw_station *own) {
    const bw_scheme *scheme = card->scheme;
    bw_plan plan;
    bw_plan_build(scheme, card->stage, &plan);
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_station stations[BW_MAX_SPOTS];
        bw_where(&plan, scheme->landmarks[l].at, NULL, 0, stations);
        own[l] = stations[card->spot];
    }
}

static void put_number(bw_ink *ink, bw_vec at, int number) {
    char digits[8];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_int(&t, number);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, ring);
    bw_ink_stroke(ink, BW_ROLE_BALL, 0.9);
    bw_path_circle(ink, at, ring);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_CARD_TYPE, BW_CENTRE_ALIGN, at.x,
                at.y + BW_CARD_TYPE * BW_CAP_HEIGHT / 2, digits);
}

/// The front's chart: where he begins, and the ball places by number.
static void put_chart(bw_ink *ink, const bw_pocket_card *card, const bw_view *view) {
    const bw_scheme *scheme = card->scheme;
    const bw_vec home = scheme->stages[card->stage].spots[card->spot].home;
    bw_ink_begin(ink, BW_TAG_FIGURE, "Ball places by number, and where you begin");
    bw_draw_paper(ink, view);
    bw_draw_field(ink, bw_field_at(scheme->field), scheme->units, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
    bw_ink_fill(ink, BW_ROLE_DEFENDER);
    bw_path_circle(ink, bw_view_point(view, home), 4.6);
    for (int l = 0; l < scheme->landmark_count; l++)
        put_number(ink, bw_view_point(view, scheme->landmarks[l].at), l + 1);
    bw_ink_unclip(ink);
    bw_draw_border(ink, scheme->units, view, false);
    bw_ink_end(ink);
}

/// How the front is divided.
typedef struct front {
    bool chart;
    bw_view view;
    double list_x, list_y;
    int columns, rows; ///< of the list
    double step;       ///< from one of its columns to the next
    double row;        ///< from one of its lines to the next
} front;

static front divide(const bw_pocket_card *card) {
    const bw_box *in = &card->inside;
    const bw_window window = bw_window_unit(card->scheme);
    const int count = card->scheme->landmark_count;
    const double tall = in->height - head, list = count * row_least;
    const double beside = in->width - list_wide - gap - 2 * BW_BORDER;
    const double above = tall - count * row_most - gap - 2 * BW_BORDER;
    front f = {
        .list_x = in->x, .list_y = in->y + head, .columns = 1, .rows = count, .step = list_wide};
    double wide = 0;
    f.row = bw_min(row_most, tall / count);
    if (list <= tall && beside >= chart_least)
        wide = bw_min(beside, bw_view_width(window, tall - 2 * BW_BORDER));
    else if (above > 0)
        wide = bw_min(in->width - 2 * BW_BORDER, bw_view_width(window, above));
    f.chart = wide >= chart_least;
    if (!f.chart) { // the list takes the card
        f.columns = bw_max(1, bw_min(count, in->width / list_wide));
        f.rows = (count + f.columns - 1) / f.columns;
        f.step = in->width / f.columns;
        f.row = bw_min(row_most, tall / f.rows);
        return f;
    }
    f.view = bw_view_fit(window, in->x + BW_BORDER, in->y + head + BW_BORDER, wide);
    if (list <= tall && beside >= chart_least)
        f.list_x = in->x + in->width - list_wide;
    else
        f.list_y = f.view.box.y + f.view.box.height + BW_BORDER + gap;
    return f;
}

/// A small triangle pointing along `way`, and a distance right of it.
static void put_way(bw_ink *ink, bw_vec way, double x, double y, double distance, bw_units units) {
    const bw_vec middle = bw_v(x + 3, y - BW_CARD_TYPE * BW_CAP_HEIGHT / 2);
    char figure[16];
    bw_text t = bw_text_in(figure, sizeof figure);
    bw_put_fixed(&t, distance / bw_unit_length(units), 1);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_CARD_TYPE, BW_RIGHT_ALIGN, x + 26, y, figure);
    if (bw_same(figure, "0.0")) return;
    bw_ink_fill(ink, BW_ROLE_TEXT);
    bw_path_head(ink, bw_add(middle, bw_scale(way, 2.5)), way, 5, 5);
}

static void put_list(bw_ink *ink, const bw_pocket_card *card, const front *f,
                     const bw_station *own) {
    const bw_units units = card->scheme->units;
    for (int l = 0; l < card->scheme->landmark_count; l++) {
        const double x = f->list_x + (l / f->rows) * f->step;
        const double y = f->list_y + BW_CARD_TYPE + (l % f->rows) * f->row;
        char digits[8];
        bw_text t = bw_text_in(digits, sizeof digits);
        bw_put_int(&t, l + 1);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_CARD_TYPE, BW_RIGHT_ALIGN, x + 11, y, digits);
        put_bold(ink, BW_ROLE_TEXT, BW_CARD_TYPE, x + 15, y, 40, bw_duty_name(own[l].duty));
        put_way(ink, bw_v(own[l].at.x < 0 ? -1 : 1, 0), x + 54, y, bw_abs(own[l].at.x), units);
        put_way(ink, bw_v(0, own[l].at.y < 0 ? 1 : -1), x + 83, y, bw_abs(own[l].at.y), units);
    }
}

void bw_card_front(bw_ink *ink, const bw_pocket_card *card) {
    bw_station own[BW_MAX_LANDMARKS];
    const front f = divide(card);
    find_places(card, own);
    put_head(ink, card);
    if (f.chart) put_chart(ink, card, &f.view);
    put_list(ink, card, &f, own);
}

/// The back's pictures: as many columns as make them largest. Returns points per metre.
static double fit_pictures(const bw_pocket_card *card, int *columns) {
    const bw_window window = bw_window_unit(card->scheme);
    const double wide = card->inside.width, tall = card->inside.height - head;
    const int count = card->scheme->landmark_count;
    double best = 0;
    for (int c = 1; c <= count; c++) {
        const int rows = (count + c - 1) / c;
        const double across = (wide / c - 4) / (window.right - window.left);
        const double along = (tall / rows - 4) / (window.top - window.bottom);
        if (bw_min(across, along) <= best) continue;
        best = bw_min(across, along);
        *columns = c;
    }
    return best;
}

/// Field, ball and himself, nothing else: a few points tall.
static void put_picture(bw_ink *ink, const bw_pocket_card *card, int landmark,
                        const bw_station *own, const bw_view *view) {
    const bw_field *field = bw_field_at(card->scheme->field);
    const bw_box *b = &view->box;
    char digits[8];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_int(&t, landmark + 1);
    bw_draw_paper(ink, view);
    bw_ink_clip(ink, b->x, b->y, b->width, b->height);
    bw_ink_fill(ink, BW_ROLE_LAND);
    bw_path_circle(ink, view->origin, field->crease * view->scale);
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.6);
    bw_path_circle(ink, view->origin, field->crease * view->scale);
    bw_path_segment(ink, bw_v(b->x, view->origin.y), bw_v(b->x + b->width, view->origin.y));
    bw_ink_unclip(ink);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_CARD_TYPE, BW_LEFT_ALIGN, b->x + 1.5,
                b->y + b->height - 1.5, digits);
    bw_ink_fill(ink, BW_ROLE_DEFENDER);
    bw_path_circle(ink, bw_view_point(view, own->at), 2.6);
    const bw_vec ball = bw_view_point(view, card->scheme->landmarks[landmark].at);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, ball, 2.6);
    bw_ink_stroke(ink, BW_ROLE_BALL, 1);
    bw_path_circle(ink, ball, 2.1);
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.5);
    bw_path_rect(ink, b->x, b->y, b->width, b->height);
}

void bw_card_back(bw_ink *ink, const bw_pocket_card *card) {
    const bw_window window = bw_window_unit(card->scheme);
    const bw_box *in = &card->inside;
    const int count = card->scheme->landmark_count;
    bw_station own[BW_MAX_LANDMARKS];
    int columns = 1;
    const double scale = fit_pictures(card, &columns);
    const double wide = scale * (window.right - window.left);
    const int rows = (count + columns - 1) / columns;
    find_places(card, own);
    put_head(ink, card);
    bw_ink_begin(ink, BW_TAG_FIGURE, "Where you stand for each ball place");
    for (int l = 0; l < count; l++) {
        const double x = in->x + (l % columns) * in->width / columns;
        const double y = in->y + head + (l / columns) * (in->height - head) / rows;
        const bw_view view = bw_view_fit(window, x + 2, y + 2, wide);
        put_picture(ink, card, l, &own[l], &view);
    }
    bw_ink_end(ink);
}

double bw_card_scale(const bw_pocket_card *card, bool back) {
    int columns;
    if (back) return fit_pictures(card, &columns);
    const front f = divide(card);
    return f.chart ? f.view.scale : 0;
}

bool bw_card_holds(const bw_pocket_card *card) {
    const front f = divide(card);
    return card->inside.width >= list_wide && f.row >= 8.2;
}
