# SPDX-License-Identifier: GPL-3.0-or-later
# Pipes that close early, devices that are full, and results that stay apart from talk.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

what="a reader that leaves"
for words in "new" "help draw" "help --markdown"; do
    # shellcheck disable=SC2086
    "$BREAKWATER" $words 2>"$scratch/err" | head -c 1 >/dev/null
    check "no complaint when the reader of $words leaves" test ! -s "$scratch/err"
done

if [ -w /dev/full ]; then
    for words in "new" "help" "check $scheme --json" "where $scheme --stage 4 --ball x"; do
        what="breakwater $words >/dev/full"
        # shellcheck disable=SC2086
        "$BREAKWATER" $words >/dev/full 2>"$scratch/err"
        check "$what gives 3" test $? -eq 3
        talks "standard output"
    done
fi

# A break that is kept is kept: a script that tries again after a failure would count it twice.
if [ -w /dev/full ]; then
    run 0 team new "$scratch/t.team" --name Terns
    what="log add >/dev/full"
    "$BREAKWATER" log "$scratch/t.team" add 6v4 save >/dev/full 2>"$scratch/err"
    check "$what gives 0" test $? -eq 0
    talks "Break 1 is kept; only the line that tells of it could not be written"
    talks "6v4  shot saved"
    what="log undo >/dev/full"
    "$BREAKWATER" log "$scratch/t.team" undo >/dev/full 2>"$scratch/err"
    check "$what gives 0" test $? -eq 0
    talks "Break 1 is taken back"
    run 0 log "$scratch/t.team" list --json
    json 'j.breaks.length === 0'
fi

# Standard output closed: it is said, and nothing is written into a file that took its number.
for words in "new" "where $scheme --stage 4 --ball x" "draw $scheme --format pdf -o -"; do
    what="breakwater $words >&-"
    # shellcheck disable=SC2086
    "$BREAKWATER" $words >&- 2>"$scratch/err"
    check "$what gives 3" test $? -eq 3
    talks "standard output"
done

# Interrupted: killed by the signal, which shells report as 130, and nothing half-written stays.
what="interrupted"
mkfifo "$scratch/fifo"
exec 3<>"$scratch/fifo" # opened for both, so that opening does not wait for the other end
"$BREAKWATER" check - <&3 >"$scratch/out" 2>"$scratch/err" &
job=$!
head -c 70000 /dev/zero | tr '\0' ' ' >&3 # more than a pipe holds: it goes through once it is read
kill -INT "$job" 2>/dev/null
kill -TERM "$job" 2>/dev/null # a background job of sh may ignore the interrupt
wait "$job" 2>/dev/null
check "a signal ends it" test $? -gt 128
finish
