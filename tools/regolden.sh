#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# regolden.sh BUILD: writes the golden traces and pictures of the demo book and packet anew, and the table of text
# widths. Look at the difference, and at the pages, before committing it.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
build=${1:-build}
case $build in /*) ;; *) build=$root/$build ;; esac
mkdir -p "$root/tests/golden/book" "$root/tests/golden/teach" "$root/tests/golden/png"
rm -f "$root"/tests/golden/book/page-*.txt
export BW_ROOT="$root" BW_REGOLDEN=1
"$build/tests/draw/test_golden_book"
"$build/tests/report/test_golden_teach"
"$build/tests/paint/test_golden_png"
unset BW_REGOLDEN
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
# shellcheck disable=SC2046  # the flags are words
${CC:-cc} -std=c17 "$root/tools/gen-metrics.c" -o "$work/gen-metrics" \
    $(pkg-config --cflags --libs freetype2)
"$work/gen-metrics" "$root/assets/fonts" >"$root/src/draw/metrics_b612.c"
