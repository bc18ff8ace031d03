/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A stage: how it stands, who says what when, and what moves when the ball moves.
#include "draw/book_words.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/metrics.h"
#include "draw/path.h"
#include "report/catalogue.h"
#include "report/packet_parts.h"
#include "scheme/caption.h"
#include "scheme/rotation.h"
#include "trial/words.h"

enum { ROTATIONS = 4 };

/// Widest chart of a rotation, in two columns and in one: two rows to a page.
static const double widest = 252, widest_alone = 176;

static void say_spot(const bw_scheme *scheme, const bw_plan *plan, const bw_spot *spot, int s,
                     bw_text *out) {
    if (spot->call[0]) {
        bw_put(out, "Calls ");
        bw_put_call(out, spot->call);
        bw_put(out, ". ");
    }
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_BALL, "Takes the ball: ");
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_CREASE, "Has the crease, ball at: ");
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_HOLD, "Holds, ball at: ");
}

/// Height of a spot's row.
static double row_height(const bw_paging *p, const bw_spot *spot, const char *words) {
    const double width = p->width - bw_put_disc(NULL, spot->id, 0, 0);
    return 30 + bw_put_column(NULL, BW_ROLE_TEXT, BW_REGULAR, 0, 0, width, words);
}

/// A spot's row: disc, name, word and duties.
static void put_spot(bw_paging *p, const bw_plan *plan, const bw_stage *stage, int s) {
    char words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    say_spot(p->teach->scheme, plan, &stage->spots[s], s, &t);
    const double height = row_height(p, &stage->spots[s], words);
    bw_paging_room(p, height);
    if (p->ink) {
        const double x = p->x, y = p->y;
        bw_ink_stroke(p->ink, BW_ROLE_SOFT_LINE, 0.75);
        bw_path_segment(p->ink, bw_v(x, y), bw_v(x + p->width, y));
        const double indent = bw_put_disc(p->ink, stage->spots[s].id, x, y + 18);
        const double width = p->width - indent;
        bw_line_of(p->ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, x + indent, y + 17, width,
                   stage->spots[s].name);
        bw_put_column(p->ink, BW_ROLE_TEXT, BW_REGULAR, x + indent, y + 20, width, words);
    }
    p->y += height;
}

/// What the spots' rows take, their heading included.
static double rows_height(const bw_paging *p, const bw_plan *plan, const bw_stage *stage) {
    double height = BW_TYPE_SUBHEAD + 8;
    for (int s = 0; s < stage->defenders; s++) {
        char words[BW_PACKET_LINE];
        bw_text t = bw_text_in(words, sizeof words);
        say_spot(p->teach->scheme, plan, &stage->spots[s], s, &t);
        height += row_height(p, &stage->spots[s], words);
    }
    return height;
}

/// The unit at home, `tall` points tall at most.
static void put_homes(bw_paging *p, int stage_index, double tall) {
    const bw_scheme *scheme = p->teach->scheme;
    const bw_window window = bw_window_unit(scheme);
    const double wide = bw_min(p->width, bw_view_width(window, tall));
    const bw_view view = bw_view_fit(window, p->x + (p->width - wide) / 2 + BW_BORDER,
                                     p->y + BW_BORDER, wide - 2 * BW_BORDER);
    bw_paging_scale(p, view.scale);
    if (p->ink) {
        bw_packet_homes(p, stage_index, &view);
    }
    p->y += view.box.height + 2 * BW_BORDER + 12;
}

/// Who says the stage's word, and when.
static void say_call(const bw_scheme *scheme, int stage_index, bw_text *out) {
    static const char *const numbers[] = {"", "", "", "three", "four", "five", "six"};
    const bw_stage *stage = &scheme->stages[stage_index];
    bw_put_sentence(
        out, bw_voice_of(scheme), stage->call[0] ? &bw_s_packet_stage_call : &bw_s_packet_own_words,
        bw_as_word("call", stage->call), bw_as_word("number", numbers[stage->defenders]));
    const size_t before = out->used;
    bw_put(out, " Who completes it: ");
    const size_t lead = out->used;
    bw_say_completes(scheme, stage_index, out);
    if (out->used == lead) {
        out->used = before;
        out->data[before] = '\0';
    } else {
        bw_put(out, ".");
    }
}

void bw_packet_stage(bw_paging *p, int stage_index) {
    const bw_scheme *scheme = p->teach->scheme;
    const bw_stage *stage = &scheme->stages[stage_index];
    char title[3 * BW_NAME_SIZE], words[BW_PACKET_LINE];
    bw_text t = bw_text_in(title, sizeof title);
    bw_say_stage(stage, &t);
    if (stage->call[0]) {
        bw_put(&t, ": ");
        bw_put_call(&t, stage->call);
    }
    bw_paging_page(p, BW_KEY_DEFENDER | BW_KEY_KEEPER, title, false);
    bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, title);
    t = bw_text_in(words, sizeof words);
    say_call(scheme, stage_index, &t);
    bw_paging_text(p, BW_ROLE_TEXT, 8, words);
    bw_plan plan;
    bw_plan_build(scheme, stage_index, &plan);
    const double room = p->bottom - p->y - rows_height(p, &plan, stage) - 26;
    put_homes(p, stage_index, bw_clamp(room, 160, 250));
    bw_paging_heading(p, BW_TAG_H2, BW_TYPE_SUBHEAD, "Who says what, and does what");
    for (int s = 0; s < stage->defenders; s++)
        put_spot(p, &plan, stage, s);
}

