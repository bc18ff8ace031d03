# SPDX-License-Identifier: GPL-3.0-or-later
# `teach`: the folder, its files, and nothing half done when it is interrupted.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$BW_ROOT/examples/terns.json
out=$scratch/handouts
export SOURCE_DATE_EPOCH=1776470400

run 0 teach "$scheme" -o "$out" --only packet,cards,quiz,wall --json
json 'j.files.length > 0 && j.files.every(f => f.part && f.file && f.pages >= 0)'
talks "packet.pdf"
check "the packet is a PDF" sh -c "head -c 5 '$out/packet.pdf' | grep -q %PDF-"
cp "$out/packet.pdf" "$scratch/first.pdf"
run 0 teach "$scheme" -o "$out" --only packet
run 0 teach "$scheme" -o "$out" --only films
for film in round swing-back first-man; do
    check "$film as MP4" sh -c "head -c 12 '$out/films/$film.mp4' | grep -q ftyp"
    check "$film as WebM" sh -c "head -c 64 '$out/films/$film.webm' | grep -aq webm"
    check "$film's captions" sh -c "head -n 1 '$out/films/$film.vtt' | grep -qx WEBVTT"
done
check "no GIF unless asked" test ! -e "$out/films/round.gif"
check "the same bytes twice" cmp -s "$out/packet.pdf" "$scratch/first.pdf"
run 0 teach "$scheme" -o "$scratch/own" --only packet --spot LL --paper a4 --large --json
json 'j.files.length === 1 && j.files[0].pages < 20'

# Words in reading order, sizes and boxes as the file has them.
pdftotext "$scratch/first.pdf" "$scratch/words"
order() { # FILE WORDS...: one after the other
    file=$1
    shift
    at=0
    for words; do
        line=$(grep -nF -- "$words" "$file" | cut -d: -f1 | awk -v at="$at" '$1 >= at' | head -1)
        [ -n "$line" ] || return 1
        at=$line
    done
}
check "in reading order" order "$scratch/words" "Harbour" "They have more men" "The calls" \
    "You are low left" "Ball behind the goal:" "hold your post," "What to rehearse first"
check "Letter" sh -c "pdfinfo '$scratch/first.pdf' | grep -q '612 x 792'"
check "A4" sh -c "pdfinfo '$scratch/own/packet.pdf' | grep -q 'A4'"
check "dated" grep -qF "2026-04-18" "$scratch/words"

# Every size of type in the files, in thirds of a point.
smallest() {
    pdftohtml -xml -stdout -i -zoom 3 "$1" | sed -n 's/.*<fontspec .*size="\([0-9]*\)".*/\1/p' |
        sort -n | head -1
}
check "labels of 9 pt and up" test "$(smallest "$out/packet.pdf")" -ge 27
check "cards from 8 pt" test "$(smallest "$out/cards.pdf")" -ge 24
check "large print a third larger" test "$(smallest "$scratch/own/packet.pdf")" -ge 36
check "the wall from afar" test "$(smallest "$out/wall.pdf")" -ge 87
# Words keep 12.7 mm to every edge of the paper.
margins() {
    pdftotext -bbox "$1" - | awk -F'"' '
        /<page/ { width = $2; height = $4 }
        /<word/ && ($2 < 35.9 || $6 > width - 35.9 || $8 > height - 24) { bad++ }
        END { exit bad > 0 }'
}
for part in packet cards quiz wall; do
    check "margins of $part" margins "$out/$part.pdf"
done

run 2 teach "$scheme"
talks "-o FOLDER"
run 2 teach "$scheme" -o "$scratch/never" --only packets
talks "did you mean \"packet\"?"
run 2 teach "$scheme" -o "$scratch/never" --card 54
run 1 teach "$scheme" -o "$scratch/small" --only cards --card 30x30
talks "does not fit"
check "nothing is left of it" test ! -e "$scratch/small"
run 0 teach "$scheme" -o "$scratch/portrait" --only cards,wall --card 54x85.6 --json
json 'j.files.map(f => f.part).join() === "cards,wall"'
run 1 teach "$scheme" -o "$scratch/never" --spot ZZ
talks "no stage has a spot \"ZZ\""
run 1 teach "$scheme" -o "$scratch/never" --spot ll
talks 'did you mean "LL"?'
run 3 teach "$scheme" -o "$scratch/no/folder"
check "nothing is left of a refusal" test ! -e "$scratch/never"
: >"$scratch/file"
run 3 teach "$scheme" -o "$scratch/file"

# Interrupted at any moment: files whole or not there, nothing else, exit code 130 (or all of it done before).
sanitised && finish
# Most rounds with a scheme that needs no test of its breaks, once so many files are there or begun, so
# that they fall into drawing and saving; the others while the breaks are tested.
mkdir "$scratch/cut"
node -e '
    const fs = require("fs"), scheme = JSON.parse(fs.readFileSync(process.argv[1], "utf8"));
    scheme.stages = scheme.stages.filter(stage => stage.defenders === 6);
    delete scheme.late;
    delete scheme.lessons;
    fs.writeFileSync(process.argv[2], JSON.stringify(scheme));' "$scheme" "$scratch/quick.json"
run 0 teach "$scratch/quick.json" -o "$scratch/cut"
check "no films of a scheme without lessons" test ! -e "$scratch/cut/films"
rm -rf "$scratch"/cut/*
whole() {
    for file in "$scratch"/cut/* "$scratch"/cut/.[!.]* "$scratch"/cut/films/*; do
        [ -e "$file" ] || continue
        case $file in
            */films) ;;
            *.pdf) tail -c 8 "$file" | grep -q '%%EOF' || return 1 ;;
            *.html) tail -c 8 "$file" | grep -q '</html>' || return 1 ;;
            *.mp4 | *.webm | *.vtt) [ "$(wc -c <"$file")" -gt 700 ] || return 1 ;;
            *) return 1 ;;
        esac
    done
}
round=0
cut=0
while [ "$round" -lt 30 ]; do
    round=$((round + 1))
    signal=INT
    [ $((round % 2)) -eq 0 ] || signal=TERM
    # A shell has its background programs ignore SIGINT; env gives it back.
    input=$scratch/quick.json
    [ $((round % 6)) -ne 0 ] || input=$scheme
    begun=$((round % 5))
    all=5
    [ "$input" = "$scratch/quick.json" ] || { begun=0 all=14; }
    env --default-signal=INT,TERM "$BREAKWATER" teach "$input" -o "$scratch/cut" \
        >/dev/null 2>"$scratch/err" &
    pid=$!
    listens "$pid"
    until [ "$(find "$scratch/cut" -type f | wc -l)" -ge "$begun" ]; do
        kill -0 "$pid" 2>/dev/null || break
        sleep 0.005 # between two looks
    done
    kill -s "$signal" "$pid" 2>/dev/null
    wait "$pid"
    code=$?
    what="round $round ($signal)"
    checks=$((checks + 1))
    case $code in
        130) cut=$((cut + 1)) ;;
        0 | 143) [ "$(find "$scratch/cut" -type f | wc -l)" -eq "$all" ] || fail "exit code $code with work left" ;;
        *) fail "exit code $code" ;;
    esac
    check "whole or not there" whole
    rm -rf "$scratch"/cut/*
done
what="30 rounds"
check "interrupted in the midst of it in most of them" test "$cut" -ge 15
finish
