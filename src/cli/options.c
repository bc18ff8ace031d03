/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/options.h"
#include "cli/say.h"
#include "core/text.h"
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/// "did you mean" goes no farther than this many slips.
enum { SLIPS = 3 };

const char *bw_nearest_word(const char *word, const char *(*candidate)(const void *, int),
                            const void *self) {
    const char *best = NULL;
    int best_distance = SLIPS + 1;
    for (int i = 0;; i++) {
        const char *name = candidate(self, i);
        if (!name) return best;
        if (strcasecmp(word, name) == 0) return name;
        int distance = bw_edit_distance(word, name, SLIPS);
        // A slip in every second letter is another word.
        if (distance * 2 > (int)strlen(name) || distance >= best_distance) continue;
        best = name;
        best_distance = distance;
    }
}

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
    const char *end = text;
    double value;
    if (bw_scan_decimal(&end, &value) && *end == '\0' && value >= low && value <= high &&
        value == (int)value) {
        *out = (int)value;
        return true;
    }
    bw_usage(args->verb, "--%s is a whole number from %d to %d, not \"%s\".", name, low, high,
             text);
    return false;
}

bool bw_scan_decimal(const char **text, double *out) {
    static const char digits[] = "0123456789";
    const char *start = *text, *p = start;
    if (*p == '-' || *p == '+') p++;
    size_t whole = strspn(p, digits), places = 0;
    p += whole;
    if (*p == '.') {
        places = strspn(p + 1, digits);
        p += 1 + places;
    }
    // More digits before the point than a field needs are slips of the keyboard; behind it other
    // programs write as many as a double has.
    if (whole + places == 0 || whole > 6 || places > 20) return false;
    char copy[32];
    size_t length = (size_t)(p - start);
    memcpy(copy, start, length);
    copy[length] = '\0';
    *out = strtod(copy, NULL);
    *text = p;
    return true;
}
