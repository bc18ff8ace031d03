# SPDX-License-Identifier: GPL-3.0-or-later
# What is of the players can be read by nobody else on the machine, as the team file itself; and no verb waits
# for a pipe that nobody writes to.
. "${BW_ROOT:?}/tests/cli/lib.sh"
umask 022
file=$scratch/terns.team
scheme=$BW_ROOT/examples/terns.json

# closed FILE: its owner's alone. open_to_all FILE: as any file.
closed() {
    what="mode of $1"
    check "nobody else may read it" test -n "$(find "$1" -maxdepth 0 ! -perm /077)"
}
open_to_all() {
    what="mode of $1"
    check "others may read it" test -n "$(find "$1" -maxdepth 0 -perm -044)"
}

run 0 team new "$file" --name "Port Merrow Terns"
run 0 team player "$file" 12 --initials A.B.
run 0 log "$file" add 6v4 goal
closed "$file"
run 0 team export "$file" --sheet roster -o "$scratch/roster.csv"
closed "$scratch/roster.csv"
run 0 log "$file" export -o "$scratch/breaks.csv"
closed "$scratch/breaks.csv"
echo old >"$scratch/review.json" # from a time when it was made for all to read
open_to_all "$scratch/review.json"
run 0 review "$file" --no-model --json -o "$scratch/review.json"
closed "$scratch/review.json"
run 0 review "$file" --no-model -o "$scratch/review.pdf"
closed "$scratch/review.pdf"
run 0 team backup "$file" "$scratch/copy.team"
closed "$scratch/copy.team"
run 0 rehearse "$scheme" --plain --numbers 1,2,3,4,5,6,7,8,9,10,11,12 -o "$scratch/plan.pdf"
closed "$scratch/plan.pdf"
run 0 teach "$scheme" --only handout -o "$scratch/handed"
closed "$scratch/handed"
closed "$scratch/handed/handout.html"
run 0 draw "$scheme" --stage 4 --ball x -o "$scratch/picture.pdf"
open_to_all "$scratch/picture.pdf"

mkfifo "$scratch/pipe"
for words in "check PIPE" "where PIPE --stage 4 --ball x" "draw PIPE -o $scratch/x.pdf" "test PIPE" "tune PIPE" \
    "teach PIPE -o $scratch/y" "rehearse PIPE" "team import $file PIPE --sheet roster" "log $file import PIPE" \
    "team scheme $file PIPE" "review PIPE" "log PIPE list" "board PIPE"; do
    # shellcheck disable=SC2046
    run 3 $(printf '%s' "$words" | sed "s|PIPE|$scratch/pipe|")
done
finish
