/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the page calls to log a break.
#include "trial/season.h"
#include "web/export.h"
#include "web/log.h"
#include "web/page.h"

static bw_logging log_now;

static bw_text begin_saying(void) {
    return bw_text_in(log_now.saying, sizeof log_now.saying);
}

/// `length` bytes of the input buffer as a text; cut where it is too long, which is then refused.
static const char *given(int length, char *room, size_t size) {
    bw_text t = bw_text_in(room, size);
    const bw_board *board = bw_page_board();
    if (length > 0 && length <= (int)sizeof board->input)
        bw_put_n(&t, board->input, (size_t)length);
    return t.full ? "" : room;
}

BW_EXPORT(bw_page_log_clear)
void bw_page_log_clear(void) {
    bw_log_clear(&log_now);
}

BW_EXPORT(bw_page_log_set)
void bw_page_log_set(int field, double value) {
    if (field >= BW_LOG_OFFENCE && field <= BW_LOG_SHOT_Y)
        bw_log_set(&log_now, (bw_log_field)field, value);
}

BW_EXPORT(bw_page_log_figure)
double bw_page_log_figure(int field) {
    return field >= BW_LOG_OFFENCE && field <= BW_LOG_SHOT_Y
               ? bw_log_figure(&log_now, (bw_log_field)field)
               : __builtin_nan("");
}

BW_EXPORT(bw_page_log_out)
int bw_page_log_out(int length) {
    char room[BW_ID_SIZE];
    return bw_log_out(&log_now, given(length, room, sizeof room));
}

BW_EXPORT(bw_page_log_note)
int bw_page_log_note(int length) {
    char room[BW_NOTE_SIZE];
    bw_copy(log_now.entry.note, sizeof log_now.entry.note, given(length, room, sizeof room));
    return length == 0 || log_now.entry.note[0] != '\0';
}

BW_EXPORT(bw_page_log_say)
const char *bw_page_log_say(void) {
    bw_text out = begin_saying();
    const bw_entry *e = &log_now.entry;
    bw_put_int(&out, e->offence);
    bw_put_char(&out, 'v');
    bw_put_int(&out, e->defence);
    bw_put(&out, ", ");
    if (bw_outcome_id(e->outcome)) bw_say_entry(e, bw_page_board()->scheme.units, &out);
    return log_now.saying;
}

/// Why it cannot be logged as it stands; "" when it can.
BW_EXPORT(bw_page_log_refused)
const char *bw_page_log_refused(void) {
    bw_entry e = log_now.entry;
    bw_copy(e.client, sizeof e.client, "x"); // the page gives every break its id
    bw_text why = begin_saying();
    bw_entry_check(&e, &why);
    return log_now.saying;
}

/// `what`: bw_log_outcome; "" past the last.
BW_EXPORT(bw_page_log_outcome)
const char *bw_page_log_outcome(int index, int what) {
    const bw_outcome outcome = (bw_outcome)index;
    if (index < 0 || !bw_outcome_id(outcome)) return "";
    if (what == BW_LOG_OUTCOME_ID) return bw_outcome_id(outcome);
    if (what == BW_LOG_OUTCOME_WORDS) return bw_outcome_words(outcome);
    return bw_outcome_shot(outcome) ? "shot" : "";
}

BW_EXPORT(bw_page_log_draw)
void bw_page_log_draw(double width, double height) {
    bw_board *board = bw_page_board();
    if (bw_page_number(width) && bw_page_number(height))
        bw_log_draw(&log_now, &board->scheme, width, height, board->page, sizeof board->page);
}

BW_EXPORT(bw_page_log_shot)
void bw_page_log_shot(double px, double py) {
    if (bw_page_number(px) && bw_page_number(py) && log_now.chart.scale > 0)
        bw_log_shot(&log_now, bw_v(px, py));
}
