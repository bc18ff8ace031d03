/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Captions. One verb phrase a duty; the unit's caption groups men of one duty so that a chart never
/// needs more than six short sentences.
#include "scheme/caption.h"

#include "scheme/catalogue.h"

#define YD BW_METRES_PER_YARD

static const double at_landmark = 1.5 * YD; ///< so near a landmark the ball is "at" it
static const double wide = 4 * YD;          ///< beyond this the ball is to one side
static const double on_wing = 8 * YD;       ///< ... and beyond this on the wing
static const double up_top = 11 * YD;       ///< a ball this far out is up top
static const double high_man = 7 * YD;      ///< a man this far out stands high
static const double moved = 2.5 * YD;       ///< a man this far from home has gone somewhere
static const double lets_come = 2 * YD; ///< ball this far beyond the cushion: nobody goes to it yet

/// Tenths of the people's unit, so that what is tested against zero is what is printed.
static double tenths(bw_units units, double metres) {
    return bw_round_to(bw_in_unit(units, metres), 10);
}

void bw_say_place(bw_units units, bw_vec at, bw_text *out) {
    const double x = tenths(units, at.x), y = tenths(units, at.y), unit = bw_unit_length(units);
    bw_put_sentence(out, (bw_voice){.units = units}, &bw_s_place,
                    bw_as_part("across", x == 0  ? &bw_s_place_middle
                                         : x > 0 ? &bw_s_place_right
                                                 : &bw_s_place_left),
                    bw_as_part("along", y == 0  ? &bw_s_place_line
                                        : y > 0 ? &bw_s_place_out
                                                : &bw_s_place_behind),
                    bw_as_length("x", bw_abs(x) * unit), bw_as_length("y", bw_abs(y) * unit));
}

bw_arg bw_as_place(const char *name, bw_units units, bw_vec at) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_place(units, at, &own);
    return arg;
}

static int nearest_landmark(const bw_scheme *scheme, bw_vec ball) {
    int best = -1;
    for (int l = 0; l < scheme->landmark_count; l++) {
        double d = bw_distance(scheme->landmarks[l].at, ball);
        if (d > at_landmark) continue;
        if (best < 0 || d < bw_distance(scheme->landmarks[best].at, ball)) best = l;
    }
    return best;
}

void bw_say_ball(const bw_scheme *scheme, bw_vec ball, bw_text *out) {
    int landmark = nearest_landmark(scheme, ball);
    if (landmark >= 0) {
        bw_put(out, scheme->landmarks[landmark].name);
        return;
    }
    const bw_sentence *where = ball.y < 0                 ? &bw_s_ball_behind
                               : ball.y >= up_top         ? &bw_s_ball_top
                               : bw_abs(ball.x) < on_wing ? &bw_s_ball_front
                               : ball.x > 0               ? &bw_s_ball_right_wing
                                                          : &bw_s_ball_left_wing;
    const bw_sentence *side = ball.x > wide    ? &bw_s_ball_side_right
                              : ball.x < -wide ? &bw_s_ball_side_left
                                               : NULL;
    bw_put_sentence(out, bw_voice_of(scheme), where, bw_as_part("side", side));
}

static bool begins_with(const char *text, const char *word) {
    while (*word && *text == *word) {
        text++;
        word++;
    }
    return *word == '\0' && (*text == ' ' || *text == '\0');
}

static bool ends_with(const char *text, const char *word) {
    size_t all = bw_text_length(text), n = bw_text_length(word);
    return all >= n && bw_same(text + all - n, word);
}

/// "behind the goal" stands as it is; the hole is a place one is in, a wing one is on.
static const char *preposition(const char *place) {
    static const char *const words[] = {"behind", "in",    "on",     "at",
                                        "up",     "under", "beside", "near"};
    for (int i = 0; i < BW_COUNT(words); i++) {
        if (begins_with(place, words[i])) return "";
    }
    if (begins_with(place, "the")) return "in ";
    return ends_with(place, " wing") ? "on the " : "at ";
}

