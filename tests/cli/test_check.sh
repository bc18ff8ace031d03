# SPDX-License-Identifier: GPL-3.0-or-later
# `check`: findings as text and as JSON, their places, exit codes.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

# edit SCRIPT: the scheme changed in JavaScript, into $scratch/edited.json.
edit() {
    node -e 'const fs = require("fs"), s = JSON.parse(fs.readFileSync(process.argv[1]));
             (new Function("s", process.argv[2]))(s);
             fs.writeFileSync(process.argv[3], JSON.stringify(s, null, 2) + "\n")' \
        "$scheme" "$1" "$scratch/edited.json"
}

run 0 check "$scheme"
run 0 check "$scheme" --json
json 'j.ok === true && Array.isArray(j.findings)'
json 'Object.keys(j).join() === "ok,findings"'

# Warnings do not fail.
edit 's.stages[1].spots[0].call = ""; s.stages[1].spots[1].call = s.stages[1].spots[2].call = "up"'
run 0 check "$scratch/edited.json" --json
json 'j.ok === true && j.findings.length >= 2'
json 'j.findings.every(f => ["error","warning","note"].includes(f.severity))'
json 'j.findings.every(f => /^[A-Z].*\.$/.test(f.message) && /^[A-Z].*\.$/.test(f.remedy))'
json 'j.findings.every(f => f.line > 1 && f.column >= 1)'
json 'j.findings.every(f => Object.keys(f).join() === "severity,at,line,column,message,remedy")'
json 'j.findings.some(f => f.at === "/stages/1/spots/0/call")'
json 'j.findings.every((f, i, all) => i === 0 || all[i - 1].line <= f.line)'
cp "$scratch/out" "$scratch/findings"
check "line and column lead to the value" node -e '
    const fs = require("fs"), text = fs.readFileSync(process.argv[1], "utf8").split("\n");
    for (const f of JSON.parse(fs.readFileSync(process.argv[2])).findings) {
        if (!f.at.endsWith("/call")) continue;
        if (text[f.line - 1].slice(f.column - 1)[0] !== "\"") process.exit(1);
    }' "$scratch/edited.json" "$scratch/findings"
run 0 check "$scratch/edited.json"
expect "$scratch/edited.json:"
expect ": warning: "
expect "(/stages/1/spots/0/call)"
talks "0 errors"

# Errors do.
edit 's.stages[1].spots.forEach(t => { delete t.mirror_of; }); s.stages[1].spots[0].home = [0.2, -0.5]'
run 1 check "$scratch/edited.json" --json
json 'j.ok === false && j.findings.some(f => f.severity === "error")'
run 1 check "$scratch/edited.json"
expect ": error: "

# Standard input, output to a file, the people's unit.
what="from standard input"
"$BREAKWATER" check - --json <"$scheme" >"$scratch/out" 2>"$scratch/err"
json 'j.ok'
what="from a pipe"
"$BREAKWATER" new | "$BREAKWATER" check - --json >"$scratch/out" 2>"$scratch/err"
json 'j.ok'
run 0 check "$scheme" --json -o "$scratch/verdict.json"
silent
cp "$scratch/verdict.json" "$scratch/out"
json 'j.ok'
run 3 check "$scratch/nosuch.json" --json
json 'j.ok === false && j.findings.length === 1 && j.findings[0].severity === "error"'
# All that is wrong is told in one go, each at its place; what only follows from another fault is not.
node -e 'const d = JSON.parse(require("fs").readFileSync(process.argv[1], "utf8"));
    d.nmoes = 1;
    d.level = "collge";
    d.landmarks[1].ta = [1, 2];
    d.landmarks[3].id = "Bad Id"; // pins and stops that name it are not at fault
    d.stages[0].rule = {pickup: -4, sfot: 1, cushion: "x"};
    d.stages[1].spots[0].home = [500, 3]; // nor is a rule or pin that names this spot
    d.late[0].behind = -3;
    console.log(JSON.stringify(d, null, 1));' "$BW_ROOT/examples/terns.json" >"$scratch/many.json"
run 1 check "$scratch/many.json"
for pointer in /nmoes /level /landmarks/1/ta /landmarks/3/id /stages/0/rule/pickup /stages/0/rule/sfot \
    /stages/0/rule/cushion /stages/1/spots/0/home /late/0/behind; do
    expect "($pointer)"
done
talks "many.json: 9 errors, 0 warnings."
run 1 where "$scratch/many.json" --stage 4 --ball x
check "another verb tells the first alone" test "$(wc -l <"$scratch/err")" -eq 1
node -e 'console.log(`{"format": "breakwater-scheme", ${
    Array.from({length: 30}, (_, i) => `"key${i}": 1`).join(", ")}}`)' >"$scratch/keys.json"
run 1 check "$scratch/keys.json" --json
json 'j.findings.length === 20 && !j.ok'
talks "the first 20 findings are shown, 10 more are not"
finish
