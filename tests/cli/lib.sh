# SPDX-License-Identifier: GPL-3.0-or-later
# What the tests of the program share. BREAKWATER is the program, BW_ROOT the source tree. A failed
# check says what it saw and the test goes on; `finish` reports and sets the exit code.
set -u
: "${BREAKWATER:?is the program to test}" "${BW_ROOT:?is the source tree}"
unset NO_COLOR
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/asked"
checks=0
failures=0
asked=0
what=

fail() {
    failures=$((failures + 1))
    printf '%s: %s\n' "$what" "$1" >&2
    sed 's/^/    out: /' "$scratch/out" 2>/dev/null | cut -c1-200 | head -8 >&2
    sed 's/^/    err: /' "$scratch/err" 2>/dev/null | cut -c1-200 | head -8 >&2
}

# run CODE WORD...: runs the program on no input and expects its exit code.
run() {
    want=$1
    shift
    what="breakwater $*"
    "$BREAKWATER" "$@" >"$scratch/out" 2>"$scratch/err" </dev/null
    got=$?
    checks=$((checks + 1))
    [ "$got" -eq "$want" ] || fail "exit code $got, not $want"
}

# expect TEXT: it is on standard output. talks TEXT: it is on standard error.
expect() {
    checks=$((checks + 1))
    grep -qF -- "$1" "$scratch/out" || fail "standard output lacks \"$1\""
}
talks() {
    checks=$((checks + 1))
    grep -qF -- "$1" "$scratch/err" || fail "standard error lacks \"$1\""
}
silent() {
    checks=$((checks + 1))
    [ ! -s "$scratch/out" ] || fail "standard output is not empty"
}

# json EXPRESSION: true in JavaScript, with the result as j. Looked at by `finish`, all at once, for
# starting node takes longer than anything the program does.
json() {
    checks=$((checks + 1))
    asked=$((asked + 1))
    cp "$scratch/out" "$scratch/asked/$asked.json"
    printf '%s\n%s' "$what" "$1" >"$scratch/asked/$asked.ask"
}
judge() {
    node -e '
        const fs = require("fs"), [folder, count] = process.argv.slice(1);
        let wrong = 0;
        for (let i = 1; i <= count; i++) {
            const [what, ...rest] = fs.readFileSync(`${folder}/${i}.ask`, "utf8").split("\n");
            const text = fs.readFileSync(`${folder}/${i}.json`, "utf8"), ask = rest.join("\n");
            let answer;
            try {
                answer = new Function("j", `return (${ask})`)(JSON.parse(text));
            } catch (error) {
                answer = false;
            }
            if (answer === true) continue;
            wrong++;
            console.error(`${what}: not true: ${ask}\n    out: ${text.slice(0, 300)}`);
        }
        fs.writeFileSync(`${folder}/wrong`, `${wrong}\n`);' "$scratch/asked" "$asked"
    failures=$((failures + $(cat "$scratch/asked/wrong" || echo 1)))
}

# check DESCRIPTION COMMAND...: the command succeeds.
check() {
    what=$1
    shift
    checks=$((checks + 1))
    "$@" || fail "not so"
}

# listens PID: waits until the program has taken the signals over, so that one it gets is met by the
# program and not by the system. False when it ended before. What a shell starts beside itself ignores the
# interrupt: start it with `env --default-signal=INT`.
listens() {
    while kill -0 "$1" 2>/dev/null; do
        caught=$(sed -n 's/^SigCgt:.*\(.\)$/\1/p' "/proc/$1/status" 2>/dev/null)
        case $caught in [2367aAbBeEfF]) return 0 ;; esac # bit 1: SIGINT
        sleep 0.01                                       # between two looks
    done
    return 1
}

# A program built with the sanitizers needs far more memory and time.
sanitised() {
    grep -q __asan_init "$BREAKWATER"
}

finish() {
    [ "$asked" -eq 0 ] || judge
    printf '%s: %d checks, %d failed\n' "$(basename "$0")" "$checks" "$failures"
    [ "$failures" -eq 0 ] && [ "$checks" -gt 0 ]
    exit
}
