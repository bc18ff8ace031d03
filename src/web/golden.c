/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The golden scene. Inputs are sums and products of small integers, so that they are the same
/// everywhere to begin with. A new room of the core adds one part at the end of the table.
#include "web/golden.h"
#include "core/hash.h"
#include "core/level.h"
#include "core/motion.h"
#include "core/typical.h"
#include "core/walk.h"
#include "draw/book.h"
#include "scheme/fresh.h"
#include "web/export.h"

/// Too large for WebAssembly's stack, and the golden scene may use no other memory.
static bw_scheme scheme;
static bw_plan plan;
static bw_ground ground;
static bw_break played;
static double room[BW_INK_PAGE_BYTES / sizeof(double)]; // a page, or a search's scratch

static uint64_t maths(void) {
    uint64_t hash = BW_HASH_START;
    for (int i = -400; i <= 400; i++) {
        const double x = i * 0.3125 + i * i * i * 0x1p-20;
        hash = bw_hash_double(hash, bw_exp(x));
        hash = bw_hash_double(hash, bw_log(x * x + 0x1p-40));
        hash = bw_hash_double(hash, bw_sin(x));
        hash = bw_hash_double(hash, bw_cos(x));
        hash = bw_hash_double(hash, bw_atan2(x, 7.25 - 0.125 * i));
        hash = bw_hash_double(hash, bw_round_to(x, 10));
    }
    return hash;
}

static uint64_t motion(void) {
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < bw_level_count(); i++) {
        const bw_legs legs = bw_level_at(i)->defender;
        bw_body body = {bw_v(-3.5, 2.5), bw_v(1.5, -0.75)};
        for (int step = 0; step < 40; step++) {
            const bw_vec target = bw_v(step % 7 - 3, step % 5 + 0.5);
            const double d = bw_distance(body.at, target);
            hash = bw_hash_double(hash, bw_arrive(legs, body, target, BW_FIRST_TOUCH));
            hash = bw_hash_double(hash, bw_arrive(legs, body, target, BW_HOLD_FROM));
            hash = bw_hash_double(hash, bw_arrive_and_stop(legs, d));
            hash = bw_hash_double(hash, bw_speed_needed(legs.tau, d, 1.25));
            body = bw_advance(legs, body, bw_effort_toward(legs, body, target, 0.5), 0.2);
            hash = bw_hash_vec(bw_hash_vec(hash, body.at), body.velocity);
        }
    }
    return hash;
}

static uint64_t hash_unit(uint64_t hash, bw_vec ball, const bw_vec *attackers, int count) {
    bw_station station[BW_MAX_SPOTS];
    bw_where(&plan, ball, attackers, count, station);
    for (int i = 0; i < plan.spots; i++) {
        hash = bw_hash_vec(hash, station[i].at);
        hash = bw_hash_u64(hash, (uint64_t)station[i].duty);
        hash = bw_hash_u64(hash, (uint64_t)station[i].man + 1);
    }
    return hash;
}

/// Every stage at every landmark and on a grid, with and without attackers, each also mirrored; then
/// once more with a man pinned, so that the interpolation between landmarks has something to do.
static uint64_t shape(void) {
    static const bw_vec attackers[BW_MAX_ATTACKERS] = {{0, 14},  {-9, 10}, {9, 10},
                                                       {-8, -3}, {8, -3},  {1, 5}};
    bw_vec mirrored[BW_MAX_ATTACKERS];
    for (int i = 0; i < BW_MAX_ATTACKERS; i++)
        mirrored[i] = bw_mirror(attackers[i]);

    uint64_t hash = BW_HASH_START;
    bw_scheme_fresh(0, 3, &scheme);
    for (int pinned = 0; pinned <= 1; pinned++) {
        for (int stage = 0; stage < scheme.stage_count; stage++) {
            if (pinned) {
                scheme.stages[stage].pinned[1][0] = 1;
                scheme.stages[stage].pins[1][0] = bw_v(-2.5, 3.25);
            }
            bw_plan_build(&scheme, stage, &plan);
            for (int i = 0; i < scheme.landmark_count; i++)
                hash = hash_unit(hash, scheme.landmarks[i].at, attackers, 0);
            for (int i = 0; i < 17 * 13; i++) {
                const bw_vec ball = bw_v((i % 17 - 8) * 2.125, (i / 17 - 4) * 2.375);
                hash = hash_unit(hash, ball, attackers, BW_MAX_ATTACKERS);
                hash = hash_unit(hash, bw_mirror(ball), mirrored, BW_MAX_ATTACKERS);
            }
        }
    }
    return hash;
}

/// The ball's flight, and what a shot is worth from anywhere, for the first and the last level.
static uint64_t shot(void) {
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < bw_level_count(); i += bw_level_count() - 1) {
        const bw_level *level = bw_level_at(i);
        for (int metres = 1; metres <= 30; metres++)
            hash = bw_hash_double(hash, bw_ball_time(level->pass_speed, BW_BALL_DRAG, metres));
        bw_shot_build(level, bw_field_at(0), &ground.shot);
        for (int cell = 0; cell < 40 * 40; cell++)
            hash = bw_hash_double(
                hash, bw_shot_worth(&ground.shot, bw_v(cell % 40 - 19.75, cell / 40 * 0.625)));
    }
    return hash;
}

