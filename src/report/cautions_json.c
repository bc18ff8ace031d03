/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/cautions_json.h"
#include "report/cautions.h"

static void put(bw_json *json, const char *key, const char *text) {
    bw_json_key(json, key);
    bw_json_text(json, text);
}

void bw_json_cautions(bw_json *json, const bw_scheme *scheme) {
    bw_json_key(json, "cautions");
    bw_json_open(json, '[');
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution c = bw_caution_for(scheme, i);
        bw_json_open(json, '{');
        put(json, "about", c.id);
        put(json, "text", c.text);
        put(json, "source", c.source);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    put(json, "defer", bw_cautions_defer());
    put(json, "publishers", bw_cautions_publishers());
}
