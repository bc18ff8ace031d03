#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Forgetting a player: everything that speaks of him is struck or shown, nothing else is touched, and nothing
# that stays is said to be gone. The file is one that an earlier program wrote. Everybody in it is invented.
. "$BW_ROOT/tests/cli/lib.sh"

file="$scratch/old.team"
again() {
    rm -f "$file"*
    sqlite3 "$file" <"$BW_ROOT/tests/cli/forget-format-1.sql" >/dev/null
}
# Every text of the file, and the bytes of it and of the log beside it.
texts() { sqlite3 "$file" .dump | grep '^INSERT'; }
gone() {
    what="no text and no byte has $1"
    checks=$((checks + 1))
    if texts | grep -qiE -- "$1"; then fail "$(texts | grep -iE -- "$1" | cut -c1-160 | head -3)"; fi
    cat "$file"* | strings -n 3 | grep -qiE -- "$1" && fail "bytes are left"
}
kept() {
    what="the text \"$1\" is as it was"
    checks=$((checks + 1))
    texts | grep -qF -- "$1" || fail "not so"
}
seen() { sed -n 's/.*--seen \([0-9a-f]*\).*/\1/p' "$scratch/err"; }

again
texts >"$scratch/before"

# In a script nothing happens before the coach has chosen; what may mean him is shown.
run 1 team forget "$file" 12
talks "Nobody is forgotten yet: 24 of 29 places may mean number 12"
expect "break 1, note: part of his name"
expect "[Zimmer] was late"
expect "good work, [quillon]"
expect "[q.z.] left his post"
expect "no [12] too high, no. 12 again; 12 yd out"
expect "no. [12] again; 12 yd out"
expect "[Quillon  Zimmer] slid, Quillons Vater"
expect "[Quillons] Vater"
expect "see [Zimmer, Quillon]!"
expect "#[12] and #120"
expect "number [12]"
expect "player no [12]"
expect "nos. 5 and [12]"
expect "[QZ] slow"
expect "[qz] slow; it is ok"
expect "[zimmer]-late"
expect "a removed break, its id: part of his name"
expect "game 1 of 2026-04-11, opponent: part of his name"
expect "wider for [Quillon Zimmer]"
expect "[Zimmer]'s idea"
expect "scheme Zimmer Harbour, its notes (in revisions 1 to 2): his whole name, struck unless you leave it"
expect "landmark zimmer-spot, its id (in revisions 1 to 2)"
expect "stage 3, spot BL, its call (in revisions 1 to 2): his initials"
expect "caption of stop 1 (in revisions 1 to 2): his number"
code=$(seen)
texts >"$scratch/after"
check "nothing was changed" cmp -s "$scratch/before" "$scratch/after"
run 0 team forget "$file" 12 --list --json
json 'j.places.length === 29 && j.places.filter(p => p.sure).length === 5 && !j.forgotten'
json "j.seen === '$code'"

# Numbers are those of a list, of this list, and each is decided once.
run 2 team forget "$file" 12 --strike 1
talks "--seen"
run 2 team forget "$file" 12 --strike 1 --seen 00000000
talks "not those of list 00000000 any more"
run 2 team forget "$file" 12 --strike 30 --seen "$code"
talks "numbers of the list (1 to 29)"
run 2 team forget "$file" 12 --strike 1,,2 --seen "$code"
run 2 team forget "$file" 12 --strike 1-3 --leave 3 --seen "$code"
talks "place 3 is in both"
run 2 team forget "$file" 12 --strike 1-3 --leave 4 --seen "$code"
talks "place 5 is in neither"
run 2 team forget "$file" 12 --strike ""
run 0 log "$file" add 6v4 goal --note "Zimmer once more"
run 2 team forget "$file" 12 --strike 1 --seen "$code"
again
texts >"$scratch/after"
check "nothing was changed" cmp -s "$scratch/before" "$scratch/after"

