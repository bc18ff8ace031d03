# SPDX-License-Identifier: GPL-3.0-or-later
# `team` and `log`: the team file from the command line, its sheets, copies of it, and two who write at once.
. "${BW_ROOT:?}/tests/cli/lib.sh"
file=$scratch/terns.team
copy=$scratch/copy.team

run 0 team new "$file" --name "Port Merrow Terns"
talks "Next: breakwater team import"
run 3 team new "$file"
talks "it is there already"
run 0 team set "$file" team
expect "Port Merrow Terns"
run 0 team set "$file" full-names
expect "off"
run 2 team set "$file" full-names maybe
talks "full-names is on or off"
run 2 team set "$file" colour red
talks 'there is no setting "colour"'

# Actions are named, counted, and take only their own options.
run 2 team shwo "$file"
talks 'did you mean "show"?'
run 2 team frobnicate "$file"
talks "it knows new, show, set"
run 2 team show "$file" --force
talks "--force does nothing with team show"
run 2 team show "$file" more
talks "one word too many for team show"
run 2 team backup "$file"
talks "team backup needs more: breakwater team backup FILE COPY."
run 2 log "$file" add 6v4
talks "log add needs more: breakwater log FILE add NvN OUTCOME."
run 2 team show
talks "team needs more"

# Files that are none.
run 1 team show "$BW_ROOT/README.md"
talks "it is not a team file"
run 3 team show "$scratch/no.team"
talks "cannot be opened"
run 1 log "$scratch" list
talks "this is a folder"

# The roster, one by one and all at once.
run 0 team player "$file" 9 --initials C.D. --spots TR,M --fixed M
expect "9 C.D.: TR, M (fixed)"
run 1 team player "$file" 9 --name "Somebody Whole"
talks "full names are not kept unless they are turned on"
run 1 team player "$file" 10
talks "nobody on the roster wears number 10"
run 2 team player "$file" 1000
talks "the jersey number is a whole number from 0 to 999"
run 2 team player "$file" 9 --spots LONG
printf 'jersey,initials,spots\r\n12,A.B.,TL M\r\n7,=Z,\r\n' >"$scratch/roster.csv"
run 2 team import "$file" "$scratch/roster.csv"
talks "say which sheet"
run 0 team import "$file" "$scratch/roster.csv" --sheet roster --json
talks "2 rows of roster: 2 added, 0 changed, 0 unchanged"
json 'j.rows === 2 && j.added === 2 && j.faults.length === 0'
printf 'jersey,initials\n3,X\n12,Y,\n7000,Q\nx,\n' >"$scratch/bad.csv"
run 1 team import "$file" "$scratch/bad.csv" --sheet roster --json
talks "bad.csv:4:1: error: jersey: a whole number from 0 to 999, not \"7000\""
talks "bad.csv:5:1: error"
talks "nothing was imported"
json 'j.added === 0 && j.faults.length === 2 && j.faults[0].line === 4'
run 0 team show "$file" --json
json 'j.team === "Port Merrow Terns" && j.players.map(p => p.jersey).join() === "7,9,12"'
json 'j.players[2].initials === "A.B."'
run 0 team export "$file" --sheet roster
expect "7,'=Z,,"
run 0 team split "$file" 12 10=1.9 20=3.1 --clock gate --date 2026-03-02
talks "2 sprints of number 12 kept"
run 0 team split "$file" 12 10=1.9 --clock gate --date 2026-03-02
talks "1 known already"
run 2 team split "$file" 12 ten=1.9
talks "DISTANCE=SECONDS"
run 0 team export "$file" --sheet splits --units m
expect "12,2026-03-02,9.144,1.9,gate"
run 2 team export "$file" --sheet spilts
talks 'did you mean "splits"?'

# Schemes and their revisions.
run 0 team scheme "$file" "$BW_ROOT/examples/terns.json" --note first
talks "is now revision 1"
run 0 team scheme "$file" "$BW_ROOT/examples/terns.json"
talks "is already revision 1"
"$BREAKWATER" new --shape 2-2 --name Other -o "$scratch/other.json" 2>/dev/null
run 0 team scheme "$file" "$scratch/other.json"
run 0 team scheme "$file" --json
json 'j.revisions.length === 2 && j.revisions[0].note === "first"'
run 0 team scheme "$file" --revision 2
check "what was saved is written out" cmp -s "$scratch/out" "$scratch/other.json"
run 1 team scheme "$file" --revision 3
talks "there is no scheme revision 3"

