/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `rehearse`: the practice script and the practice plan.
#include "cli/load.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/say.h"
#include <stdlib.h>

enum { MINUTES_MOST = 180, JERSEY_MOST = 99 };

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

static int load_wish(const bw_args *args, bw_rehearsal *r, bw_practice_def *w) {
    int minutes = 30;
    *w = (bw_practice_def){.players = 12, .goals = 1};
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
        !bw_option_int(args, "minutes", 1, MINUTES_MOST, &minutes) ||
        !bw_option_int(args, "goals", 1, BW_PRACTICE_GOALS, &w->goals))
        return BW_EXIT_USAGE;
    w->minutes = minutes;
    return BW_EXIT_OK;
}

/// The stages asked for: one, or all that do not match up man to man.
static int load_stages(const bw_args *args, const bw_scheme *scheme, bw_rehearsal *r) {
    int code = BW_EXIT_OK;
    if (bw_option_given(args, "stage")) {
        const int stage = bw_load_stage(args, scheme, &code);
        if (stage < 0) return code;
        r->stages[r->stage_count++].script.stage = stage;
        return BW_EXIT_OK;
    }
    for (int i = 0; i < scheme->stage_count; i++) {
        if (!scheme->stages[i].match_up) r->stages[r->stage_count++].script.stage = i;
    }
    if (r->stage_count > 0) return BW_EXIT_OK;
    bw_say_error("every stage of the scheme matches up man to man; name one with --stage.");
    return BW_EXIT_WRONG;
}

/// What the pages hold, for a reader who has not opened them yet.
static void say_counts(const bw_rehearsal *r) {
    for (int i = 0; i < r->stage_count; i++) {
        const bw_script *script = &r->stages[i].script;
        bw_say("Script %s: %d passes through %d rotations; proven bound %d passes.",
               r->scheme->stages[script->stage].shape, script->stop_count, script->rotations,
               script->bound);
    }
}

static int run_order(const bw_args *args, bw_order *order) {
    bw_document practice;
    int code = load_wish(args, &order->rehearsal, &order->practice);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &order->scheme);
    if (code == BW_EXIT_OK) code = load_stages(args, &order->scheme, &order->rehearsal);
    if (code != BW_EXIT_OK) return code;
    order->plain = bw_option_given(args, "plain");
    order->teach.seed = 1; // the list is that of teach
    order->paper = bw_option_paper(args);
    code = bw_make_product("rehearsal", NULL, "Testing breaks", order, &practice);
    if (code != BW_EXIT_OK) return code;
    if (bw_wants_pages(args)) say_counts(&order->rehearsal);
    return bw_deliver(args, &practice);
}

static int run(const bw_args *args) {
    return bw_with_order(args, run_order);
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