void bw_say_at(const bw_scheme *scheme, bw_vec ball, bw_text *out) {
    char place[BW_NAME_SIZE + 32];
    bw_text name = bw_text_in(place, sizeof place);
    bw_say_ball(scheme, ball, &name);
    bw_put(out, preposition(place));
    bw_put(out, place);
}

bw_arg bw_as_ball(const char *name, const bw_scheme *scheme, bw_vec ball) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_ball(scheme, ball, &own);
    return arg;
}

bw_arg bw_as_at(const char *name, const bw_scheme *scheme, bw_vec ball) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_at(scheme, ball, &own);
    return arg;
}

/// Its first letter is made large if it is one of ASCII's; others stay as they are.
void bw_say_first(const char *name, bw_text *out) {
    char c = *name;
    if (c >= 'a' && c <= 'z') {
        bw_put_char(out, (char)(c - 'a' + 'A'));
        name++;
    }
    bw_put(out, name);
}

/// What a man does: of him, and to himself on his own page.
typedef struct phrase {
    const bw_sentence *he, *you;
} phrase;

static phrase crease_verb(const bw_spot *spot, bw_vec at) {
    if (bw_distance(spot->home, at) < moved) return (phrase){&bw_s_does_crease, &bw_s_do_crease};
    return spot->home.y - at.y > moved ? (phrase){&bw_s_does_drop, &bw_s_do_drop}
                                       : (phrase){&bw_s_does_move, &bw_s_do_move};
}

static phrase ball_verb(const bw_stage *stage, bw_vec at, const bw_vec *ball) {
    if (!ball) return (phrase){&bw_s_does_ball, &bw_s_do_ball};
    if (ball->y < 0 && at.y >= 0) return (phrase){&bw_s_does_meet, &bw_s_do_meet};
    if (bw_distance(at, *ball) <= stage->rule.cushion + lets_come)
        return (phrase){&bw_s_does_ball, &bw_s_do_ball};
    return bw_abs(ball->x) >= on_wing ? (phrase){&bw_s_does_softly, &bw_s_do_softly}
                                      : (phrase){&bw_s_does_wait, &bw_s_do_wait};
}

/// What a spot does, as a verb for one man. `ball` may be NULL when it is not known.
static phrase verb(const bw_stage *stage, int spot, const bw_station *station, const bw_vec *ball) {
    switch (station->duty) {
    case BW_DUTY_BALL: return ball_verb(stage, station->at, ball);
    case BW_DUTY_ADJACENT: return (phrase){&bw_s_does_adjacent, &bw_s_do_adjacent};
    case BW_DUTY_CREASE: return crease_verb(&stage->spots[spot], station->at);
    case BW_DUTY_BACKSIDE:
        return station->at.y >= high_man ? (phrase){&bw_s_does_high, &bw_s_do_high}
                                         : (phrase){&bw_s_does_low, &bw_s_do_low};
    case BW_DUTY_HOLD: return (phrase){&bw_s_does_hold, &bw_s_do_hold};
    default: return (phrase){&bw_s_does_man, &bw_s_do_man};
    }
}

/// Helping next to the ball or away from it is quiet work; whoever has something of his own says so.
static bool calls_there(const bw_stage *stage, int spot, const bw_station *station) {
    return stage->spots[spot].call[0] && station->duty != BW_DUTY_ADJACENT &&
           station->duty != BW_DUTY_BACKSIDE;
}

/// What fills the places {job} and {calling} of a sentence for a player, and {call} within.
#define YOUR_JOB(stage, spot, station, ball)                                                       \
    bw_as_part("job", verb(stage, spot, station, &(ball)).you),                                    \
        bw_as_part("calling", calls_there(stage, spot, station) ? &bw_s_your_call : NULL),         \
        bw_as_word("call", (stage)->spots[spot].call)

void bw_say_your_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out) {
    const bw_stage *s = &scheme->stages[stage];
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_your_job, YOUR_JOB(s, spot, station, ball));
}

void bw_say_you(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_vec ball, bw_text *out) {
    const bw_stage *s = &scheme->stages[stage];
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_you, bw_as_at("at", scheme, ball),
                    YOUR_JOB(s, spot, station, ball));
}

