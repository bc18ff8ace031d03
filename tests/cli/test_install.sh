# SPDX-License-Identifier: GPL-3.0-or-later
# `make install` puts each thing where its reader looks: man finds the pages, each shell loads its
# completion by itself, and the program works from there with the source tree out of reach.
. "${BW_ROOT:?}/tests/cli/lib.sh"

build=$(dirname "$BREAKWATER")
tree="$scratch/stage"
what="make install"
if [ "$build" = "$BW_ROOT/build" ]; then
    make -s -C "$BW_ROOT" -o build install DESTDIR="$tree" PREFIX=/usr >"$scratch/out" 2>"$scratch/err"
else
    DESTDIR="$tree" cmake --install "$build" --prefix /usr >"$scratch/out" 2>"$scratch/err"
fi || fail "it failed"

share="$tree/usr/share"
for file in bin/breakwater share/man/man1/breakwater.1 share/man/man1/breakwater-test.1 \
    share/bash-completion/completions/breakwater share/zsh/site-functions/_breakwater \
    share/fish/vendor_completions.d/breakwater.fish share/doc/breakwater/README.md \
    share/doc/breakwater/LICENSE share/doc/breakwater/B612-LICENCE.txt \
    share/doc/breakwater/examples/terns.json; do
    check "$file is installed" test -f "$tree/usr/$file"
done
check "nothing is put where nobody looks" test ! -e "$share/breakwater"
check "every file stands below the prefix" test "$(ls "$tree")" = usr
for page in "$BW_ROOT"/docs/man/*.1; do
    check "$(basename "$page") is installed" test -f "$share/man/man1/$(basename "$page")"
done
for link in $(grep -o '](docs/[^)]*)' "$share/doc/breakwater/README.md" | tr -d '()]'); do
    check "README.md's $link is there" test -f "$share/doc/breakwater/$link"
done

# The program alone, in a folder of another name: what it needs is inside.
mkdir "$scratch/moved"
mv "$tree/usr/bin/breakwater" "$scratch/moved/breakwater"
built=$BREAKWATER
BREAKWATER="$scratch/moved/breakwater"
cp "$share/doc/breakwater/examples/terns.json" "$scratch/terns.json"
cd "$scratch" || exit 1
run 0 check terns.json
run 0 draw terns.json --stage 4 --ball wr -o chart.pdf
check "the picture is a PDF" sh -c "head -c 5 '$scratch/chart.pdf' | grep -q '%PDF-'"
run 0 board --save board.html
check "the board is a page" grep -q '</html>' "$scratch/board.html"
BREAKWATER=$built

# man: the page is found and set.
for page in breakwater breakwater-test; do
    what="man $page"
    MANPATH="$share/man" MANWIDTH=80 man -P cat "$page" >"$scratch/out" 2>"$scratch/err" || fail "it failed"
    expect SYNOPSIS
    expect "$page"
    check "man has nothing to complain of" test ! -s "$scratch/err"
done

# The shells, each with a home of its own and looking where it looks by itself.
mkdir "$scratch/home"
export HOME="$scratch/home" XDG_DATA_DIRS="$share" PATH="$scratch/moved:$PATH"
unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME ZDOTDIR

# bash_offers LINE: what bash-completion, which loads a command's completion on demand, makes of LINE.
bash_offers() {
    what="bash: $1"
    bash --norc -c '. /usr/share/bash-completion/bash_completion
        _completion_loader breakwater
        complete -p breakwater >&2 || exit 1
        read -ra COMP_WORDS <<<"$1"; case $1 in *" ") COMP_WORDS+=("") ;; esac; COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
        COMP_LINE=$1; COMP_POINT=${#COMP_LINE}
        _breakwater; printf "%s\n" "${COMPREPLY[@]}"' bash "$1" >"$scratch/out" 2>"$scratch/err"
    talks "-F _breakwater"
}
fish_offers() {
    what="fish: $1"
    fish -c "complete -C '$1'" >"$scratch/out" 2>"$scratch/err"
    check "fish has nothing to complain of" test ! -s "$scratch/err"
}
# zsh_offers LINE: typed into an interactive zsh, with the tab key behind it; what its completion adds
# is written down. The keys are sent once the prompt stands, and the shell ends by itself.
cat >"$HOME/.zshrc" <<'END'
PROMPT='ready> '
fpath=($XDG_DATA_DIRS/zsh/site-functions $fpath)
autoload -Uz compinit && compinit -u -D
compadd() {
    # Calls that only sort words for the caller (-O, -A, -D) offer nothing.
    if [[ " ${(@)argv[1,(i)(-|--)]} " != *\ -[a-zA-Z]#[OAD]\ * ]]; then
        local -a offered
        builtin compadd -O offered "$@"
        print -rl -- $offered >>$HOME/offered
    fi
    builtin compadd "$@"
}
END
cat >"$scratch/type.zsh" <<'END'
zmodload zsh/zpty
zpty shell zsh -i
zpty -r shell seen '*ready> *' || exit 1
zpty -w -n shell $1$'\t\C-uexit\n'
while zpty -r shell seen; do :; done
END
zsh_offers() {
    what="zsh: $1"
    rm -f "$HOME/offered"
    TERM=vt100 zsh -f "$scratch/type.zsh" "$1" >"$scratch/err" 2>&1
    cp "$HOME/offered" "$scratch/out" 2>"$scratch/err" || : >"$scratch/out"
}
lesson=$("$built" help --names lessons terns.json | head -1)
for shell in bash fish zsh; do
    "${shell}_offers" "breakwater te"
    expect test
    expect team
    "${shell}_offers" "breakwater where --st"
    expect --stage
    "${shell}_offers" "breakwater new --level col"
    expect college
    # What the scheme on the line has, and what a break can end with.
    "${shell}_offers" "breakwater where terns.json --ball t"
    expect top
    "${shell}_offers" "breakwater where terns.json --stage "
    expect 5
    "${shell}_offers" "breakwater where terns.json --set 2"
    expect 2-2-2
    "${shell}_offers" "breakwater draw terns.json --film "
    expect "$lesson"
    "${shell}_offers" "breakwater log terns.team add 6v4 g"
    expect goal
    expect ground-ball
done
finish
