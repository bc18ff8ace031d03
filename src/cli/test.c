/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `test`: what a break is worth, and what beats the scheme.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/say.h"
#include "cli/team_level.h"
#include "cli/trials.h"
#include "report/pages.h"
#include "report/test_json.h"
#include "report/test_set.h"
#include <stdlib.h>
#include <string.h>

/// Everything one report needs, in one block.
typedef struct job {
    bw_scheme scheme;
    bw_ground ground;
    bw_battery battery;
    bw_report report;
    bw_paper paper;
    bw_trial trials[BW_TEST_MAX];
} job;

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const job *j = self;
    return bw_report_page(&j->report, number, j->paper, ink);
}

static int print(const bw_args *args, const job *j) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_test_json(out.stream, &j->report);
    } else {
        static char room[BW_REPORT_BYTES];
        bw_text text = bw_text_in(room, sizeof room);
        bw_report_text(&j->report, &text);
        fputs(room, out.stream);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

/// The level, with the figures of --team when given.
static int load_own_level(const bw_args *args, const bw_scheme *scheme, bw_break_request *request) {
    const bw_level *level = request->level ? request->level : bw_level_at(scheme->level);
    const int code = bw_load_team_level(args, &level);
    request->level = level;
    return code;
}

static int run_job(const bw_args *args, job *j) {
    bw_break_request request;
    int code = bw_out_check(args);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &j->scheme);
    if (code == BW_EXIT_OK) code = bw_load_break(args, &j->scheme, &request);
    if (code == BW_EXIT_OK) code = load_own_level(args, &j->scheme, &request);
    if (code == BW_EXIT_OK) code = bw_load_ground(&j->scheme, &request, &j->ground);
    if (code != BW_EXIT_OK) return code;

    j->battery = (bw_battery){.ground = &j->ground, .trials = j->trials};
    j->battery.count = bw_test_set(&j->scheme, &request.def, request.seconds,
                                   bw_option_given(args, "quick") || request.chosen, j->trials);
    code = bw_run_trials(&j->battery);
    if (code != BW_EXIT_OK) return code;

    j->report = (bw_report){.ground = &j->ground,
                            .headline = j->trials,
                            .standard = j->trials,
                            .standard_count = j->battery.count > 1 ? j->battery.count : 0};
    if (!bw_wants_pages(args)) return print(args, j);
    char title[BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, j->scheme.name);
    bw_put(&t, ": what a break is worth");
    j->paper = bw_option_paper(args);
    const bw_pages pages = {bw_report_pages(&j->report), title, draw_page, j};
    return bw_paint_pages(args, &pages);
}

static int run(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    const int code = run_job(args, j);
    free(j);
    return code;
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
