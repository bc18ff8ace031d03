/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The manual: docs/cli.md and the pages of docs/man, from the verb table.
#include "cli/help.h"
#include <stdlib.h>

static void markdown_example(void *self, const char *command, const char *meaning) {
    fprintf(self, "    %s\n        # %s\n", command, meaning);
}

/// Markdown with what would be taken for a tag or an emphasis kept as it is.
static void markdown_text(FILE *out, const char *text) {
    for (; *text; text++) {
        if (*text == '<' || *text == '_' || *text == '*') fputc('\\', out);
        fputc(*text, out);
    }
}

static void markdown_action(void *self, const char *use, const char *summary) {
    fprintf(self, "| `%s` | %s |\n", use, summary);
}

static void markdown_verb(FILE *out, const bw_command *verb) {
    fprintf(out, "\n## breakwater %s\n\n", verb->name);
    fprintf(out, "%c%s.\n\n", verb->summary[0] - 'a' + 'A', verb->summary + 1);
    fprintf(out, "    breakwater %s [options]%s%s\n\n", verb->name, *verb->operands ? " " : "",
            verb->operands);
    markdown_text(out, verb->text);
    fputs("\n\n", out);
    if (verb->actions) {
        fputs("| use | does |\n| --- | --- |\n", out);
        bw_help_actions(verb, out, markdown_action);
        fputc('\n', out);
    }
    bw_help_examples(verb, out, markdown_example);
    if (verb->option_count == 0) return;
    fputs("\n| option | does |\n| --- | --- |\n", out);
    for (int i = 0; i < verb->option_count; i++) {
        fputs("| `", out);
        bw_help_option_head(out, &verb->options[i]);
        fputs("` | ", out);
        bw_help_option_tail(out, &verb->options[i]);
        fputs(" |\n", out);
    }
}

void bw_manual_markdown(FILE *out) {
    fputs(
        "# Command line\n\n"
        "Made by `breakwater help --markdown` from the table the program reads its options by.\n\n"
        "    breakwater VERB [options] [words]\n\n"
        "Results go to standard output, talk goes to standard error. Colour is used only on a\n"
        "terminal, and not when `NO_COLOR` is set or with `--no-color`. `-` as a file is standard\n"
        "input or output. Options and files may come in any order; `--` ends the options.\n\n"
        "| verb | does |\n| --- | --- |\n",
        out);
    for (int i = 0; bw_command_at(i); i++)
        fprintf(out, "| [%s](#breakwater-%s) | %s |\n", bw_command_at(i)->name,
                bw_command_at(i)->name, bw_command_at(i)->summary);
    fputs("\nOptions of every verb:\n\n| option | does |\n| --- | --- |\n", out);
    for (int i = 0; i < bw_common_option_count(); i++) {
        fputs("| `", out);
        bw_help_option_head(out, &bw_common_options[i]);
        fputs("` | ", out);
        bw_help_option_tail(out, &bw_common_options[i]);
        fputs(" |\n", out);
    }
    fputs("\n| exit code | means |\n| --- | --- |\n", out);
    for (int i = 0; bw_exit_meaning_at(i); i++)
        fprintf(out, "| %s | %s |\n", bw_exit_meaning_at(i)->code, bw_exit_meaning_at(i)->meaning);
    for (int i = 0; bw_command_at(i); i++)
        markdown_verb(out, bw_command_at(i));
}

/// Text for man(7): a hyphen that may be typed, no accidental requests, paragraphs.
static void roff(FILE *out, const char *text) {
    bool line_start = true;
    for (; *text; text++) {
        if (line_start && (*text == '.' || *text == '\'')) fputs("\\&", out);
        line_start = false;
        if (*text == '\\') {
            fputs("\\e", out);
        } else if (*text == '-') {
            fputs("\\-", out);
        } else if (*text == '\n') {
            bool paragraph = text[1] == '\n';
            fputs(paragraph ? "\n.PP\n" : "\n", out);
            text += paragraph;
            line_start = true;
        } else {
            fputc(*text, out);
        }
    }
}

