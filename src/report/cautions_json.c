/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/cautions_json.h"
#include "report/cautions.h"

void bw_json_cautions(bw_json *json, const bw_scheme *scheme) {
    bw_json_put_open(json, "cautions", '[');
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution c = bw_caution_for(scheme, i);
        bw_json_open(json, '{');
        bw_json_put_text(json, "about", c.id);
        bw_json_put_text(json, "text", c.text);
        bw_json_put_text(json, "source", c.source);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    bw_json_put_text(json, "defer", bw_cautions_defer());
    bw_json_put_text(json, "publishers", bw_cautions_publishers());
}
