# SPDX-License-Identifier: GPL-3.0-or-later
# `draw`: files of each kind, whole or not there, the same bytes each time.
. "${BW_ROOT:?}/tests/cli/lib.sh"
scheme=$scratch/scheme.json
"$BREAKWATER" new -o "$scheme" 2>/dev/null

starts() {
    [ "$(head -c "${#2}" "$1")" = "$2" ]
}

run 0 draw "$scheme" -o "$scratch/book.pdf" --json
json 'j.pages > 4 && j.files.length === 1'
talks "Wrote $scratch/book.pdf"
check "a PDF" starts "$scratch/book.pdf" "%PDF-"
run 0 draw "$scheme" -o "$scratch/again.pdf"
check "the same bytes twice" cmp -s "$scratch/book.pdf" "$scratch/again.pdf"

run 0 draw "$scheme" --stage 4 -o "$scratch/four.svg" --json
json 'j.files.length === j.pages && j.pages < 8'
check "pages are numbered" test -s "$scratch/four-01.svg"
run 0 draw "$scheme" --stage 4 --ball x -o "$scratch/x.svg"
check "one SVG" grep -q "<svg" "$scratch/x.svg"
check "the caption is in it" grep -q "The low pair hold" "$scratch/x.svg"
run 0 draw "$scheme" --stage 4 --ball x --dpi 72 -o "$scratch/x.png"
check "a PNG" sh -c "head -c 4 '$scratch/x.png' | grep -q PNG"
for theme in chart sun dark mono; do
    run 0 draw "$scheme" --stage 3 --ball tr --theme "$theme" --paper a4 -o "$scratch/$theme.svg"
done
check "themes differ" sh -c "! cmp -s '$scratch/chart.svg' '$scratch/mono.svg'"
run 0 draw "$scheme" --stage 4 --ball 3,9 --set 2-2-2 --danger -o "$scratch/danger.svg"
check "the danger says what its figures are" grep -q "not to forecast" "$scratch/danger.svg"
run 0 draw "$scheme" --stage 4 --ball x --format svg -o "$scratch/picture"
check "the format may be told" grep -q "<svg" "$scratch/picture"

what="to standard output"
"$BREAKWATER" draw "$scheme" --stage 4 --ball x -o - >"$scratch/piped" 2>"$scratch/err"
check "a PDF on standard output" starts "$scratch/piped" "%PDF-"

run 2 draw "$scheme"
talks "-o FILE"
run 2 draw "$scheme" -o "$scratch/book.docx"
talks "tells no format"
run 2 draw "$scheme" --theme neon -o "$scratch/x.pdf"
run 2 draw "$scheme" --dpi 9 -o "$scratch/x.png"
run 2 draw "$scheme" --set 2-2-2 -o "$scratch/x.pdf"
run 2 draw "$scheme" --format png -o -
run 1 draw "$scheme" --stage 4 --ball nowhere -o "$scratch/never.pdf"
run 3 draw "$scheme" -o "$scratch/no/folder/book.pdf"
check "nothing is left of a failed picture" test ! -e "$scratch/never.pdf"
finish
