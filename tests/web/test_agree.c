/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A thousand random scenes of the board: the same twice, different for another seed. `test_agree
/// --print` prints the hash, which the module in Node must come to as well (tests/board/agree.test.mjs).
#include "harness.h"
#include "web/agree.h"
#include <inttypes.h>

enum { SCENES = 1000 };

static bw_board board;

static void comes_to_the_same_again(void) {
    CHECK(bw_agree(&board, 7, 100) == bw_agree(&board, 7, 100));
    CHECK(bw_agree(&board, 7, 100) != bw_agree(&board, 8, 100));
}

/// What is left behind by one walk must not be seen by the next.
static void another_board_comes_to_the_same(void) {
    bw_agree(&board, 3, 60);
    CHECK(bw_agree(&board, 7, 100) == bw_agree_alone(7, 100));
}

int main(int argc, char **argv) {
    if (argc > 1 && strcmp(argv[1], "--print") == 0) {
        printf("%016" PRIx64 "\n", bw_agree(&board, 2026, SCENES));
        return 0;
    }
    RUN(comes_to_the_same_again);
    RUN(another_board_comes_to_the_same);
    return test_report(argc, argv);
}