/// A run with the names of the weak rotation that it is, or NULL.
typedef struct named_run {
    bw_run_chart chart;
    const bw_weak *weak;
} named_run;

/// Rotations to show: the weakest, then passes between neighbouring places, one of each mirror pair.
static int choose_rotations(const bw_teach *teach, int stage, named_run *runs) {
    const bw_scheme *scheme = teach->scheme;
    int count = 0;
    for (int i = 0; i < teach->weak->count && count < ROTATIONS; i++) {
        const bw_weak *weak = &teach->weak->weak[i];
        if (weak->stage == stage)
            runs[count++] = (named_run){{scheme, stage, weak->from, weak->to}, weak};
    }
    bw_rotations rotations;
    bw_rotations_of(scheme, &rotations);
    for (int b = 0; b < scheme->landmark_count; b++) {
        for (int a = 0; a < b && count < ROTATIONS; a++) {
            const bw_vec from = scheme->landmarks[a].at, to = scheme->landmarks[b].at;
            if (!rotations.rotation[a][b] || from.x + to.x < 0) continue;
            bool known = false;
            for (int k = 0; k < count; k++)
                known |=
                    bw_distance(runs[k].chart.from, from) + bw_distance(runs[k].chart.to, to) == 0;
            if (!known) runs[count++] = (named_run){{scheme, stage, from, to}, NULL};
        }
    }
    return count;
}

/// "Top centre to left wing", in the words that the page of what to rehearse first has for it.
static void say_title(const named_run *named, bw_text *head) {
    const bw_run_chart *run = &named->chart;
    if (named->weak) {
        bw_say_weak(named->weak, head);
        return;
    }
    char name[2 * BW_NAME_SIZE];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_ball(run->scheme, run->from, &t);
    bw_say_first(name, head);
    bw_put(head, " to ");
    bw_say_ball(run->scheme, run->to, head);
}

/// "Farthest to run: low left, 11.2 yd."
static void say_run(const bw_run_chart *run, bw_text *words) {
    const bw_scheme *scheme = run->scheme;
    const bw_stage *stage = &scheme->stages[run->stage];
    bw_plan plan;
    bw_station before[BW_MAX_SPOTS], after[BW_MAX_SPOTS];
    bw_plan_build(scheme, run->stage, &plan);
    bw_where(&plan, run->from, NULL, 0, before);
    bw_where(&plan, run->to, NULL, 0, after);
    int far = 0;
    for (int s = 1; s < plan.spots; s++) {
        if (bw_distance(before[s].at, after[s].at) > bw_distance(before[far].at, after[far].at))
            far = s;
    }
    bw_put(words, "Farthest to run: ");
    bw_put(words, stage->spots[far].name);
    bw_put(words, ", ");
    bw_say_length(scheme->units, bw_distance(before[far].at, after[far].at), words);
    bw_put(words, ".");
}

/// One rotation in a column, its chart `wide`; with ink NULL only measured.
static double put_rotation(bw_ink *ink, const named_run *run, double x, double y, double width,
                           double wide) {
    char title[5 * BW_NAME_SIZE], words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    say_run(&run->chart, &t);
    bw_text head = bw_text_in(title, sizeof title);
    say_title(run, &head);
    double at = y + bw_put_column(ink, BW_ROLE_TEXT, BW_BOLD, x, y, width, title) + 5;
    if (ink) bw_ink_begin(ink, BW_TAG_FIGURE, title);
    at += bw_packet_run(ink, &run->chart, x, at, wide) + 3;
    if (ink) bw_ink_end(ink);
    return at - y + bw_put_column(ink, BW_ROLE_TEXT, BW_REGULAR, x, at, width, words);
}

void bw_packet_rotations(bw_paging *p, int stage_index) {
    const bw_scheme *scheme = p->teach->scheme;
    const bw_stage *stage = &scheme->stages[stage_index];
    if (stage->match_up) return; // there everyone goes where his man goes
    named_run runs[ROTATIONS];
    char title[3 * BW_NAME_SIZE];
    const int count = choose_rotations(p->teach, stage_index, runs);
    if (count == 0) return;
    bw_text t = bw_text_in(title, sizeof title);
    bw_say_stage(stage, &t);
    bw_put(&t, ": when the ball moves");
    bw_paging_page(p, bw_packet_run_keys(stage), title, false);
    bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, title);
    bw_paging_text(
        p, BW_ROLE_TEXT, 8,
        "Everyone moves together, while the ball is in the air. The rings show where you "
        "were.");
    double width;
    const int columns = bw_packet_columns(p, &width);
    const double wide = bw_min(width, columns > 1 ? widest : widest_alone);
    for (int i = 0; i < count; i += columns) {
        double height = 0;
        for (int c = 0; c < columns && i + c < count; c++)
            height = bw_max(height, put_rotation(NULL, &runs[i + c], 0, 0, width, wide));
        bw_paging_room(p, height);
        for (int c = 0; c < columns && i + c < count && p->ink; c++)
            put_rotation(p->ink, &runs[i + c], p->x + c * (width + BW_PACKET_GUTTER), p->y, width,
                         wide);
        bw_paging_scale(p, bw_packet_scale(scheme, wide));
        p->y += height + 12;
    }
}
