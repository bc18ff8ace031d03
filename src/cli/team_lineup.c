/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team lineup: who goes where, and what each choice is worth.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/progress.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "cli/team_roster.h"
#include "file/json_stream.h"
#include "tune/who.h"
#include <stdlib.h>
#include <string.h>

typedef struct job {
    bw_squad *squad;
    int stage;
    bw_who_aim aim;
    bw_candidate men[BW_LINEUP_MEN];
    int man[BW_LINEUP_MEN]; ///< index in the squad
    int count;
    bw_who who;
} job;

const char *bw_who_aim_choice(int index) {
    static const char *const aims[] = {"margin", "worth", NULL};
    return aims[index];
}

static void put_who(FILE *out, const job *j, int man) {
    const bw_player *p = &j->squad->men[j->man[man]].player;
    char name[BW_INITIALS_SIZE + 16];
    snprintf(name, sizeof name, "#%d%s%s", p->jersey, p->initials[0] ? " " : "", p->initials);
    fprintf(out, "%-10s", name);
}

/// "0.3 s to spare", "0.2 s late"; late men by how they compare with the level.
static void put_cost(FILE *out, const job *j, int p) {
    const bw_who_place *place = &j->who.place[p];
    const double c = place->cost;
    if (j->aim == BW_WHO_WORTH)
        fprintf(out, "%.1f goals in 100 breaks %s", 100 * (c < 0 ? -c : c),
                c <= 0 ? "fewer" : "more");
    else if (place->idle)
        fputs("no tight run: no pass asks for a run from here", out);
    else if (p < j->who.spots)
        fprintf(out, "%.1f s %s in the tightest run", c < 0 ? -c : c, c <= 0 ? "to spare" : "late");
    else
        fprintf(out, "%.1f s %s than the level to the spot", c < 0 ? -c : c,
                c <= 0 ? "sooner" : "later");
}

static void put_swap(FILE *out, const job *j, const bw_who_place *place) {
    if (place->second < 0) {
        fprintf(out, place->fixed ? "; fixed there by you" : "; nobody else can");
        return;
    }
    fprintf(out, "; without him ");
    put_who(out, j, place->second);
    if (j->aim == BW_WHO_WORTH)
        fprintf(out, "there, %+.1f goals in 100", 100 * place->swap);
    else
        fprintf(out,
                place->swap < 0.05 ? "there, no run tighter" : "there, tightest run %.1f s tighter",
                place->swap);
}

static void print_text(FILE *out, const job *j) {
    const bw_stage *stage = &j->squad->scheme.stages[j->stage];
    fprintf(out, "Who goes where in the %s, by %s\n\n", stage->shape,
            j->aim == BW_WHO_WORTH ? "worth (typical play, the forecast)" : "the tightest run");
    for (int p = 0; p < j->who.place_count; p++) {
        const bw_who_place *place = &j->who.place[p];
        fprintf(out, "  %-20s ", place->name);
        put_who(out, j, place->man);
        put_cost(out, j, p);
        put_swap(out, j, place);
        if (j->men[place->man].legs.vmax <= 0)
            fputs("; no sprints in the file, level legs taken", out);
        fputc('\n', out);
    }
    if (j->aim == BW_WHO_WORTH)
        fprintf(out,
                "\nTypical play within six seconds: %.1f goals in 100 breaks with these men, %.1f "
                "with level legs. "
                "Differences under about 1 in 100 are within the model's own chance.\n",
                100 * j->who.chosen_typical, 100 * j->who.level_typical);
    fputs("\nLegs from straight sprints; reading, stick and courage are not in it. Your fixed "
          "choices are kept.\n",
          out);
}

static void print_json(FILE *out, const job *j) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "defenders", j->who.spots);
    bw_json_put_text(&json, "by", bw_who_aim_choice(j->aim));
    bw_json_put_text(&json, "unit", j->aim == BW_WHO_WORTH ? "goals a break" : "s");
    bw_json_put_open(&json, "places", '[');
    for (int p = 0; p < j->who.place_count; p++) {
        const bw_who_place *place = &j->who.place[p];
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "place", place->name);
        bw_json_put_bool(&json, "late_man", p >= j->who.spots);
        bw_json_put_number(&json, "jersey", j->men[place->man].jersey);
        bw_json_put_bool(&json, "no_tight_run", place->idle);
        bw_json_put_number(&json, "cost", place->cost);
        if (place->second >= 0) {
            bw_json_put_number(&json, "second", j->men[place->second].jersey);
            bw_json_put_number(&json, "swap", place->swap);
        }
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_put_number(&json, "worst", j->who.worst);
    bw_json_put_number(&json, "sum", j->who.sum);
    if (j->aim == BW_WHO_WORTH) {
        bw_json_put_number(&json, "typical", j->who.chosen_typical);
        bw_json_put_number(&json, "typical_level_legs", j->who.level_typical);
    }
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

static int refuse(const job *j, bw_status status, int unfilled) {
    if (status == BW_NO_ROOM) return bw_say_no_memory();
    if (status == BW_BAD_INPUT)
        bw_say_error(
            "the fixed choices contradict each other, or numbers are even with this stage: two "
            "players cannot be fixed to one spot, nor one to two.");
    else if (unfilled >= 0)
        bw_say_error(
            "nobody on the roster can play %s; say who can with `breakwater team player FILE "
            "JERSEY --spots`.",
            j->who.place[unfilled].name);
    else
        bw_say_error(
            "there are not enough players for all the places of this stage and its late men.");
    return BW_EXIT_WRONG;
}

static int choose_stage(const bw_args *args, const bw_scheme *scheme, int *stage) {
    int code = BW_EXIT_OK;
    *stage = bw_scheme_stage(scheme, 4);
    if (bw_option_given(args, "stage")) {
        *stage = bw_load_stage(args, scheme, &code);
        return *stage < 0 ? code : BW_EXIT_OK;
    }
    if (*stage < 0) *stage = 0;
    return code;
}

static int run_job(const bw_args *args, job *j) {
    int code = bw_load_squad(args, &j->squad);
    if (code != BW_EXIT_OK) return code;
    if (!j->squad->has_scheme) {
        bw_say_error(
            "the team file holds no scheme yet; name one: breakwater team lineup FILE SCHEME.");
        return BW_EXIT_WRONG;
    }
    code = choose_stage(args, &j->squad->scheme, &j->stage);
    if (code != BW_EXIT_OK) return code;
    const char *by = bw_option_text(args, "by");
    j->aim = by && strcmp(by, "worth") == 0 ? BW_WHO_WORTH : BW_WHO_MARGIN;
    j->count = bw_squad_candidates(j->squad, j->stage, j->men, j->man);
    int unfilled;
    const bw_watcher watch = bw_progress_begin("Trying men in places");
    const bw_status status = bw_who_choose(&j->squad->scheme, j->stage, j->men, j->count, j->aim,
                                           watch, &j->who, &unfilled);
    if (bw_progress_end()) return bw_progress_interrupted();
    if (status != BW_OK) return refuse(j, status, unfilled);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    (bw_option_given(args, "json") ? print_json : print_text)(out.stream, j);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_team_choose_lineup(const bw_args *args) {
    job *j = calloc(1, sizeof *j);
    if (!j) return bw_say_no_memory();
    const int code = run_job(args, j);
    bw_squad_drop(j->squad);
    free(j);
    return code;
}
