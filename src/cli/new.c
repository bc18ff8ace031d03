/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `new`: a complete starting scheme.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/say.h"
#include "core/field.h"
#include "core/level.h"
#include "core/text.h"
#include "file/document.h"
#include "file/json_stream.h"
#include "scheme/fresh.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include <string.h>
#include <unistd.h>

static const char *field_choice(int index) {
    return index < bw_field_count() ? bw_field_at(index)->id : NULL;
}

static const char *level_choice(int index) {
    return index < bw_level_count() ? bw_level_at(index)->id : NULL;
}

static const char *shape_choice(int index) {
    static const char *const shapes[] = {"1-2", "2-2", "2-1-2", "match-up", NULL};
    return shapes[index];
}

static int index_of(const char *(*choice)(int), const char *id) {
    int i = 0;
    while (strcmp(choice(i), id) != 0)
        i++;
    return i;
}

/// Fills the scheme as the options ask. BW_EXIT_OK, or the code after saying what is wrong.
static int make(const bw_args *args, bw_scheme *scheme) {
    bw_scheme_fresh(index_of(field_choice, bw_option_text(args, "field")),
                    index_of(level_choice, bw_option_text(args, "level")), scheme);
    const char *shape = bw_option_text(args, "shape"), *name = bw_option_text(args, "name");
    if (shape) {
        bw_status status = bw_scheme_only(scheme, shape);
        BW_ASSERT(status == BW_OK);
    }
    if (name && (name[0] == '\0' || !bw_copy(scheme->name, sizeof scheme->name, name)))
        return bw_usage(args->verb, "--name is from 1 to %d bytes long.", BW_NAME_SIZE - 1);
    bw_load_units(args, scheme);
    return BW_EXIT_OK;
}

static int report(const bw_args *args, const bw_scheme *scheme, const char *path) {
    bw_say("Wrote %s: \"%s\", %d stage%s. Next: breakwater check %s", path, scheme->name,
           scheme->stage_count, scheme->stage_count == 1 ? "" : "s", path);
    if (!bw_option_given(args, "json")) return BW_EXIT_OK;
    bw_json json = bw_json_to(stdout);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "file", path);
    bw_json_put_open(&json, "stages", '[');
    for (int i = 0; i < scheme->stage_count; i++)
        bw_json_number(&json, scheme->stages[i].defenders);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
    return BW_EXIT_OK;
}

static int run(const bw_args *args) {
    static bw_scheme scheme;
    int code = make(args, &scheme);
    if (code != BW_EXIT_OK) return code;

    static char bytes[BW_DOCUMENT_BYTES];
    bw_text text = bw_text_in(bytes, sizeof bytes);
    bw_scheme_write(&scheme, &text);
    BW_ASSERT(!text.full);

    const char *path = bw_option_text(args, "output");
    bool to_file = path && strcmp(path, "-") != 0;
    if (to_file && !bw_option_given(args, "force") && access(path, F_OK) == 0) {
        bw_say_error("%s is there already; choose another name, or write over it with --force.",
                     path);
        return BW_EXIT_FILE;
    }
    code = bw_out_bytes(args, bytes, text.used);
    return code == BW_EXIT_OK && to_file ? report(args, &scheme, path) : code;
}

static const bw_option options[] = {
    {.name = "shape",
     .value = "SHAPE",
     .choice = shape_choice,
     .help = "Only the stage of this shape; all four when not given"},
    {.name = "level",
     .value = "LEVEL",
     .choice = level_choice,
     .standard = "high-school",
     .help = "Speeds, reactions and throws"},
    {.name = "field",
     .value = "FIELD",
     .choice = field_choice,
     .standard = "boys-nfhs",
     .help = "Lines of the field"},
    {.name = "name", .value = "NAME", .help = "What the scheme is called"},
    {.name = "force", .help = "Write over a file that is there already"},
};

const bw_command bw_command_new = {
    .name = "new",
    .operands = "",
    .summary = "write a complete starting scheme to edit",
    .text = "Its numbers are common practice; every name in it says what it is for. A file that "
            "is there already is never written over without --force.\n\n"
            "The scheme is JSON, so without --output it goes to standard output as it is. With "
            "--output, --json tells what was written.",
    .examples = "breakwater new -o mine.json # all four stages, boys' high school\n"
                "breakwater new --shape 2-2 --level college --name Harbour # one stage, to "
                "standard output\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