# Quiz results.
run 0 team quiz "$file" 12 24HM-NF6N-JR0K-H020-A382-ET31-6QER --json
json 'j.added === 1'
run 0 team quiz "$file" 12 24HM-NF6N-JR0K-H020-A382-ET31-6QER
talks "is known already"
run 1 team quiz "$file" 50 24HM-NF6N-JR0K-H020-A382-ET31-6QER
talks "nobody on the roster wears number 50"
run 2 team quiz "$file" 12
run 0 team quiz "$file" --json
json 'j.quiz_results.length === 1 && j.quiz_results[0].code === "24HM-NF6N-JR0K-H020-A382-ET31-6QER"'
json 'j.quiz_results[0].spot === "LL" && j.quiz_results[0].right === 5 && j.quiz_results[0].asked === 8 && j.quiz_results[0].bias_y_m === -1.8'
run 0 team quiz "$file" 12 "24hm nf6n jrok ho2o a382 et3l 6qer"
talks "is known already"
run 0 team quiz "$file"
expect "LL, 5 of 8; over 6 places stands 2.0 yd too deep"
run 1 team quiz "$file" 12 24HM-NF6N-JR0K-H020-A382-ET31-6QEQ
talks "A letter of the result code is wrong"
run 1 team quiz "$file" 12 K7QX-22
talks "28 letters and digits"

# The log.
run 0 team game "$file" 2026-04-11 "Gullhaven Petrels" --field home
expect "1"
run 0 log "$file" add 6v4 save --seconds 7 --passes 3 --shot 4,9 --out TL,12 --game 1
expect "6v4  shot saved, 7 s, 3 passes, shot from 4.0 yd right, 9.0 yd out, out of place: TL, 12"
run 0 log "$file" add 5v4 forced --against "Gullhaven Petrels" --date 2026-04-11 --id phone-1
run 0 log "$file" add 5v4 forced --id phone-1
talks "is number 2 already"
silent
run 0 log "$file" list --json
json 'j.breaks.length === 2 && j.breaks[1].game === 1 && j.breaks[1].revision === 2'
json 'j.breaks[0].shot_x_yd === 4 && j.breaks[0].out.join() === "TL,12"'
run 0 log "$file" list --json --units m
json 'Math.abs(j.breaks[0].shot_y_m - 8.2296) < 1e-4'
run 0 log "$file" edit 2 goal --note 'a; "b", c' --shot ""
expect '5v4  goal  (a; "b", c)'
run 1 log "$file" edit 9 goal
talks "there is no break 9"
run 0 log "$file" list --last 1
expect "    2  5v4"
for words in "6x4 goal" "6v4 gaol" "3v5 goal" "7v4 goal" "6v4 goal --passes 99" "6v4 goal --shot 4;9" \
    "6v4 goal --out FOUR" "6v4 goal --out TL,TL" "6v4 goal --seconds -1" "6v4 goal --time today" \
    "6v4 goal --against A --date 11/4/26" "6v4 goal --game 1 --against A" "6v4 goal --shot 900,9" \
    "6v4 goal --id a/b" "6v4 goal --date 2026-04-11" "6v4 goal --game 1 --date 2026-04-11"; do
    # shellcheck disable=SC2086
    run 2 log "$file" add $words
done
run 1 log "$file" add 6v4 goal --game 7
talks "there is no game 7"
# Game and day are told; a slip in an opponent makes no new game, and nothing odd is kept without a word.
run 0 log "$file" list
expect "2026-04-11, against Gullhaven Petrels (game 1)"
run 1 log "$file" add 6v4 goal --against "Gulhaven Petrels"
talks '"Gulhaven Petrels" is no opponent so far, but "Gullhaven Petrels" (game 1, 2026-04-11) is'
talks "add --keep-odd to keep it as it is"
silent
run 1 team game "$file" 2026-04-12 "gullhaven petrels"
run 1 log "$file" edit 2 --against "Gulhaven"
run 0 team show "$file" --json
json 'j.games.length === 1 && j.breaks === 2'
cp "$file" "$scratch/odd.team"
run 0 log "$scratch/odd.team" add 6v4 goal --against "Gulhaven Petrels" --keep-odd --json
talks "Kept as it is:"
talks "Game 2 is new: "
json 'j.opponent === "Gulhaven Petrels" && j.date.length === 10 && j.game === 2'
for words in "--out ZZ" "--out 88" "--shot 40,9" "--stage 6"; do
    # shellcheck disable=SC2086
    run 1 log "$scratch/odd.team" add 6v4 save $words
    talks "Nothing was kept: put it right, or add --keep-odd"
    # shellcheck disable=SC2086
    run 0 log "$scratch/odd.team" add 6v4 save $words --keep-odd
    talks "Kept as it is: "
done
run 1 team split "$scratch/odd.team" 12 20=0.9
talks "faster than anybody has run"
run 1 team split "$scratch/odd.team" 12 20=3.1 --date 2099-03-02
talks "has not been run yet"
run 0 team split "$scratch/odd.team" 12 20=0.9 --keep-odd
run 1 team player "$scratch/odd.team" 12 --spots TL,ZZ
talks 'no scheme in the file has a spot "ZZ"'
run 0 team player "$scratch/odd.team" 12 --spots TL,ZZ --keep-odd
run 0 team player "$scratch/odd.team" 12 --initials A.C.
run 1 team player "$scratch/odd.team" 12 --initials "$(printf 'A\342\200\256B')"
talks "no invisible characters"
printf 'jersey;initials\r\n12;A.D.\r\n' >"$scratch/roster.csv"
run 0 team import "$scratch/odd.team" "$scratch/roster.csv" --sheet roster --json
talks "roster.csv:2: number 12 changes: initials from A.C. to A.D."
json 'j.added === 0 && j.changed === 1 && j.unchanged === 0 && j.notes.length === 1'
printf 'offence,defence,outcome,stage\n6,4,goal,6\n' >"$scratch/stage.csv"
run 1 log "$scratch/odd.team" import "$scratch/stage.csv"
talks "stage.csv:2:10: error: stage: the stage for 6 defenders was called with 4 in, on a 6v4"
run 0 log "$scratch/odd.team" import "$scratch/stage.csv" --keep-odd
talks "stage.csv:2: kept as it is: "

