/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice script: every rotation as often as asked and no pass that is none, the proven bound, the
/// mirrored script for a mirrored scheme, and times that make sense.
#include "core/field.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "trial/script.h"

static _Alignas(16) char memory[512 * 1024];
static bw_scheme scheme, mirrored;
static bw_script script, other;
static bw_weak_list weak;
static bw_rotations rotations;

static bw_status build(const bw_scheme *s, int stage, const bw_weak_list *w, bw_script *out) {
    CHECK(bw_script_size() <= sizeof memory);
    return bw_script_build(s, stage, w, memory, sizeof memory, out, NULL);
}

/// Moves, adds or takes away landmarks by chance, twins lost: any scheme a coach may write.
static void stir(unsigned long long *seed) {
    bw_scheme_fresh((int)(test_random(seed) % (unsigned)bw_field_count()), 3, &scheme);
    const bw_field *field = bw_field_at(scheme.field);
    scheme.lead = test_random(seed) % 2 ? BW_LEFT : BW_RIGHT;
    scheme.landmark_count = 2 + (int)(test_random(seed) % (BW_MAX_LANDMARKS - 1));
    for (int l = 0; l < scheme.landmark_count; l++) {
        bw_landmark *m = &scheme.landmarks[l];
        const double x = test_uniform(seed, -20, 20);
        const double y = test_uniform(seed, -9, 22);
        snprintf(m->id, sizeof m->id, "l%d", l);
        snprintf(m->name, sizeof m->name, "place %d", l);
        m->at = bw_field_clamp(field, bw_v(x, y));
        m->twin = -1;
    }
    for (int i = 0; i < scheme.stage_count; i++)
        memset(scheme.stages[i].pinned, 0, sizeof scheme.stages[i].pinned);
}

static void look(const bw_scheme *s) {
    bw_rotations_of(s, &rotations);
    int made[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS] = {{0}};
    double sums[BW_PACE_COUNT] = {0};
    CHECK(script.bound >= script.wanted);
    CHECK(script.stop_count >= script.bound);
    CHECK(script.wanted >= script.rotations);
    CHECK_INT(script.stops[0].from, script.start);
    CHECK_INT(script.stops[script.stop_count - 1].to, script.start);
    for (int i = 0; i < script.stop_count; i++) {
        const bw_script_stop *stop = &script.stops[i];
        if (i > 0) CHECK_INT(stop->from, script.stops[i - 1].to);
        CHECK(rotations.pass[stop->from][stop->to]);
        CHECK_INT(stop->again, made[stop->from][stop->to]++);
        CHECK(stop->rank >= 0 && stop->rank <= script.weak_count);
        for (int p = 0; p < BW_PACE_COUNT; p++)
            sums[p] += stop->seconds[p];
        CHECK(stop->seconds[BW_FULL_SPEED] > 0.3);
        CHECK(stop->seconds[BW_FULL_SPEED] < stop->seconds[BW_HALF_SPEED]);
        CHECK(stop->metres >= 0);
    }
    for (int p = 0; p < BW_PACE_COUNT; p++)
        CHECK_NEAR(script.seconds[p], sums[p], 1e-9);
    for (int a = 0; a < s->landmark_count; a++) {
        for (int b = 0; b < s->landmark_count; b++)
            CHECK(made[a][b] >= rotations.rotation[a][b]);
    }
    for (int k = 0; k < script.weak_count; k++)
        CHECK(made[script.weak[k][0]][script.weak[k][1]] >= 2);
}

static void fresh_schemes(void) {
    for (int level = 0; level < bw_level_count(); level++) {
        bw_scheme_fresh(0, level, &scheme);
        for (int stage = 0; stage < scheme.stage_count; stage++) {
            CHECK_INT(build(&scheme, stage, NULL, &script), BW_OK);
            look(&scheme);
            // Every pass may come back, so nothing is added: as many passes as rotations.
            CHECK_INT(script.stop_count, script.rotations);
            CHECK_INT(script.bound, script.stop_count);
            CHECK_INT(script.pieces, 1);
            CHECK(!script.weighed);
            CHECK_TEXT(scheme.landmarks[script.start].id, "top");
        }
    }
}

/// A weaker one than all there are.
static void add_weak(int stage, int from, int to, double cost) {
    weak.weak[weak.count++] = (bw_weak){.stage = stage, .from_at = from, .to_at = to, .cost = cost};
}

/// Whether a rotation is among the script's first weak ones.
static bool there(const int pair[2], int count) {
    for (int k = 0; k < count; k++) {
        if (script.weak[k][0] == pair[0] && script.weak[k][1] == pair[1]) return true;
    }
    return false;
}

