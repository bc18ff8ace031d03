#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What `make demo` shows: the Port Merrow Terns' scheme checked, printed as a book, tested and rehearsed.
set -eu
cd "$(dirname "$0")/.."
scheme=examples/terns.json
mkdir -p out

made() { # FILE WHAT
    echo "Made $1 ($(($(wc -c <"$1") / 1024)) kB): $2"
}

echo "Reading and checking $scheme"
build/breakwater check $scheme

build/breakwater draw $scheme -o out/terns-book.pdf 2>/dev/null
made out/terns-book.pdf "where everyone stands, for every stage and ball"

build/breakwater test $scheme -o out/terns-test.pdf 2>/dev/null
made out/terns-test.pdf "what a break is worth, and what beats the scheme"

build/breakwater draw $scheme --answer -o out/terns-answer.pdf 2>/dev/null
made out/terns-answer.pdf "the offence's best answer, moment by moment"

build/breakwater rehearse $scheme -o out/terns-rehearse.pdf 2>&1 | sed -n '/^Script/p'
made out/terns-rehearse.pdf "what to rehearse: the shortest script, the plan, the cautions"

build/breakwater teach $scheme -o out/teach --only packet,cards,quiz,wall,handout 2>/dev/null
made out/teach/packet.pdf "what the players get: each spot's own page"
made out/teach/cards.pdf "pocket cards to cut out"
made out/teach/quiz.pdf "the quiz on paper, with its key"
made out/teach/wall.pdf "a poster for each stage"
made out/teach/handout.html "the hand-out for a phone, which works without a network"

# An invented season: roster, sprints, and breaks before and after a change of the scheme.
team=out/terns.team
tools/demo-team.sh $team
made $team "the team file: $(build/breakwater team show $team | sed -n '2s/^ *//p')"
build/breakwater review $team -o out/terns-review.pdf 2>/dev/null
made out/terns-review.pdf "the season reviewed: counts first, intervals with them, the model beside"

echo
build/breakwater test $scheme --quick | sed '/^Worth over time/,$d'
echo "All of it: build/breakwater test $scheme"
