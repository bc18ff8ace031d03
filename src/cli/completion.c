/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Shell completions from the verb table: verbs, then the verb's options, their words and files.
#include "cli/help.h"
#include <string.h>

static void put_verbs(FILE *out) {
    for (int i = 0; bw_command_at(i); i++)
        fprintf(out, "%s%s", i > 0 ? " " : "", bw_command_at(i)->name);
}

typedef const char *(*word_list)(int index);

static void put_words(FILE *out, word_list word) {
    for (int i = 0; word(i); i++)
        fprintf(out, "%s%s", i > 0 ? " " : "", word(i));
}

/// The words an option is, or may be; NULL for none.
static word_list words_of(const bw_option *option) {
    return option->choice ? option->choice : option->offer;
}

/// The words that follow some actions of a verb, the same for all of these; NULL when none do.
static word_list offered_by(const bw_command *verb) {
    for (int i = 0; verb->actions && i < verb->action_count; i++) {
        if (verb->actions[i].offer) return verb->actions[i].offer;
    }
    return NULL;
}

/// Those actions, with `between` between them.
static void put_offering(FILE *out, const bw_command *verb, const char *between) {
    bool any = false;
    for (int i = 0; i < verb->action_count; i++) {
        if (!verb->actions[i].offer) continue;
        fprintf(out, "%s%s", any ? between : "", verb->actions[i].name);
        any = true;
    }
}

static void put_actions(FILE *out, const bw_command *verb) {
    for (int i = 0; i < verb->action_count; i++)
        fprintf(out, "%s%s", i > 0 ? " " : "", verb->actions[i].name);
}

/// Arms of bash's case over "verb:number of the word" for verbs with actions.
static void bash_actions(FILE *out) {
    for (int i = 0; bw_command_at(i); i++) {
        const bw_command *verb = bw_command_at(i);
        if (!verb->actions) continue;
        fprintf(out, "        *:%s:%d) words='", verb->name, verb->action_at + 2);
        put_actions(out, verb);
        fputs("' files= ;;\n", out);
        if (!offered_by(verb)) continue;
        fprintf(out, "        *:%s:*) case ${COMP_WORDS[%d]} in ", verb->name, verb->action_at + 2);
        put_offering(out, verb, "|");
        fputs(") words='", out);
        put_words(out, offered_by(verb));
        fputs("' files= ;; esac ;;\n", out);
    }
}

/// One arm of bash's case over "verb:previous word" for each option with a value.
static void bash_values(FILE *out, const bw_command *verb) {
    for (int i = 0; bw_command_option(verb, i); i++) {
        const bw_option *option = bw_command_option(verb, i);
        if (!option->value) continue;
        fprintf(out, "        %s:--%s", verb->name, option->name);
        if (option->letter) fprintf(out, "|%s:-%c", verb->name, option->letter);
        fputs(") ", out);
        if (option->names) {
            fprintf(out, "words=$(_breakwater_names %s) ;;\n", option->names);
        } else if (words_of(option)) {
            fputs("words='", out);
            put_words(out, words_of(option));
            fputs("' ;;\n", out);
        } else {
            fputs(option->file ? "files=1 ;;\n" : "return ;;\n", out);
        }
    }
}

