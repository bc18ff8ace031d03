# SPDX-License-Identifier: GPL-3.0-or-later
# .ci/run, with a make of our own: a phase is shown when it ends, the count is the last line, and the
# exit code is make's.
. "${BW_ROOT:?}/tests/cli/lib.sh"

# stand_in LINES: what stands in for make does this.
stand_in() {
    mkdir -p "$scratch/bin"
    printf '#!/bin/sh\n%s\n' "$1" >"$scratch/bin/make"
    chmod +x "$scratch/bin/make"
}
ci_run() {
    PATH=$scratch/bin:$PATH "$BW_ROOT/.ci/run" >"$scratch/out" 2>"$scratch/err" </dev/null
}
last_line() {
    [ "$(tail -n 1 "$scratch/out")" = "$1" ]
}

what="a phase that has ended"
stand_in "echo text ok; until [ -e '$scratch/go' ]; do sleep 0.05; done; echo 3 passed, 0 failed"
ci_run &
job=$!
until grep -q '^text ok$' "$scratch/out"; do
    kill -0 "$job" 2>/dev/null || break
    sleep 0.05
done
expect "text ok" # while the next one runs, however long that takes
touch "$scratch/go"
wait "$job"
check "all passed: 0" test $? -eq 0
check "the count is the last line" last_line "3 passed, 0 failed"

what="make with a word of its own at the end"
stand_in "echo 3 passed, 1 failed; echo 'make: *** [check] Error 1' >&2; exit 2"
ci_run
check "make's exit code" test $? -eq 2
expect "make: *** [check] Error 1"
check "the count is the last line" last_line "3 passed, 1 failed"
check "and stands once" test "$(grep -c passed "$scratch/out")" -eq 1

what="make that never came to counting, nor ended its line"
stand_in "printf 'make: no rule'; exit 2"
ci_run
check "make's exit code" test $? -eq 2
expect "make: no rule"
check "one failure is counted" last_line "0 passed, 1 failed"

finish