# All of it: not a byte is left, other texts are as they were, and the file is sound.
run 0 team forget "$file" 12 --strike all
gone 'zimmer|quillon|q\.z\.|[^a-z]qz[^a-z]'
kept "'no _ too high, no. _ again; 12 yd out'"
kept "'_ slid, _ Vater'"
kept "'see _!'"
kept "'#_ and #120, number _, player no _, nos. 5 and _'"
kept "'_ slow; _ slow; it is ok'"
kept "'wider for _'"
kept "'_''s old club'"
kept "asleep stays"
kept "'Lee fell asleep in Leeds'"
run 0 team check "$file"
run 0 team scheme "$file" --revision 1
json 'j.name === "_ Harbour" && j.lessons[0].stops[0].ball === "x1" && j.stages[0].spots[0].call === "_"'
run 1 team forget "$file" 12

# What is left is said, word by word; what was sure goes unless it is left.
again
run 1 team forget "$file" 5
expect "break 10, note: part of his name"
expect "[Lee] fell asleep in Leeds"
expect "ANN LEE, asleep; [LEE, ANN]"
expect "[Lee] Park"
expect "[Lee]'s Terns"
code=$(seen)
run 0 team forget "$file" 5 --seen "$code" --strike 4-5 --json
talks "2 places stay as they were, which you left:"
talks "[Lee] fell asleep in Leeds"
talks "[Lee]'s Terns"
json 'j.forgotten && j.places.filter(p => !p.struck).map(p => p.number).join() === "1,6"'
kept "'Lee fell asleep in Leeds'"
kept "'_, asleep; _'"
kept "nos. _ and 12'"
gone 'ann lee|lee, ann|lee park'
again
run 0 team forget "$file" 5 --seen "$code" --leave 1-3
kept "'Lee fell asleep in Leeds'"
kept "'ANN LEE, asleep; LEE, ANN'"
kept "'_''s Terns'"
again
run 0 team forget "$file" 5 --leave all
talks "6 places stay"
kept "'ANN LEE, asleep; LEE, ANN'"

# Capitals beyond ASCII, both forms of accents, and none.
again
run 1 team forget "$file" 7
expect "break 7, note: his whole name, struck unless you leave it"
expect "break 8, note: his whole name, struck unless you leave it"
expect "[zoe angstrom] and Angstrom's friend"
run 0 team forget "$file" 7 --strike all
gone 'ngstr'
kept "'_ called late'"
kept "'_ again'"
kept "'_ and _''s friend'"

# Someone of the same name: nothing is sure. A name the roster does not have. Nobody speaks of him.
again
run 0 team player "$file" 31 --name "lee, ann"
run 1 team forget "$file" 5
talks "6 of 6 places"
again
run 0 team set "$file" full-names off
run 0 team forget "$file" 12 --list
talks "The roster has no full name of number 12"
run 1 team forget "$file" 12 --name "Quillon Zimmer"
talks "24 of 29 places"
run 2 team forget "$file" 12 --name "$(printf '%064d' 7)"
again
run 0 team forget "$file" 30
texts | grep -v 'INTO player' >"$scratch/after"
grep -v 'INTO player' "$scratch/before" >"$scratch/rest"
check "only his row is gone" cmp -s "$scratch/rest" "$scratch/after"
gone 'bo berg'

# At a terminal each place is asked for; stopping changes nothing.
ask() {
    what="answers $1"
    printf "$1" | script -qec "'$BREAKWATER' team forget '$file' 5" /dev/null >"$scratch/out" 2>&1
    checks=$((checks + 1))
}
again
ask 'y\nq\n'
expect "Stopped: nothing is changed."
texts >"$scratch/after"
check "nothing was changed" cmp -s "$scratch/before" "$scratch/after"
ask 'n\nperhaps\ny\nn\ny\n'
expect "Strike it? y (yes), n (no, it stays)"
expect "2 places stay as they were, which you left:"
kept "'Lee fell asleep in Leeds'"
kept "nos. _ and 12'"
kept "'Lee Park'"
kept "'_''s Terns'"

# Ids and names that may not be twice stay apart.
again
run 0 log "$file" add 6v4 goal --id Zimmer-late
run 0 team game "$file" 2026-04-11 "QUILLON's old club"
run 0 team forget "$file" 12 --strike all
gone 'zimmer|quillon'
kept "'_-late-2'"
kept "'_''s old club-2'"
run 0 team check "$file"

# A name that is a word: one word alone is never sure.
run 0 team player "$file" 40 --name "Will"
run 0 log "$file" add 6v4 goal --note "will he slide?"
run 1 team forget "$file" 40
expect "[will] he slide?"
finish
