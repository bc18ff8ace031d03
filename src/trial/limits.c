/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/limits.h"

#include "trial/catalogue.h"

bool bw_say_limit(const bw_trial *trial, int index, bw_text *out) {
    static const bw_sentence *const limits[] = {&bw_s_limit_typical, &bw_s_limit_best,
                                                &bw_s_limit_late, &bw_s_limit_left_out,
                                                &bw_s_limit_assumed};
    if (index >= BW_COUNT(limits)) return false;
    const bw_level *level = trial->begun.ground->level;
    bw_put_sentence(out, bw_voice_of(trial->begun.ground->scheme), limits[index],
                    bw_as_count("rollouts", trial->curve.forecast.rollouts),
                    bw_as_count("depth", trial->effort.curve.search.depth),
                    bw_as_word("level", level->name), bw_as_number("top", level->defender.vmax, 1),
                    bw_as_number("reaction", level->react_base, 2),
                    bw_as_number("release", level->release, 2),
                    bw_as_number("pass", level->pass_speed, 0));
    return true;
}
