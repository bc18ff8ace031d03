/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/ask.h"
#include "core/attack_set.h"
#include "core/text.h"
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/// "did you mean" goes no farther than this many slips.
enum { SLIPS = 3 };

const char *bw_nearest_word(const char *word, const char *(*candidate)(const void *, int),
                            const void *self) {
    const char *best = NULL;
    int best_distance = SLIPS + 1;
    for (int i = 0;; i++) {
        const char *name = candidate(self, i);
        if (!name) return best;
        if (strcasecmp(word, name) == 0) return name;
        int distance = bw_edit_distance(word, name, SLIPS);
        // A slip in every second letter is another word.
        if (distance * 2 > (int)strlen(name) || distance >= best_distance) continue;
        best = name;
        best_distance = distance;
    }
}

bool bw_scan_decimal(const char **text, double *out) {
    static const char digits[] = "0123456789";
    const char *start = *text, *p = start;
    if (*p == '-' || *p == '+') p++;
    size_t whole = strspn(p, digits), places = 0;
    p += whole;
    if (*p == '.') {
        places = strspn(p + 1, digits);
        p += 1 + places;
    }
    // More digits before the point than a field needs are slips of the keyboard; behind it other
    // programs write as many as a double has.
    if (whole + places == 0 || whole > 6 || places > 20) return false;
    char copy[32];
    size_t length = (size_t)(p - start);
    memcpy(copy, start, length);
    copy[length] = '\0';
    *out = strtod(copy, NULL);
    *text = p;
    return true;
}

bool bw_scan_whole(const char *text, int low, int high, int *out) {
    double value;
    if (!bw_scan_decimal(&text, &value) || *text != '\0' || value < low || value > high ||
        value != (int)value)
        return false;
    *out = (int)value;
    return true;
}

bw_status bw_ask_refuse(bw_asked *ask, bw_status status, const char *format, ...) {
    va_list list;
    va_start(list, format);
    vsnprintf(ask->why, sizeof ask->why, format, list);
    va_end(list);
    return status;
}

bw_status bw_ask_whole(bw_asked *ask, const char *name, int low, int high, int *out) {
    const char *text = ask->value(ask->self, name);
    if (!text || bw_scan_whole(text, low, high, out)) return BW_OK;
    return bw_ask_refuse(ask, BW_BAD_INPUT, "%s%s is a whole number from %d to %d, not \"%s\"",
                         ask->prefix, name, low, high, text);
}

void bw_put_stages(const bw_scheme *scheme, bw_text *out) {
    for (int i = 0; i < scheme->stage_count; i++) {
        if (i > 0) bw_put(out, i == scheme->stage_count - 1 ? " and " : ", ");
        bw_put_int(out, scheme->stages[i].defenders);
    }
}

bw_status bw_ask_stage(bw_asked *ask, const bw_scheme *scheme, int *stage) {
    int defenders = 0;
    const bw_status status = bw_ask_whole(ask, "stage", 3, BW_MAX_SPOTS, &defenders);
    if (status != BW_OK || defenders == 0) return status;
    const int found = bw_scheme_stage(scheme, defenders);
    if (found >= 0) {
        *stage = found;
        return BW_OK;
    }
    char list[64];
    bw_text text = bw_text_in(list, sizeof list);
    bw_put_stages(scheme, &text);
    return bw_ask_refuse(ask, BW_NOT_FOUND, "the scheme has no stage with %d defenders; it has %s",
                         defenders, list);
}

const char *bw_set_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    if (index < bw_attack_set_count()) return bw_attack_set_at(index)->id;
    index -= bw_attack_set_count();
    return index < scheme->set_count ? scheme->sets[index].id : NULL;
}

const char *bw_landmark_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    return index < scheme->landmark_count ? scheme->landmarks[index].id : NULL;
}