# A file of the first build, with all of that in it: read, listed, put right and sent round as before.
gzip -dc "$BW_ROOT/tests/golden/team/first-build.team.gz" >"$scratch/first.team"
run 0 team check "$scratch/first.team"
run 0 log "$scratch/first.team" list
expect "2026-04-11, against Gullhaven Petrels (game 1)"
expect "2026-04-12, against Gulhaven Petrels (game 2)"
expect "2026-04-13, no game"
run 0 log "$scratch/first.team" edit 1 --note "far out"
run 0 log "$scratch/first.team" edit 2 --note "called early"
run 1 log "$scratch/first.team" edit 3 --stage 3 --out YY
run 0 team player "$scratch/first.team" 12 --fixed TL
run 0 team legs "$scratch/first.team"
expect "ZZ  is no spot of a stage"
expect "the clock's start taken as usual"
run 0 log "$scratch/first.team" export -o "$scratch/first.csv"
run 0 log "$scratch/first.team" import "$scratch/first.csv"
talks "0 added, 0 changed, 3 unchanged"
run 0 team export "$scratch/first.team" --sheet splits -o "$scratch/first.csv"
run 0 team import "$scratch/first.team" "$scratch/first.csv" --sheet splits
talks "0 added, 0 changed, 6 unchanged"

run 0 log "$file" export -o "$scratch/breaks.csv"
run 0 log "$file" import "$scratch/breaks.csv"
talks "0 added, 0 changed, 2 unchanged"
run 0 log "$file" undo
talks "Removed break 2"
run 0 log "$file" add 5v4 forced --id phone-1
talks "it stays removed"
run 0 log "$file" import "$scratch/breaks.csv"
talks "0 added, 0 changed, 2 unchanged"
run 0 log "$file" list --json
json 'j.breaks.length === 1'
run 0 log "$file" remove 1
run 1 log "$file" undo
talks "there is no break in the log yet"

# Copies.
run 0 team backup "$file" "$copy"
run 3 team backup "$file" "$copy"
talks "--force replaces it"
run 0 team check "$copy"
talks "is sound"
run 0 team player "$file" 55 --initials Q
run 3 team restore "$file" "$copy"
run 0 team restore "$file" "$copy" --force
run 1 team player "$file" 55
dd if=/dev/zero of="$copy" bs=512 seek=4 count=90 conv=notrunc 2>/dev/null
run 1 team restore "$file" "$copy" --force
talks "the backup: "
run 0 team check "$file"

# Forgetting: not a byte is left.
run 0 team set "$file" full-names on
run 0 team player "$file" 61 --name "Zebediah Quill" --initials ZQ
run 0 log "$file" add 6v4 goal --out 61 --note "zebediah quill late"
run 0 team forget "$file" 61
talks "Number 61 is forgotten: 0 sprints, 0 quiz results, his number in 1 break; struck in 1 text."
check "no byte of him is left" sh -c "! grep -aqi zebediah '$scratch'/terns.team*"
run 1 team forget "$file" 61
run 0 team player "$file" 62 --initials XX
run 0 team forget "$file" 62 --json
json 'j.jersey === 62 && j.splits === 0 && j.forgotten && j.places.length === 0'
run 0 team check "$file" --json
json 'j.sound.endsWith("terns.team")'
run 1 team player "$file" 62 --initials "" --spots 7
talks "a spot is a code"
run 1 team player "$file" 62 --initials QUILLON
talks "initials are at most 4 letters"
run 0 team scrub "$file"

# Many at once: nothing is lost.
what="ten writers at once"
for k in 0 1 2 3 4 5 6 7 8 9; do
    (for i in 1 2 3 4 5; do
        "$BREAKWATER" log "$file" add 6v4 wide --id "w-$k-$i" >/dev/null 2>>"$scratch/errors" || echo lost
    done) >>"$scratch/lost" &
done
wait
check "no writer was turned away" test ! -s "$scratch/lost"
run 0 log "$file" list --json
json 'new Set(j.breaks.filter(b => b.id.startsWith("w-")).map(b => b.id)).size === 50'
json 'j.breaks.every((b, i) => i === 0 || b.number > j.breaks[i - 1].number)'
run 0 team check "$file"
check "no other file is left" test "$(ls "$scratch" | grep -c '^terns')" -eq 1
finish
