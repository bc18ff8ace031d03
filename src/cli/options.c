/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/options.h"
#include "cli/say.h"
#include "core/text.h"
#include <string.h>

static const char *option_name(const void *self, int index) {
    const bw_option *option = bw_command_option(self, index);
    return option ? option->name : NULL;
}

static int find_long(const bw_command *verb, const char *name, size_t length) {
    for (int i = 0;; i++) {
        const bw_option *option = bw_command_option(verb, i);
        if (!option) return -1;
        if (strncmp(option->name, name, length) == 0 && option->name[length] == '\0') return i;
    }
}

static int find_letter(const bw_command *verb, char letter) {
    for (int i = 0;; i++) {
        const bw_option *option = bw_command_option(verb, i);
        if (!option) return -1;
        if (option->letter == letter) return i;
    }
}

static const char *choice_name(const void *self, int index) {
    const bw_option *option = self;
    return option->choice(index);
}

/// Says what the value of an option may be.
static bool refuse_value(const bw_command *verb, const bw_option *option, const char *value) {
    const char *near = bw_nearest_word(value, choice_name, option);
    if (near) {
        bw_usage(verb, "--%s cannot be \"%s\"; did you mean \"%s\"?", option->name, value, near);
        return false;
    }
    char list[512];
    bw_text text = bw_text_in(list, sizeof list);
    for (int i = 0; option->choice(i); i++) {
        if (i > 0) bw_put(&text, option->choice(i + 1) ? ", " : " or ");
        bw_put(&text, option->choice(i));
    }
    bw_usage(verb, "--%s cannot be \"%s\"; it is %s.", option->name, value, list);
    return false;
}

static bool take_value(const bw_command *verb, int index, const char *value, bw_args *args) {
    const bw_option *option = bw_command_option(verb, index);
    if (args->given[index]) {
        bw_usage(verb, "--%s is given twice; give it once.", option->name);
        return false;
    }
    args->given[index] = value;
    if (!option->choice) return true;
    for (int i = 0; option->choice(i); i++) {
        if (strcmp(option->choice(i), value) == 0) return true;
    }
    return refuse_value(verb, option, value);
}

/// The words not read yet.
typedef struct words {
    int count, next;
    char *const *word;
} words;

static bool missing_value(const bw_command *verb, const bw_option *option) {
    bw_usage(verb, "--%s needs a value: --%s %s.", option->name, option->name, option->value);
    return false;
}

static bool read_long(const bw_command *verb, words *in, bw_args *args) {
    const char *word = in->word[in->next++] + 2;
    size_t length = strcspn(word, "=");
    int index = find_long(verb, word, length);
    if (index < 0) {
        char name[64];
        bw_text text = bw_text_in(name, sizeof name);
        bw_put_n(&text, word, length);
        const char *near = bw_nearest_word(name, option_name, verb);
        if (near)
            bw_usage(verb, "there is no option --%s; did you mean --%s?", name, near);
        else
            bw_usage(verb, "there is no option --%s.", name);
        return false;
    }
    const bw_option *option = bw_command_option(verb, index);
    bool joined = word[length] == '=';
    if (!option->value) {
        if (!joined) {
            args->given[index] = "";
            return true;
        }
        bw_usage(verb, "--%s takes no value.", option->name);
        return false;
    }
    if (joined) return take_value(verb, index, word + length + 1, args);
    if (in->next >= in->count) return missing_value(verb, option);
    return take_value(verb, index, in->word[in->next++], args);
}

static bool read_letters(const bw_command *verb, words *in, bw_args *args) {
    const char *letters = in->word[in->next++] + 1;
    for (; *letters; letters++) {
        int index = find_letter(verb, *letters);
        if (index < 0) {
            bw_usage(verb, "there is no option -%c.", *letters);
            return false;
        }
        const bw_option *option = bw_command_option(verb, index);
        if (!option->value) {
            args->given[index] = "";
            continue;
        }
        if (letters[1]) return take_value(verb, index, letters + 1, args);
        if (in->next >= in->count) return missing_value(verb, option);
        return take_value(verb, index, in->word[in->next++], args);
    }
    return true;
}

static bool take_operand(const bw_command *verb, const char *word, bw_args *args) {
    if (args->operand_count >= verb->most) {
        if (verb->most == 0)
            bw_usage(verb, "%s takes no file or other word, but got \"%s\".", verb->name, word);
        else
            bw_usage(verb, "\"%s\" is one word too many for %s.", word, verb->name);
        return false;
    }
    args->operands[args->operand_count++] = word;
    return true;
}

/// Help and version are answered whatever else is wrong or missing.
static bool wants_answer(const bw_args *args) {
    return bw_option_given(args, "help") || bw_option_given(args, "version");
}

bool bw_options_read(const bw_command *verb, int count, char *const *word, bw_args *args) {
    *args = (bw_args){.verb = verb};
    words in = {count, 0, word};
    bool options_over = false;
    while (in.next < in.count) {
        const char *next = in.word[in.next];
        bool good;
        if (!options_over && strcmp(next, "--") == 0) {
            options_over = true;
            in.next++;
            continue;
        }
        if (options_over || next[0] != '-' || next[1] == '\0') {
            good = take_operand(verb, next, args);
            in.next++;
        } else if (next[1] == '-') {
            good = read_long(verb, &in, args);
        } else {
            good = read_letters(verb, &in, args);
        }
        if (!good) return false;
        if (wants_answer(args)) return true;
    }
    if (args->operand_count < verb->least) {
        bw_usage(verb, "%s needs more: breakwater %s %s.", verb->name, verb->name, verb->operands);
        return false;
    }
    return true;
}

static int index_of(const bw_args *args, const char *name) {
    int index = find_long(args->verb, name, strlen(name));
    BW_ASSERT(index >= 0);
    return index;
}

const char *bw_option_text(const bw_args *args, const char *name) {
    int index = index_of(args, name);
    return args->given[index] ? args->given[index] : bw_command_option(args->verb, index)->standard;
}

bool bw_option_given(const bw_args *args, const char *name) {
    return args->given[index_of(args, name)] != NULL;
}

bool bw_option_int(const bw_args *args, const char *name, int low, int high, int *out) {
    const char *text = bw_option_text(args, name);
    if (!text) return true;
    if (bw_scan_whole(text, low, high, out)) return true;
    bw_usage(args->verb, "--%s is a whole number from %d to %d, not \"%s\".", name, low, high,
             text);
    return false;
}

static const char *value_of(const void *self, const char *name) {
    return bw_option_text(self, name);
}

bw_asked bw_ask_options(const bw_args *args) {
    return (bw_asked){value_of, args, "--", 50, 100000, ""};
}

int bw_say_asked(const bw_asked *ask, bw_status status) {
    const bw_args *args = ask->self;
    const char *stop = ask->why[0] && ask->why[strlen(ask->why) - 1] == '?' ? "" : ".";
    if (status == BW_OK) return BW_EXIT_OK;
    if (status == BW_BAD_INPUT) return bw_usage(args->verb, "%s%s", ask->why, stop);
    bw_say_error("%s%s", ask->why, stop);
    return BW_EXIT_WRONG;
}

int bw_load_order(const bw_args *args, bw_status (*read)(bw_asked *ask, bw_order *order),
                  bw_order *order) {
    bw_asked ask = bw_ask_options(args);
    return bw_say_asked(&ask, read(&ask, order));
}
