/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/log_entry.h"
#include "cli/care.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "team/date.h"
#include "team/games.h"
#include <limits.h>
#include <stdio.h>
#include <string.h>

/// "6v4" into attackers and defenders. False when it is none.
static bool scan_numbers(const char *text, int *offence, int *defence) {
    const bool shaped = text[0] >= '0' && text[0] <= '9' && (text[1] == 'v' || text[1] == 'V') &&
                        text[2] >= '0' && text[2] <= '9' && text[3] == '\0';
    if (!shaped) return false;
    *offence = text[0] - '0';
    *defence = text[2] - '0';
    return true;
}

static const char *outcome_name(const void *self, int index) {
    (void)self;
    return bw_outcome_id((bw_outcome)index);
}

static bool take_outcome(const bw_args *args, const char *word, bw_entry *e) {
    e->outcome = bw_outcome_find(word);
    if (e->outcome != BW_OUTCOME_COUNT) return true;
    const char *near = bw_nearest_word(word, outcome_name, NULL);
    if (near)
        bw_usage(args->verb, "\"%s\" is no outcome; did you mean \"%s\"?", word, near);
    else
        bw_usage(args->verb,
                 "\"%s\" is no outcome; it is goal, save, wide, forced, unforced, ground-ball, "
                 "matched-up or whistle.",
                 word);
    return false;
}

static bool take_words(const bw_args *args, int first, bool any, bw_entry *e) {
    int at = first;
    if (at < args->operand_count && scan_numbers(args->operands[at], &e->offence, &e->defence))
        at++;
    else if (!any)
        return bw_usage(args->verb, "first say how many against how many, such as 6v4, not \"%s\".",
                        args->operands[at]) == BW_EXIT_OK;
    if (at < args->operand_count && !take_outcome(args, args->operands[at++], e)) return false;
    if (at == args->operand_count) return true;
    bw_usage(args->verb, "\"%s\" is one word too many.", args->operands[at]);
    return false;
}

/// "x,y" in the people's unit, or "" for unknown.
static bool take_shot(const bw_args *args, bw_entry *e) {
    const char *text = bw_option_text(args, "shot"), *at = text;
    if (!text) return true;
    e->shot_known = text[0] != '\0';
    e->shot = bw_v(0, 0);
    if (!e->shot_known) return true;
    if (bw_scan_decimal(&at, &e->shot.x) && *at++ == ',' && bw_scan_decimal(&at, &e->shot.y) &&
        *at == '\0') {
        e->shot = bw_scale(e->shot, bw_unit_length(bw_team_units(args)));
        return true;
    }
    bw_usage(args->verb, "--shot is a place such as 4,9 or -3.5,8, not \"%s\".", text);
    return false;
}

static bool take_out(const bw_args *args, bw_entry *e) {
    const char *at = bw_option_text(args, "out");
    if (!at) return true;
    for (e->out_count = 0; *at;) {
        const size_t length = strcspn(at, ", ");
        if (length > 0 && e->out_count == BW_MAX_OUT) {
            bw_usage(args->verb, "--out names at most %d men.", BW_MAX_OUT);
            return false;
        }
        if (length > 0) {
            bw_text text = bw_text_in(e->out[e->out_count++], BW_ID_SIZE);
            bw_put_n(&text, at, length);
        }
        at += length + strspn(at + length, ", ");
    }
    return true;
}

static bool take_seconds(const bw_args *args, bw_entry *e) {
    const char *text = bw_option_text(args, "seconds"), *at = text;
    if (!text) return true;
    if (bw_scan_decimal(&at, &e->seconds) && *at == '\0' && e->seconds >= 0) return true;
    bw_usage(args->verb, "--seconds is a number from 0 to %d, not \"%s\".", BW_MAX_BREAK_TIME,
             text);
    return false;
}

static bool take_texts(const bw_args *args, bw_entry *e) {
    const char *note = bw_option_text(args, "note"), *time = bw_option_text(args, "time");
    if (note && !bw_copy(e->note, sizeof e->note, note)) {
        bw_usage(args->verb, "--note is at most %d bytes long.", BW_NOTE_SIZE - 1);
        return false;
    }
    if (time && !bw_time_read(time, &e->time)) {
        bw_usage(args->verb, "--time is written like 2026-04-11T18:05Z, not \"%s\".", time);
        return false;
    }
    return true;
}

bool bw_load_entry(const bw_args *args, int first, bool any, bw_entry *e) {
    int revision = (int)e->revision;
    if (!take_words(args, first, any, e) || !take_seconds(args, e) || !take_shot(args, e) ||
        !take_out(args, e) || !take_texts(args, e) ||
        !bw_option_int(args, "passes", 0, BW_MAX_PASSES, &e->passes) ||
        !bw_option_int(args, "stage", 3, BW_MAX_SPOTS, &e->stage) ||
        !bw_option_int(args, "revision", 0, INT_MAX, &revision))
        return false;
    e->revision = revision;
    char why[BW_MESSAGE_SIZE];
    bw_text text = bw_text_in(why, sizeof why);
    if (bw_entry_check(e, &text) == BW_OK) return true;
    bw_usage(args->verb, "%s.", why);
    return false;
}

/// The game of --against and --date: found, or put in.
static int put_game(const bw_args *args, bw_team *team, const bw_known *known, bw_game *game) {
    bw_error error;
    bw_odd odd;
    if (!bw_copy(game->opponent, sizeof game->opponent, bw_option_text(args, "against")))
        return bw_usage(args->verb, "--against is at most %d bytes long.", BW_NAME_SIZE - 1);
    if (!bw_option_date(args, game->date, sizeof game->date)) return BW_EXIT_USAGE;
    if (bw_odd_game(known, game, &odd) && !bw_keep_odd(args, &odd)) return BW_EXIT_WRONG;
    if (bw_team_put_game(team, game, &error) != BW_OK)
        return bw_say_refusal(args->operands[0], &error);
    if (game->fresh)
        bw_say("Game %lld is new: %s, against %s.", (long long)game->id, game->date,
               game->opponent);
    return BW_EXIT_OK;
}

int bw_load_game(const bw_args *args, bw_team *team, const bw_known *known, bw_game *game) {
    int number = 0;
    const bool opponent = bw_option_given(args, "against");
    *game = (bw_game){.id = 0};
    if (!bw_option_int(args, "game", 1, INT_MAX, &number)) return BW_EXIT_USAGE;
    if (number > 0 && opponent) return bw_usage(args->verb, "give --game or --against, not both.");
    if (!opponent && bw_option_given(args, "date"))
        return bw_usage(args->verb, "--date is the day of a game: name it with --against, or say "
                                    "when the break was with --time.");
    if (opponent) return put_game(args, team, known, game);
    bw_error error;
    if (number == 0 || bw_team_game(team, number, game, &error) == BW_OK) return BW_EXIT_OK;
    return bw_say_refusal(args->operands[0], &error);
}

bool bw_make_client(bw_entry *entry) {
    unsigned char bytes[8];
    FILE *in = fopen("/dev/urandom", "rb");
    const bool made = in && fread(bytes, 1, sizeof bytes, in) == sizeof bytes;
    if (in) fclose(in);
    if (!made) return false;
    bw_text out = bw_text_in(entry->client, sizeof entry->client);
    bw_put(&out, "cli-");
    for (size_t i = 0; i < sizeof bytes; i++) {
        bw_put_char(&out, "0123456789abcdef"[bytes[i] >> 4]);
        bw_put_char(&out, "0123456789abcdef"[bytes[i] & 15]);
    }
    return true;
}
