/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `where`: where everyone stands for a ball position.
#include "cli/attackers.h"
#include "cli/load.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/term.h"
#include "core/shape.h"
#include "file/json_stream.h"
#include "scheme/caption.h"

/// A question and its answer.
typedef struct answer {
    const bw_scheme *scheme;
    int stage;
    int landmark; ///< -1 when the ball was given as a place
    bw_vec ball;
    bw_attackers men;
    bw_station station[BW_MAX_SPOTS];
} answer;

/// Metres to the people's unit, four decimals: odd, so that mirror images print as mirror images.
static double shown(const answer *a, double metres) {
    return bw_round_to(bw_in_unit(a->scheme->units, metres), 1e4);
}

static void json_place(bw_json *json, const answer *a, bw_vec at) {
    bw_json_put_number(json, "x", shown(a, at.x));
    bw_json_put_number(json, "y", shown(a, at.y));
}

static void print_json(FILE *out, const answer *a) {
    const bw_stage *stage = &a->scheme->stages[a->stage];
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "stage", stage->defenders);
    bw_json_put_text(&json, "units", bw_unit_short(a->scheme->units));
    bw_json_put_open(&json, "ball", '{');
    json_place(&json, a, a->ball);
    bw_json_close(&json, '}');
    bw_json_put_open(&json, "spots", '[');
    for (int s = 0; s < stage->defenders; s++) {
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "id", stage->spots[s].id);
        json_place(&json, a, a->station[s].at);
        bw_json_put_text(&json, "duty", bw_duty_name(a->station[s].duty));
        if (a->station[s].man >= 0) {
            bw_json_put_number(&json, "man", a->station[s].man + 1);
        }
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

/// Columns a UTF-8 text takes, one a character.
static int columns(const char *text) {
    int n = 0;
    for (; *text; text++)
        n += ((unsigned char)*text & 0xC0) != 0x80;
    return n;
}

static void put_padded(FILE *out, const char *text, int width) {
    fprintf(out, "%s%*s", text, width - columns(text), "");
}

static void say_place(const answer *a, bw_vec at, char *room, size_t size) {
    bw_text text = bw_text_in(room, size);
    bw_say_place(a->scheme->units, at, &text);
}

static void print_text(FILE *out, const answer *a) {
    const bw_stage *stage = &a->scheme->stages[a->stage];
    char place[BW_MAX_SPOTS][64], ball[64], caption[600];
    int name_width = 0, place_width = 0;
    for (int s = 0; s < stage->defenders; s++) {
        say_place(a, a->station[s].at, place[s], sizeof place[s]);
        if (columns(stage->spots[s].name) > name_width) name_width = columns(stage->spots[s].name);
        if (columns(place[s]) > place_width) place_width = columns(place[s]);
    }
    say_place(a, a->ball, ball, sizeof ball);
    bw_text text = bw_text_in(caption, sizeof caption);
    bw_say_unit(a->scheme, a->stage, a->station, a->ball, &text);

    bw_term_set(out, BW_TERM_BOLD);
    fprintf(out, "%s: %d defenders, %s.", a->scheme->name, stage->defenders, stage->shape);
    bw_term_set(out, BW_TERM_PLAIN);
    fprintf(out, " Ball %s.\n\n", ball);
    for (int s = 0; s < stage->defenders; s++) {
        put_padded(out, stage->spots[s].id, 5);
        put_padded(out, stage->spots[s].name, name_width + 2);
        put_padded(out, place[s], place_width + 2);
        fputs(bw_duty_name(a->station[s].duty), out);
        if (a->station[s].man >= 0) fprintf(out, ", attacker %d", a->station[s].man + 1);
        fputc('\n', out);
    }
    fprintf(out, "\n%s\n", caption);
}

static int run(const bw_args *args) {
    static bw_scheme scheme;
    answer a = {.scheme = &scheme};
    int code = bw_load_scheme(args, &scheme);
    if (code != BW_EXIT_OK) return code;
    a.stage = bw_load_stage(args, &scheme, &code);
    if (a.stage < 0) return code;
    code = bw_load_ball(args, &scheme, &a.ball, &a.landmark);
    if (code == BW_EXIT_OK) code = bw_load_attackers(args, &scheme, &a.men);
    if (code != BW_EXIT_OK) return code;

    bw_plan plan;
    bw_plan_build(&scheme, a.stage, &plan);
    bw_where(&plan, a.ball, a.men.at, a.men.count, a.station);

    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json"))
        print_json(out.stream, &a);
    else
        print_text(out.stream, &a);
    return bw_out_close(&out, BW_EXIT_OK);
}

static const bw_option options[] = {
    {.name = "stage",
     .value = "N",
     .names = "stages",
     .help = "How many defenders are in; may be left out when the scheme has one stage"},
    {.name = "ball", .value = "PLACE", .names = "landmarks", .help = "A landmark's id, or x,y"},
    BW_ATTACKER_OPTIONS,
};

const bw_command bw_command_where = {
    .name = "where",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .summary = "say where everyone stands for a ball position",
    .text =
        "Left and right are as a defender sees them who looks out from the goal; \"out\" is "
        "up-field from the goal line, \"behind\" is past it. In x,y the x is to the right and the "
        "y is out, both from the centre of the goal line.\n\n"
        "With --json: {\"stage\": 4, \"units\": \"yd\", \"ball\": {\"x\", \"y\"}, \"spots\": "
        "[{\"id\", \"x\", \"y\", \"duty\"}]}; a spot also has \"man\", counted from 1, when "
        "attackers are "
        "given and he has or shades to one.",
    .examples = "breakwater where mine.json --stage 4 --ball x # ball behind the goal\n"
                "breakwater where mine.json --stage 4 --ball -3,12 --json # ball 3 yd left, 12 yd "
                "out\n"
                "breakwater where mine.json --stage 4 --ball top --set 2-2-2 --men 5 # shaded to "
                "five attackers\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
