# SPDX-License-Identifier: GPL-3.0-or-later
# `test` and `draw --answer`: the shape of the JSON, that the text says the same, that the same
# question gets the same answer, and what is refused.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

# The shape.
run 0 test "$scheme" --quick --json
json 'j.units === "yd" && j.breaks.length === 1'
cat >"$scratch/shape.js" <<'END'
const j = JSON.parse(require("fs").readFileSync(process.argv[2], "utf8"));
const fail = (what, b) => { console.error("not so: " + what + " " + JSON.stringify(b).slice(0, 300)); process.exit(1); };
for (const b of j.breaks) {
    const need = (ok, what) => { if (!ok) fail(what, b); };
    need(b.offence >= b.defence && b.defence >= 3 && b.offence <= 6, "numbers");
    for (const key of ["set", "start", "level"]) need(typeof b[key] === "string" && b[key], key);
    need(b.seconds.join() === "1,2,3,4,5,6,7,8,9,10", "seconds");
    for (const key of ["best", "typical", "even_numbers"]) {
        need(b[key].length === 10 && b[key].every(v => v >= 0 && v <= 1), key);
        need(b[key].every((v, i) => i === 0 || v >= b[key][i - 1]), key + " never falls");
    }
    need(b.late_s.length === b.late_from_yd.length, "late men");
    need(b.late_s.every(v => v === -1 || (v >= 0 && v <= 10.2)), "late_s");
    need(b.time_bought_s >= 0 && b.time_bought_s <= 10, "time_bought_s");
    need(b.seconds_missing >= 0 && b.seconds_missing <= 10, "seconds_missing");
    need(b.holds === false || b.time_bought_s === 10, "holds");
    need(b.plateau >= b.typical[0] && b.plateau <= b.typical[9] + 1e-4, "plateau");
    let at = 0, kept = 1;
    b.answer.forEach((p, i) => {
        need(["shoot", "pass", "carry", "hold"].includes(p.ply), "ply");
        need(Number.isInteger(p.who) && p.who >= 1 && p.who <= b.offence, "who");
        need(p.p >= 0 && p.p <= 1, "p");
        need(Math.abs(p.at_s - at) < 0.011 && p.end_s > p.at_s, "times follow each other");
        need((p.ply === "shoot") === (i === b.answer.length - 1), "the shot is last");
        need(p.ply !== "pass" || p.receiver !== p.who, "nobody passes to himself");
        need(p.ply === "hold" || typeof p.to === "string", "to");
        at = p.end_s;
        kept *= p.p;
    });
    need(at <= b.answer_for_s + 0.011, "the answer fits into its seconds");
    need(b.answer.length === 0 || Math.abs(kept - b.answer_worth) < 0.002, "worth is the product");
    need(b.answer_worth <= b.best[b.answer_for_s - 1] + 1e-4, "best is at least the answer");
    need(b.weakest.length <= 5, "five at most");
    b.weakest.forEach((r, i) => {
        need(typeof r.from === "string" && typeof r.to === "string" && r.from !== r.to, "from, to");
        need(r.worth > 0 && (i === 0 || r.worth <= b.weakest[i - 1].worth), "worst first");
        need(Math.abs(r.worth - r.thrown * r.p * (r.as_it_is - r.if_set)) < 0.001, "worth is the cost");
        need(r.late.every(m => m.late_s >= 0 && m.away_yd >= 0 && m.spot), "who is late");
    });
}
END
shaped() { check "the shape of the JSON" node "$scratch/shape.js" "$scratch/out"; }
shaped
json 'j.breaks[0].offence === 6 && j.breaks[0].defence === 4 && j.breaks[0].set === "2-2-2"'
json 'j.breaks[0].start === "top" && j.breaks[0].level === "high-school"'
json 'j.breaks[0].answer.length > 0 && j.breaks[0].late_s.length === 2'
cp "$scratch/out" "$scratch/quick.json"

# The text says the same, in columns a terminal has.
run 0 test "$scheme" --quick
check "no line is wider than 80 columns" \
    sh -c 'awk "length > 80 { print; bad = 1 } END { exit bad }" "$1"' sh "$scratch/out"
