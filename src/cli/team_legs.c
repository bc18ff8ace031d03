/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team legs: each player's top speed and start from his sprints, and the time he has to spare on his spots.
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "cli/team_roster.h"
#include "core/level.h"
#include "file/json_stream.h"
#include "scheme/margin.h"
#include <stdlib.h>

/// His spot in a stage of the scheme, or -1.
static int spot_in(const bw_stage *stage, const char *code) {
    return stage->match_up ? -1 : bw_stage_spot(stage, code);
}

static void print_margin(FILE *out, const bw_scheme *scheme, const bw_stage *stage,
                         const char *spot, const bw_margin *g) {
    fprintf(out, "        %-3s in the %s: ", spot, stage->shape);
    if (g->rotations == 0) {
        fputs("no tight run: no pass asks for a run from there, so legs are not tried\n", out);
        return;
    }
    fprintf(out, "%.1f s %s, %s to %s", g->worst < 0 ? -g->worst : g->worst,
            g->worst < 0 ? "late in the tightest run" : "to spare in the tightest run",
            scheme->landmarks[g->from].name, scheme->landmarks[g->to].name);
    if (g->late > 1) fprintf(out, "; late in %d of %d", g->late, g->rotations);
    fputc('\n', out);
}

static void print_margins(FILE *out, const bw_squad *s, const bw_squad_man *m) {
    bool told[BW_MAX_PLAYER_SPOTS] = {false};
    for (int i = 0; i < s->scheme.stage_count; i++) {
        bw_margin margin[BW_MAX_SPOTS];
        bw_margins(&s->scheme, i, m->legs.fit.legs, margin);
        for (int k = 0; k < m->player.spot_count; k++) {
            const char *code = m->player.spots[k].spot;
            const int spot = spot_in(&s->scheme.stages[i], code);
            if (spot < 0) continue;
            print_margin(out, &s->scheme, &s->scheme.stages[i], code, &margin[spot]);
            told[k] = true;
        }
    }
    for (int k = 0; k < m->player.spot_count; k++) {
        if (!told[k])
            fprintf(out,
                    "        %-3s is no spot of a stage of this scheme with places of its own\n",
                    m->player.spots[k].spot);
    }
}

static void print_man(FILE *out, const bw_squad *s, const bw_squad_man *m) {
    char line[320];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_legs(&m->legs, s->units, &t);
    fprintf(out, "%3d  %-4s  %s\n", m->player.jersey, m->player.initials, line);
    if (s->has_scheme && m->legs.fit.verdict == BW_SPRINT_FITTED) print_margins(out, s, m);
}

static void print_text(FILE *out, const bw_squad *s) {
    fprintf(out, "Legs from timed sprints, the start of the clock reckoned in; \"start\" is the "
                 "time to 63 %% of top "
                 "speed.\n\n");
    int fitted = 0;
    for (int i = 0; i < s->count; i++) {
        print_man(out, s, &s->men[i]);
        fitted += s->men[i].legs.fit.verdict == BW_SPRINT_FITTED;
    }
    if (s->count == 0) fputs("There are no players in the file.\n", out);
    if (fitted > 0 && s->has_scheme)
        fprintf(out,
                "\nTime to spare: until it matters that the player is in place (the ball wound up, "
                "thrown and made ready, the reaction taken off), less the run. By the model, %s; "
                "a straight sprint says nothing of turning.\n",
                bw_level_at(s->scheme.level)->name);
}

static void json_man(bw_json *json, const bw_squad *s, const bw_squad_man *m) {
    const bw_sprint *f = &m->legs.fit;
    bw_json_open(json, '{');
    bw_json_put_number(json, "jersey", m->player.jersey);
    bw_json_put_bool(json, "fitted", f->verdict == BW_SPRINT_FITTED);
    if (f->verdict != BW_SPRINT_FITTED) {
        bw_json_put_text(json, "why", bw_sprint_why(f->verdict));
        bw_json_close(json, '}');
        return;
    }
    bw_json_put_number(json, "vmax_m_s", f->legs.vmax);
    bw_json_put_number(json, "tau_s", f->legs.tau);
    if (f->vmax_error > 0) {
        bw_json_put_number(json, "vmax_standard_error", f->vmax_error);
        bw_json_put_number(json, "tau_standard_error", f->tau_error);
        bw_json_put_number(json, "residual_s", f->residual);
    }
    bw_json_put_number(json, "clock_late_s", f->late);
    bw_json_put_number(json, "splits", f->splits);
    bw_json_put_text(json, "date", m->legs.date);
    bw_json_put_open(json, "margins", '[');
    for (int i = 0; s->has_scheme && i < s->scheme.stage_count; i++) {
        bw_margin margin[BW_MAX_SPOTS];
        bw_margins(&s->scheme, i, f->legs, margin);
        for (int k = 0; k < m->player.spot_count; k++) {
            const int spot = spot_in(&s->scheme.stages[i], m->player.spots[k].spot);
            if (spot < 0) continue;
            bw_json_open(json, '{');
            bw_json_put_text(json, "spot", m->player.spots[k].spot);
            bw_json_put_number(json, "defenders", s->scheme.stages[i].defenders);
            bw_json_put_number(json, "rotations", margin[spot].rotations);
            if (margin[spot].rotations > 0) {
                bw_json_put_number(json, "worst_s", margin[spot].worst);
                bw_json_put_number(json, "mean_s", margin[spot].mean);
                bw_json_put_number(json, "late", margin[spot].late);
            }
            bw_json_close(json, '}');
        }
    }
    bw_json_close(json, ']');
    bw_json_close(json, '}');
}

static void print_json(FILE *out, const bw_squad *s) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "players", '[');
    for (int i = 0; i < s->count; i++)
        json_man(&json, s, &s->men[i]);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

int bw_team_show_legs(const bw_args *args) {
    bw_squad *s;
    int code = bw_load_squad(args, &s);
    if (code != BW_EXIT_OK) return code;
    bw_out out;
    if (!bw_out_open(args, &out)) {
        code = BW_EXIT_FILE;
    } else {
        (bw_option_given(args, "json") ? print_json : print_text)(out.stream, s);
        code = bw_out_close(&out, BW_EXIT_OK);
    }
    bw_squad_drop(s);
    return code;
}
