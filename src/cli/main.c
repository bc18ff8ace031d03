/* SPDX-License-Identifier: GPL-3.0-or-later */
/// breakwater VERB [options] [operands]: finds the verb, reads its options, runs it.
#include "cli/help.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/term.h"
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

static const char *verb_name(const void *self, int index) {
    (void)self;
    const bw_command *verb = bw_command_at(index);
    return verb ? verb->name : NULL;
}

static int no_verb(const char *word) {
    const char *near = bw_nearest_word(word, verb_name, NULL);
    if (near) return bw_usage(NULL, "there is no verb \"%s\"; did you mean \"%s\"?", word, near);
    return bw_usage(NULL, "there is no verb \"%s\".", word);
}

static int run_verb(const bw_command *verb, int count, char *const *words) {
    bw_args args;
    if (!bw_options_read(verb, count, words, &args)) return BW_EXIT_USAGE;
    if (bw_option_given(&args, "no-color")) bw_term_no_colour();
    if (bw_option_given(&args, "help")) return bw_help_verb(verb, &args);
    if (bw_option_given(&args, "version")) return bw_help_version(&args);
    if (verb->of_players) bw_out_private();
    return verb->run(&args);
}

/// A standard file that the caller closed would have its number given to the next file opened, and talk
/// would be written into that. Its place is taken so that reading and writing fail as on a closed one.
static void hold_standard_files(void) {
    for (int file = STDIN_FILENO; file <= STDERR_FILENO; file++) {
        if (fcntl(file, F_GETFD) >= 0) continue;
        const int held = open("/dev/null", file == STDIN_FILENO ? O_WRONLY : O_RDONLY);
        if (held >= 0 && held != file) close(held);
    }
}

int main(int argc, char **argv) {
    hold_standard_files();
    if (argc < 2) {
        bw_usage(NULL, "say what to do: breakwater VERB ...");
        return BW_EXIT_USAGE;
    }
    const char *word = argv[1];
    if (word[0] == '-') {
        // The bare program answers as "help" does; its other options belong behind a verb.
        bool known = strcmp(word, "--help") == 0 || strcmp(word, "-h") == 0 ||
                     strcmp(word, "--version") == 0;
        if (!known)
            return bw_usage(NULL, "put the verb before the options: breakwater VERB %s ...", word);
        if (strcmp(word, "--version") != 0) return run_verb(&bw_command_help, 0, NULL);
        return run_verb(&bw_command_help, 1, argv + 1);
    }
    const bw_command *verb = bw_command_find(word);
    return verb ? run_verb(verb, argc - 2, argv + 2) : no_verb(word);
}
