/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `teach`: what a coach hands out, into a folder.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/product.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/teach_films.h"
#include "file/document.h"
#include "file/json_stream.h"
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { PATH_SIZE = 4096, MAX_PARTS = 16 };

/// What is handed out, in the table's order, then the films, which are no document. NULL past the last.
static const char *part_choice(int index) {
    for (int i = 0; bw_product_at(i); i++) {
        if (bw_product_at(i)->handed_out && index-- == 0) return bw_product_at(i)->id;
    }
    return index == 0 ? "films" : NULL;
}

/// The name of its file, or folder.
static const char *file_of(const char *part) {
    const bw_product *product = bw_product_find(part);
    return product ? product->file : part;
}

static const char *part_name(const void *self, int index) {
    (void)self;
    return part_choice(index);
}

static int no_part(const bw_args *args, const char *word) {
    const char *near = bw_nearest_word(word, part_name, NULL);
    if (near)
        return bw_usage(args->verb, "--only knows no \"%s\"; did you mean \"%s\"?", word, near);
    char list[256];
    bw_text text = bw_text_in(list, sizeof list);
    for (int i = 0; part_choice(i); i++) {
        if (i > 0) bw_put(&text, part_choice(i + 1) ? ", " : " and ");
        bw_put(&text, part_choice(i));
    }
    return bw_usage(args->verb, "--only knows no \"%s\"; it knows %s, with commas between them.",
                    word, list);
}

/// Which parts --only names; all when it was not given.
static int choose_parts(const bw_args *args, bool *wanted) {
    const char *list = bw_option_text(args, "only");
    for (int i = 0; part_choice(i); i++)
        wanted[i] = list == NULL;
    while (list && *list) {
        const size_t length = strcspn(list, ",");
        char word[64];
        snprintf(word, sizeof word, "%.*s", (int)length, list);
        int found = -1;
        for (int i = 0; part_choice(i); i++) {
            if (strcmp(word, part_choice(i)) == 0) found = i;
        }
        if (found < 0) return no_part(args, word);
        wanted[found] = true;
        list += length + (list[length] == ',');
    }
    return BW_EXIT_OK;
}

/// "85.6x54" in millimetres.
static int load_card(const bw_args *args, bw_teach *teach) {
    const char *text = bw_option_text(args, "card");
    double width, height;
    const bool read = bw_scan_decimal(&text, &width) && *text++ == 'x' &&
                      bw_scan_decimal(&text, &height) && *text == '\0';
    if (!read) return bw_usage(args->verb, "--card takes width and height in mm, as in 85.6x54.");
    teach->card_width = width * 72 / 25.4;
    teach->card_height = height * 72 / 25.4;
    if (width > 0 && width < 1000 && height > 0 && height < 1000) return BW_EXIT_OK;
    return bw_usage(args->verb, "a card is more than 0 and less than 1000 mm each way, not %s.",
                    bw_option_text(args, "card"));
}

/// The spots of all stages, one after another; what several stages have comes up as often.
static const char *spot_id(const void *self, int index) {
    const bw_scheme *scheme = self;
    for (int s = 0; s < scheme->stage_count; index -= scheme->stages[s++].defenders) {
        if (index < scheme->stages[s].defenders) return scheme->stages[s].spots[index].id;
    }
    return NULL;
}

/// A spot some stage has.
static int load_spot(const bw_args *args, const bw_scheme *scheme, const char **spot) {
    *spot = bw_option_text(args, "spot");
    if (!*spot) return BW_EXIT_OK;
    for (int s = 0; s < scheme->stage_count; s++) {
        if (bw_stage_spot(&scheme->stages[s], *spot) >= 0) return BW_EXIT_OK;
    }
    const char *near = bw_nearest_word(*spot, spot_id, scheme);
    if (near)
        bw_say_error("no stage has a spot \"%s\"; did you mean \"%s\"?", *spot, near);
    else
        bw_say_error("no stage has a spot \"%s\"; breakwater where lists them.", *spot);
    return BW_EXIT_WRONG;
}

static bool path_of(const bw_teach_job *job, const char *part, char *room) {
    const int length = snprintf(room, PATH_SIZE, "%s/%s", job->folder, file_of(part));
    return length > 0 && length < PATH_SIZE;
}

