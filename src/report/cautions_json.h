/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The cautions as JSON: one member of an open object.
#ifndef BW_REPORT_CAUTIONS_JSON_H
#define BW_REPORT_CAUTIONS_JSON_H

#include "core/json.h"
#include "core/scheme.h"

/// "cautions": [{"about", "text", "source"}], then "defer": whose word goes before them, and
/// "publishers": their names in full.
void bw_json_cautions(bw_json *json, const bw_scheme *scheme);

#endif
