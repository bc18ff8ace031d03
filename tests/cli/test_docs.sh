# SPDX-License-Identifier: GPL-3.0-or-later
# The committed manual, manual pages and completions are what the program makes today
# (tools/gen-docs makes them anew), and other programs can read them.
. "${BW_ROOT:?}/tests/cli/lib.sh"

same() {
    run 0 help "$2" ${3:+"$3"} ${4:+"$4"}
    check "$1 is up to date; run tools/gen-docs" cmp -s "$BW_ROOT/$1" "$scratch/out"
}

same docs/cli.md --markdown
same docs/man/breakwater.1 --man
verbs=$("$BREAKWATER" help | sed -n '/^Verbs/,/^$/s/^  \([a-z]*\) .*/\1/p')
check "verbs are listed" test -n "$verbs"
for verb in $verbs; do
    same "docs/man/breakwater-$verb.1" --man "$verb"
    check "docs/cli.md tells of $verb" grep -q "^## breakwater $verb" "$BW_ROOT/docs/cli.md"
done
for page in "$BW_ROOT"/docs/man/*.1; do
    verb=$(basename "$page" .1 | sed 's/^breakwater-*//')
    check "$page has a verb" sh -c "[ -z '$verb' ] || echo '$verbs' | grep -qx '$verb'"
    if command -v groff >/dev/null; then
        groff -man -ww -z "$page" >"$scratch/out" 2>"$scratch/err"
        check "$page is sound" test ! -s "$scratch/err"
    fi
done

same docs/completion/breakwater.bash --completion bash
same docs/completion/_breakwater --completion zsh
same docs/completion/breakwater.fish --completion fish
if command -v bash >/dev/null; then
    # offer WORDS...: what bash offers for the last of them.
    offer() {
        bash -c '. "$1"; shift; COMP_WORDS=("$@"); COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
                 _breakwater; printf "%s\n" "${COMPREPLY[@]}"' \
            bash "$BW_ROOT/docs/completion/breakwater.bash" "$@" >"$scratch/out" 2>"$scratch/err"
    }
    what="bash completion"
    offer breakwater wh
    expect where
    offer breakwater where --st
    expect --stage
    offer breakwater new --level col
    expect college
    offer breakwater help ch
    expect check
    check "bash has nothing to complain of" test ! -s "$scratch/err"
fi
for shell in zsh fish; do
    command -v "$shell" >/dev/null || continue
    case $shell in
        zsh) check "zsh reads its completion" zsh -n "$BW_ROOT/docs/completion/_breakwater" ;;
        fish) check "fish reads its completion" fish -n "$BW_ROOT/docs/completion/breakwater.fish" ;;
    esac
done
finish
