# SPDX-License-Identifier: GPL-3.0-or-later
# Documents that cannot be read: one finding, one sentence, quickly and in little memory.
. "${BW_ROOT:?}/tests/cli/lib.sh"

one_finding='j.ok === false && j.findings.length === 1 && j.findings[0].severity === "error"'
sentence='((m) => m.length > 10 && !m.includes("\n"))(j.findings[0].message)'

# refuse FILE [CODE]: one finding and one line of text.
refuse() {
    run "${2:-1}" check "$1" --json
    json "$one_finding"
    json "$sentence"
    run "${2:-1}" check "$1"
    check "one line about $1" test "$(wc -l <"$scratch/out")" -eq 1
    run "${2:-1}" where "$1" --stage 4 --ball x --json
    silent
}

# frugal FILE: refused without running away: the system would end it after two seconds of processor time,
# and it takes less than 50 MB. How quick it is, bench/ may tell.
frugal() {
    if sanitised; then return; fi
    (
        ulimit -t 2
        "$BREAKWATER" check "$1" >/dev/null 2>&1
    )
    check "$1 refused in two seconds of processor time" test $? -lt 128
    if [ -x /usr/bin/time ]; then
        kilobytes=$(/usr/bin/time -f %M "$BREAKWATER" check "$1" 2>&1 >/dev/null | tail -1)
        check "$1 refused in 50 MB (took $kilobytes kB)" test "$kilobytes" -lt 51200
    else
        # Address space, most of it shared libraries, stands in for memory.
        (
            ulimit -v 204800
            "$BREAKWATER" check "$1" >/dev/null 2>&1
        )
        check "$1 refused in little memory" test $? -lt 128
    fi
}

"$BREAKWATER" new -o "$scratch/whole.json" 2>/dev/null
: >"$scratch/empty.json"
head -c 20000000 /dev/zero | tr '\0' '[' >"$scratch/brackets.json"
head -c 1500 "$scratch/whole.json" >"$scratch/truncated.json"
head -c 900000 /dev/zero | tr '\0' '[' >"$scratch/deep.json"
printf '\377\376{}' >"$scratch/bytes.json"
printf '{"name": "\303("}' >"$scratch/utf8.json"
printf 'null' >"$scratch/null.json"
printf '[1, 2]' >"$scratch/array.json"
mkdir "$scratch/folder"
for name in empty brackets truncated deep bytes utf8 null array; do
    refuse "$scratch/$name.json"
    frugal "$scratch/$name.json"
done
refuse "$scratch/folder"
frugal "$scratch/folder"
refuse "$scratch/nosuch.json" 3

# Every prefix of a scheme is refused, save the last ones that lack only the newline.
size=$(wc -c <"$scratch/whole.json")
at=0
while [ "$at" -lt $((size - 2)) ]; do
    head -c "$at" "$scratch/whole.json" >"$scratch/prefix.json"
    run 1 check "$scratch/prefix.json"
    at=$((at + 397))
done

# The broken documents each name their place, line and column.
broken=0
for file in "$BW_ROOT"/tests/scheme/broken/*.json; do
    [ -e "$file" ] || continue
    broken=$((broken + 1))
    refuse "$file"
    run 1 check "$file" --json
    json 'j.findings[0].line >= 1 && j.findings[0].column >= 1'
    json 'j.findings[0].at === "" || j.findings[0].at[0] === "/"'
done
check "thirty broken documents were tried (there are $broken)" test "$broken" -ge 30
finish
