# SPDX-License-Identifier: GPL-3.0-or-later
# `rehearse`: the shape of the JSON, that the script is one and the plan is fair, that text and paper
# come out, and what is refused.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

cat >"$scratch/shape.js" <<'END'
const j = JSON.parse(require("fs").readFileSync(process.argv[2], "utf8"));
const need = (ok, what) => { if (!ok) { console.error("not so: " + what); process.exit(1); } };
need(j.cautions.length === 8 && j.cautions.every(c => c.about && c.text && /\d{4}/.test(c.source)), "cautions");
need(/licensed medical staff/.test(j.defer), "defer");
for (const s of j.stages) {
    const c = s.script, made = {};
    need(c.passes === c.stops.length && c.bound <= c.passes && c.proven === (c.bound === c.passes), "bound");
    need(c.passes >= c.wanted && c.wanted >= c.rotations, "passes, wanted, rotations");
    need(c.stops[0].from === c.start && c.stops[c.passes - 1].to === c.start, "closed");
    c.stops.forEach((p, i) => {
        need(i === 0 || p.from === c.stops[i - 1].to, "one pass after the other");
        const key = p.from + ">" + p.to;
        need(p.again === (made[key] || 0), "again");
        made[key] = (made[key] || 0) + 1;
        need(p.weak === c.weakest.findIndex(w => w.from === p.from && w.to === p.to) + 1, "weak");
        need(p.seconds.full < p.seconds.half && p.seconds.half < p.seconds.walk, "paces");
    });
    need(Object.keys(made).length >= c.rotations, "every rotation");
    need(c.weakest.every(w => made[w.from + ">" + w.to] >= 2), "weak ones more often");
    for (const pace of ["walk", "half", "full"])
        need(Math.abs(c.stops.reduce((sum, p) => sum + p.seconds[pace], 0) - c.seconds[pace]) < 0.05, "sums");
    const turns = {}, plan = s.plan;
    let end = 0;
    for (const r of plan.rounds) {
        const seen = new Set();
        need(r.at_s >= end - 1e-3, "rounds in order");
        end = r.at_s + r.lasts_s;
        for (const g of r.goals) {
            for (const who of [...Object.values(g.spots), ...g.feed]) {
                need(!seen.has(who), "nobody in two places");
                seen.add(who);
            }
            for (const who of Object.values(g.spots)) turns[who] = (turns[who] || 0) + 1;
        }
    }
    need(end <= plan.minutes * 60 && plan.used_s + plan.game_s <= plan.minutes * 60 + 1e-3, "within the time");
    const counts = Object.values(turns);
    need(plan.most_turns - plan.fewest_turns <= 1, "fair");
    need(counts.length === 0 || Math.max(...counts) === plan.most_turns, "turns");
    need(s.game.includes("rule is changed"), "one rule changed");
}
END
shaped() { check "the shape of the JSON" node "$scratch/shape.js" "$scratch/out"; }

run 0 rehearse "$scheme" --plain --json
shaped
json 'j.stages.map(s => s.defenders).join() === "3,4,5"'
json 'j.stages.every(s => s.script.proven && s.script.weighed === false && s.script.weakest.length === 0)'
run 0 rehearse "$scheme" --plain --stage 6 --json
shaped
json 'j.stages.length === 1 && j.stages[0].defenders === 6'

# Tested: weak ones are found, and come more often. The same again, the same bytes.
run 0 rehearse "$scheme" --stage 4 --players 19 --goals 2 --minutes 90 --json
shaped
json 'j.stages[0].script.weighed && j.stages[0].script.weakest.length > 0 && j.stages[0].script.proven'
json 'j.stages[0].plan.suffices && j.stages[0].plan.goals === 2'
cp "$scratch/out" "$scratch/first.json"
run 0 rehearse "$scheme" --stage 4 --players 19 --goals 2 --minutes 90 --json
check "the same bytes again" cmp "$scratch/out" "$scratch/first.json"

# Jersey numbers, the text, and time that does not suffice.
run 0 rehearse "$scheme" --plain --stage 3 --numbers "4, 7,12,21,33" --json
shaped
json 'j.stages[0].plan.players === 5 && j.stages[0].plan.rounds.every(r => r.goals.every(g => Object.values(g.spots).every(n => [4, 7, 12, 21, 33].includes(n))))'
run 0 rehearse "$scheme" --plain --stage 4 --minutes 3
expect "does not suffice"
expect "proven"
run 0 rehearse "$scheme" --plain --stage 4
expect "Cautions"
expect "rule is changed"
check "no line is wider than 80 columns" \
    sh -c 'awk "length > 80 { print; bad = 1 } END { exit bad }" "$1"' sh "$scratch/out"

# Paper: one document in order, on both papers.
for paper in letter a4; do
    run 0 rehearse "$scheme" --plain --stage 4 --paper $paper -o "$scratch/script.pdf"
    pdftotext -raw "$scratch/script.pdf" "$scratch/out"
    expect "Practice script: 2-2"
    expect "Practice plan: 2-2"
    check "the stops come in order" sh -c \
        'sed "/Practice plan/,\$d" "$1" | grep -oE "^[0-9]+\. [A-Z]" | sed "s/\..*//" | sort -nc' sh "$scratch/out"
    check "cautions on every sheet" sh -c \
        'test "$(grep -cE "^(Cautions|Cautions: .*)$" "$1")" -eq "$(grep -cE "page [0-9]+ of" "$1")"' sh "$scratch/out"
done

usage() {
    run 2 rehearse "$scheme" "$@"
    silent
    check "one error for $*" test "$(grep -c error "$scratch/err")" -eq 1
}
for numbers in "" , 4, ,4 4,,7 4,x 4,7,4 100,2,3,4 "4 7 9 11" 4,7,9 -1,2,3,4; do
    usage --plain --numbers "$numbers"
done
usage --players 3
usage --players 41
usage --minutes 0
usage --minutes x
usage --goals 5
usage --players 6 --numbers 1,2,3,4
run 2 rehearse "$scheme" --plain --stage 2
silent
run 2 rehearse
run 3 rehearse "$scratch/nosuch.json"
node -e '
    const fs = require("fs"), s = JSON.parse(fs.readFileSync(process.argv[1]));
    s.landmarks = s.landmarks.filter(l => l.id === "top");
    s.lessons = [];
    fs.writeFileSync(process.argv[2], JSON.stringify(s));' "$scheme" "$scratch/one.json"
run 1 rehearse "$scratch/one.json" --plain
silent
finish
