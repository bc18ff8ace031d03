/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/break_options.h"
#include "core/level.h"

const char *bw_level_choice(int index) {
    return index < bw_level_count() ? bw_level_at(index)->id : NULL;
}

const bw_level *bw_option_level(const bw_args *args) {
    const char *id = bw_option_text(args, "level");
    return id ? bw_level_find(id) : NULL;
}
