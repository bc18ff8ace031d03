# SPDX-License-Identifier: GPL-3.0-or-later
# `where`: the fixed form of its JSON, exact mirror images, the duties, refusals.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

run 0 where "$scheme" --stage 4 --ball x --json
json 'j.stage === 4 && j.units === "yd" && j.ball.x === 0 && j.ball.y < 0'
json 'j.spots.length === 4 && j.spots.every(s => typeof s.id === "string")'
json 'j.spots.every(s => Number.isFinite(s.x) && Number.isFinite(s.y))'
json 'j.spots.every(s => ["ball","adjacent","crease","backside","hold","man"].includes(s.duty))'
json 'j.spots.every(s => Object.keys(s).slice(0, 4).join() === "id,x,y,duty")'
json 'Object.keys(j).join() === "stage,units,ball,spots"'
check "no minus zero" sh -c "! grep -q -- '-0[,}]' '$scratch/out'"

balls=$(node -p 'JSON.parse(require("fs").readFileSync(process.argv[1])).landmarks.map(l => l.id).join(" ")' "$scheme")
check "there are landmarks" test "$(echo "$balls" | wc -w)" -ge 9

# One man on the ball, or two who hold while it is behind; one at the crease.
for stage in 3 4 5 6; do
    for ball in $balls; do
        run 0 where "$scheme" --stage "$stage" --ball "$ball" --json
        json '(d => (d("ball") === 1 || d("ball") === 0 && d("hold") === 2 && j.ball.y < 0) && d("crease") === 1)(w => j.spots.filter(s => s.duty === w).length)'
    done
done

# The mirrored ball gives the mirrored answer, figure for figure: what is left of the mirrored ball's
# places, turned over and sorted, is the ball's own.
mirror=0
mkdir "$scratch/mirror"
for stage in 3 4 5 6; do
    for ball in "13,7" "9,14" "9,0" "5,-5" "0.1,8" "6.37,-3.21" "1.7,12.9" "3,0"; do
        mirror=$((mirror + 1))
        run 0 where "$scheme" --stage "$stage" --ball "$ball" --json
        cp "$scratch/out" "$scratch/mirror/$mirror.right"
        run 0 where "$scheme" --stage "$stage" --ball "-$ball" --json
        cp "$scratch/out" "$scratch/mirror/$mirror.left"
    done
done
check "$mirror mirror images" node -e '
    const fs = require("fs"), [folder, count] = process.argv.slice(1);
    const read = (i, side) => JSON.parse(fs.readFileSync(`${folder}/${i}.${side}`)).spots;
    const keys = (spots, k) => spots.map(s => [s.x * k || 0, s.y, s.duty].join()).sort().join(";");
    for (let i = 1; i <= count; i++) {
        if (keys(read(i, "left"), -1) === keys(read(i, "right"), 1)) continue;
        console.error(i, keys(read(i, "left"), -1), keys(read(i, "right"), 1));
        process.exitCode = 1;
    }' "$scratch/mirror" "$mirror"

# Units, attackers, sets.
run 0 where "$scheme" --stage 4 --ball 9.144,9.144 --units m --json
json 'j.units === "m" && j.ball.x === 9.144'
cp "$scratch/out" "$scratch/metres"
run 0 where "$scheme" --stage 4 --ball 10,10 --json
check "yards and metres agree" node -e '
    const fs = require("fs"), [m, y] = process.argv.slice(1).map(f => JSON.parse(fs.readFileSync(f)));
    process.exit(m.spots.every((s, i) => Math.abs(s.x - y.spots[i].x * 0.9144) < 2e-4) ? 0 : 1)' \
    "$scratch/metres" "$scratch/out"
run 0 where "$scheme" --stage 4 --ball top --attackers "-7,14 7,14 -9,2 9,2 0,6" --json
json 'j.spots.some(s => Number.isInteger(s.man) && s.man >= 1 && s.man <= 5)'
run 0 where "$scheme" --stage 6 --ball top --set 2-2-2 --json
json 'new Set(j.spots.map(s => s.man)).size === 6'
run 0 where "$scheme" --stage 4 --ball top --set 2-2-2 --men 5
expect "2-2"
run 2 where "$scheme" --stage 4 --ball top --set 2-2-2 --attackers "1,1"
run 1 where "$scheme" --stage 4 --ball top --set 2-2-3
talks 'did you mean "2-2-2"?'
run 2 where "$scheme" --stage 4 --ball top --attackers "1,1,1"
run 2 where "$scheme" --stage 4 --ball top --attackers "1,1 2,2 3,3 4,4 5,5 6,6 7,7"
run 1 where "$scheme" --stage 4 --ball top --attackers "1,100"
talks "off the field"

# What cannot be answered is refused in a sentence.
run 1 where "$scheme" --stage 4 --ball topp
talks 'did you mean "top"?'
run 1 where "$scheme" --stage 4 --ball nowhere-at-all
talks "or give a place as x,y"
run 1 where "$scheme" --stage 4 --ball 31,5
talks "is off the field"
silent
run 1 where "$scheme" --stage 4 --ball 0,-15.01
for ball in "1,2,3" "1," ",1" "1e1,2" "nan,1" "0x1,2" "1 ,2" "inf,inf"; do
    run 2 where "$scheme" --stage 4 --ball "$ball"
    talks "two plain numbers"
done

# Other programs write every digit a double has.
run 0 where "$scheme" --stage 4 --ball 11.887199999999998,6.4007000000000005 --json
json 'j.ball.x === 11.8872 && j.ball.y === 6.4007'
run 2 where "$scheme" --ball x
talks "this scheme has 3, 4, 5 and 6"
run 2 where "$scheme" --stage 4
talks "say where the ball is"
"$BREAKWATER" new --shape 2-2 -o "$scratch/one.json" 2>/dev/null
run 0 where "$scratch/one.json" --ball x
run 1 where "$scratch/one.json" --stage 5 --ball x
talks "no stage with 5 defenders; it has 4"

# The text says left and right as the defender sees them, and the caption.
run 0 where "$scheme" --stage 4 --ball x
expect "3.0 yd left, 1.5 yd out"
expect "The low pair hold."

# How many men is said of a set; without one it would go unheard.
run 2 where "$scheme" --stage 4 --ball x --men 5
talks "--men goes with --set"
run 2 draw "$scheme" --stage 4 --ball x --men 5 -o "$scratch/x.svg"
talks "--men goes with --set"

# A coach's own set of four is a set: all its men come, and no more.
sed 's/"lessons":/"sets": [{"id": "mine", "name": "my four", "at": [[0, 15], [-9, 3], [9, 3], [0, 6]]}], "lessons":/' \
    "$scheme" >"$scratch/own.json"
run 0 check "$scratch/own.json"
run 0 where "$scratch/own.json" --stage 4 --ball top --set mine
expect "attacker 4"
run 0 draw "$scratch/own.json" --stage 4 --ball top --set mine -o "$scratch/own.svg"
run 1 where "$scratch/own.json" --stage 4 --ball top --set mine --men 5
talks 'the set "mine" has 4 men, fewer than 5; ask for fewer with --men.'
run 3 where "" --ball x
talks "a file without a name: error"
finish
