# SPDX-License-Identifier: GPL-3.0-or-later
# What stands in a file is shown on a terminal, never obeyed: here an old team file, from before such texts
# were refused, with marks that turn letters round and an escape in it.
. "${BW_ROOT:?}/tests/cli/lib.sh"
file=$scratch/old.team
turn=$(printf '\342\200\256') # U+202E
escape=$(printf '\033')
sqlite3 "$file" <"$BW_ROOT/tests/cli/forget-format-1.sql" >/dev/null
sqlite3 "$file" "UPDATE player SET initials = 'Q' || char(8238) || 'Z' WHERE jersey = 12;
    UPDATE game SET opponent = 'Old' || char(8238) || ' club';
    UPDATE entry SET game = 1, note = 'late' || char(8238) || ' no 12' WHERE id = 1;
    UPDATE revision SET note = 'wider' || char(27) || ']0;x' || char(8238);"

# shown EXIT WORD...: on a terminal nothing of it is obeyed and the mark is seen; elsewhere it is as it was.
shown() {
    want=$1
    shift
    what="on a terminal: breakwater $*"
    checks=$((checks + 3))
    TERM=dumb script -qec "'$BREAKWATER' $*" /dev/null </dev/null >"$scratch/out" 2>&1
    [ $? -eq "$want" ] || fail "another exit code than $want"
    ! tr -d '\r\n\t' <"$scratch/out" | LC_ALL=C grep -q "[[:cntrl:]]\|$turn" || fail "something is obeyed"
    grep -qF '\u202e' "$scratch/out" || fail "the mark is not shown"
}

if script -qec true /dev/null >/dev/null 2>&1 </dev/null; then
    shown 0 team show "$file"
    shown 0 team show "$file" --json
    shown 0 team legs "$file"
    shown 0 log "$file" list
    shown 0 review "$file" --no-model
    shown 0 team export "$file" --sheet roster
    shown 1 team forget "$file" 12
    printf '{"format": "breakwater-scheme", "version": 1, "na%sme": 1}' "$turn" >"$scratch/odd.json"
    shown 1 check "$scratch/odd.json"

    what="our own colours on a terminal"
    checks=$((checks + 1))
    TERM=xterm script -qec "'$BREAKWATER' check '$BW_ROOT/examples/terns-early.json'; '$BREAKWATER' help check" \
        /dev/null </dev/null >"$scratch/out" 2>&1
    grep -q "$escape\[1m" "$scratch/out" || fail "they are gone"
    ! grep -qF '\x1b' "$scratch/out" || fail "they are shown as text"
fi

run 0 log "$file" list
check "off a terminal every byte is as it was" sh -c "grep -q '$turn' '$scratch/out'"
finish
