#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Everything that must hold before a change goes in. Each phase prints one line with its time; the
# output of one that fails follows it. The last line counts phases and tests together.
# check.sh [PHASE...] runs only these; check.sh --list names them.
set -u
cd "$(dirname "$0")/.." || exit 1
JOBS=${JOBS:-$(nproc)}
export JOBS LC_ALL=C
logs=build/check
mkdir -p "$logs"
passed=0
failed=0

build() { # PRESET COMPILER [TARGET]
    CC=$2 cmake --preset "$1" -DBUILD_TESTING=ON && cmake --build --preset "$1" -j "$JOBS" ${3:+--target "$3"}
}
# Many tests wait, for a program, a disk or a moment, and leave a processor free: two a processor.
build_and_test() {
    build "$1" "$2" && ctest --preset "$1" -j $((2 * JOBS))
}

debug() { build_and_test debug gcc; }
release() { build_and_test release gcc; }
asan() { build_and_test asan clang-14; }
msan() { build_and_test msan clang-14; }
tsan() { build_and_test tsan clang-14; }

# The same scene in every build and in WebAssembly: one answer, to the last bit. What the answer is,
# the test web/test_golden says in each of them.
golden() {
    build clang clang-14 web_test_golden && build release gcc wasm || return 1
    build/debug/tests/web/test_golden --print | tee "$logs/golden" || return 1
    for tree in build build/clang build/asan; do
        echo "$tree against build/debug:"
        "$tree/tests/web/test_golden" --print | diff "$logs/golden" - || return 1
    done
    echo "build/wasm in Node against build/debug:"
    node tools/run-golden.mjs build/wasm/breakwater-test.wasm | diff "$logs/golden" -
}

# Installs what package-lock.json names. Where that fails, the phase's line says WITHOUT what it is.
have_packages() { # WITHOUT
    make -s node_modules/.package-lock.json && return
    note="skipped: npm ci failed, and without its packages there is no $1"
    return 1
}

# The JavaScript of the board and the hand-out against the types in its comments.
types() {
    have_packages "compiler to check types" || return 0
    npm run --silent types
}

# The board in a browser, and its module in Node against native code.
board() {
    have_packages page || return 0
    build release gcc board-file && build release gcc web_test_agree &&
        build release gcc web_test_tester && build release gcc breakwater &&
        node --test --test-reporter=tap --test-concurrency=$((2 * JOBS)) tests/board/
}

headers() { tools/check-headers gcc && tools/check-headers clang-14; }
symbols() { tools/check-symbols --self-test && tools/check-symbols build; }
format() { tools/list-sources | xargs "$(tools/find-tool clang-format)" --dry-run -Werror; }
tidy() { tools/tidy build/asan; }
text() { tools/check-text && tools/check-circles --self-test && tools/check-circles; }

phases="text format types headers debug release asan msan tsan golden board symbols tidy"

# Adds the counts of CTest or of Node, which stand in the log of a phase that ran tests.
count_tests() {
    counts=$(sed -n 's/^[0-9]*% tests passed, \([0-9]*\) tests* failed out of \([0-9]*\)$/\1 \2/p' "$1")
    [ -n "$counts" ] || counts=$(awk '/^# pass / { p = $3 } /^# fail / { f = $3 }
        END { if (p != "") print f, p + f }' "$1")
    [ -n "$counts" ] || return 0
    passed=$((passed + ${counts#* } - ${counts% *}))
    failed=$((failed + ${counts% *}))
    note="${counts#* } tests"
}

run_phase() {
    note=""
    log=$logs/$1.log
    began=$(date +%s)
    if "$1" >"$log" 2>&1 </dev/null; then
        passed=$((passed + 1))
        verdict=ok
    else
        failed=$((failed + 1))
        verdict=FAILED
    fi
    took=$(($(date +%s) - began))
    count_tests "$log"
    printf '%-9s %-6s %4d s  %s\n' "$1" "$verdict" "$took" "$note"
    [ "$verdict" = ok ] || tail -n 60 "$log" | sed 's/^/    /'
}

case "${1:-}" in
    --list)
        echo "$phases"
        exit 0
        ;;
esac
for phase in ${*:-$phases}; do
    case " $phases " in
        *" $phase "*) run_phase "$phase" ;;
        *)
            echo "check.sh: no phase \"$phase\"; there are: $phases" >&2
            exit 2
            ;;
    esac
done
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
