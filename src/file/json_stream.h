/* SPDX-License-Identifier: GPL-3.0-or-later */
/// JSON (core/json.h) written to a stream.
#ifndef BW_FILE_JSON_STREAM_H
#define BW_FILE_JSON_STREAM_H

#include "core/json.h"
#include <stdio.h>

/// What could not be written, the stream itself remembers.
bw_json bw_json_to(FILE *stream);

#endif
