/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A team file with something of everything in it, and reading all of it again.
#ifndef BW_TESTS_TEAM_EVERYTHING_H
#define BW_TESTS_TEAM_EVERYTHING_H

#include "scheme/fresh.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/quiz.h"
#include "team/revisions.h"
#include "team/roster.h"
#include "team/settings.h"
#include "team/splits.h"

#include "harness.h"
#include "tests/team/random_entry.h"
#include <stdlib.h>

/// Fills an empty team file. False when that fails.
static inline int fill_everything(bw_team *team, int entries) {
    static bw_scheme scheme;
    bw_error error;
    bw_game game = {.date = "2026-04-11", .opponent = "Gullhaven Petrels"};
    bw_player player = {.jersey = 12, .initials = "A.B.", .spot_count = 1, .spots = {{"TL", true}}};
    bw_timed_split split = {12, "2026-03-02", 20, 3.3, "move"};
    bw_quiz_result quiz = {.jersey = 12, .time = 9, .code = "K7QX"};
    unsigned long long seed = 6;
    int64_t revision;
    int added, good = bw_team_begin(team, &error) == BW_OK;
    bw_scheme_fresh(0, 3, &scheme);
    good = good && bw_team_set(team, BW_SETTING_TEAM, "Terns", &error) == BW_OK &&
           bw_team_put_player(team, &player, &error) == BW_OK &&
           bw_team_add_splits(team, &split, 1, NULL, &error) == BW_OK &&
           bw_team_add_quiz(team, &quiz, NULL, &error) == BW_OK &&
           bw_team_put_game(team, &game, &error) == BW_OK &&
           bw_team_save_scheme(team, &scheme, 5, "first", &revision, NULL, &error) == BW_OK;
    for (int i = 0; good && i < entries; i++) {
        bw_entry e = random_entry(&seed, i);
        e.game = game.id;
        e.revision = revision;
        good = bw_team_add_entries(team, &e, 1, NULL, &added, &error) == BW_OK;
    }
    return bw_team_end(team, good ? BW_OK : BW_BAD_INPUT, &error) == BW_OK && good;
}

/// Reads all that is there. BW_OK, or the first refusal; a refusal has a sentence.
static inline bw_status read_everything(bw_team *team, bw_error *error) {
    static bw_scheme scheme;
    void *list;
    char value[BW_SETTING_SIZE];
    int count;
    bw_status status = bw_team_setting(team, BW_SETTING_TEAM, value, sizeof value, error);
#define READ(call)                                                                                 \
    do {                                                                                           \
        list = NULL;                                                                               \
        if (status == BW_OK) status = call;                                                        \
        free(list);                                                                                \
    } while (0)
    READ(bw_team_players(team, (bw_player **)&list, &count, error));
    READ(bw_team_splits(team, -1, (bw_timed_split **)&list, &count, error));
    READ(bw_team_quizzes(team, -1, (bw_quiz_result **)&list, &count, error));
    READ(bw_team_games(team, (bw_game **)&list, &count, error));
    READ(bw_team_entries(team, NULL, (bw_entry **)&list, &count, error));
    READ(bw_team_revisions(team, (bw_revision **)&list, &count, error));
#undef READ
    if (status == BW_OK) status = bw_team_scheme(team, 0, &scheme, NULL, error);
    return status == BW_NOT_FOUND ? BW_OK : status;
}

#endif
