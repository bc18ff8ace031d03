/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `draw`: the picture book, a stage of it, or one chart.
#include "cli/attackers.h"
#include "cli/break_options.h"
#include "cli/draw_chart.h"
#include "cli/draw_film.h"
#include "cli/load.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/say.h"

static bw_status chart_page(const void *self, int number, bw_ink *ink) {
    (void)number;
    bw_chart_sheet(self, ink);
    return (bw_status)ink->status;
}

static int draw_chart(const bw_args *args, const bw_scheme *scheme, int stage, bw_paper paper) {
    bw_chart_request chart = {.scheme = scheme, .stage = stage, .paper = paper};
    bw_attackers men;
    int landmark;
    int code = bw_load_ball(args, scheme, &chart.ball, &landmark);
    if (code == BW_EXIT_OK) code = bw_load_attackers(args, scheme, &men);
    if (code != BW_EXIT_OK) return code;
    chart.attackers = men.at;
    chart.attacker_count = men.count;
    chart.danger = bw_option_given(args, "danger");
    const bw_pages pages = {1, scheme->name, chart_page, &chart};
    return bw_paint_pages(args, &pages);
}

static int draw_answer(const bw_args *args, bw_order *order) {
    bw_document strip;
    int code = bw_load_order(args, bw_ask_break, order);
    if (code != BW_EXIT_OK) return code;
    code = bw_make_product("strip", bw_option_level(args), "Testing breaks", order, &strip);
    return code == BW_EXIT_OK ? bw_deliver(args, &strip) : code;
}

static int draw_book(const bw_args *args, bw_order *order, int stage) {
    bw_document book;
    order->book_stage = stage;
    const int code = bw_make_product("book", NULL, "Drawing the book", order, &book);
    return code == BW_EXIT_OK ? bw_deliver(args, &book) : code;
}

/// The first of these options that was given, or NULL.
static const char *given_of(const bw_args *args, const char *const *names, int count) {
    for (int i = 0; i < count; i++) {
        if (bw_option_given(args, names[i])) return names[i];
    }
    return NULL;
}

static const char *const chart_options[] = {"stage", "ball", "attackers", "men", "danger"};
static const char *const play_options[] = {"offence", "defence", "start", "late",
                                           "seconds", "level",   "seed"};
static const char *const page_options[] = {"paper", "format", "dpi", "answer", "set"};

static bool refuse(const bw_args *args, const char *stray, const char *what) {
    if (!stray) return true;
    bw_usage(args->verb, what, stray);
    return false;
}

/// Whether the options go together: those of a film, of a break with --answer, of a chart without.
static bool options_agree(const bw_args *args) {
    const char *chart = given_of(args, chart_options, BW_COUNT(chart_options));
    const char *play = given_of(args, play_options, BW_COUNT(play_options));
    const char *page = given_of(args, page_options, BW_COUNT(page_options));
    if (bw_option_given(args, "film"))
        return refuse(args, chart ? chart : play ? play : page, "--%s does not go with --film.");
    if (bw_option_given(args, "width")) return refuse(args, "width", "--%s goes with --film.");
    if (!bw_option_given(args, "set")) {
        const char *men = bw_option_given(args, "men") ? "men" : NULL;
        if (!refuse(args, men, "--%s goes with --set.")) return false;
    }
    return bw_option_given(args, "answer") ? refuse(args, chart, "--%s does not go with --answer.")
                                           : refuse(args, play, "--%s goes with --answer.");
}

static int run_order(const bw_args *args, bw_order *order) {
    const bw_scheme *scheme = &order->scheme;
    int code = bw_load_scheme(args, &order->scheme);
    if (code != BW_EXIT_OK) return code;
    if (bw_option_given(args, "film")) return bw_draw_film(args, scheme);
    order->paper = bw_option_paper(args);
    if (bw_option_given(args, "answer")) return draw_answer(args, order);
    bool ball = bw_option_given(args, "ball");
    int stage = -1;
    if (ball || bw_option_given(args, "stage")) {
        stage = bw_load_stage(args, scheme, &code);
        if (stage < 0) return code;
    }
    if (!ball && (bw_option_given(args, "attackers") || bw_option_given(args, "set") ||
                  bw_option_given(args, "danger")))
        return bw_usage(args->verb, "--attackers, --set and --danger go with --ball.");
    return ball ? draw_chart(args, scheme, stage, order->paper) : draw_book(args, order, stage);
}

static int run(const bw_args *args) {
    if (!options_agree(args)) return BW_EXIT_USAGE;
    return bw_with_order(args, run_order);
}

static const bw_option options[] = {
    {.name = "stage", .value = "N", .names = "stages", .help = "Only the stage with N defenders"},
    {.name = "ball",
     .value = "PLACE",
     .names = "landmarks",
     .help = "One chart, with the ball at a landmark or x,y"},
    BW_ATTACKER_OPTIONS,
    {.name = "danger", .help = "On one chart: tint where a free shot is dangerous at this level"},
    {.name = "answer", .help = "The offence's best answer to a break, moment by moment"},
    BW_BREAK_OPTIONS,
    {.name = "film",
     .value = "LESSON",
     .names = "lessons",
     .help = "A lesson at true speed, as a film"},
    {.name = "width", .value = "N", .standard = "1280", .help = "Width of a film in pixels"},
    BW_PAGE_OPTIONS,
};

const bw_command bw_command_draw = {
    .name = "draw",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .summary = "draw the picture book, a stage of it, one chart, or what beats it",
    .text =
        "Without --stage and --ball it is the whole book: a cover with the ball places and the "
        "calls, the shapes at a glance, then for each stage who does what and a chart for "
        "every landmark, and the lessons. All to scale, with a scale bar and a key.\n\n"
        "The ending of the file tells its format. A book as SVG or PNG is one file a page, "
        "numbered before the ending. Files are written whole or not at all; one that is there "
        "already is replaced.\n\n"
        "With --answer it is a film strip: the break that --offence, --defence, --set, --start "
        "and --late choose, as in test, played as well as it can be, with everyone's path to "
        "scale from picture to picture.\n\n"
        "With --film a lesson is played at true speed: the ball flies and the men run, react and "
        "are late by the model of the scheme's level. The ending of the file chooses .mp4, "
        ".webm or .gif (no wider than 640 pixels); .vtt writes its captions as a WebVTT file.\n\n"
        "With --json: {\"pages\",\"files\":[...]}, of a film {\"seconds\",\"files\":[...]}.",
    .examples = "breakwater draw mine.json -o book.pdf # the book\n"
                "breakwater draw mine.json --stage 4 --paper a4 -o four.pdf # one stage of it\n"
                "breakwater draw mine.json --stage 4 --ball x --theme mono -o x.png # one chart\n"
                "breakwater draw mine.json --answer --set 1-4-1 -o strip.pdf # what beats it\n"
                "breakwater draw mine.json --film round -o round.mp4 # a lesson, moving\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
