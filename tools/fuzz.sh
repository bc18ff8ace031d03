#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# fuzz.sh SECONDS: runs every built fuzz target for so long, starting from its corpus. New inputs go to
# build/fuzz/found/NAME; one that crashes is kept there too, to be moved into tests/fuzz/corpus/NAME.
set -eu
cd "$(dirname "$0")/.."
seconds=${1:-30}
for program in build/fuzz/fuzz/fuzz_*; do
    name=${program##*/fuzz_}
    found=build/fuzz/found/$name
    log=build/fuzz/$name.log
    mkdir -p "$found"
    echo "Fuzzing $name for $seconds seconds"
    "$program" -max_total_time="$seconds" -print_final_stats=1 -artifact_prefix="$found/crash-" \
        "$found" "tests/fuzz/corpus/$name" >"$log" 2>&1 || { tail -n 40 "$log"; exit 1; }
    sed -n 's/^stat::\([a-z_]*\): *\(.*\)/    \1 \2/p' "$log"
done