check "no blanks at the ends of lines" sh -c '! grep -q " $" "$1"' sh "$scratch/out"
cat >"$scratch/agree.js" <<'END'
const fs = require("fs"), text = fs.readFileSync(process.argv[2], "utf8");
const b = JSON.parse(fs.readFileSync(process.argv[3], "utf8")).breaks[0];
const say = (what, seen) => { if (!seen) { console.error("not in the text: " + what); process.exit(1); } };
const flat = text.replace(/\s+/g, " "), near = (v, n) => Math.abs(v * 100 - n) <= 0.51;
b.seconds.forEach((t, i) => {
    const row = text.match(new RegExp("^ +" + t + " +(\\d+) +(\\d+) +(\\d+)", "m"));
    say("row " + t, row && near(b.typical[i], +row[1]) && near(b.best[i], +row[2]) && near(b.even_numbers[i], +row[3]));
});
say("late men", b.late_s.every(s => s < 0 || flat.includes(s.toFixed(1) + " ----")));
say("where they start", b.late_from_yd.every(v => flat.includes("from " + v.toFixed(1) + " yd")));
say("worth now", near(b.typical[b.answer_for_s - 1], +flat.match(/scores in about (\d+) of 100/)[1]));
say("best", near(b.best[b.answer_for_s - 1], +flat.match(/Best play scores in (\d+)\./)[1]));
say("time bought", b.holds || Math.abs(+flat.match(/Time bought ([\d.]+) s/)[1] - b.time_bought_s) < 0.0501);
say("seconds missing", b.seconds_missing === 0 || Math.abs(+flat.match(/Seconds missing ([\d.]+) s/)[1] - b.seconds_missing) < 0.0501);
say("plateau", near(b.plateau, +flat.match(/Plateau About (\d+) in 100/)[1]));
b.answer.forEach((p, i) => {
    const line = flat.match(new RegExp(" " + (i + 1) + "\\. ([\\d.]+) s (\\d+) (passes|carries|holds|shoots)(.*?)(\\d+) in 100\\."));
    const verb = { pass: "passes", carry: "carries", hold: "holds", shoot: "shoots" }[p.ply];
    say("step " + (i + 1), line && line[1] === p.at_s.toFixed(1) && +line[2] === p.who && line[3] === verb && near(p.p, +line[5]));
});
b.weakest.forEach((r, i) => {
    const row = text.match(new RegExp("^ +" + (i + 1) + "\\. [A-Z].*? to .*? +([\\d.]+) +(\\d+) +(\\d+) +(\\d+)$", "m"));
    say("rotation " + (i + 1), row && Math.abs(row[1] - 100 * r.worth) < 0.0551 && near(r.thrown, +row[2]) && near(r.as_it_is, +row[3]) && near(r.if_set, +row[4]));
});
say("which is which", /stress test/.test(flat) && /no team plays like that/i.test(flat) && /compare with it/i.test(flat));
say("no bare per cent sign", !text.includes("%"));
END
check "text and JSON agree" node "$scratch/agree.js" "$scratch/out" "$scratch/quick.json"

# The same question, the same answer; another seed may not change the best.
run 0 test "$scheme" --offence 4 --json
cp "$scratch/out" "$scratch/quick.json"
run 0 test "$scheme" --defence 3 --json --seed 1 --offence 4
check "the same bytes again" cmp "$scratch/out" "$scratch/quick.json"
run 0 test "$scheme" --offence 4 --json --seed 2
json 'j.seed === 2 && j.breaks[0].typical.length === 10'
check "the best does not hang on the seed" node -e '
    const [a, b] = process.argv.slice(1).map(f => JSON.parse(require("fs").readFileSync(f)).breaks[0]);
    process.exit(JSON.stringify([a.best, a.answer]) === JSON.stringify([b.best, b.answer]) ? 0 : 1)' \
    "$scratch/out" "$scratch/quick.json"

# Options choose a break.
run 0 test "$scheme" --offence 4 --defence 3 --set 1-4-1 --start x --seconds 3 --level college \
    --late 12.5 --json
