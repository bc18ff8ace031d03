/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `rehearse`: the practice script and the practice plan.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/say.h"
#include "cli/trials.h"
#include "report/rehearsal.h"
#include <stdlib.h>
#include <string.h>

enum { MINUTES_MOST = 180, JERSEY_MOST = 99 };

typedef struct job {
    bw_scheme scheme;
    bw_rehearsal rehearsal;
    bw_paper paper;
    bw_weak_list weak;
} job;

/// What was asked about the practice itself.
typedef struct wish {
    int players, minutes, goals;
} wish;

static bw_status draw_page(const void *self, int number, bw_ink *ink) {
    const job *j = self;
    return bw_rehearsal_page(&j->rehearsal, number, j->paper, ink);
}

/// Jersey numbers "4,7,12" into the rehearsal. False when they are none or two are the same.
static bool scan_numbers(const char *text, bw_rehearsal *r) {
    r->numbered = 0;
    for (const char *at = text;; at++) {
        char *end;
        while (*at == ' ')
            at++;
        if (*at < '0' || *at > '9') return false;
        const long number = strtol(at, &end, 10);
        if (end - at > 2 || number > JERSEY_MOST || r->numbered == BW_PRACTICE_PLAYERS)
            return false;
        for (int i = 0; i < r->numbered; i++) {
            if (r->numbers[i] == number) return false;
        }
        r->numbers[r->numbered++] = (int)number;
        for (at = end; *at == ' ';)
            at++;
        if (*at == '\0') return true;
        if (*at != ',') return false;
    }
}

static int load_wish(const bw_args *args, bw_rehearsal *r, wish *w) {
    *w = (wish){.players = 12, .minutes = 30, .goals = 1};
    const char *numbers = bw_option_text(args, "numbers");
    if (numbers) {
        if (!scan_numbers(numbers, r))
            return bw_usage(args->verb,
                            "--numbers is up to %d different jersey numbers from 0 to "
                            "%d, such as \"4,7,12\".",
                            BW_PRACTICE_PLAYERS, JERSEY_MOST);
        w->players = r->numbered;
        if (bw_option_given(args, "players"))
            return bw_usage(args->verb, "--players and --numbers both say how many there are.");
        if (r->numbered < 4)
            return bw_usage(args->verb, "--numbers: a practice needs 4 players at least.");
    }
    if (!bw_option_int(args, "players", 4, BW_PRACTICE_PLAYERS, &w->players) ||
        !bw_option_int(args, "minutes", 1, MINUTES_MOST, &w->minutes) ||
        !bw_option_int(args, "goals", 1, BW_PRACTICE_GOALS, &w->goals))
        return BW_EXIT_USAGE;
    return BW_EXIT_OK;
}

/// The stages asked for: one, or all that do not match up man to man.
static int load_stages(const bw_args *args, job *j) {
    int code = BW_EXIT_OK;
    if (bw_option_given(args, "stage")) {
        const int stage = bw_load_stage(args, &j->scheme, &code);
        if (stage < 0) return code;
        j->rehearsal.stages[j->rehearsal.stage_count++].script.stage = stage;
        return BW_EXIT_OK;
    }
    for (int i = 0; i < j->scheme.stage_count; i++) {
        if (!j->scheme.stages[i].match_up)
            j->rehearsal.stages[j->rehearsal.stage_count++].script.stage = i;
    }
    if (j->rehearsal.stage_count > 0) return BW_EXIT_OK;
    bw_say_error("every stage of the scheme matches up man to man; name one with --stage.");
    return BW_EXIT_WRONG;
}

static int build_stage(job *j, bw_rehearsal_stage *stage, const wish *w, bool plain, void *memory) {
    char room[200];
    bw_text why = bw_text_in(room, sizeof room);
    const int index = stage->script.stage;
    const bw_status status = bw_script_build(&j->scheme, index, plain ? NULL : &j->weak, memory,
                                             bw_script_size(), &stage->script, &why);
    if (status != BW_OK) {
        bw_say_error("%s.", room);
        return BW_EXIT_WRONG;
    }
    stage->def = (bw_practice_def){.players = w->players,
                                   .spots = j->scheme.stages[index].defenders,
                                   .goals = w->goals,
                                   .minutes = w->minutes};
    for (int p = 0; p < BW_PACE_COUNT; p++)
        stage->def.lap_s[p] = stage->script.seconds[p];
    return bw_exit_code(bw_practice_plan(&stage->def, &stage->plan));
}

