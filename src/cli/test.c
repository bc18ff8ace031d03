/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `test`: what a break is worth, and what beats the scheme.
#include "cli/break_options.h"
#include "cli/load.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/team_level.h"

/// Whether something about the break itself was given.
static bool break_chosen(const bw_args *args) {
    static const char *const choosing[] = {"offence", "defence", "set", "start", "late"};
    for (int i = 0; i < BW_COUNT(choosing); i++) {
        if (bw_option_given(args, choosing[i])) return true;
    }
    return false;
}

static int run_order(const bw_args *args, bw_order *order) {
    bw_document report;
    int code = bw_out_check(args);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &order->scheme);
    if (code == BW_EXIT_OK) code = bw_load_order(args, bw_ask_break, order);
    if (code != BW_EXIT_OK) return code;
    // The level, with the figures of --team when given.
    const bw_level *level = bw_option_level(args);
    if (!level) level = bw_level_at(order->scheme.level);
    code = bw_load_team_level(args, &level);
    if (code != BW_EXIT_OK) return code;
    order->alone = bw_option_given(args, "quick") || break_chosen(args);
    order->paper = bw_option_paper(args);
    code = bw_make_product("test", level, "Testing breaks", order, &report);
    return code == BW_EXIT_OK ? bw_deliver(args, &report) : code;
}

static int run(const bw_args *args) {
    return bw_with_order(args, run_order);
}

static const bw_option options[] = {
    {.name = "set",
     .value = "SET",
     .names = "sets",
     .offer = bw_set_choice,
     .help = "Attack set, of the scheme's own or one of these"},
    BW_BREAK_OPTIONS,
    {.name = "team",
     .value = "FILE",
     .file = true,
     .help = "Team file whose own figures move the level (team feedback --apply on)"},
    {.name = "quick", .help = "Only the one break, without the standard set"},
    BW_PAGE_OPTIONS,
};

const bw_command bw_command_test = {
    .name = "test",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .summary = "say what a break is worth, and what beats the scheme",
    .text =
        "For one break: its worth over time, best and typical; the time the scheme buys, the "
        "plateau once numbers are even, and the seconds still missing; the offence's best answer "
        "step by step; who is late, by how much; and the five weakest rotations, which are what to "
        "rehearse. Without an option that chooses a break it is six against four, or for a scheme "
        "without four men six against five or four against three, set 2-2-2, ball up top, with the "
        "scheme's late men; and then the standard set of breaks (each stage "
        "against each attack set from a few starts) as a table, worst first.\n\n"
        "Best is perfect play, a stress test. Typical is how people choose, in simulated breaks: "
        "compare with it and rank with it, it is no scoring rate. All figures are estimates of a "
        "model; the report ends with what it assumes and leaves out.\n\n"
        "Distances of --late are in the people's unit (--units), yards unless the scheme says "
        "otherwise. An output file ending in .pdf, .svg or .png gets the report as pages.\n\n"
        "With --json: {\"units\", \"breaks\": [{\"offence\", \"defence\", \"set\", "
        "\"start\", \"level\", \"seconds\": [1..10], \"best\": [], \"typical\": [], "
        "\"late_s\": [], \"time_bought_s\", \"seconds_missing\", \"answer\": [{\"ply\", "
        "\"who\", \"to\", \"at_s\", \"p\"}], \"weakest\": [{\"from\", \"to\", "
        "\"worth\"}]}]}, and more. Worths are goals in one break; \"who\" is an attacker counted "
        "from 1; \"p\" is the chance that the ball is kept, for the shot that it scores; a weakest "
        "rotation's \"worth\" is what it costs in goals a break; late_s and even_s are -1 for what "
        "does not happen within 10 s. The headline break comes first.",
    .examples = "breakwater test mine.json # the usual break and the standard set\n"
                "breakwater test mine.json --defence 5 --late \"\" # man-down, nobody comes back\n"
                "breakwater test mine.json --set 1-4-1 --start x --late 20,30 # another break\n"
                "breakwater test mine.json -o report.pdf # the same on paper\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
