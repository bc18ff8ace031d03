/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/load.h"
#include "cli/say.h"
#include "core/field.h"
#include "core/text.h"
#include "file/document.h"
#include <string.h>

void bw_load_units(const bw_args *args, bw_scheme *scheme) {
    const char *unit = bw_option_text(args, "units");
    if (unit) scheme->units = strcmp(unit, "m") == 0 ? BW_METRES : BW_YARDS;
}

int bw_load_scheme(const bw_args *args, bw_scheme *scheme) {
    bw_source source;
    bw_error error;
    const char *path = args->operands[0];
    bw_status status = bw_document_load(path, scheme, &source, &error);
    if (status != BW_OK) return bw_say_refusal(path, &error);
    bw_source_drop(&source);
    bw_load_units(args, scheme);
    return BW_EXIT_OK;
}

int bw_load_stage(const bw_args *args, const bw_scheme *scheme, int *code) {
    bw_asked ask = bw_ask_options(args);
    int stage = -1;
    *code = bw_say_asked(&ask, bw_ask_stage(&ask, scheme, &stage));
    if (stage >= 0 || *code != BW_EXIT_OK) return stage;
    if (scheme->stage_count == 1) return 0;
    char list[64];
    bw_text text = bw_text_in(list, sizeof list);
    bw_put_stages(scheme, &text);
    *code = bw_usage(args->verb, "say which stage: --stage N; this scheme has %s.", list);
    return -1;
}

bool bw_scan_place(const bw_scheme *scheme, const char **text, bw_vec *at) {
    bw_vec p;
    if (!bw_scan_decimal(text, &p.x) || **text != ',') return false;
    ++*text;
    if (!bw_scan_decimal(text, &p.y)) return false;
    *at = bw_scale(p, bw_unit_length(scheme->units));
    return true;
}

static int no_landmark(const bw_scheme *scheme, const char *name) {
    const char *near = bw_nearest_word(name, bw_landmark_id, scheme);
    if (near) {
        bw_say_error("the scheme has no landmark \"%s\"; did you mean \"%s\"?", name, near);
        return BW_EXIT_WRONG;
    }
    char list[BW_MAX_LANDMARKS * (BW_ID_SIZE + 2)];
    bw_text text = bw_text_in(list, sizeof list);
    for (int l = 0; l < scheme->landmark_count; l++) {
        if (l > 0) bw_put(&text, ", ");
        bw_put(&text, scheme->landmarks[l].id);
    }
    bw_say_error("the scheme has no landmark \"%s\"; it has %s, or give a place as x,y.", name,
                 list);
    return BW_EXIT_WRONG;
}

/// Index of the landmark with this id. BW_EXIT_OK, or the code after saying what is wrong.
static int load_landmark(const bw_scheme *scheme, const char *id, int *landmark) {
    *landmark = bw_scheme_landmark(scheme, id);
    return *landmark >= 0 ? BW_EXIT_OK : no_landmark(scheme, id);
}

static int off_field(const bw_scheme *scheme, const char *text) {
    const bw_field *field = bw_field_at(scheme->field);
    const char *unit = bw_unit_short(scheme->units);
    double per = bw_unit_length(scheme->units);
    bw_say_error("the ball at %s %s is off the field: x is from %.1f to %.1f %s and y from %.1f to "
                 "%.1f %s.",
                 text, unit, -field->width / 2 / per, field->width / 2 / per, unit,
                 -field->end_line / per, field->midline / per, unit);
    return BW_EXIT_WRONG;
}

int bw_load_ball(const bw_args *args, const bw_scheme *scheme, bw_vec *ball, int *landmark) {
    const char *text = bw_option_text(args, "ball");
    *landmark = -1;
    if (!text) return bw_usage(args->verb, "say where the ball is: --ball LANDMARK or --ball x,y.");
    if (!strchr(text, ',')) {
        int code = load_landmark(scheme, text, landmark);
        if (code != BW_EXIT_OK) return code;
        *ball = scheme->landmarks[*landmark].at;
        return BW_EXIT_OK;
    }
    const char *end = text;
    if (!bw_scan_place(scheme, &end, ball) || *end)
        return bw_usage(args->verb,
                        "--ball is a landmark or two plain numbers such as 3,-4.5, "
                        "not \"%s\".",
                        text);
    return bw_field_contains(bw_field_at(scheme->field), *ball) ? BW_EXIT_OK
                                                                : off_field(scheme, text);
}
