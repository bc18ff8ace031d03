/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/forget_choice.h"
#include "cli/say.h"
#include "cli/term.h"
#include <stdlib.h>
#include <string.h>

void bw_place_print(FILE *out, const bw_place *place, int number) {
    fprintf(out, "%3d  %s", number, place->where);
    if (place->first != place->last)
        fprintf(out, " (in revisions %lld to %lld)", (long long)place->first,
                (long long)place->last);
    else if (place->first > 0)
        fprintf(out, " (in revision %lld)", (long long)place->first);
    fprintf(out, ": %s%s\n       %s[%s]%s\n", bw_mention_words(place->kind),
            place->sure ? ", struck unless you leave it" : "", place->before, place->said,
            place->after);
}

void bw_place_show(const bw_place *place, int number) {
    FILE *talk = bw_term_open(stderr);
    if (!talk) return;
    bw_place_print(talk, place, number);
    bw_term_close(talk);
}

/// "1,3,5-8" or "all", as marks in `named`. False when it is not that (said).
static bool take_list(const bw_args *args, const char *option, int count, bool *named) {
    const char *text = bw_option_text(args, option), *at = text;
    if (!text) return true;
    if (strcmp(text, "all") == 0) {
        memset(named, true, (size_t)count * sizeof *named);
        return true;
    }
    do {
        char *end;
        const long first = strtol(at, &end, 10);
        long last = first;
        if (*end == '-' && end > at) last = strtol(end + 1, &end, 10);
        if (end == at || first < 1 || last < first || last > count || (*end && *end != ',')) {
            bw_usage(args->verb,
                     "--%s is \"all\" or numbers of the list (1 to %d) such as 1,3-5, not \"%s\".",
                     option, count, text);
            return false;
        }
        for (long k = first; k <= last; k++)
            named[k - 1] = true;
        at = *end ? end + 1 : end;
    } while (*at);
    return true;
}

/// Numbers mean places of one list; in another they may be others.
static bool list_is_this(const bw_args *args, const bw_places *places) {
    char seen[16];
    const char *said = bw_option_text(args, "seen"), *strike = bw_option_text(args, "strike"),
               *leave = bw_option_text(args, "leave");
    const bool numbers =
        (strike && strcmp(strike, "all") != 0) || (leave && strcmp(leave, "all") != 0);
    snprintf(seen, sizeof seen, "%08x", places->seen);
    if (!said && numbers)
        bw_usage(args->verb, "numbers are those of a list: first team forget ... --list, then give "
                             "its --seen code with them.");
    else if (said && strcmp(said, seen) != 0)
        bw_usage(args->verb, "the places are not those of list %s any more; look at --list again.",
                 said);
    return said ? strcmp(said, seen) == 0 : !numbers;
}

static bw_forget_choice choose(const bw_args *args, const bw_places *places, const bool *struck,
                               const bool *left, bool *strike) {
    const bool by_strike = bw_option_given(args, "strike"),
               by_leave = bw_option_given(args, "leave");
    for (int i = 0; i < places->count; i++) {
        const bool sure = places->list[i].sure;
        if (struck[i] && left[i]) {
            bw_usage(args->verb, "place %d is in both --strike and --leave.", i + 1);
            return BW_CHOICE_BAD;
        }
        if (by_strike && by_leave && !struck[i] && !left[i] && !sure) {
            bw_usage(args->verb, "place %d is in neither --strike nor --leave.", i + 1);
            return BW_CHOICE_BAD;
        }
        strike[i] = struck[i] || (!left[i] && (sure || !by_strike));
    }
    return BW_CHOICE_MADE;
}

bw_forget_choice bw_choice_of_options(const bw_args *args, const bw_places *places, bool *strike) {
    for (int i = 0; i < places->count; i++)
        strike[i] = places->list[i].sure;
    if (!list_is_this(args, places)) return BW_CHOICE_BAD;
    if (!bw_option_given(args, "strike") && !bw_option_given(args, "leave"))
        return places->sure == places->count ? BW_CHOICE_MADE : BW_CHOICE_OPEN;
    bool *struck = calloc((size_t)places->count + 1, sizeof *struck);
    bool *left = calloc((size_t)places->count + 1, sizeof *left);
    bw_forget_choice made = BW_CHOICE_BAD;
    if (!struck || !left)
        bw_say_no_memory();
    else if (take_list(args, "strike", places->count, struck) &&
             take_list(args, "leave", places->count, left))
        made = choose(args, places, struck, left, strike);
    free(struck);
    free(left);
    return made;
}

/// 'y', 'n' or 'q'.
static char answer(void) {
    char line[64];
    for (;;) {
        fputs("       Strike it? y (yes), n (no, it stays), q (stop, nothing is changed): ",
              stderr);
        if (!fgets(line, sizeof line, stdin)) return 'q';
        const char *end = strchr(line, '\n');
        for (int c = 0; !end && c != '\n' && c != EOF;)
            c = getchar(); // the rest of a long line
        if (end == line + 1 && strchr("ynq", line[0])) return line[0];
    }
}

bool bw_choice_ask(const bw_places *places, bool *strike) {
    for (int i = 0; i < places->count; i++) {
        bw_place_show(&places->list[i], i + 1);
        if (places->list[i].sure) continue;
        const char said = answer();
        if (said == 'q') return false;
        strike[i] = said == 'y';
    }
    return true;
}
