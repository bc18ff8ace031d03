/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Captions. One verb phrase a duty; the unit's caption groups men of one duty so that a chart never
/// needs more than six short sentences.
#include "scheme/caption.h"

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

static void put_tenths(bw_units units, double x, bw_text *out) {
    bw_put_fixed(out, bw_abs(x), 1);
    bw_put_char(out, ' ');
    bw_put(out, bw_unit_short(units));
}

void bw_say_place(bw_units units, bw_vec at, bw_text *out) {
    double x = tenths(units, at.x), y = tenths(units, at.y);
    if (x == 0) {
        bw_put(out, "in the middle");
    } else {
        put_tenths(units, x, out);
        bw_put(out, x > 0 ? " right" : " left");
    }
    if (y == 0) {
        bw_put(out, ", on the goal line");
        return;
    }
    bw_put(out, ", ");
    put_tenths(units, y, out);
    bw_put(out, y > 0 ? " out" : " behind");
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
    const char *side = ball.x > wide ? " on the right" : (ball.x < -wide ? " on the left" : "");
    if (ball.y < 0) {
        bw_put(out, "behind the goal");
    } else if (ball.y >= up_top) {
        bw_put(out, "up top");
    } else if (bw_abs(ball.x) >= on_wing) {
        bw_put(out, ball.x > 0 ? "on the right wing" : "on the left wing");
        return;
    } else {
        bw_put(out, "in front of the goal");
    }
    bw_put(out, side);
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
    const char *he, *you;
} phrase;

static phrase crease_verb(const bw_spot *spot, bw_vec at) {
    if (bw_distance(spot->home, at) < moved) return (phrase){"has the crease", "have the crease"};
    return spot->home.y - at.y > moved ? (phrase){"drops to the crease", "drop to the crease"}
                                       : (phrase){"moves to the crease", "move to the crease"};
}

static phrase ball_verb(const bw_stage *stage, bw_vec at, const bw_vec *ball) {
    if (!ball) return (phrase){"takes the ball", "take the ball"};
    if (ball->y < 0 && at.y >= 0)
        return (phrase){"meets the ball at goal-line extended",
                        "meet the ball at goal-line extended"};
    if (bw_distance(at, *ball) <= stage->rule.cushion + lets_come)
        return (phrase){"takes the ball", "take the ball"};
    return bw_abs(ball->x) >= on_wing ? (phrase){"plays the ball softly", "play the ball softly"}
                                      : (phrase){"waits for the ball", "wait for the ball"};
}

/// What a spot does, as a verb for one man. `ball` may be NULL when it is not known.
static phrase verb(const bw_stage *stage, int spot, const bw_station *station, const bw_vec *ball) {
    switch (station->duty) {
    case BW_DUTY_BALL: return ball_verb(stage, station->at, ball);
    case BW_DUTY_ADJACENT: return (phrase){"is adjacent", "be adjacent, ready to help"};
    case BW_DUTY_CREASE: return crease_verb(&stage->spots[spot], station->at);
    case BW_DUTY_BACKSIDE:
        return station->at.y >= high_man
                   ? (phrase){"stays high on the backside", "stay high on the backside"}
                   : (phrase){"stays low on the backside", "stay low on the backside"};
    case BW_DUTY_HOLD: return (phrase){"holds his post", "hold your post"};
    default: return (phrase){"takes his man", "take your man"};
    }
}

/// Helping next to the ball or away from it is quiet work; whoever has something of his own says so.
static bool calls_there(bw_duty duty) {
    return duty != BW_DUTY_ADJACENT && duty != BW_DUTY_BACKSIDE;
}

void bw_say_your_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out) {
    const bw_stage *s = &scheme->stages[stage];
    bw_put(out, verb(s, spot, station, &ball).you);
    if (!s->spots[spot].call[0] || !calls_there(station->duty)) return;
    bw_put(out, ", call \xE2\x80\x9C");
    bw_put(out, s->spots[spot].call);
    bw_put(out, "\xE2\x80\x9D");
}