void bw_say_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_text *out) {
    const bw_stage *s = &scheme->stages[stage];
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_job_there,
                    bw_as_word("spot", s->spots[spot].name),
                    bw_as_part("does", verb(s, spot, station, NULL).he),
                    bw_as_place("place", scheme->units, station->at));
}

/// Who has a duty, in the stage's order.
typedef struct men {
    int count;
    int spot[BW_MAX_SPOTS];
} men;

static men with_duty(const bw_stage *stage, const bw_station *stations, bw_duty duty) {
    men m = {0};
    for (int s = 0; s < stage->defenders; s++) {
        if (stations[s].duty == duty) m.spot[m.count++] = s;
    }
    return m;
}

/// A unit whose caption is being made.
typedef struct unit {
    const bw_stage *stage;
    const bw_station *stations;
    bw_voice voice;
    bw_text *out;
} unit;

/// One sentence for each man.
static void say_each(const unit *u, bw_duty duty, const bw_vec *ball) {
    men m = with_duty(u->stage, u->stations, duty);
    for (int i = 0; i < m.count; i++)
        bw_put_sentence(
            u->out, u->voice, &bw_s_unit_one, bw_as_word("spot", u->stage->spots[m.spot[i]].name),
            bw_as_part("does", verb(u->stage, m.spot[i], &u->stations[m.spot[i]], ball).he));
}

/// Two or three men in one sentence: "Low left and top right are adjacent."
static void say_together(const unit *u, const men *m, const bw_sentence *sentence) {
    char names[BW_MAX_SPOTS * (BW_NAME_SIZE + 5)];
    bw_text t = bw_text_in(names, sizeof names);
    for (int i = 0; i < m->count; i++) {
        if (i > 0) bw_put(&t, i == m->count - 1 ? " and " : ", ");
        bw_put(&t, u->stage->spots[m->spot[i]].name);
    }
    bw_put_sentence(u->out, u->voice, sentence, bw_as_word("spots", names));
}

static void say_adjacent(const unit *u) {
    men m = with_duty(u->stage, u->stations, BW_DUTY_ADJACENT);
    if (m.count == 2)
        say_together(u, &m, &bw_s_unit_adjacent);
    else
        say_each(u, BW_DUTY_ADJACENT, NULL);
}

static void say_backside(const unit *u) {
    men m = with_duty(u->stage, u->stations, BW_DUTY_BACKSIDE);
    int high = 0;
    for (int i = 0; i < m.count; i++)
        high += u->stations[m.spot[i]].at.y >= high_man;
    if (m.count < 2 || m.count > 3)
        say_each(u, BW_DUTY_BACKSIDE, NULL);
    else
        say_together(u, &m,
                     high == m.count ? &bw_s_unit_high
                     : high == 0     ? &bw_s_unit_low
                                     : &bw_s_unit_backside);
}

static void say_matched(const unit *u) {
    men m = with_duty(u->stage, u->stations, BW_DUTY_MAN);
    if (m.count == 1) say_each(u, BW_DUTY_MAN, NULL);
    if (m.count > 1)
        bw_put_plain_sentence(u->out, u->voice,
                              m.count == u->stage->defenders ? &bw_s_unit_all_men
                                                             : &bw_s_unit_other_men);
}

void bw_say_unit(const bw_scheme *scheme, int stage, const bw_station *stations, bw_vec ball,
                 bw_text *out) {
    const unit u = {&scheme->stages[stage], stations, bw_voice_of(scheme), out};
    bw_put_sentence(out, u.voice, &bw_s_unit_ball, bw_as_at("at", scheme, ball));
    say_each(&u, BW_DUTY_BALL, &ball);
    if (with_duty(u.stage, stations, BW_DUTY_HOLD).count == 2)
        bw_put_plain_sentence(out, u.voice, &bw_s_unit_low_pair);
    else
        say_each(&u, BW_DUTY_HOLD, NULL);
    say_each(&u, BW_DUTY_CREASE, NULL);
    say_adjacent(&u);
    say_backside(&u);
    say_matched(&u);
}