static int save_pages(bw_teach_job *job, const bw_document *document, const char *path) {
    char words[400];
    bw_text why = bw_text_in(words, sizeof words);
    const bw_status status = bw_pages_pdf(&document->pages, path, &job->press, job->theme, &why);
    if (status == BW_OK) return BW_EXIT_OK;
    if (atomic_load(bw_stop_flag())) return bw_progress_interrupted();
    bw_say_error("%s", why.used ? why.data : "the page could not be painted.");
    return bw_exit_code(status);
}

static int save_text(const bw_document *document, const char *path) {
    char *memory = malloc(document->room);
    if (!memory) return bw_say_no_memory();
    bw_text text = bw_text_in(memory, document->room);
    bw_error error = {0};
    bw_status status = document->text(document->self, &text);
    if (status == BW_NO_ROOM)
        bw_copy(error.message, sizeof error.message,
                "the hand-out has more in it than there is room for");
    if (status == BW_OK) status = bw_file_save(path, text.data, text.used, &error);
    free(memory);
    if (status == BW_OK) return BW_EXIT_OK;
    error.status = status;
    return bw_say_refusal(path, &error);
}

/// Makes the file, or folder of files, whole at `path`, or nothing. *pages: of paper, 0 for none, -1 when
/// the scheme has nothing to make it of.
static int make(bw_teach_job *job, const char *part, const char *path, int *pages) {
    if (!bw_product_find(part)) return bw_teach_films(job, path, pages);
    char doing[40];
    snprintf(doing, sizeof doing, "Making the %s", part);
    bw_document document;
    int code = bw_make_product(part, NULL, doing, &job->order, &document);
    if (code != BW_EXIT_OK) return code;
    *pages = document.pages.count;
    code = *pages > 0 ? save_pages(job, &document, path) : save_text(&document, path);
    bw_document_close(&document);
    return code;
}

static int make_one(bw_teach_job *job, const char *part, int *pages) {
    char path[PATH_SIZE];
    if (path_of(job, part, path)) return make(job, part, path, pages);
    bw_say_error("the name of the folder is too long.");
    return BW_EXIT_FILE;
}

static void report(const bw_teach_job *job, const bool *wanted, const int *pages) {
    const bool as_json = bw_option_given(job->args, "json");
    bw_json json = bw_json_to(stdout);
    char path[PATH_SIZE];
    if (as_json) {
        bw_json_open(&json, '{');
        bw_json_put_open(&json, "files", '[');
    }
    for (int i = 0; part_choice(i); i++) {
        const char *part = part_choice(i);
        if (!wanted[i] || pages[i] < 0) continue;
        path_of(job, part, path);
        if (pages[i] > 0)
            bw_say("Wrote %s: %d page%s.", path, pages[i], pages[i] == 1 ? "" : "s");
        else
            bw_say("Wrote %s.", path);
        if (!as_json) continue;
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "part", part);
        bw_json_put_text(&json, "file", path);
        bw_json_put_number(&json, "pages", pages[i]);
        bw_json_close(&json, '}');
    }
    if (!as_json) return;
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

static int make_all(bw_teach_job *job, const bool *wanted) {
    int pages[MAX_PARTS] = {0};
    bool made;
    int code = bw_out_folder(job->folder, &made);
    int done = 0;
    for (int i = 0; part_choice(i) && code == BW_EXIT_OK; i++) {
        if (!wanted[i]) continue;
        code = make_one(job, part_choice(i), &pages[i]);
        done += code == BW_EXIT_OK;
    }
    if (code != BW_EXIT_OK && made && done == 0) rmdir(job->folder);
    if (code == BW_EXIT_OK) report(job, wanted, pages);
    return code;
}

