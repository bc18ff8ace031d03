/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Help as people read it: on the terminal, as Markdown, as manual pages, as completions. All of it
/// is made from the verb table.
#ifndef BW_CLI_HELP_H
#define BW_CLI_HELP_H

#include "cli/options.h"
#include <stdio.h>

/// --help of one verb, as a verb's result. Returns the exit code.
int bw_help_verb(const bw_command *verb, const bw_args *args);

/// --version, likewise.
int bw_help_version(const bw_args *args);

/// docs/cli.md, whole.
void bw_manual_markdown(FILE *out);

/// A manual page in man(7) form; NULL: the page of the program itself.
void bw_manual_page(FILE *out, const bw_command *verb);

/// A completion script for "bash", "zsh" or "fish".
void bw_completion(FILE *out, const char *shell);

/// "--name VALUE" or "-o, --name VALUE".
void bw_help_option_head(FILE *out, const bw_option *option);

/// The option's sentence, its choices and its standard value.
void bw_help_option_tail(FILE *out, const bw_option *option);

/// Calls `line` for each action of a verb: how it is used and what it does.
void bw_help_actions(const bw_command *verb, void *self,
                     void (*line)(void *self, const char *use, const char *summary));

/// Calls `line` for each example: the command and what it does.
void bw_help_examples(const bw_command *verb, void *self,
                      void (*line)(void *self, const char *command, const char *meaning));

#endif