void bw_say_you(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_vec ball, bw_text *out) {
    bw_put(out, "Ball ");
    bw_say_at(scheme, ball, out);
    bw_put(out, ": ");
    bw_say_your_job(scheme, stage, spot, station, ball, out);
    bw_put_char(out, '.');
}

void bw_say_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_text *out) {
    bw_say_first(scheme->stages[stage].spots[spot].name, out);
    bw_put_char(out, ' ');
    bw_put(out, verb(&scheme->stages[stage], spot, station, NULL).he);
    bw_put(out, ", ");
    bw_say_place(scheme->units, station->at, out);
    bw_put_char(out, '.');
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

/// One sentence for each man.
static void say_each(const bw_stage *stage, const bw_station *stations, bw_duty duty,
                     const bw_vec *ball, bw_text *out) {
    men m = with_duty(stage, stations, duty);
    for (int i = 0; i < m.count; i++) {
        bw_put_char(out, ' ');
        bw_say_first(stage->spots[m.spot[i]].name, out);
        bw_put_char(out, ' ');
        bw_put(out, verb(stage, m.spot[i], &stations[m.spot[i]], ball).he);
        bw_put_char(out, '.');
    }
}

/// Two or three men in one sentence: "Low left and top right are adjacent."
static void say_together(const bw_stage *stage, const men *m, const char *plural, bw_text *out) {
    bw_put_char(out, ' ');
    for (int i = 0; i < m->count; i++) {
        const char *name = stage->spots[m->spot[i]].name;
        if (i == 0) {
            bw_say_first(name, out);
            continue;
        }
        bw_put(out, i == m->count - 1 ? " and " : ", ");
        bw_put(out, name);
    }
    bw_put_char(out, ' ');
    bw_put(out, plural);
    bw_put_char(out, '.');
}

static void say_adjacent(const bw_stage *stage, const bw_station *stations, bw_text *out) {
    men m = with_duty(stage, stations, BW_DUTY_ADJACENT);
    if (m.count == 2)
        say_together(stage, &m, "are adjacent", out);
    else
        say_each(stage, stations, BW_DUTY_ADJACENT, NULL, out);
}

static void say_backside(const bw_stage *stage, const bw_station *stations, bw_text *out) {
    men m = with_duty(stage, stations, BW_DUTY_BACKSIDE);
    int high = 0;
    for (int i = 0; i < m.count; i++)
        high += stations[m.spot[i]].at.y >= high_man;
    if (m.count < 2 || m.count > 3)
        say_each(stage, stations, BW_DUTY_BACKSIDE, NULL, out);
    else if (high == m.count)
        say_together(stage, &m, "stay high on the backside", out);
    else
        say_together(stage, &m, high == 0 ? "stay low on the backside" : "have the backside", out);
}

static void say_matched(const bw_stage *stage, const bw_station *stations, bw_text *out) {
    men m = with_duty(stage, stations, BW_DUTY_MAN);
    if (m.count == 1) say_each(stage, stations, BW_DUTY_MAN, NULL, out);
    if (m.count > 1)
        bw_put(out, m.count == stage->defenders ? " Everyone takes his man."
                                                : " The others take their men.");
}

void bw_say_unit(const bw_scheme *scheme, int stage_index, const bw_station *stations, bw_vec ball,
                 bw_text *out) {
    const bw_stage *stage = &scheme->stages[stage_index];
    bw_put(out, "Ball ");
    bw_say_at(scheme, ball, out);
    bw_put_char(out, '.');

    say_each(stage, stations, BW_DUTY_BALL, &ball, out);
    if (with_duty(stage, stations, BW_DUTY_HOLD).count == 2)
        bw_put(out, " The low pair hold.");
    else
        say_each(stage, stations, BW_DUTY_HOLD, NULL, out);
    say_each(stage, stations, BW_DUTY_CREASE, NULL, out);
    say_adjacent(stage, stations, out);
    say_backside(stage, stations, out);
    say_matched(stage, stations, out);
}
