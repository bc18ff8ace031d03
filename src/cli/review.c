/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `review`: what happened, with intervals, beside what the model said.
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/team_file.h"

/// The revisions that --before and --after name, in place of the two newest played.
static int choose_change(const bw_args *args, bw_review_data *d) {
    static const char *const names[] = {"before", "after"};
    for (int k = 0; k < 2; k++) {
        int wanted = 0, found = -1;
        if (!bw_option_int(args, names[k], 1, 1000000, &wanted)) return BW_EXIT_USAGE;
        if (!bw_option_given(args, names[k])) continue;
        for (int i = 0; i < d->season.revision_count; i++) {
            if (d->season.revisions[i].key == wanted) found = i;
        }
        if (found < 0) {
            bw_say_error(
                "the team file has no revision %d of a scheme; `breakwater team show` lists them.",
                wanted);
            return BW_EXIT_WRONG;
        }
        *(k == 0 ? &d->review.before : &d->review.after) = found;
    }
    return BW_EXIT_OK;
}

static int load(const bw_args *args, bw_order *order, bw_document *review) {
    char room[BW_MESSAGE_SIZE + 40];
    bw_text why = bw_text_in(room, sizeof room);
    int code = bw_out_check(args);
    if (code == BW_EXIT_OK) code = bw_open_team(args, BW_TEAM_READ, &order->team);
    if (code != BW_EXIT_OK) return code;
    order->modelled = !bw_option_given(args, "no-model");
    order->units = bw_team_units(args);
    order->paper = bw_option_paper(args);
    if (order->modelled) order->watch = bw_progress_begin("Playing kinds of break");
    const bw_status status = bw_product_open(bw_product_find("review"), order, review, &why);
    const bool interrupted = order->modelled && bw_progress_end();
    if (status != BW_OK && !interrupted)
        return bw_team_refusal(order->team, args->operands[0], &order->error);
    bw_team_close(order->team);
    if (!interrupted) return BW_EXIT_OK;
    bw_document_close(review);
    return bw_progress_interrupted();
}

static int run_order(const bw_args *args, bw_order *order) {
    bw_document review;
    int code = load(args, order, &review);
    if (code != BW_EXIT_OK) return code;
    code = choose_change(args, &order->review);
    if (code == BW_EXIT_OK) return bw_deliver(args, &review);
    bw_document_close(&review);
    return code;
}

static int run(const bw_args *args) {
    return bw_with_order(args, run_order);
}

static const bw_option options[] = {
    {.name = "before",
     .value = "N",
     .help = "Revision of the scheme to compare from; the one before the newest played"},
    {.name = "after", .value = "N", .help = "Revision to compare with; the newest played"},
    {.name = "no-model", .help = "Only what was seen, without playing the model beside it"},
    BW_PAGE_OPTIONS,
};

const bw_command bw_command_review = {
    .name = "review",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .of_players = true,
    .summary = "say what happened in games, honestly, beside what the model said",
    .text = "From the breaks in a team file: goals against, shots, goals a shot and how breaks "
            "ended; by numbers, by "
            "stage, by where the shot came from (with a chart), by game; before and after a change "
            "of the scheme as a "
            "difference with its interval; who was noted as out of place; and, beside it, what the "
            "model forecast for the "
            "same breaks.\n\n"
            "Counts come first. Under ten cases there is no rate; under thirty it is a rough one; "
            "every rate has its 95 % "
            "interval. A game's small count also leans on the season.\n\n"
            "The model knows a break's numbers and the scheme of its day. Its forecasts are "
            "typical play within ten "
            "seconds, a mean over attack sets and ball starts.\n\n"
            "An output file ending in .pdf, .svg or .png gets it as pages.\n\n"
            "With --json: {\"team\", \"all\", \"by_numbers\", \"by_stage\", \"by_shot_place\", "
            "\"by_game\", "
            "\"by_revision\": [{\"label\", \"breaks\", \"goals\": {\"hits\", \"n\", \"rate\", "
            "\"interval_95\"}, \"shots\", "
            "\"goals_a_shot\", \"outcomes\", \"forecast_goals\"}], \"change\", \"out_of_place\", "
            "\"model\"}; \"rate\" is left "
            "out under ten cases.",
    .examples = "breakwater review terns.team # on the terminal\n"
                "breakwater review terns.team -o review.pdf # on paper\n"
                "breakwater review terns.team --before 1 --after 2 --json # two revisions\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
