/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `review`: what happened, with intervals, beside what the model said.
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "report/review_data.h"
#include <stdlib.h>
#include <string.h>

typedef struct job {
    bw_review_data data;
    bw_paper paper;
} job;

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

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const job *j = self;
    return bw_review_page(&j->data.review, number, j->paper, ink);
}

static int deliver(const bw_args *args, job *j) {
    if (bw_wants_pages(args)) {
        j->paper = bw_option_paper(args);
        const bw_pages pages = {bw_review_pages(&j->data.review), "Review of the season's breaks",
                                draw_page, j};
        return bw_paint_pages(args, &pages);
    }
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_review_json(out.stream, &j->data.review);
    } else {
        static char room[BW_REVIEW_BYTES];
        bw_text text = bw_text_in(room, sizeof room);
        bw_review_text(&j->data.review, &text);
        fputs(room, out.stream);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

static int review(const bw_args *args, job *j) {
    bw_team *team;
    bw_error error;
    int code = bw_out_check(args);
    if (code == BW_EXIT_OK) code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    const bool modelled = !bw_option_given(args, "no-model");
    const bw_watcher watch = modelled ? bw_progress_begin("Playing kinds of break") : BW_UNWATCHED;
    const bw_status status =
        bw_review_load(team, modelled, bw_team_units(args), watch, &j->data, &error);
    const bool interrupted = modelled && bw_progress_end();
    if (status != BW_OK && !interrupted) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    if (interrupted) return bw_progress_interrupted();
    code = choose_change(args, &j->data);
    return code == BW_EXIT_OK ? deliver(args, j) : code;
}

static int run(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    const int code = review(args, j);
    bw_review_drop(&j->data);
    free(j);
    return code;
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
