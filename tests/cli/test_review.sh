# SPDX-License-Identifier: GPL-3.0-or-later
# `review`: counts first, no bare percentage, intervals, the change of the scheme, the model beside; text, JSON
# and pages say the same.
. "${BW_ROOT:?}/tests/cli/lib.sh"
file=$scratch/terns.team
examples=$BW_ROOT/examples

run 0 team new "$file" --name "Port Merrow Terns"
run 0 review "$file"
expect "Port Merrow Terns: 0 breaks"
expect "no breaks"
run 0 team set "$file" about "Everybody in this file is invented."
run 0 log "$file" add 6v4 goal --seconds 4
run 0 review "$file" --no-model
expect "Everybody in this file is invented."
expect "1 of 1, too few to say"
run 0 review "$file" --json
json 'j.all.goals.n === 1 && j.all.goals.rate === undefined && j.all.goals.too_few === true'

rm -f "$file"*
run 0 team new "$file" --name "Port Merrow Terns"
run 0 team scheme "$file" "$examples/terns-early.json" --note "as the season began"
run 0 team scheme "$file" "$examples/terns.json" --note "wings met softer"
run 0 log "$file" import "$examples/terns-season.csv"
run 0 review "$file"
expect "121 breaks in 14 games"
expect "28 of 121, about 23 in 100 (likely 17 to 31)"
expect "too few to say"
expect "the model expected"
expect "Before: 18 of 59. After: 10 of 62."
checks=$((checks + 1))
grep -v '95 %' "$scratch/out" | grep -q '%' && fail "a bare percentage"
# Every "in 100" has its likely range, its count, or is a difference.
checks=$((checks + 1))
tr '\n' ' ' <"$scratch/out" | tr -s ' ' | grep -o '[^.;]*in 100[^.;]*' |
    grep -v 'likely\|up to\|In 100 breaks\|forecast about' >"$scratch/bare" && fail "a rate alone: $(head -1 "$scratch/bare")"

run 0 review "$file" --json
json 'j.team === "Port Merrow Terns" && j.all.breaks === 121 && j.all.goals.hits === 28'
json 'j.by_numbers.reduce((n, g) => n + g.breaks, 0) === 121'
json 'j.by_game.length === 14 && j.by_game.every(g => g.leaning_95[0] < g.leaning_rate && g.leaning_rate < g.leaning_95[1])'
json '[j.all, ...j.by_numbers, ...j.by_stage].every(g => g.goals.rate === undefined ? g.goals.n < 10 : g.goals.n >= 10 && g.goals.interval_95.length === 2)'
json 'Math.abs(j.change.difference_95[0] + 0.285) < 0.02 && j.change.difference_95[1] > 0'
json 'j.model.n === 121 && j.model.brier > 0 && j.model.brier < 0.3 && j.model.bins.length >= 1'
json 'Math.abs(j.model.expected_goals - j.all.forecast_goals) < 0.01'

run 0 review "$file" --no-model --before 2 --after 1
expect "Before: 10 of 62. After: 18 of 59."
run 1 review "$file" --before 9
talks "no revision 9"
run 0 review "$file" -o "$scratch/review.pdf" --no-model
checks=$((checks + 1))
pdftotext -layout "$scratch/review.pdf" "$scratch/out"
[ "$(grep -c 'page . of 3' "$scratch/out")" -eq 3 ] || fail "not three pages"
expect "28 of 121, about 23 in 100"
checks=$((checks + 1))
grep -v '95 %' "$scratch/out" | grep -q '%' && fail "a bare percentage on paper"
run 1 review "$BW_ROOT/README.md"
talks "not a team file"

# Legs, line-up and feedback from the same file.
run 0 team import "$file" "$examples/terns-roster.csv" --sheet roster
run 0 team import "$file" "$examples/terns-splits.csv" --sheet splits
run 0 team legs "$file"
expect "top speed"
expect "give or take"
expect "no sprints in the file"
expect "to spare in the tightest run"
run 0 team legs "$file" --json
json 'j.players.length === 24 && j.players.filter(p => p.fitted).length > 15'
json 'j.players.filter(p => p.fitted).every(p => p.vmax_m_s > 5 && p.vmax_m_s < 11 && p.vmax_standard_error > 0 && p.margins.every(m => m.rotations === 0 || m.worst_s <= m.mean_s))'
json 'j.players.some(p => p.fitted && p.margins.some(m => m.spot === "M" && m.rotations === 0 && !("worst_s" in m)))'
run 0 team split "$file" 1 1=0.7 2=1.0 --clock move --units m
run 0 team legs "$file"
expect "He is still speeding up at the last split"
expect "M   in the 2-1-2: no tight run: no pass asks for a run from there"
run 0 team split "$file" 24 5=1.43 10=2.23 20=3.34 30=4.54 40=5.84 --clock signal
run 0 team legs "$file"
expect "the clock's start taken as usual"
run 0 team lineup "$file" --stage 5
expect "no tight run: no pass asks for a run from here"
run 0 team lineup "$file" --json
json 'j.places.length === 6 && new Set(j.places.map(p => p.jersey)).size === 6'
json 'j.places[0].jersey === 2 && j.places[1].jersey === 3'
run 0 team lineup "$file"
expect "fixed there by you"
run 1 team lineup "$file" --stage 6
run 2 team lineup "$file" --by luck
run 0 team feedback "$file"
expect "Nothing is changed."
run 0 team feedback "$file" --apply on --json
json 'j.applied === true && j.pass_caught.after < j.pass_caught.before && j.goals_a_shot.n === 65'
run 0 test "$examples/terns.json" --quick --team "$file"
talks "With the team's own figures"
run 0 team feedback "$file" --apply off
run 0 test "$examples/terns.json" --quick --team "$file"
talks "keeps no figures of its own"

finish
