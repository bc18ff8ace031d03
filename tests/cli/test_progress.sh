# SPDX-License-Identifier: GPL-3.0-or-later
# Long work on a terminal: one line says how far it is and is gone at the end, and Ctrl-C ends it wherever
# it is. Off a terminal nothing of that is shown.
. "${BW_ROOT:?}/tests/cli/lib.sh"
examples=$BW_ROOT/examples
team=$scratch/t.team
typed=$scratch/out # what a failure shows

run 0 team new "$team" --name Terns
run 0 team scheme "$team" "$examples/terns.json"
cat >"$scratch/roster.csv" <<'END'
jersey,initials,spots
1,A.A.,LL
2,B.B.,LR
3,C.C.,TL
4,D.D.,TR
5,E.E.,LL LR TL TR M
6,F.F.,LL LR TL TR M
END
cat >"$scratch/splits.csv" <<'END'
jersey,date,distance_yd,seconds,clock
1,2026-03-01,10,1.95,move
1,2026-03-01,20,3.15,move
1,2026-03-01,40,5.4,move
END
cat >"$scratch/breaks.csv" <<'END'
offence,defence,outcome,opponent,date
4,3,goal,Petrels,2026-03-01
6,4,save,Petrels,2026-03-01
END
for sheet in roster splits breaks; do
    run 0 team import "$team" "$scratch/$sheet.csv" --sheet $sheet
done

# counted LINE WORD...: on a terminal LINE is shown on the way, and the terminal's line is blank again when
# the result comes; off one it is not shown.
counted() {
    line=$1
    shift
    run 0 "$@"
    checks=$((checks + 2))
    ! grep -qF "$line" "$scratch/err" "$scratch/out" || fail "\"$line\" is shown off a terminal"
    what="on a terminal: breakwater $*"
    script -qec "'$BREAKWATER' $*" /dev/null </dev/null >"$typed" 2>&1 || fail "it failed on a terminal"
    tr '\r' '\n' <"$typed" >"$scratch/lines"
    grep -q "^$line" "$scratch/lines" || fail "\"$line\" is not shown"
    last=$(grep -n "^$line" "$scratch/lines" | tail -n 1 | cut -d: -f1)
    sed -n "$((last + 1))p" "$scratch/lines" | grep -q '^ *$' || fail "the line is not cleared"
}

# interrupted LINE TALK WORD...: Ctrl-C once LINE is shown ends it with exit code 130 and TALK.
interrupted() {
    line=$1
    talk=$2
    shift 2
    what="interrupted: breakwater $*"
    checks=$((checks + 2))
    rm -f "$scratch/pid"
    : >"$typed"
    # What a shell starts beside itself ignores the interrupt, unless it is told otherwise.
    env --default-signal=INT script -qefc "echo \$\$ >'$scratch/pid'; exec '$BREAKWATER' $*" /dev/null \
        </dev/null >"$typed" 2>&1 &
    job=$!
    until grep -q "$line" "$typed"; do
        kill -0 "$job" 2>/dev/null || break
        sleep 0.02 # between two looks; it may take as long as it likes
    done
    kill -INT "$(cat "$scratch/pid")" 2>/dev/null
    wait "$job"
    code=$?
    [ "$code" -eq 130 ] || fail "exit code $code, not 130"
    grep -q "$talk" "$typed" || fail "it does not say \"$talk\": $(tail -c 300 "$typed")"
}

if script -qec true /dev/null >/dev/null 2>&1 </dev/null; then
    small="--tries 50 --breaks 4 --stage 3"
    counted 'Playing kinds of break: 2 of 2' review "$team"
    counted 'Trying men in places: 3 of 3' team lineup "$team" --by worth
    counted 'Playing the standard break: 48 of 48' team feedback "$team"
    # shellcheck disable=SC2086  # a list of options
    interrupted 'Trying shapes: 2 of 50' 'Interrupted after' tune "$examples/terns.json" $small -o "$scratch/a.json"
    # shellcheck disable=SC2086
    interrupted 'Playing held-out breaks' 'Interrupted after 50 candidates' \
        tune "$examples/terns.json" $small -o "$scratch/a.json"
    # shellcheck disable=SC2086
    interrupted 'Looking where a yard matters: 2' 'Interrupted after 50 candidates' \
        tune "$examples/terns.json" $small -o "$scratch/a.json"
    check "nothing was written" test ! -e "$scratch/a.json"
    interrupted 'Playing kinds of break' 'Interrupted\.' review "$team"
    interrupted 'Trying men in places' 'Interrupted\.' team lineup "$team" --by worth
    interrupted 'Playing the standard break' 'Interrupted\.' team feedback "$team"
    interrupted 'Testing breaks' 'Interrupted\.' test "$examples/terns.json"
    interrupted 'Making the packet' 'Interrupted\.' teach "$examples/terns.json" -o "$scratch/taught"
fi
finish
