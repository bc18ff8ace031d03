/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team forget, scrub: a player gone for good, and traces of what was deleted.
#include "cli/forget_choice.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "team/forget.h"
#include "team/scrub.h"
#include <stdlib.h>
#include <unistd.h>

/// One forgetting.
typedef struct asked {
    const bw_args *args;
    int jersey;
    bw_places places;
    bool *strike;
    bw_forgotten what;
} asked;

/// A heading and the places that are struck or stay, as text or JSON; `done` is whether he is forgotten.
static int tell(const asked *a, bool done) {
    bw_out out;
    const bool as_json = bw_option_given(a->args, "json");
    if (done && !as_json) return BW_EXIT_OK;
    if (!bw_out_open(a->args, &out)) return BW_EXIT_FILE;
    if (as_json) {
        bw_json json = bw_json_to(out.stream);
        bw_json_open(&json, '{');
        bw_json_put_number(&json, "jersey", a->jersey);
        bw_json_put_bool(&json, "forgotten", done);
        bw_json_put_bool(&json, "name_looked_for", a->places.named);
        if (done) {
            bw_json_put_number(&json, "splits", a->what.splits);
            bw_json_put_number(&json, "quiz_results", a->what.quizzes);
            bw_json_put_number(&json, "breaks", a->what.marks);
            bw_json_put_number(&json, "texts", a->what.texts);
        }
        bw_json_places(&json, &a->places, done ? a->strike : NULL);
        bw_json_close(&json, '}');
        bw_json_end(&json);
    } else {
        for (int i = 0; i < a->places.count; i++)
            bw_place_print(out.stream, &a->places.list[i], i + 1);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

static void say_name(const asked *a) {
    if (a->places.named) return;
    bw_say(
        "The roster has no full name of number %d, so only his number and initials are looked for. "
        "--name \"FIRST LAST\" looks for a name too.",
        a->jersey);
}

static int say_open(const asked *a) {
    const int open = a->places.count - a->places.sure;
    const int code = tell(a, false);
    if (code != BW_EXIT_OK) return code;
    say_name(a);
    bw_say("Nobody is forgotten yet: %d of %d place%s may mean number %d, and only you can tell. "
           "Do it "
           "again with --seen %08x and --strike 1,3 (those go, the others stay) or --leave 2 "
           "(those stay, "
           "the others go), or with --strike all or --leave all.",
           open, a->places.count, a->places.count == 1 ? "" : "s", a->jersey, a->places.seen);
    return BW_EXIT_WRONG;
}

static void say_forgotten(const asked *a) {
    const bw_forgotten *what = &a->what;
    bw_say("Number %d is forgotten: %d sprint%s, %d quiz result%s, his number in %d break%s; "
           "struck in "
           "%d text%s.",
           a->jersey, what->splits, what->splits == 1 ? "" : "s", what->quizzes,
           what->quizzes == 1 ? "" : "s", what->marks, what->marks == 1 ? "" : "s", what->texts,
           what->texts == 1 ? "" : "s");
    if (what->left > 0)
        bw_say("%d place%s as %s, which you left:", what->left,
               what->left == 1 ? " stays" : "s stay", what->left == 1 ? "it was" : "they were");
    for (int i = 0; i < a->places.count; i++) {
        if (!a->strike[i]) bw_place_show(&a->places.list[i], i + 1);
    }
    say_name(a);
    bw_say("Not looked for: nicknames, misspellings, a bare number. Copies, exports and scheme "
           "files made "
           "before still have him.");
}

static int forget(asked *a, bw_team *team, bw_error *error) {
    const bw_forget_how how = {bw_option_text(a->args, "name"), a->strike, a->places.seen,
                               a->places.count};
    if (bw_team_forget(team, a->jersey, &how, &a->what, error) != BW_OK)
        return bw_say_refusal(a->args->operands[0], error);
    say_forgotten(a);
    return tell(a, true);
}

static int decide(asked *a, bw_team *team, bw_error *error) {
    const bw_forget_choice choice = bw_choice_of_options(a->args, &a->places, a->strike);
    if (choice == BW_CHOICE_BAD) return BW_EXIT_USAGE;
    if (choice == BW_CHOICE_MADE) return forget(a, team, error);
    if (bw_option_given(a->args, "json") || !isatty(STDIN_FILENO) || !isatty(STDERR_FILENO))
        return say_open(a);
    say_name(a);
    if (bw_choice_ask(&a->places, a->strike)) return forget(a, team, error);
    bw_say("Stopped: nothing is changed.");
    return BW_EXIT_WRONG;
}

static int list(const asked *a) {
    const int code = tell(a, false);
    say_name(a);
    if (a->places.count > 0)
        bw_say("%d place%s, %d of them sure. To choose among them: --seen %08x with --strike or "
               "--leave.",
               a->places.count, a->places.count == 1 ? "" : "s", a->places.sure, a->places.seen);
    else
        bw_say("No text speaks of number %d.", a->jersey);
    return code;
}

static int look(asked *a, bw_team *team) {
    bw_error error;
    const char *name = bw_option_text(a->args, "name");
    if (bw_team_places(team, a->jersey, name, &a->places, &error) != BW_OK)
        return bw_say_refusal(a->args->operands[0], &error);
    if (bw_option_given(a->args, "list")) return list(a);
    a->strike = calloc((size_t)a->places.count + 1, sizeof *a->strike);
    if (a->strike) return decide(a, team, &error);
    return bw_say_no_memory();
}

int bw_team_forget_player(const bw_args *args) {
    bw_team *team;
    asked a = {.args = args};
    const char *name = bw_option_text(args, "name");
    if (!bw_operand_int(args, 1, "the jersey number", 0, BW_MAX_JERSEY, &a.jersey))
        return BW_EXIT_USAGE;
    if (name && (!bw_text_plain(name) || bw_text_length(name) >= BW_FULL_NAME_SIZE))
        return bw_usage(args->verb, "a name is one line of at most %d bytes.",
                        BW_FULL_NAME_SIZE - 1);
    int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    code = look(&a, team);
    bw_places_drop(&a.places);
    free(a.strike);
    bw_team_close(team);
    return code;
}

int bw_team_scrub_file(const bw_args *args) {
    bw_team *team;
    bw_error error;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_scrub(team, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    return bw_tell_facts(args, &(bw_fact){"file", 0, args->operands[0]}, 1);
}
