/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Shell completions from the verb table: verbs, then the verb's options, their words and files.
#include "cli/help.h"
#include <string.h>

static void put_verbs(FILE *out) {
    for (int i = 0; bw_command_at(i); i++)
        fprintf(out, "%s%s", i > 0 ? " " : "", bw_command_at(i)->name);
}

static void put_choices(FILE *out, const bw_option *option) {
    for (int i = 0; option->choice(i); i++)
        fprintf(out, "%s%s", i > 0 ? " " : "", option->choice(i));
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
        if (option->choice) {
            fputs("words='", out);
            put_choices(out, option);
            fputs("' ;;\n", out);
        } else {
            fputs(option->file ? "files=1 ;;\n" : "return ;;\n", out);
        }
    }
}

static void bash(FILE *out) {
    fputs("# bash completion for breakwater, made by: breakwater help --completion bash\n"
          "_breakwater() {\n"
          "    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD-1]}\n"
          "    local verb=${COMP_WORDS[1]} words= files=\n"
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
          "            files=1\n"
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
          "    case $current:$verb:$COMP_CWORD in\n"
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
        if (option->choice) {
            fputc('(', out);
            put_choices(out, option);
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
    if (option->choice) {
        fputs(" -a '", out);
        put_choices(out, option);
        fputc('\'', out);
    }
    fputs(" -d '", out);
    fish_text(out, option->help);
    fputs("'\n", out);
}

static void fish(FILE *out) {
    fputs("# fish completion for breakwater, made by: breakwater help --completion fish\n", out);
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