shaped
json 'j.breaks.length === 1 && j.breaks[0].offence === 4 && j.breaks[0].defence === 3'
json 'j.breaks[0].set === "1-4-1" && j.breaks[0].start === "x" && j.breaks[0].level === "college"'
json 'j.breaks[0].late_from_yd.join() === "12.5" && j.breaks[0].answer_for_s === 3'
run 0 test "$scheme" --offence 4 --defence 3 --late "" --json
shaped
json 'j.breaks[0].late_s.length === 0 && j.breaks[0].even_s === -1'
run 0 test "$scheme" --offence 4 --late " 8 , 9.25 " --json
json 'j.breaks[0].defence === 3 && j.breaks[0].late_from_yd.join() === "8"'
run 0 test "$scheme" --offence 4 --defence 4 --json
shaped
json 'j.breaks[0].even_s === 0 && j.breaks[0].late_s.length === 0'
run 0 test "$scheme" --offence 4 --late 10 --units m --json
json 'j.units === "m" && j.breaks[0].late_from_m.join() === "10"'

# A scheme of one stage is tested as far as it goes.
"$BREAKWATER" new --shape 2-2 -o "$scratch/one.json" 2>/dev/null
run 0 test "$scratch/one.json" --quick --json
shaped
json 'j.breaks[0].defence === 4 && j.breaks[0].late_s.length === 0'
run 1 test "$scratch/one.json" --defence 4 --late 20,30
silent
talks "no stage for 5 defenders"

# What is refused: one sentence, no output, usage 2, a wrong name 1.
usage() {
    run 2 test "$scheme" "$@"
    silent
    check "one error for $*" test "$(grep -c error "$scratch/err")" -eq 1
}
wrong() {
    run 1 test "$scheme" "$@"
    silent
    check "one line about $*" test "$(wc -l <"$scratch/err")" -eq 1
}
for late in , 20, ,20 20,,30 20,x 20m 0 -5 20,0 1e3 120 1,2,3,4,5 "20 30" 20.5.1 nan; do
    usage --late "$late"
    talks "--late is up to 4 distances"
done
usage --offence 7
usage --offence 2
usage --offence 4.5
usage --defence 0
usage --offence 4 --defence 5
talks "5 defenders are more than 4 attackers"
usage --seconds 0
usage --seconds 11
usage --level pro
usage --seed 0
usage --seed x
usage --set
wrong --set 2-2-1-1
wrong --set 2-2-3
talks "did you mean"
wrong --start topp
talks "did you mean \"top\""
wrong --start nowhere
run 2 test
run 3 test "$scratch/nosuch.json"

# Paper and film strip.
run 0 test "$scheme" --offence 4 -o "$scratch/report.pdf"
talks "2 pages"
check "a PDF" sh -c 'head -c 5 "$1" | grep -q "%PDF-"' sh "$scratch/report.pdf"
run 0 draw "$scheme" --answer --offence 4 --seconds 3 -o "$scratch/strip.pdf"
check "a strip" test -s "$scratch/strip.pdf"
run 2 draw "$scheme" --answer --ball x -o "$scratch/strip.pdf"
talks "--ball does not go with --answer"
run 2 draw "$scheme" --late 20 -o "$scratch/strip.pdf"
talks "--late goes with --answer"
run 1 draw "$scheme" --answer --start x --seconds 1 --offence 4 -o "$scratch/none.pdf"
check "nothing drawn" test ! -e "$scratch/none.pdf"

# The whole standard set, and Ctrl-C in the midst of it.
if ! sanitised; then
    run 0 test "$scheme" --json
    shaped
    json 'j.breaks.length === 72 && new Set(j.breaks.map(b => [b.offence, b.defence, b.set, b.start].join())).size === 72'
    json '[64, 65, 54, 43].every(n => j.breaks.filter(b => b.offence * 10 + b.defence === n).length === 18)'
fi
what="Ctrl-C"
env --default-signal=INT "$BREAKWATER" test "$scheme" >"$scratch/out" 2>"$scratch/err" &
job=$!
check "it listens" listens "$job"
kill -INT "$job"
wait "$job"
check "it ends with 130" test $? -eq 130
silent
talks "Interrupted."
finish
