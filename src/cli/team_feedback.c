/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team feedback: what the team's own log says of passes, shots and speed of play, before and after; and with
/// --apply, kept for `test --team`.
#include "cli/out.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "cli/team_level.h"
#include "core/feedback.h"
#include "core/maths.h"
#include "core/typical.h"
#include "file/json_stream.h"
#include "scheme/fresh.h"
#include "team/breaks.h"
#include "team/revisions.h"
#include "trial/standard.h"
#include <stdlib.h>

typedef struct job {
    bw_scheme scheme;
    bw_ground ground;
    bw_break begun;
    bw_shot_table table;
    bw_forecast forecast;
    bw_feedback feedback;
} job;

/// Chance of a shot with time and room, a mean over four places in front (8 and 12 yards out).
static double danger(const bw_level *level, void *self) {
    job *j = self;
    static const double places[][2] = {{0, 8}, {5, 7}, {0, 12}, {7, 9}};
    double sum = 0;
    bw_shot_build(level, bw_field_at(j->scheme.field), &j->table);
    for (int i = 0; i < BW_COUNT(places); i++)
        sum += bw_shot_worth(&j->table,
                             bw_scale(bw_v(places[i][0], places[i][1]), BW_METRES_PER_YARD));
    return sum / BW_COUNT(places);
}

/// The figures of a forecast.
static bw_feedback_own own_of(const bw_forecast *f) {
    double thrown = 0, kept = 0, seconds = 0;
    for (int i = 0; i < f->use_count; i++) {
        thrown += f->use[i].share;
        kept += f->use[i].share * f->use[i].kept;
    }
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        seconds += (t - 0.5) * (f->worth[t] - f->worth[t - 1]);
    const double worth = f->worth[BW_MAX_SECONDS];
    return (bw_feedback_own){.completion = thrown > 0 ? bw_clamp(kept / thrown, 0.05, 0.995) : 0.9,
                             .shot = f->shots > 0 ? bw_clamp(worth / f->shots, 0.02, 0.95) : 0.3,
                             .goal_s = worth > 0 ? seconds / worth : 5};
}

/// What the model's standard break comes to. BW_LIMIT: cancelled; BW_NO_ROOM: no memory.
static bw_status play_own(job *j, bw_watcher watch, bw_feedback_own *own) {
    void *memory = malloc(bw_typical_size());
    if (!memory) return BW_NO_ROOM;
    bw_status status = bw_ground_build(&j->scheme, NULL, &j->ground, NULL);
    const bw_break_def def = bw_standard_break(&j->scheme);
    if (status == BW_OK) status = bw_break_begin(&j->ground, &def, &j->begun, NULL);
    const bw_typical_def typical = bw_typical_default();
    if (status == BW_OK)
        status = bw_typical_begin(&j->begun, &j->begun.start, &typical, memory, bw_typical_size(),
                                  &j->forecast);
    int done = 0;
    bool more = status == BW_OK;
    while (more && !bw_cancelled(&watch)) {
        more = bw_typical_step(memory);
        bw_tell(&watch, typical.rollouts * ++done / BW_BUNDLES, typical.rollouts);
    }
    free(memory);
    *own = own_of(&j->forecast);
    return more ? BW_LIMIT : status;
}

static void print_figure(FILE *out, const char *what, const bw_feedback_figure *f, double weight,
                         const char *cases, int decimals, double scale, const char *unit) {
    fprintf(out, "  %-34s before %.*f%s, after %.*f%s", what, decimals, scale * f->level, unit,
            decimals, scale * f->after, unit);
    if (f->cases == 0)
        fprintf(out, "; none seen yet\n");
    else
        fprintf(out, "; seen %.*f%s in %d %s, the level counts as %.0f\n", decimals,
                scale * f->seen, unit, f->cases, cases, weight);
}

