# SPDX-License-Identifier: GPL-3.0-or-later
# The invented season of examples/: its generator still writes these bytes, and all of it goes into a team
# file and out again.
. "${BW_ROOT:?}/tests/cli/lib.sh"
file=$scratch/terns.team
examples=$BW_ROOT/examples

check "the generator runs" node "$BW_ROOT/tools/make-season.mjs" "$scratch"
for name in terns-roster.csv terns-splits.csv terns-season.csv terns-early.json; do
    check "$name is what the generator writes" cmp "$scratch/$name" "$examples/$name"
done

run 0 team new "$file" --name "Port Merrow Terns"
run 1 team import "$file" "$examples/terns-season.csv" --sheet breaks
talks "the team file has no such scheme revision"
run 0 check "$examples/terns-early.json"
run 0 team scheme "$file" "$examples/terns-early.json"
run 0 team scheme "$file" "$examples/terns.json" --note "wings met softer"
run 0 team import "$file" "$examples/terns-roster.csv" --sheet roster
run 0 team import "$file" "$examples/terns-splits.csv" --sheet splits
run 0 team import "$file" "$examples/terns-season.csv" --sheet breaks
run 0 team show "$file" --json
json 'j.players.length === 24 && j.games.length === 14 && j.breaks === 121 && j.revisions === 2'
json 'j.splits === 132 && !j.full_names && j.players.every(p => !p.name)'
run 0 log "$file" list --json
json '[1, 2].every(r => j.breaks.filter(b => b.revision === r).length > 50)'
json 'j.breaks.filter(b => b.outcome === "goal").length > 20'
for name in roster splits breaks; do
    run 0 team export "$file" --sheet $name -o "$scratch/again.csv"
    run 0 team import "$file" "$scratch/again.csv" --sheet $name
done
run 0 log "$file" export
check "the breaks come out as they went in" cmp "$scratch/out" "$examples/terns-season.csv"

# Many seasons in one file still fit on the pages: the newest shots are drawn, the others counted.
node -e 'const day = i => new Date(Date.UTC(2003, 0, 1 + i)).toISOString().slice(0, 10);
    console.log("offence,defence,outcome,opponent,date,shot_x_yd,shot_y_yd");
    for (let i = 0; i < 8400; i++)
        console.log(`6,4,${i % 3 ? "save" : "goal"},Petrels,${day(i)},${i % 11 - 5},${5 + i % 9}`);
' >"$scratch/long.csv"
run 0 team new "$scratch/long.team" --name Terns
run 0 log "$scratch/long.team" import "$scratch/long.csv"
run 0 review "$scratch/long.team" --no-model -o "$scratch/long.pdf"
check "the older shots are counted" sh -c "pdftotext '$scratch/long.pdf' - | grep -q '7800 older ones'"
finish