/// Six against four in a 2-2-2 with the scheme's late men on their way.
static void begin_break(void) {
    bw_scheme_fresh(0, 3, &scheme);
    BW_ASSERT(bw_ground_build(&scheme, NULL, &ground, NULL) == BW_OK);
    const bw_break_def def = bw_break_default();
    BW_ASSERT(bw_break_begin(&ground, &def, &played, NULL) == BW_OK);
}

static uint64_t answer(void) {
    begin_break();
    bw_search_def def = bw_search_default();
    def.depth = 2;
    bw_answer best;
    BW_ASSERT(bw_best(&played, &def, room, sizeof room, &best) == BW_OK);
    uint64_t hash = bw_hash_double(bw_hash_double(BW_HASH_START, best.worth), best.kept);
    hash = bw_hash_u64(bw_hash_u64(hash, best.played), best.seen);
    for (int i = 0; i < best.count; i++) {
        const bw_answer_ply *ply = &best.plies[i];
        hash = bw_hash_u64(hash, bw_ply_rank(ply->ply));
        hash = bw_hash_double(bw_hash_double(hash, ply->at_s), ply->end_s);
        hash = bw_hash_double(bw_hash_vec(hash, ply->to), ply->chance);
    }
    return hash;
}

static uint64_t forecast(void) {
    begin_break();
    bw_typical_def def = bw_typical_default();
    def.rollouts = 6;
    bw_forecast human;
    BW_ASSERT(bw_typical(&played, &def, room, sizeof room, &human) == BW_OK);
    uint64_t hash = bw_hash_u64(BW_HASH_START, human.played);
    for (int t = 0; t <= BW_MAX_SECONDS; t++)
        hash = bw_hash_double(bw_hash_double(hash, human.worth[t]), human.error[t]);
    hash = bw_hash_double(bw_hash_double(hash, human.lost), human.shots);
    for (int i = 0; i < human.use_count; i++)
        hash = bw_hash_double(bw_hash_double(hash, human.use[i].share), human.use[i].first);
    return hash;
}

/// Every lesson of the starting scheme played through, at moments that fall between steps.
static uint64_t lessons(void) {
    static bw_walk walk;
    uint64_t hash = BW_HASH_START;
    bw_scheme_fresh(0, 3, &scheme);
    for (int l = 0; l < scheme.lesson_count; l++) {
        bw_walk_build(&scheme, &scheme.lessons[l], &walk);
        for (int i = 0; i * 0.15625 < bw_walk_seconds(&walk); i++) {
            bw_walk_moment m;
            bw_walk_at(&walk, i * 0.15625, &m);
            hash = bw_hash_vec(hash, m.ball);
            for (int s = 0; s < walk.spots; s++)
                hash = bw_hash_double(bw_hash_vec(hash, m.men[s].body.at), m.men[s].late);
        }
    }
    return hash;
}

/// Everything in the ink of every page of the starting scheme's book.
static uint64_t book(void) {
    uint64_t hash = BW_HASH_START;
    bw_ink *ink = bw_ink_in(room, sizeof room);
    bw_scheme_fresh(0, 3, &scheme);
    const int pages = bw_book_pages(&scheme);
    for (int i = 1; i <= pages; i++) {
        hash = bw_hash_u64(hash, (uint64_t)bw_book_page(&scheme, i, BW_LETTER, ink));
        for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
            hash = bw_hash_u64(hash, (uint64_t)item->kind << 32 | (uint64_t)item->role);
            hash = bw_hash_u64(hash, (uint64_t)item->style << 32 | (uint64_t)item->align);
            hash = bw_hash_double(hash, item->size);
            hash = bw_hash_double(bw_hash_double(hash, item->dash[0]), item->dash[1]);
            for (int n = 0; n < item->numbers; n++)
                hash = bw_hash_double(hash, bw_ink_numbers(item)[n]);
            for (int n = 0; n < item->text; n++)
                hash = bw_hash_u64(hash, (unsigned char)bw_ink_string(item)[n]);
        }
    }
    return hash;
}

static const struct {
    const char *name;
    uint64_t (*hash)(void);
} parts[] = {
    {"maths", maths},   {"motion", motion},     {"shape", shape},     {"shot", shot},
    {"answer", answer}, {"forecast", forecast}, {"lessons", lessons}, {"book", book},
};

BW_EXPORT(bw_golden_count)
int bw_golden_count(void) {
    return BW_COUNT(parts);
}

BW_EXPORT(bw_golden_name)
const char *bw_golden_name(int part) {
    return part >= 0 && part < BW_COUNT(parts) ? parts[part].name : "";
}

BW_EXPORT(bw_golden_part)
uint64_t bw_golden_part(int part) {
    return part >= 0 && part < BW_COUNT(parts) ? parts[part].hash() : 0;
}

BW_EXPORT(bw_golden_hash)
uint64_t bw_golden_hash(void) {
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < BW_COUNT(parts); i++)
        hash = bw_hash_u64(hash, parts[i].hash());
    return hash;
}