/// Weak ones by chance, in the list's order: more often, and still proven shortest. Each is followed by its
/// mirror image.
static void weak_ones_come_more_often(void) {
    unsigned long long seed = 4;
    bw_scheme_fresh(0, 3, &scheme);
    for (int n = 0; n < 60; n++) {
        weak.count = 0;
        double cost = 0.03;
        for (int k = 0; k < 2 * BW_WEAK_EACH; k++) {
            const int a = (int)(test_random(&seed) % (unsigned)scheme.landmark_count);
            const int b = (int)(test_random(&seed) % (unsigned)scheme.landmark_count);
            add_weak(k % 2, a, b, cost *= test_uniform(&seed, 0.4, 1));
        }
        CHECK_INT(build(&scheme, 1, &weak, &script), BW_OK);
        look(&scheme);
        CHECK(script.weighed);
        CHECK_INT(script.bound, script.stop_count);
        int next = 0;
        for (int i = 1; i < weak.count; i += 2) {
            const bw_weak *w = &weak.weak[i];
            const int pair[2][2] = {
                {w->from_at, w->to_at},
                {scheme.landmarks[w->from_at].twin, scheme.landmarks[w->to_at].twin}};
            if (!rotations.pass[pair[0][0]][pair[0][1]]) continue;
            for (int k = 0; k < 2; k++) {
                if (next > 0 && there(pair[k], next)) continue;
                CHECK_INT(script.weak[next][0], pair[k][0]);
                CHECK_INT(script.weak[next][1], pair[k][1]);
                CHECK_SAME(script.cost[next++], w->cost);
            }
        }
        CHECK_INT(next, script.weak_count);
    }
}

static void schemes_by_chance_and_their_mirrors(void) {
    unsigned long long seed = 8;
    int built = 0;
    for (int n = 0; n < 150; n++) {
        stir(&seed);
        const int stage = (int)(test_random(&seed) % (unsigned)scheme.stage_count);
        weak.count = 0;
        for (int a = 0; a < scheme.landmark_count && a < BW_WEAK_EACH; a++)
            add_weak(stage, a, (a + 1) % scheme.landmark_count, 0.02 / (a + 1));
        bw_scheme_mirror(&scheme, &mirrored);
        const bw_status status = build(&scheme, stage, &weak, &script);
        CHECK_INT(build(&mirrored, stage, &weak, &other), status);
        CHECK(status == BW_OK || status == BW_NOT_FOUND || status == BW_UNREACHABLE ||
              status == BW_LIMIT);
        if (status != BW_OK) continue;
        look(&scheme);
        built++;
        CHECK_INT(other.stop_count, script.stop_count);
        CHECK_INT(other.bound, script.bound);
        for (int i = 0; i < script.stop_count; i++) {
            CHECK_INT(other.stops[i].to, script.stops[i].to);
            CHECK_INT(other.stops[i].on_ball, script.stops[i].on_ball);
            CHECK_INT(other.stops[i].rank, script.stops[i].rank);
            for (int p = 0; p < BW_PACE_COUNT; p++)
                CHECK_SAME(other.stops[i].seconds[p], script.stops[i].seconds[p]);
        }
    }
    CHECK(built > 100);
}

/// The order in which the file lists its landmarks is no matter.
static void the_order_of_the_file_is_no_matter(void) {
    bw_scheme_fresh(0, 3, &scheme);
    mirrored = scheme;
    const int n = scheme.landmark_count;
    for (int l = 0; l < n; l++) {
        mirrored.landmarks[l] = scheme.landmarks[n - 1 - l];
        mirrored.landmarks[l].twin = n - 1 - scheme.landmarks[n - 1 - l].twin;
    }
    CHECK_INT(build(&scheme, 1, NULL, &script), BW_OK);
    CHECK_INT(build(&mirrored, 1, NULL, &other), BW_OK);
    CHECK_INT(other.stop_count, script.stop_count);
    for (int i = 0; i < script.stop_count; i++)
        CHECK_INT(other.stops[i].to, n - 1 - script.stops[i].to);
}

static void what_cannot_be_is_said(void) {
    bw_scheme_fresh(0, 3, &scheme);
    scheme.landmark_count = 1;
    char room[120];
    bw_text why = bw_text_in(room, sizeof room);
    CHECK_INT(bw_script_build(&scheme, 0, NULL, memory, sizeof memory, &script, &why),
              BW_NOT_FOUND);
    CHECK(strstr(room, "no two ball places") != NULL);
    CHECK_INT(bw_script_build(&scheme, 0, NULL, memory, 16, &script, NULL), BW_NO_ROOM);
}

int main(int argc, char **argv) {
    RUN(fresh_schemes);
    RUN(weak_ones_come_more_often);
    RUN(schemes_by_chance_and_their_mirrors);
    RUN(the_order_of_the_file_is_no_matter);
    RUN(what_cannot_be_is_said);
    return test_report(argc, argv);
}
