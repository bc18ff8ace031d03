/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the parts of the lint share: the scheme being looked at, the stage made ready, and the
/// writing of one finding. Private to src/scheme.
#ifndef BW_SCHEME_LINT_PART_H
#define BW_SCHEME_LINT_PART_H

#include "core/level.h"
#include "core/shape.h"
#include "scheme/catalogue.h"
#include "scheme/error.h"
#include "scheme/rotation.h"

/// A lint under way. The stage fields hold one stage at a time.
typedef struct bw_lint {
    const bw_scheme *scheme;
    bw_voice voice;
    const bw_level *level;
    const bw_field *field;
    bw_finding *findings;
    int room;         ///< findings there is room for
    int count;        ///< findings there are
    bw_finding spare; ///< where findings beyond `room` are written
    bw_rotations rotations;

    int stage;
    bool symmetric; ///< the stage is its own mirror image: one side stands for both
    bw_plan plan;
    bw_station at[BW_MAX_LANDMARKS][BW_MAX_SPOTS]; ///< everyone's place, by the ball's landmark
} bw_lint;

static inline const bw_stage *bw_lint_stage(const bw_lint *lint) {
    return &lint->scheme->stages[lint->stage];
}

/// The parts, in the order in which a document has their places.
void bw_lint_landmarks(bw_lint *lint); ///< landmarks too close to tell apart
void bw_lint_words(bw_lint *lint);     ///< calls missing or said twice
void bw_lint_places(bw_lint *lint);    ///< men off the field, in the goal, in the crease
void bw_lint_cover(bw_lint *lint);     ///< ball, crease, crowding, gaps, at each landmark
void bw_lint_runs(bw_lint *lint);      ///< rotations and carries nobody can follow
void bw_lint_late(bw_lint *lint);      ///< late men with nothing to take
void bw_lint_lessons(bw_lint *lint);   ///< captions too long, or in words new players do not know

/// The next finding, empty but for its severity.
bw_finding *bw_lint_begin(bw_lint *lint, bw_severity severity);

/// Its place: the stage, then `part` ("/rule/crease"); no stage when lint->stage < 0.
void bw_lint_point(const bw_lint *lint, bw_finding *finding, const char *part);

/// Its place: where the document fixes this spot for the ball at this landmark; a pin, its twin's pin,
/// or the spot's home.
void bw_lint_point_spot(const bw_lint *lint, bw_finding *finding, int landmark, int spot);

/// The same, of member number `index` of a list: "/spots/", 2, "/call".
void bw_lint_point_to(const bw_lint *lint, bw_finding *finding, const char *list, int index,
                      const char *member);

/// Its sentence and what to do about it, both with the same arguments.
void bw_lint_say_with(const bw_lint *lint, bw_finding *finding, const bw_sentence *sentence,
                      const bw_sentence *mend, const bw_arg *args);
#define bw_lint_say(lint, finding, sentence, mend, ...)                                            \
    bw_lint_say_with(lint, finding, sentence, mend,                                                \
                     (const bw_arg[]){__VA_ARGS__, {.kind = BW_ARG_END}})

/// A spot by its name; where the ball is at a landmark: "at right wing".
bw_arg bw_lint_as_spot(const char *name, const bw_lint *lint, int spot);
bw_arg bw_lint_as_at(const char *name, const bw_lint *lint, int landmark);

/// Sentences show tenths: what differs by less, m or m/s, is told as equal and so is no fault.
#define BW_LINT_SHOWN 0.1

/// True when the landmark's twin, met before, has told the same story.
bool bw_lint_told(const bw_lint *lint, int landmark);

/// "; the other side is the same", where it is.
bw_arg bw_lint_as_sides(const char *name, const bw_lint *lint, int landmark);

/// True when a ball at this landmark is in front and so near the goal that what follows is a shot: no
/// rotation or gap matters then.
bool bw_lint_shot_next(const bw_lint *lint, int landmark);

/// How far from the goal's centre the hole reaches: what must be guarded first.
#define BW_LINT_HOLE (12 * BW_METRES_PER_YARD)

/// Seconds a man has when the ball is passed between two places: it is wound up, it flies, the catcher
/// comes into the hole if he is outside it, and makes ready to shoot; less the man's own reaction.
/// Never negative.
double bw_lint_time(const bw_lint *lint, bw_vec from, bw_vec to);

/// Seconds until it matters that a spot's man is in his place after a pass between two landmarks.
double bw_lint_time_for(const bw_lint *lint, int from, int to, int spot);

/// Makes stage number lint->stage ready: its plan, and where everyone stands for each landmark.
void bw_lint_stage_ready(bw_lint *lint);

#endif