static void print_text(FILE *out, const bw_feedback *f, bool applied) {
    fprintf(out, "What the log says of the %s level's own figures\n\n", f->level.name);
    print_figure(out, "a pass in a break", &f->completion, BW_FEEDBACK_PASSES, "passes", 0, 100,
                 " in 100 caught");
    print_figure(out, "a shot in a break", &f->shot, BW_FEEDBACK_SHOTS, "shots", 0, 100,
                 " in 100 score");
    print_figure(out, "from the start to a goal", &f->goal_s, BW_FEEDBACK_GOALS, "goals", 1, 1,
                 " s");
    fputs("\nBefore: what the model's standard break comes to, typical play. The level's figure is "
          "kept as if so many "
          "cases had been seen already; passes, shots and the time to release move by as much.\n",
          out);
    fputs(applied ? "Applied: `breakwater test SCHEME --team FILE` uses them. `team feedback FILE "
                    "--apply off` ends it.\n"
                  : "Nothing is changed. With --apply on they are kept, for `breakwater test "
                    "SCHEME --team FILE`.\n",
          out);
}

static void json_figure(bw_json *json, const char *key, const bw_feedback_figure *f,
                        double weight) {
    const struct {
        const char *key;
        double value;
    } values[] = {{"before", f->level},
                  {"seen", f->seen},
                  {"n", f->cases},
                  {"weight", weight},
                  {"after", f->after}};
    bw_json_put_open(json, key, '{');
    for (int i = 0; i < BW_COUNT(values); i++) {
        bw_json_key(json, values[i].key);
        bw_json_number(json, values[i].value);
    }
    bw_json_close(json, '}');
}

static void print_json(FILE *out, const bw_feedback *f, bool applied) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    json_figure(&json, "pass_caught", &f->completion, BW_FEEDBACK_PASSES);
    json_figure(&json, "goals_a_shot", &f->shot, BW_FEEDBACK_SHOTS);
    json_figure(&json, "seconds_to_a_goal", &f->goal_s, BW_FEEDBACK_GOALS);
    bw_json_put_bool(&json, "applied", applied);
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

/// BW_LIMIT: interrupted.
static bw_status load(bw_team *team, job *j, bw_error *error) {
    bw_status status = bw_team_scheme(team, 0, &j->scheme, NULL, error);
    if (status == BW_NOT_FOUND) {
        bw_scheme_fresh(0, 3, &j->scheme);
        status = BW_OK;
    }
    bw_entry *entries = NULL;
    int count = 0;
    bw_feedback_own own;
    if (status == BW_OK) status = bw_team_entries(team, NULL, &entries, &count, error);
    if (status == BW_OK) {
        status = play_own(j, bw_progress_begin("Playing the standard break"), &own);
        if (bw_progress_end()) status = BW_LIMIT;
        if (status == BW_NO_ROOM)
            *error = (bw_error){.status = BW_NO_ROOM, .message = BW_NO_MEMORY};
    }
    if (status == BW_OK)
        bw_feedback_of(entries, count, bw_level_at(j->scheme.level), own, danger, j, &j->feedback);
    free(entries);
    return status;
}

static int run_job(const bw_args *args, job *j) {
    const char *apply = bw_option_text(args, "apply");
    bw_team *team;
    bw_error error = {0};
    bool applied = false;
    int code = bw_open_team(args, apply ? BW_TEAM_WRITE : BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    bw_status status = load(team, j, &error);
    if (status == BW_LIMIT) {
        bw_team_close(team);
        return bw_progress_interrupted();
    }
    if (status == BW_OK && apply) {
        applied = bw_same(apply, "on");
        status = bw_team_keep_level(team, applied ? &j->feedback.level : NULL, &error);
    } else if (status == BW_OK) {
        bw_level kept = j->feedback.level;
        status = bw_team_own_level(team, &kept, &applied, &error);
    }
    if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    (bw_option_given(args, "json") ? print_json : print_text)(out.stream, &j->feedback, applied);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_team_give_feedback(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    const int code = run_job(args, j);
    free(j);
    return code;
}

const char *bw_on_off_choice(int index) {
    static const char *const words[] = {"on", "off", NULL};
    return words[index];
}
