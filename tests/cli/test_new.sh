# SPDX-License-Identifier: GPL-3.0-or-later
# `new`: complete schemes that pass their own check, and never at the cost of a file.
. "${BW_ROOT:?}/tests/cli/lib.sh"
file=$scratch/new.json

run 0 new
cp "$scratch/out" "$scratch/whole"
json 'j.format === "breakwater-scheme" && j.stages.length === 4'
json 'j.level === "high-school" && j.field === "boys-nfhs" && j.units === "yd"'
run 0 new
check "the same bytes twice" cmp -s "$scratch/whole" "$scratch/out"

for shape in 1-2 2-2 2-1-2 match-up; do
    run 0 new --shape "$shape"
    json "j.stages.length === 1 && j.stages[0].shape === '$shape'"
done
for level in youth-u11 youth-u13 youth-u15 high-school college; do
    run 0 new --level "$level" -o "$scratch/$level.json"
    run 0 check "$scratch/$level.json" --json
    json 'j.ok && j.findings.every(f => f.severity !== "error")'
done
run 2 new --field nowhere
sed -n 's/.*; it is \(.*\)\./\1/p' "$scratch/err" | sed 's/, /\n/g; s/ or /\n/g' >"$scratch/fields"
check "several fields are named" test "$(wc -l <"$scratch/fields")" -ge 5
while read -r field; do
    run 0 new --field "$field" -o "$scratch/field.json" --force
    run 0 check "$scratch/field.json" --json
    json 'j.ok'
done <"$scratch/fields"

# A file that is there is not written over.
run 0 new -o "$file"
talks "Next: breakwater check $file"
silent
echo mine >"$file"
run 3 new -o "$file"
talks "is there already"
check "the file is as it was" test "$(cat "$file")" = mine
run 0 new -o "$file" --force --json
json 'j.stages.join() === "3,4,5,6" && typeof j.file === "string"'
check "the file is the scheme" cmp -s "$scratch/whole" "$file"

run 0 new --name Harbour --units m
json 'j.name === "Harbour" && j.units === "m"'
run 2 new --name ""
run 2 new --name "$(printf '%0100d' 7)"
talks "--name is from 1 to"
run 3 new -o "$scratch/no/such/folder/x.json"
talks "$scratch/no/such/folder/x.json: error: it cannot be written"
run 3 new -o "$scratch" --force
check "nothing half-written is left" sh -c "! ls -A '$scratch' | grep -q XXXX"
finish
