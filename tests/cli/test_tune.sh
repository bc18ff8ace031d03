#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The verb tune: same bytes twice, a valid scheme, never over another file, broken off and gone on with.
set -u
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 1
failed=0
fail() {
    echo "FAILED: $*" >&2
    failed=1
}
scheme=$BW_ROOT/examples/terns.json
tune() { "$BREAKWATER" tune "$@"; }
small="--tries 50 --breaks 4 --stage 3"

# shellcheck disable=SC2086  # a list of options
tune "$scheme" $small --resume work.txt --sheets why.pdf >first.txt 2>talk.txt || fail "tune failed: $(cat talk.txt)"
[ -s terns-tuned.json ] || fail "no scheme was written"
grep -q 'Held out: other attack sets' first.txt || fail "nothing was held out"
grep -q 'fewer (by seed\|more (by seed' first.txt || fail "no gain is told"
grep -q 'standard' first.txt || fail "no uncertainty is told"
"$BREAKWATER" check terns-tuned.json >check.txt || fail "the tuned scheme does not pass check: $(cat check.txt)"
[ "$(pdftotext why.pdf - | grep -c 'page . of 3')" = 3 ] || fail "the sheets are not three pages"
cp terns-tuned.json kept.json

# Broken off in the middle of a line and gone on with: the same words, the same bytes.
head -n 20 work.txt >part.txt
printf '0x1.8p' >>part.txt
# shellcheck disable=SC2086
tune "$scheme" $small --resume part.txt >second.txt 2>said.txt || fail "going on failed"
cmp -s terns-tuned.json kept.json || fail "gone on with, it wrote other bytes"
cmp -s first.txt second.txt || fail "gone on with, it said other words"
grep -q '19 candidates are known' said.txt || fail "the known candidates are not told: $(cat said.txt)"
cmp -s work.txt part.txt || fail "the journals differ"

# Another seed: a file of its own. And never over a file that is there.
"$BREAKWATER" team new t.team 2>/dev/null
for sheet in roster splits; do
    "$BREAKWATER" team import t.team "$BW_ROOT/examples/terns-$sheet.csv" --sheet $sheet 2>/dev/null || fail "no $sheet"
done
# shellcheck disable=SC2086
tune "$scheme" $small --seed 2 --keep homes --team t.team >/dev/null 2>said.txt || fail "seed 2 failed"
grep -q 'With the legs of #' said.txt || fail "whose legs is not said"
cmp -s terns-tuned.json kept.json || fail "another tuning wrote over the first"
[ -s terns-tuned-2.json ] || fail "no second file"
echo mine >taken.json
# shellcheck disable=SC2086
tune "$scheme" $small --seed 2 --keep rule -o taken.json >/dev/null 2>said.txt
[ $? = 3 ] || fail "a taken name is not exit code 3"
[ "$(cat taken.json)" = mine ] || fail "a taken file was written over"
grep -q 'never written over' said.txt || fail "no word on the taken name"

# Refusals in words.
refused() { # CODE PATTERN ARGUMENT...
    code=$1
    pattern=$2
    shift 2
    tune "$@" >out.txt 2>said.txt
    got=$?
    [ $got = "$code" ] || fail "exit code $got, not $code: $*"
    grep -q "$pattern" said.txt || fail "not said \"$pattern\": $(cat said.txt)"
    [ "$(wc -l <said.txt)" -le 3 ] || fail "too many words: $*"
}
refused 3 'cannot be opened' "$scheme" --team no.team
refused 1 'numbers are even' "$scheme" --stage 6
refused 1 'nothing to tune' "$scheme" --keep homes,rule
refused 2 'did you mean "LL"' "$scheme" --keep LX
refused 2 'from 0 to 100' "$scheme" --mix 300
# shellcheck disable=SC2086
refused 1 'another tuning' "$scheme" $small --seed 9 --resume work.txt
echo nonsense >bad.txt
refused 1 'not the work of a tuning' "$scheme" --resume bad.txt
[ "$(cat bad.txt)" = nonsense ] || fail "a file that is no journal was changed"

exit $failed
