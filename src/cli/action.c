/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/action.h"
#include "cli/say.h"
#include "core/text.h"
#include <string.h>

static const char *action_name(const void *self, int index) {
    const bw_command *verb = self;
    return index < verb->action_count ? verb->actions[index].name : NULL;
}

static int unknown(const bw_command *verb, const char *word) {
    const char *near = bw_nearest_word(word, action_name, verb);
    if (near)
        return bw_usage(verb, "%s does not know \"%s\"; did you mean \"%s\"?", verb->name, word,
                        near);
    char list[256];
    bw_text text = bw_text_in(list, sizeof list);
    for (int i = 0; i < verb->action_count; i++) {
        if (i > 0) bw_put(&text, i == verb->action_count - 1 ? " and " : ", ");
        bw_put(&text, verb->actions[i].name);
    }
    return bw_usage(verb, "%s does not know \"%s\"; it knows %s.", verb->name, word, list);
}

/// Whether `name` is one of the words of `list`.
static bool listed(const char *list, const char *name) {
    const size_t length = strlen(name);
    for (const char *at = list; *at; at += strcspn(at, " ")) {
        at += strspn(at, " ");
        if (strncmp(at, name, length) == 0 && (at[length] == ' ' || at[length] == '\0'))
            return true;
    }
    return false;
}

static bool options_fit(const bw_args *args, const bw_action *action) {
    for (int i = 0; i < args->verb->option_count; i++) {
        const char *name = args->verb->options[i].name;
        if (!args->given[i] || listed(action->options, name)) continue;
        bw_usage(args->verb, "--%s does nothing with %s %s.", name, args->verb->name, action->name);
        return false;
    }
    return true;
}

static bool words_fit(const bw_args *args, const bw_action *action) {
    const char *verb = args->verb->name;
    if (args->operand_count > action->most) {
        bw_usage(args->verb, "\"%s\" is one word too many for %s %s.", args->operands[action->most],
                 verb, action->name);
        return false;
    }
    if (args->operand_count >= action->least) return true;
    bw_usage(args->verb, "%s %s needs more: breakwater %s %s%s %s.", verb, action->name, verb,
             args->verb->action_at == 1 ? "FILE " : "", action->name, action->operands);
    return false;
}

int bw_action_run(const bw_args *args) {
    const bw_command *verb = args->verb;
    const char *word = args->operands[verb->action_at];
    int which = 0;
    while (which < verb->action_count && strcmp(verb->actions[which].name, word) != 0)
        which++;
    if (which == verb->action_count) return unknown(verb, word);
    bw_args rest = *args;
    rest.operand_count--;
    for (int i = verb->action_at; i < rest.operand_count; i++)
        rest.operands[i] = args->operands[i + 1];
    const bw_action *action = &verb->actions[which];
    if (!words_fit(&rest, action) || !options_fit(&rest, action)) return BW_EXIT_USAGE;
    return action->run(&rest);
}