static void bash(FILE *out) {
    fputs("# bash completion for breakwater, made by: breakwater help --completion bash\n"
          "# The names of a kind in the first word of the line that is a scheme's file.\n"
          "_breakwater_names() {\n"
          "    local word\n"
          "    for word in \"${COMP_WORDS[@]:2}\"; do\n"
          "        [ -f \"$word\" ] || continue\n"
          "        \"${COMP_WORDS[0]}\" help --names \"$1\" -- \"$word\" 2>/dev/null && return\n"
          "    done\n"
          "}\n"
          "_breakwater() {\n"
          "    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD-1]}\n"
          "    local verb=${COMP_WORDS[1]} words= files= value=1\n"
          "    COMPREPLY=()\n"
          "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
          "        COMPREPLY=($(compgen -W '",
          out);
    put_verbs(out);
    fputs(" --help --version' -- \"$current\"))\n"
          "        return\n"
          "    fi\n"
          "    case $verb:$previous in\n",
          out);
    for (int i = 0; bw_command_at(i); i++)
        bash_values(out, bw_command_at(i));
    fputs("        *)\n"
          "            files=1 value=\n"
          "            case $verb in\n",
          out);
    for (int i = 0; bw_command_at(i); i++) {
        const bw_command *verb = bw_command_at(i);
        fprintf(out, "                %s) words='", verb->name);
        for (int k = 0; bw_command_option(verb, k); k++)
            fprintf(out, "%s--%s", k > 0 ? " " : "", bw_command_option(verb, k)->name);
        fputs("' ;;\n", out);
    }
    fputs("            esac ;;\n"
          "    esac\n"
          "    [ -n \"$value\" ] || case $current:$verb:$COMP_CWORD in\n"
          "        -*) files= ;;\n"
          "        *:help:*) words=\"$words ",
          out);
    put_verbs(out);
    fputs("\" files= ;;\n", out);
    bash_actions(out);
    fputs("    esac\n"
          "    COMPREPLY=($(compgen -W \"$words\" -- \"$current\"))\n"
          "    [ -z \"$files\" ] || COMPREPLY+=($(compgen -f -- \"$current\"))\n"
          "}\n"
          "complete -o filenames -F _breakwater breakwater\n",
          out);
}

/// Text inside zsh's '...[...]' : brackets, colons and quotes carry meaning there.
static void zsh_text(FILE *out, const char *text) {
    for (; *text; text++) {
        if (strchr("[]:\\", *text)) fputc('\\', out);
        if (*text == '\'')
            fputs("'\\''", out);
        else
            fputc(*text, out);
    }
}

static void zsh_option(FILE *out, const bw_option *option) {
    fputs("        '", out);
    fprintf(out, "--%s%s[", option->name, option->value ? "=" : "");
    zsh_text(out, option->help);
    fputc(']', out);
    if (option->value) {
        fputc(':', out);
        zsh_text(out, option->value);
        fputc(':', out);
        if (option->names) {
            fprintf(out, "_breakwater_names %s", option->names);
        } else if (words_of(option)) {
            fputc('(', out);
            put_words(out, words_of(option));
            fputc(')', out);
        } else if (option->file) {
            fputs("_files", out);
        }
    }
    fputs("' \\\n", out);
}

static void zsh(FILE *out) {
    fputs("#compdef breakwater\n"
          "# zsh completion for breakwater, made by: breakwater help --completion zsh\n"
          "local program=$words[1]\n"
          "# The names of a kind, the last argument, in the first word that is a scheme's file.\n"
          "_breakwater_names() {\n"
          "    local word\n"
          "    local -a names\n"
          "    for word in $words[2,-1]; do\n"
          "        [[ -f $word ]] || continue\n"
          "        names=(${(f)\"$(${~program} help --names $@[-1] -- $word 2>/dev/null)\"})\n"
          "        (( $#names )) && compadd \"${@[1,-2]}\" -a names && return\n"
          "    done\n"
          "}\n"
          "if (( CURRENT == 2 )); then\n"
          "    local -a verbs\n"
          "    verbs=(\n",
          out);
    for (int i = 0; bw_command_at(i); i++) {
        fprintf(out, "        '%s:", bw_command_at(i)->name);
        zsh_text(out, bw_command_at(i)->summary);
        fputs("'\n", out);
    }
    fputs("    )\n"
          "    _describe verb verbs\n"
          "    return\n"
          "fi\n"
          "local verb=$words[2]\n"
          "shift words\n"
          "(( CURRENT-- ))\n"
          "case $verb in\n",
          out);
    for (int i = 0; bw_command_at(i); i++) {
        const bw_command *verb = bw_command_at(i);
        fprintf(out, "    %s) _arguments \\\n", verb->name);
        for (int k = 0; bw_command_option(verb, k); k++)
            zsh_option(out, bw_command_option(verb, k));
        if (verb->actions) {
            fprintf(out, "        '%d:action:(", verb->action_at + 1);
            put_actions(out, verb);
            fputs(")' \\\n", out);
        }
        if (strcmp(verb->name, "help") == 0) {
            fputs("        '1:verb:(", out);
            put_verbs(out);
            fputs(")' ;;\n", out);
        } else if (offered_by(verb)) {
            fprintf(out, "        '*: :{ case $words[%d] in (", verb->action_at + 2);
            put_offering(out, verb, "|");
            fputs(") compadd ", out);
            put_words(out, offered_by(verb));
            fputs(" ;; (*) _files ;; esac }' ;;\n", out);
        } else {
            fputs("        '*:file:_files' ;;\n", out);
        }
    }
    fputs("esac\n", out);
}

