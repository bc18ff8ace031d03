/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `tune`: better spots for one stage, with evidence.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/team_roster.h"
#include "cli/tune_journal.h"
#include "cli/tune_save.h"
#include <stdlib.h>
#include <string.h>

typedef struct job {
    bw_tune_journal journal;
    char path[BW_TUNE_PATH];
    bw_order order;
} job;

static void record(void *self, double value) {
    job *j = self;
    bw_tune_journal_add(&j->journal, value);
}

static int say_interrupted(const bw_args *args, int tried) {
    const char *kept = bw_option_text(args, "resume");
    if (kept)
        bw_say("Interrupted after %d candidates; the same command goes on from %s.", tried, kept);
    else
        bw_say("Interrupted after %d candidates; nothing was written. With --resume FILE the work "
               "is kept.",
               tried);
    return BW_EXIT_INTERRUPTED;
}

static int tell(const bw_args *args, const bw_document *report) {
    const char *sheets = bw_option_text(args, "sheets"), *path = bw_option_text(args, "output");
    // The scheme has standard output when it was sent there.
    FILE *out = path && strcmp(path, "-") == 0 ? stderr : stdout;
    const int code = sheets ? bw_paint_pdf(sheets, &report->pages) : BW_EXIT_OK;
    return code == BW_EXIT_OK ? bw_deliver_words(args, report, out) : code;
}

static int load(const bw_args *args, job *j) {
    bw_order *order = &j->order;
    bw_tuning *def = &order->tune.def;
    int seed = 1;
    // What would fail after minutes of work is refused before it.
    int code = bw_check_pdf(args, "sheets");
    if (code == BW_EXIT_OK) code = bw_out_check(args);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &order->scheme);
    if (code == BW_EXIT_OK) code = bw_load_order(args, bw_ask_tuning, order);
    if (code == BW_EXIT_OK && !bw_option_int(args, "seed", 0, 2000000000, &seed))
        code = BW_EXIT_USAGE;
    def->seed = (uint64_t)seed;
    if (code == BW_EXIT_OK) code = bw_load_squad_legs(args, &order->scheme, def->stage, def->legs);
    if (code == BW_EXIT_OK) code = bw_tune_journal_open(args, def, &j->journal);
    def->record = record;
    def->recorder = j;
    order->paper = bw_option_paper(args);
    return code;
}

static int run_job(const bw_args *args, job *j) {
    char room[200];
    bw_text why = bw_text_in(room, sizeof room);
    bw_document report;
    int code = load(args, j);
    if (code != BW_EXIT_OK) return code;
    j->order.watch = bw_progress_begin("Trying shapes");
    j->order.doing = bw_progress_go_on;
    const bw_status status = bw_product_open(bw_product_find("tune"), &j->order, &report, &why);
    bw_progress_end();
    if (status == BW_LIMIT) return say_interrupted(args, j->order.tune.tuned.tried);
    if (status == BW_NO_ROOM) return bw_say_no_memory();
    if (status != BW_OK) {
        bw_say_error("%s", why.data);
        return BW_EXIT_WRONG;
    }
    j->order.tune.report.path = j->path;
    code = bw_tune_save(args, &j->order.tune.report, j->path);
    if (code == BW_EXIT_OK) code = tell(args, &report);
    bw_document_close(&report);
    return code;
}

static int run(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    if (bw_option_given(args, "team")) bw_out_private();
    const int code = run_job(args, j);
    bw_tune_journal_close(&j->journal);
    free(j);
    return code;
}

static const bw_option options[] = {
    {.name = "stage",
     .value = "N",
     .names = "stages",
     .help = "The stage to tune; four defenders when there is one, else the smallest"},
    {.name = "keep",
     .value = "LIST",
     .help = "What stays: spots (\"LL,TL\"), \"homes\", \"rule\", or numbers of the rule "
             "(\"pickup,shift\")"},
    {.name = "within", .value = "D", .standard = "4", .help = "How far a home may move each way"},
    {.name = "spacing", .value = "D", .standard = "3", .help = "How far apart two homes stay"},
    {.name = "mix",
     .value = "PERCENT",
     .standard = "50",
     .help = "Share of typical play in the aim, the rest is best play, 0 to 100"},
    {.name = "practice",
     .value = "GOALS",
     .standard = "0.2",
     .help = "Pull toward practice: goals in 100 breaks for one step away, 0 to 10"},
    {.name = "tries",
     .value = "N",
     .standard = "600",
     .help = "Candidates looked at, 50 to 100000"},
    {.name = "breaks",
     .value = "N",
     .standard = "24",
     .help = "Breaks it is trained on at most, 4 to 48"},
    {.name = "seed", .value = "N", .standard = "1", .help = "Of the search and of the breaks"},
    {.name = "team",
     .value = "FILE",
     .file = true,
     .help = "Team file: the men of its line-up run with their own legs"},
    {.name = "resume",
     .value = "FILE",
     .file = true,
     .help = "Keep the work in FILE, and go on from it when it was broken off"},
    {.name = "sheets", .value = "FILE", .file = true, .help = "The report as pages: a PDF"},
    {.name = "paper",
     .value = "PAPER",
     .choice = bw_paper_choice,
     .standard = "letter",
     .help = "Paper size of --sheets"},
};

const bw_command bw_command_tune = {
    .name = "tune",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .summary = "suggest better spots for one stage, and show whether they are",
    .text =
        "Turns the homes of a stage and the numbers of its rule, both sides alike, until the "
        "training breaks concede least: half typical play (the forecast), half best play (the "
        "stress test). It is held near common practice by a stated pull, and by what --keep, "
        "--within and --spacing allow. Then both schemes, before and after, play breaks the search "
        "never saw: other attack sets, other ball starts, another level, each with three seeds. A "
        "gain that is within chance is said to be.\n\n"
        "The new scheme goes to a file of its own (the old one's name with -tuned, or --output), "
        "with a note of what changed and why; an old file is never written over. Same seed, same "
        "options: same bytes, on any number of cores.\n\n"
        "Left without pull this model packs everyone close to the goal, more than coaches do: read "
        "the suggestion as a direction to try, a yard at a time.\n\n"
        "With --json: {\"units\", \"defenders\", \"shape\", \"seed\", \"candidates\", "
        "\"training_breaks\", \"file\", \"numbers\": [{\"what\", \"key\", \"spots\", "
        "\"unit\", \"before\", \"after\", \"practice\"}], \"homes\": [...], \"goals_a_break\": "
        "[{\"on\", \"held_out\", \"typical\", "
        "\"best\"}], \"verdict\", \"limits\", \"precision\"}.",
    .examples =
        "breakwater tune mine.json # writes mine-tuned.json\n"
        "breakwater tune mine.json --stage 5 --keep M --within 2 --sheets why.pdf # gently\n"
        "breakwater tune mine.json --resume work.txt # may be broken off and gone on with\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
