/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `help`, and help as text.
#include "cli/help.h"
#include "cli/load.h"
#include "cli/names.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/term.h"
#include "core/text.h"
#include <stdlib.h>
#include <string.h>

void bw_help_option_head(FILE *out, const bw_option *option) {
    if (option->letter) fprintf(out, "-%c, ", option->letter);
    fprintf(out, "--%s", option->name);
    if (option->value) fprintf(out, " %s", option->value);
}

void bw_help_option_tail(FILE *out, const bw_option *option) {
    fputs(option->help, out);
    const char *(*const word)(int) = option->choice ? option->choice : option->offer;
    for (int i = 0; word && word(i); i++) {
        fputs(i == 0 ? ": " : word(i + 1) ? ", " : " or ", out);
        fputs(word(i), out);
    }
    if (option->standard) fprintf(out, " (%s when not given)", option->standard);
}

void bw_help_examples(const bw_command *verb, void *self,
                      void (*line)(void *self, const char *command, const char *meaning)) {
    const char *p = verb->examples;
    while (*p) {
        size_t length = strcspn(p, "\n"), command = strcspn(p, "#");
        BW_ASSERT(command < length);
        char first[160], second[160];
        bw_text a = bw_text_in(first, sizeof first), b = bw_text_in(second, sizeof second);
        size_t end = command;
        while (end > 0 && p[end - 1] == ' ')
            end--;
        bw_put_n(&a, p, end);
        bw_put_n(&b, p + command + 2, length - command - 2);
        line(self, first, second);
        p += length + (p[length] == '\n');
    }
}

void bw_help_actions(const bw_command *verb, void *self,
                     void (*line)(void *self, const char *use, const char *summary)) {
    for (int i = 0; i < verb->action_count; i++) {
        const bw_action *action = &verb->actions[i];
        char use[160];
        snprintf(use, sizeof use, "breakwater %s %s%s%s%s", verb->name,
                 verb->action_at == 1 ? "FILE " : "", action->name, *action->operands ? " " : "",
                 action->operands);
        line(self, use, action->summary);
    }
}

static void heading(FILE *out, const char *text) {
    bw_term_set(out, BW_TERM_BOLD);
    fputs(text, out);
    bw_term_set(out, BW_TERM_PLAIN);
    fputc('\n', out);
}

static void text_action(void *self, const char *use, const char *summary) {
    fprintf(self, "  %s\n      %s\n", use, summary);
}

static void text_example(void *self, const char *command, const char *meaning) {
    fprintf(self, "  %s\n      %s\n", command, meaning);
}

/// Words of `text` from column `indent`, wrapped before column 80. An empty line stays one.
static void wrap(FILE *out, const char *text, int indent) {
    int column = 0;
    while (*text) {
        if (*text == '\n') {
            bool paragraph = text[1] == '\n';
            if (paragraph) {
                fputs("\n\n", out);
                column = 0;
            }
            text += paragraph ? 2 : 1;
            continue;
        }
        int length = (int)strcspn(text, " \n");
        if (column > 0 && column + 1 + length > 79) {
            fputc('\n', out);
            column = 0;
        }
        if (column == 0)
            column = fprintf(out, "%*s", indent, "");
        else
            column += fprintf(out, " ");
        column += fprintf(out, "%.*s", length, text);
        text += length;
        while (*text == ' ')
            text++;
    }
    fputc('\n', out);
}

static void text_option(FILE *out, const bw_option *option) {
    char *bytes = NULL;
    size_t size = 0;
    fputs("  ", out);
    bw_help_option_head(out, option);
    fputc('\n', out);
    FILE *tail = open_memstream(&bytes, &size);
    if (!tail) return;
    bw_help_option_tail(tail, option);
    fclose(tail);
    wrap(out, bytes, 6);
    free(bytes);
}

