/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `review`: what happened, with intervals, beside what the model said.
#include "report/review.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/review_forecast.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/revisions.h"
#include "team/settings.h"
#include <stdlib.h>
#include <string.h>

/// Everything one review needs.
typedef struct job {
    bw_team *team;
    char name[BW_SETTING_SIZE];
    bw_entry *entries;
    int entry_count;
    double *forecast; ///< one a break
    bw_game *games;
    bw_revision *revisions;
    bw_season_name *game_names, *revision_names;
    int game_count, revision_count;
    bw_scheme scheme; ///< the newest, for its field and level
    bool has_scheme;
    bw_season season;
    bw_review review;
    bw_paper paper;
    char about[BW_SETTING_SIZE];
} job;

static int no_memory(void) {
    bw_say_error("there is not enough memory for the review.");
    return BW_EXIT_LIMIT;
}

static bw_status load_all(job *j, bw_error *error) {
    bw_status status = bw_team_setting(j->team, BW_SETTING_TEAM, j->name, sizeof j->name, error);
    if (status == BW_OK)
        status = bw_team_setting(j->team, BW_SETTING_ABOUT, j->about, sizeof j->about, error);
    if (status == BW_OK)
        status = bw_team_entries(j->team, NULL, &j->entries, &j->entry_count, error);
    if (status == BW_OK) status = bw_team_games(j->team, &j->games, &j->game_count, error);
    if (status == BW_OK)
        status = bw_team_revisions(j->team, &j->revisions, &j->revision_count, error);
    if (status != BW_OK || j->revision_count == 0) return status;
    status = bw_team_scheme(j->team, 0, &j->scheme, NULL, error);
    j->has_scheme = status == BW_OK;
    return status;
}

static bool name_all(job *j) {
    j->game_names = calloc((size_t)j->game_count + 1, sizeof *j->game_names);
    j->revision_names = calloc((size_t)j->revision_count + 1, sizeof *j->revision_names);
    if (!j->game_names || !j->revision_names) return false;
    for (int i = 0; i < j->game_count; i++) {
        bw_season_name *n = &j->game_names[i];
        n->id = j->games[i].id;
        bw_text t = bw_text_in(n->label, sizeof n->label);
        bw_put(&t, j->games[i].date);
        bw_put(&t, " ");
        bw_put(&t, j->games[i].opponent);
    }
    for (int i = 0; i < j->revision_count; i++) {
        bw_season_name *n = &j->revision_names[i];
        n->id = j->revisions[i].id;
        bw_text t = bw_text_in(n->label, sizeof n->label);
        bw_put(&t, j->revisions[i].scheme);
        bw_put(&t, " ");
        bw_put_int(&t, j->revisions[i].id);
        if (!j->revisions[i].note[0]) continue;
        bw_put(&t, ", ");
        bw_put(&t, j->revisions[i].note);
    }
    return true;
}

/// The two newest revisions that breaks were played under, or those --before and --after name.
static int choose_change(const bw_args *args, job *j) {
    bw_review *r = &j->review;
    int wanted[2] = {0, 0};
    r->before = r->after = -1;
    for (int i = 0; i < j->season.revision_count; i++) {
        if (j->season.revisions[i].breaks == 0) continue;
        r->before = r->after;
        r->after = i;
    }
    static const char *const names[] = {"before", "after"};
    for (int k = 0; k < 2; k++) {
        if (!bw_option_int(args, names[k], 1, 1000000, &wanted[k])) return BW_EXIT_USAGE;
        if (!bw_option_given(args, names[k])) continue;
        int found = -1;
        for (int i = 0; i < j->season.revision_count; i++) {
            if (j->season.revisions[i].key == wanted[k]) found = i;
        }
        if (found < 0) {
            bw_say_error(
                "the team file has no revision %d of a scheme; `breakwater team show` lists them.",
                wanted[k]);
            return BW_EXIT_WRONG;
        }
        *(k == 0 ? &r->before : &r->after) = found;
    }
    return BW_EXIT_OK;
}

static void count(job *j) {
    const bw_season_log log = {.entries = j->entries,
                               .count = j->entry_count,
                               .forecast = j->forecast,
                               .games = j->game_names,
                               .game_count = j->game_count,
                               .revisions = j->revision_names,
                               .revision_count = j->revision_count};
    bw_season_count(&log, &j->season);
}

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const job *j = self;
    return bw_review_page(&j->review, number, j->paper, ink);
}

static bool wants_pages(const bw_args *args) {
    if (bw_option_given(args, "format")) return true;
    const char *path = bw_option_text(args, "output"), *ending = path ? strrchr(path, '.') : NULL;
    for (int i = 0; ending && bw_format_choice(i); i++) {
        if (strcmp(ending + 1, bw_format_choice(i)) == 0) return true;
    }
    return false;
}

static int deliver(const bw_args *args, job *j) {
    if (wants_pages(args)) {
        j->paper = bw_option_paper(args);
        const bw_pages pages = {bw_review_pages(&j->review), "Review of the season's breaks",
                                draw_page, j};
        return bw_paint_pages(args, &pages);
    }
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_review_json(out.stream, &j->review);
    } else {
        static char room[BW_REVIEW_BYTES];
        bw_text text = bw_text_in(room, sizeof room);
        bw_review_text(&j->review, &text);
        fputs(room, out.stream);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

static int review(const bw_args *args, job *j) {
    if (!name_all(j)) return no_memory();
    const bool modelled = !bw_option_given(args, "no-model") && j->has_scheme && j->entry_count > 0;
    if (modelled) {
        j->forecast = calloc((size_t)j->entry_count, sizeof *j->forecast);
        if (!j->forecast) return no_memory();
        const int code = bw_forecast_breaks(j->team, j->entries, j->entry_count, j->forecast);
        if (code != BW_EXIT_OK) return code;
    }
    count(j);
    j->review = (bw_review){.season = &j->season,
                            .entries = j->entries,
                            .entry_count = j->entry_count,
                            .team = j->name,
                            .field = bw_field_at(j->has_scheme ? j->scheme.field : 0),
                            .units = bw_team_units(args),
                            .modelled = modelled,
                            .about = j->about[0] ? j->about : NULL};
    const int code = choose_change(args, j);
    return code == BW_EXIT_OK ? deliver(args, j) : code;
}

static int run_job(const bw_args *args, job *j) {
    int code = bw_open_team(args, BW_TEAM_READ, &j->team);
    if (code != BW_EXIT_OK) return code;
    bw_error error;
    if (load_all(j, &error) != BW_OK) return bw_team_refusal(j->team, args->operands[0], &error);
    code = review(args, j);
    bw_team_close(j->team);
    return code;
}

static int run(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return no_memory();
    const int code = run_job(args, j);
    free(j->entries);
    free(j->forecast);
    free(j->games);
    free(j->revisions);
    free(j->game_names);
    free(j->revision_names);
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
