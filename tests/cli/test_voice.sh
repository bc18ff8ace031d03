#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What is said of a women's scheme, and of one of the United States: players and she, defense and center; a
# scheme of neither says what it always did.
. "${BW_ROOT:?}/tests/cli/lib.sh"

# without PATTERN: no word like it is on standard output.
without() {
    checks=$((checks + 1))
    if grep -qiwE -- "$1" "$scratch/out"; then
        fail "standard output has $(grep -oiwE -- "$1" "$scratch/out" | head -1)"
    fi
}

# A scheme of this field in which a man stands off the field and another in the crease, at $scratch/NAME.json.
scheme_of() {
    run 0 new --field "$1" -o "$scratch/$1.json"
    sed 's/\[-3.5, 2.5\]/[0, 1]/; s/top centre/up top/' "$scratch/$1.json" >"$scratch/$1-odd.json"
}

for field in women boys-nfhs men-wl; do
    scheme_of $field
    run 0 check "$scratch/$field-odd.json"
    cp "$scratch/out" "$scratch/$field.out"
done
run 0 where "$scratch/women.json" --stage 4 --ball x
without 'man|men|he|him|his'
run 0 check "$scratch/women-odd.json"
without 'man|men|he|him|his'
expect "Move her at least"
cp "$scratch/boys-nfhs.out" "$scratch/out"
without 'centre|defence|offence|metres?'
expect "Move him at least"
expect "from the goal's center"
cp "$scratch/men-wl.out" "$scratch/out"
expect "from the goal's centre"
finish