static void help_text(FILE *out, const bw_command *verb) {
    fprintf(out, "breakwater %s: %s\n\n", verb->name, verb->summary);
    heading(out, "Use");
    fprintf(out, "  breakwater %s [options]%s%s\n\n", verb->name, *verb->operands ? " " : "",
            verb->operands);
    if (verb->actions) {
        heading(out, "What it does");
        bw_help_actions(verb, out, text_action);
        fputc('\n', out);
    }
    heading(out, "Examples");
    bw_help_examples(verb, out, text_example);
    fputc('\n', out);
    wrap(out, verb->text, 0);
    fputc('\n', out);
    heading(out, "Options");
    for (int i = 0; bw_command_option(verb, i); i++)
        text_option(out, bw_command_option(verb, i));
    fputc('\n', out);
    heading(out, "Exit codes");
    for (int i = 0; bw_exit_meaning_at(i); i++)
        fprintf(out, "  %-4s %s\n", bw_exit_meaning_at(i)->code, bw_exit_meaning_at(i)->meaning);
}

/// One line in the list of verbs and each verb's use.
static void help_overview(FILE *out) {
    fputs("breakwater: design, check, test and teach short-handed lacrosse defence\n\n", out);
    heading(out, "Use");
    fputs("  breakwater VERB [options] [words]\n\n", out);
    heading(out, "Start here");
    fputs("  breakwater new -o mine.json\n  breakwater check mine.json\n"
          "  breakwater draw mine.json -o book.pdf\n\n",
          out);
    heading(out, "Verbs");
    for (int i = 0; bw_command_at(i); i++)
        fprintf(out, "  %-9s %s\n", bw_command_at(i)->name, bw_command_at(i)->summary);
    fputs("\nbreakwater help VERB tells the rest.\n", out);
}

int bw_help_verb(const bw_command *verb, const bw_args *args) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    help_text(out.stream, verb);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_help_version(const bw_args *args) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    fputs("breakwater " BW_VERSION "\n", out.stream);
    return bw_out_close(&out, BW_EXIT_OK);
}

static const char *shell_choice(int index) {
    static const char *const shells[] = {"bash", "zsh", "fish", NULL};
    return shells[index];
}

static const char *verb_name(const void *self, int index) {
    (void)self;
    const bw_command *verb = bw_command_at(index);
    return verb ? verb->name : NULL;
}

static int list_names(const bw_args *args) {
    static bw_scheme scheme;
    const char *kind = bw_option_text(args, "names");
    if (args->operand_count == 0)
        return bw_usage(args->verb, "--names needs a scheme: breakwater help --names %s FILE.",
                        kind);
    const int code = bw_load_scheme(args, &scheme);
    bw_out out;
    if (code != BW_EXIT_OK) return code;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    bw_names_put(out.stream, &scheme, kind);
    return bw_out_close(&out, BW_EXIT_OK);
}

static int run(const bw_args *args) {
    if (bw_option_given(args, "names")) return list_names(args);
    const bw_command *verb = NULL;
    if (args->operand_count > 0) {
        const char *word = args->operands[0];
        verb = bw_command_find(word);
        if (!verb) {
            const char *near = bw_nearest_word(word, verb_name, NULL);
            return near
                       ? bw_usage(NULL, "there is no verb \"%s\"; did you mean \"%s\"?", word, near)
                       : bw_usage(NULL, "there is no verb \"%s\".", word);
        }
    }
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "completion"))
        bw_completion(out.stream, bw_option_text(args, "completion"));
    else if (bw_option_given(args, "markdown"))
        bw_manual_markdown(out.stream);
    else if (bw_option_given(args, "man"))
        bw_manual_page(out.stream, verb);
    else if (verb)
        help_text(out.stream, verb);
    else
        help_overview(out.stream);
    return bw_out_close(&out, BW_EXIT_OK);
}

static const bw_option options[] = {
    {.name = "markdown", .help = "The whole manual in Markdown: docs/cli.md"},
    {.name = "man", .help = "The manual page in man(7) form: docs/man"},
    {.name = "completion",
     .value = "SHELL",
     .choice = shell_choice,
     .help = "A completion script for this shell"},
    {.name = "names",
     .value = "KIND",
     .choice = bw_names_choice,
     .help = "For completions: the names of a kind in a scheme, whose file stands in VERB's place"},
};

const bw_command bw_command_help = {
    .name = "help",
    .operands = "[VERB]",
    .most = 1,
    .summary = "say how a verb is used; also the manual and shell completions",
    .text = "Without a verb it lists them all. The manual pages, the Markdown manual and the "
            "completions are made from the table the program itself reads its options by.",
    .examples = "breakwater help check # how check is used\n"
                "breakwater help --completion bash -o ~/.local/share/bash-completion/completions/"
                "breakwater # completion for bash\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = run,
};
