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
    mkdir -p "$found"
    echo "Fuzzing $name for $seconds seconds"
    "$program" -max_total_time="$seconds" -print_final_stats=1 -verbosity=0 \
        -artifact_prefix="$found/crash-" "$found" "tests/fuzz/corpus/$name"
done
