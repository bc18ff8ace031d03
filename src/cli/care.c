/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/care.h"
#include "cli/say.h"

const char bw_keep_odd_help[] =
    "Keep what is hardly meant, such as a sprint faster than anybody has run or an opponent whose "
    "name is near another's";

bool bw_keep_odd(const bw_args *args, const bw_odd *odd) {
    if (bw_option_given(args, "keep-odd")) {
        bw_say("Kept as it is: %s.", odd->message);
        return true;
    }
    bw_say_error("%s. Nothing was kept: put it right, or add --keep-odd to keep it as it is.",
                 odd->message);
    return false;
}
