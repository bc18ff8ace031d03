# SPDX-License-Identifier: GPL-3.0-or-later
# The command line itself: exit codes, order of words, suggestions, help, colour.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

run 2
talks "breakwater help"
run 0 --help
expect "Verbs"
run 0 -h
expect "Verbs"
run 0 --version
expect "breakwater "
run 0 help
expect "check"
for verb in new check where draw team log help; do
    run 0 "$verb" --help
    expect "breakwater $verb"
    expect "Exit codes"
    run 0 help "$verb"
    expect "breakwater $verb"
    run 0 "$verb" --version
    expect "breakwater "
done

# Near misses are named, never acted on.
run 2 chekc "$scheme"
talks 'did you mean "check"?'
silent
run 2 frobnicate
talks 'there is no verb "frobnicate"'
run 2 help chekc
talks 'did you mean "check"?'
run 2 where "$scheme" --stagee 4 --ball x
talks "did you mean --stage?"
run 2 where "$scheme" --stag 4 --ball x # no abbreviations
run 2 where "$scheme" -z
talks "there is no option -z"
run 2 new --level high-scholl
talks 'did you mean "high-school"?'
run 2 new --level 7
talks "it is youth-u11"
run 2 --json check "$scheme"
talks "put the verb before the options"

# Words that are missing, too many, or of no use.
run 2 check
talks "check needs more"
run 2 check "$scheme" "$scheme"
talks "one word too many"
run 2 new something
talks "takes no file"
run 2 where "$scheme" --stage 4 --ball
talks "--ball needs a value"
run 2 where "$scheme" --stage 4 --stage 5 --ball x
talks "given twice"
run 2 check --json=yes "$scheme"
talks "takes no value"
for number in four 4.5 "" 2 7 99999999999999999999 nan 4x; do
    run 2 where "$scheme" --stage "$number" --ball x
    talks "whole number from 3 to 6"
done

# Any order; "=" and a space are the same; "--" ends the options.
run 0 where "$scheme" --stage 4 --ball x
cp "$scratch/out" "$scratch/first"
for words in "--stage=4 --ball=x $scheme" "--stage 4 $scheme --ball x" "--ball x --stage 4 -- $scheme"; do
    # shellcheck disable=SC2086
    run 0 where $words
    check "the same answer in any order" cmp -s "$scratch/first" "$scratch/out"
done
run 3 check -- --no-such-file
run 0 where "$scheme" --stage 4 --ball x -o"$scratch/joined"
check "the same answer in a file" cmp -s "$scratch/first" "$scratch/joined"
run 0 where "$scheme" --stage 4 --ball x --output "$scratch/joined"
check "the same answer in a file again" cmp -s "$scratch/first" "$scratch/joined"
run 0 where "$scheme" --stage 4 --ball x -o -
check "the same answer on -" cmp -s "$scratch/first" "$scratch/out"

# What a word may be is said where it is wrong and in the help.
run 2 teach "$scheme" --only posters -o "$scratch/none"
talks '--only knows no "posters"; it knows packet, handout, cards, quiz, wall and films, with commas between them.'
check "no folder is made" test ! -e "$scratch/none"
run 0 help --markdown
expect "Only these parts, with commas between them: packet, handout, cards, quiz, wall or films |"
what="the attack sets"
check "where, draw and test list them" \
    test "$(grep -c -- '--set SET.*: 2-2-2, 1-4-1, 2-3-1, 3-3, 1-3-2 or spread |' "$scratch/out")" -eq 3

# What would fail at the end of a search is refused before it: before the scheme is even read.
run 2 tune "$scratch/nosuch.json" --sheets "$scratch/why.png"
talks "--sheets is a PDF: name a file that ends in .pdf, not \"$scratch/why.png\"."
run 2 tune "$scratch/nosuch.json" --sheets -
run 3 tune "$scratch/nosuch.json" --sheets "$scratch/nowhere/why.pdf"
talks "nowhere/why.pdf: error: it cannot be written: No such file or directory"
run 3 tune "$scratch/nosuch.json" -o "$scratch/nowhere/new.json"
talks "nowhere/new.json: error: it cannot be written"
run 3 test "$scratch/nosuch.json" -o "$scratch/nowhere/report.pdf"
talks "nowhere/report.pdf: error: it cannot be written"
run 3 tune "$scratch/nosuch.json" --sheets "$scratch/why.pdf"
talks "nosuch.json: error: it cannot be read"
check "trying left nothing behind" sh -c "! ls '$scratch' | grep -q '^why'"

# A terminal obeys control bytes; in a file's name they are shown instead, and talk stays on its line.
odd=$(printf 'a\033[31mb\nc\233d.json')
run 3 check "$odd"
talks 'a\x1b[31mb\x0ac\x9bd.json: '
expect 'a\x1b[31mb\x0ac\x9bd.json: error: it cannot be read'
run 3 where "$odd" --ball x
talks 'a\x1b[31mb\x0ac\x9bd.json: error: it cannot be read'
run 3 draw "$scheme" -o "$scratch/nowhere/$odd.pdf"
talks 'a\x1b[31mb\x0ac\x9bd.json.pdf'
check "no control byte gets through" sh -c "! tr -d '\n' <'$scratch/err' | LC_ALL=C grep -q '[[:cntrl:]]'"

# No colour off a terminal; on one, colour unless it is unwanted.
escape=$(printf '\033')
what="colour"
"$BREAKWATER" check nosuch >"$scratch/out" 2>"$scratch/err"
check "no colour off a terminal" sh -c "! grep -q '$escape' '$scratch/out' '$scratch/err'"
if script -qec true /dev/null >/dev/null 2>&1 </dev/null; then
    on_terminal() {
        script -qec "$1" /dev/null </dev/null >"$scratch/typed" 2>&1
        grep -q "$escape" "$scratch/typed"
    }
    not() {
        ! "$@"
    }
    bad="'$BREAKWATER' check nosuch"
    check "colour on a terminal" on_terminal "TERM=xterm $bad"
    check "none with NO_COLOR" not on_terminal "TERM=xterm NO_COLOR=1 $bad"
    check "colour with an empty NO_COLOR" on_terminal "TERM=xterm NO_COLOR= $bad"
    check "none on a dumb terminal" not on_terminal "TERM=dumb $bad"
    check "none with --no-color" not on_terminal "TERM=xterm $bad --no-color"
fi
finish