/// Everything the parts need, then the parts. Signals are watched throughout, so that an interruption
/// finds nothing half done.
static int run_job(const bw_args *args, bw_teach_job *job) {
    bool wanted[MAX_PARTS] = {false};
    job->args = args;
    job->folder = bw_option_text(args, "output");
    if (!job->folder || strcmp(job->folder, "-") == 0)
        return bw_usage(args->verb, "say which folder it goes to: -o FOLDER.");
    int seed = 1;
    if (!bw_option_int(args, "seed", 0, 1000000, &seed)) return BW_EXIT_USAGE;
    int code = choose_parts(args, wanted);
    bw_teach *teach = &job->order.teach;
    if (code == BW_EXIT_OK) code = load_card(args, teach);
    if (code == BW_EXIT_OK) code = bw_load_scheme(args, &job->order.scheme);
    if (code == BW_EXIT_OK) code = load_spot(args, &job->order.scheme, &teach->spot);
    if (code != BW_EXIT_OK) return code;
    teach->large = bw_option_given(args, "large");
    teach->seed = (uint64_t)seed;
    job->theme = bw_theme_find(bw_option_text(args, "theme"));
    job->order.paper = bw_option_paper(args);
    job->order.lines = job->press.ink->lines = bw_option_lines(args);
    return make_all(job, wanted);
}

static int run(const bw_args *args) {
    bw_teach_job *job = calloc(1, sizeof *job);
    if (!job) return bw_say_no_memory();
    int code = bw_open_press(&job->press);
    if (code == BW_EXIT_OK) {
        bw_stop_watch();
        code = run_job(args, job);
        bw_stop_unwatch();
    }
    bw_press_close(&job->press);
    free(job);
    return code;
}

static const bw_option options[] = {
    {.name = "only",
     .value = "PARTS",
     .offer = part_choice,
     .help = "Only these parts, with commas between them"},
    {.name = "spot",
     .value = "CODE",
     .names = "spots",
     .help = "One player's own copy: the pages of this spot"},
    {.name = "paper",
     .value = "PAPER",
     .choice = bw_paper_choice,
     .standard = "letter",
     .help = "Paper size"},
    {.name = "theme",
     .value = "THEME",
     .choice = bw_theme_choice,
     .standard = "chart",
     .help = "Colours"},
    {.name = "lines",
     .value = "HABIT",
     .choice = bw_lines_choice,
     .standard = "run-solid",
     .help = "Runs solid and passes dashed, or the other way round"},
    {.name = "card",
     .value = "SIZE",
     .standard = "85.6x54",
     .help = "Width and height of a pocket card, mm"},
    {.name = "large", .help = "The large-print edition: text 16 pt, labels 12 pt"},
    {.name = "gif", .help = "The films as GIF too, for chats that show nothing else"},
    {.name = "seed", .value = "N", .standard = "1", .help = "Start of the random numbers"},
};

const bw_command bw_command_teach = {
    .name = "teach",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .of_players = true,
    .summary = "make what the players get: packet, cards, wall sheets, quiz, films",
    .text =
        "Writes into the folder of -o, which is made when it is not there:\n\n"
        "packet.pdf: the idea on a page; each stage with its calls and rotations; each spot's "
        "own page, said to the player; the weakest rotations and what to do about them.\n\n"
        "cards.pdf: pocket cards to cut out, fronts and backs in turn; print on both sides, turned "
        "over the long edge. quiz.pdf: charts to mark and questions, those about the weakest "
        "rotations first, the rest drawn by --seed; the key stands on pages of its own. wall.pdf: "
        "a poster for each stage, tabloid or A3.\n\n"
        "handout.html: one page for a player's phone that works without a network and sends "
        "nothing: every picture, rotations as they run, and a quiz that asks before it shows.\n\n"
        "films: a folder with every lesson at true speed, as .mp4, .webm and, for captions, .vtt; "
        "with --gif as .gif too.\n\n"
        "The weakest rotations come from two quick breaks of each stage and are a model's "
        "estimate. The date at the foot is today's, or that of SOURCE_DATE_EPOCH. Every file is "
        "whole or not there, also when the run is interrupted; one that is there already is "
        "replaced.\n\n"
        "With --json: {\"files\": [{\"part\", \"file\", \"pages\"}]}.",
    .examples = "breakwater teach mine.json -o handouts # everything\n"
                "breakwater teach mine.json --only packet --spot LL -o low-left # one player's\n"
                "breakwater teach mine.json --large --paper a4 -o large # large print\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
