#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The committed table of text widths is the one tools/gen-metrics.c writes from the bundled font.
set -eu
root=${BW_ROOT:-$(dirname "$0")/../..}
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
# shellcheck disable=SC2046  # the flags are words
${CC:-cc} -std=c17 "$root/tools/gen-metrics.c" -o "$work/gen-metrics" \
    $(pkg-config --cflags --libs freetype2)
"$work/gen-metrics" "$root/assets/fonts" >"$work/metrics_b612.c"
if ! diff -q "$root/src/draw/metrics_b612.c" "$work/metrics_b612.c" >/dev/null; then
    echo "src/draw/metrics_b612.c is not what gen-metrics writes; tools/regolden.sh writes it anew" >&2
    exit 1
fi
# And the comparison can fail.
sed 's/{0x0041, 650}/{0x0041, 651}/' "$work/metrics_b612.c" >"$work/changed.c"
! diff -q "$root/src/draw/metrics_b612.c" "$work/changed.c" >/dev/null