static void roff_option(FILE *out, const bw_option *option) {
    char *bytes = NULL;
    size_t size = 0;
    FILE *tail = open_memstream(&bytes, &size);
    if (!tail) return;
    bw_help_option_tail(tail, option);
    fclose(tail);
    fputs(".TP\n.B ", out);
    if (option->letter) fprintf(out, "\\-%c\\fR, \\fB", option->letter);
    roff(out, "--");
    roff(out, option->name);
    if (option->value) fprintf(out, " \\fI%s\\fR", option->value);
    fputc('\n', out);
    roff(out, bytes);
    fputs(".\n", out);
    free(bytes);
}

static void roff_example(void *self, const char *command, const char *meaning) {
    fputs(".TP\n.B ", self);
    roff(self, command);
    fputc('\n', self);
    roff(self, meaning);
    fputs(".\n", self);
}

static void roff_action(void *self, const char *use, const char *summary) {
    fputs("\n.TP\n.B ", self);
    roff(self, use);
    fputc('\n', self);
    roff(self, summary);
    fputc('.', self);
}

static void page_head(FILE *out, const char *suffix, const char *summary) {
    fprintf(out,
            ".TH BREAKWATER%s 1 \"\" \"breakwater " BW_VERSION "\" \"User commands\"\n"
            ".SH NAME\nbreakwater%s \\- ",
            suffix, suffix);
    roff(out, summary);
    fputc('\n', out);
}

static void page_tail(FILE *out) {
    fputs(".SH EXIT STATUS\n", out);
    for (int i = 0; bw_exit_meaning_at(i); i++)
        fprintf(out, ".TP\n.B %s\n%s\n", bw_exit_meaning_at(i)->code,
                bw_exit_meaning_at(i)->meaning);
    fputs(".SH ENVIRONMENT\n.TP\n.B NO_COLOR\nNo colour when it is set and not empty.\n"
          ".TP\n.B TERM\nNo colour when it is not set, or is \"dumb\".\n",
          out);
}

static void verb_page(FILE *out, const bw_command *verb) {
    char suffix[32];
    snprintf(suffix, sizeof suffix, "\\-%s", verb->name);
    page_head(out, suffix, verb->summary);
    fprintf(out, ".SH SYNOPSIS\n.B breakwater %s\n[\\fIoptions\\fR]", verb->name);
    if (*verb->operands) fprintf(out, " \\fI%s\\fR", verb->operands);
    fputs("\n.SH DESCRIPTION\n", out);
    roff(out, verb->text);
    if (verb->actions) {
        fputs("\n.SH ACTIONS", out);
        bw_help_actions(verb, out, roff_action);
    }
    fputs("\n.SH OPTIONS\n", out);
    for (int i = 0; bw_command_option(verb, i); i++)
        roff_option(out, bw_command_option(verb, i));
    page_tail(out);
    fputs(".SH EXAMPLES\n", out);
    bw_help_examples(verb, out, roff_example);
    fputs(".SH SEE ALSO\n.BR breakwater (1)\n", out);
}

static void program_page(FILE *out) {
    page_head(out, "", "design, check, test and teach short-handed lacrosse defence");
    fputs(".SH SYNOPSIS\n.B breakwater\n\\fIverb\\fR [\\fIoptions\\fR] [\\fIwords\\fR]\n"
          ".SH DESCRIPTION\n"
          "A scheme says how a field-lacrosse team stands and moves when it defends "
          "short\\-handed.\nFrom it breakwater works out where everyone belongs for any ball, and "
          "draws it to scale.\nResults go to standard output, talk goes to standard error.\n"
          ".SH VERBS\n",
          out);
    for (int i = 0; bw_command_at(i); i++) {
        fprintf(out, ".TP\n.BR breakwater\\-%s (1)\n", bw_command_at(i)->name);
        roff(out, bw_command_at(i)->summary);
        fputc('\n', out);
    }
    fputs(".SH OPTIONS\nEvery verb has these.\n", out);
    for (int i = 0; i < bw_common_option_count(); i++)
        roff_option(out, &bw_common_options[i]);
    page_tail(out);
    fputs(".SH SEE ALSO\n", out);
    for (int i = 0; bw_command_at(i); i++)
        fprintf(out, ".BR breakwater\\-%s (1)%s\n", bw_command_at(i)->name,
                bw_command_at(i + 1) ? "," : "");
}

void bw_manual_page(FILE *out, const bw_command *verb) {
    if (verb)
        verb_page(out, verb);
    else
        program_page(out);
}
