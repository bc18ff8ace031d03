#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The verb `board`: its address, its refusals, its end by a signal, and the page as a file.
. "$(dirname "$0")/lib.sh"
terns=$BW_ROOT/examples/terns.json

# started WORD...: the program in the background until it has printed a line; its words in $scratch.
started() {
    what="breakwater board $*"
    : >"$scratch/out"
    "$BREAKWATER" board "$@" >"$scratch/out" 2>"$scratch/err" </dev/null &
    server=$!
    shown . "$scratch/out"
}
# shown WORDS FILE: waits until they are in it, or the server has ended.
shown() {
    until grep -q "$1" "$2"; do
        kill -0 "$server" 2>/dev/null || break
        sleep 0.05
    done
}
# ended SIGNAL CODE: it stops when told, with this code.
ended() {
    kill "-$1" "$server"
    wait "$server"
    got=$?
    checks=$((checks + 1))
    [ "$got" -eq "$2" ] || fail "exit code $got after SIG$1, not $2"
}
# asked WORD...: an address of the server, in Node: {status, text, heads} on standard output.
asked() {
    node -e '
        const [address, way, method] = process.argv.slice(1), url = new URL(address);
        fetch(url.origin + way, { method }).then(async (answer) => console.log(JSON.stringify({
            status: answer.status, text: await answer.text(), type: answer.headers.get("content-type") })));
    ' "$@" >"$scratch/out"
}

cp "$terns" "$scratch/mine.json"
started "$scratch/mine.json"
expect "http://127.0.0.1:"
expect "/#start="
address=$(cat "$scratch/out")
asked "$address" / GET
json 'j.status === 200 && j.type.startsWith("text/html") && j.text.includes("board.js")'
asked "$address" /api/scheme GET
json 'j.status === 403 && j.text.includes("address that the program printed")'
ended INT 0
talks "Ctrl-C stops"
talks "Stopped."
checks=$((checks + 1))
cmp -s "$terns" "$scratch/mine.json" || fail "the scheme was touched"

started --json
json 'j.address.startsWith(`http://127.0.0.1:${j.port}/#start=`) && j.port >= 1024'
port=$(sed 's/.*"port":\([0-9]*\).*/\1/' "$scratch/out")
first=$server
run 3 board --port "$port"
talks "Port $port cannot be used"
server=$first
ended TERM 0

started --share --address 127.0.0.1 --host club.test
expect "http://127.0.0.1:"
shown "with the code" "$scratch/err"
talks "http://club.test:"
talks "with the code"
talks "plain HTTP"
ended HUP 0

run 0 board --save "$scratch/page.html"
talks "one page"
what="the saved page"
checks=$((checks + 1))
head -c 15 "$scratch/page.html" | grep -q '<!doctype html>' || fail "it is no page"
run 0 board --save -
expect "<!doctype html>"
run 3 board --save "$scratch/nowhere/page.html"
talks "cannot be written"

run 2 board --save x.html "$terns"
talks "leave FILE out"
run 2 board --port 80
run 2 board --port x
run 2 board --minutes 0
run 2 board --host "Bad Host"
talks "--host"
run 2 board --address localhost
talks "--address"
run 2 board -
run 2 board a b
run 1 board "$BW_ROOT/tests/scheme/broken/03-truncated.json"
run 3 board "$scratch/absent.json"
# A team file is looked at before anything is served.
run 1 board "$scratch/mine.json" --team "$scratch/mine.json"
talks "it is not a team file"
silent
finish