static int print(const bw_args *args, const job *j) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_rehearsal_json(out.stream, &j->rehearsal);
    } else {
        static char room[BW_REHEARSAL_BYTES];
        bw_text text = bw_text_in(room, sizeof room);
        bw_rehearsal_text(&j->rehearsal, &text);
        fputs(room, out.stream);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

/// What the pages hold, for who has not opened them yet.
static void say_counts(const bw_rehearsal *r) {
    for (int i = 0; i < r->stage_count; i++) {
        const bw_script *script = &r->stages[i].script;
        bw_say("Script %s: %d passes through %d rotations; proven bound %d passes.",
               r->scheme->stages[script->stage].shape, script->stop_count, script->rotations,
               script->bound);
    }
}

static int run_job(const bw_args *args, job *j, void *memory) {
    wish w;
    int code = load_wish(args, &j->rehearsal, &w);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &j->scheme);
    if (code == BW_EXIT_OK) code = load_stages(args, j);
    const bool plain = bw_option_given(args, "plain");
    const int stage = j->rehearsal.stage_count == 1 ? j->rehearsal.stages[0].script.stage : -1;
    if (code == BW_EXIT_OK && !plain) code = bw_find_weak(&j->scheme, stage, 1, &j->weak);
    j->rehearsal.scheme = &j->scheme;
    for (int i = 0; i < j->rehearsal.stage_count && code == BW_EXIT_OK; i++)
        code = build_stage(j, &j->rehearsal.stages[i], &w, plain, memory);
    if (code != BW_EXIT_OK) return code;
    if (!bw_wants_pages(args)) return print(args, j);
    say_counts(&j->rehearsal);
    char title[BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, j->scheme.name);
    bw_put(&t, ": what to rehearse");
    j->paper = bw_option_paper(args);
    const bw_pages pages = {bw_rehearsal_pages(&j->rehearsal), title, draw_page, j};
    return bw_paint_pages(args, &pages);
}

static int run(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    void *memory = malloc(bw_script_size());
    int code = BW_EXIT_LIMIT;
    if (j && memory)
        code = run_job(args, j, memory);
    else
        bw_say_no_memory();
    free(memory);
    free(j);
    return code;
}

static const bw_option options[] = {
    {.name = "stage", .value = "N", .names = "stages", .help = "Only the stage with N defenders"},
    {.name = "players",
     .value = "N",
     .help = "Field players at practice, 4 to 40; 12 when not given"},
    {.name = "minutes", .value = "N", .help = "Time for one stage, 1 to 180; 30 when not given"},
    {.name = "goals",
     .value = "N",
     .help = "Goals, or areas with marks for one, 1 to 4; 1 when not given"},
    {.name = "numbers",
     .value = "LIST",
     .help = "The players by jersey number, such as \"4,7,12\""},
    {.name = "plain", .help = "Every rotation once, without testing which are weak"},
    BW_PAGE_OPTIONS,
};

const bw_command bw_command_rehearse = {
    .name = "rehearse",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .of_players = true,
    .summary = "write the practice script and the practice plan",
    .text =
        "For each stage (but those that match up man to man) the shortest closed script of passes "
        "that "
        "goes through every rotation, the weak ones two or three times: which those are is what "
        "two quick breaks of each stage tell, as for teach. No closed script is shorter, and the "
        "script says whether that is proven. For each "
        "pass: who takes the ball and what he calls, who has the crease, who has the longest "
        "way.\n\n"
        "The plan divides the players over the rounds so that none has two turns more than "
        "another, "
        "says who stands where, who feeds and who waits, and what fits into the time. It ends with "
        "a "
        "game in which one rule is changed, and with the cautions every practice needs.\n\n"
        "An output file ending in .pdf, .svg or .png gets it as pages.\n\n"
        "With --json: {\"units\", \"stages\": [{\"defenders\", \"shape\", \"script\": {\"passes\", "
        "\"bound\", \"proven\", \"rotations\", \"wanted\", \"start\", \"seconds\": {\"walk\", "
        "\"half\", "
        "\"full\"}, \"weakest\": [{\"from\", \"to\"}], \"stops\": [{\"from\", \"to\", \"weak\", "
        "\"again\", \"link\", \"ball\", \"call\", \"crease\", \"farthest\", \"seconds\"}]}, "
        "\"plan\": "
        "{\"players\", \"goals\", \"minutes\", \"used_s\", \"game_s\", \"need_s\", \"suffices\", "
        "\"fewest_turns\", \"most_turns\", \"rounds\": [{\"pace\", \"at_s\", \"lasts_s\", "
        "\"drink_first\", \"goals\": [{\"spots\", \"feed\"}]}]}, \"game\"}], \"cautions\": "
        "[{\"about\", \"text\", \"source\"}], \"defer\", \"publishers\"}. \"weak\" is a rank from "
        "1, 0 "
        "for the others.",
    .examples = "breakwater rehearse mine.json # every stage, 12 players, 30 minutes\n"
                "breakwater rehearse mine.json --stage 4 --goals 2 -o script.pdf # on paper\n"
                "breakwater rehearse mine.json --numbers 4,7,12,15,21 --minutes 20 # by jersey\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
