/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "file/json_stream.h"

static void put(void *to, const char *s, size_t n) {
    fwrite(s, 1, n, to);
}

bw_json bw_json_to(FILE *stream) {
    return (bw_json){.put = put, .to = stream};
}