/// Text inside fish's '...'.
static void fish_text(FILE *out, const char *text) {
    for (; *text; text++) {
        if (*text == '\'' || *text == '\\') fputc('\\', out);
        fputc(*text, out);
    }
}

static void fish_option(FILE *out, const bw_command *verb, const bw_option *option) {
    fprintf(out, "complete -c breakwater -n '__fish_seen_subcommand_from %s' -l %s", verb->name,
            option->name);
    if (option->letter) fprintf(out, " -s %c", option->letter);
    if (option->value) fputs(option->file ? " -r" : " -x", out);
    if (option->names) {
        fprintf(out, " -a '(__breakwater_names %s)'", option->names);
    } else if (words_of(option)) {
        fputs(" -a '", out);
        put_words(out, words_of(option));
        fputc('\'', out);
    }
    fputs(" -d '", out);
    fish_text(out, option->help);
    fputs("'\n", out);
}

static void fish(FILE *out) {
    fputs(
        "# fish completion for breakwater, made by: breakwater help --completion fish\n"
        "# The names of a kind in the first word of the line that is a scheme's file.\n"
        "function __breakwater_names\n"
        "    set -l words (commandline -opc)\n"
        "    for word in $words[2..-1]\n"
        "        test -f $word; or continue\n"
        "        set -l names ($words[1] help --names $argv[1] -- $word 2>/dev/null); or continue\n"
        "        printf '%s\\n' $names\n"
        "        return\n"
        "    end\n"
        "end\n",
        out);
    for (int i = 0; bw_command_at(i); i++) {
        const bw_command *verb = bw_command_at(i);
        fprintf(out, "complete -c breakwater -f -n __fish_use_subcommand -a %s -d '", verb->name);
        fish_text(out, verb->summary);
        fputs("'\n", out);
        for (int k = 0; bw_command_option(verb, k); k++)
            fish_option(out, verb, bw_command_option(verb, k));
        if (!verb->actions) continue;
        fprintf(out, "complete -c breakwater -n '__fish_seen_subcommand_from %s' -a '", verb->name);
        put_actions(out, verb);
        fputs("'\n", out);
        if (!offered_by(verb)) continue;
        fprintf(out,
                "complete -c breakwater -n '__fish_seen_subcommand_from %s; "
                "and __fish_seen_subcommand_from ",
                verb->name);
        put_offering(out, verb, " ");
        fputs("' -a '", out);
        put_words(out, offered_by(verb));
        fputs("'\n", out);
    }
    fputs("complete -c breakwater -f -n '__fish_seen_subcommand_from help' -a '", out);
    put_verbs(out);
    fputs("'\n", out);
}

void bw_completion(FILE *out, const char *shell) {
    if (strcmp(shell, "bash") == 0)
        bash(out);
    else if (strcmp(shell, "zsh") == 0)
        zsh(out);
    else
        fish(out);
}
