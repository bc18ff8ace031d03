#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# demo-team.sh FILE: an invented season as a team file: roster, sprints, and breaks before and after a
# change of the scheme. A file that is there already is made anew.
set -eu
cd "$(dirname "$0")/.."
team=$1
rm -f "$team" "$team-wal" "$team-shm"
{
    build/breakwater team new "$team" --name "Port Merrow Terns"
    build/breakwater team set "$team" about "Everybody and every game in this file is invented."
    build/breakwater team scheme "$team" examples/terns-early.json --note "as the season began"
    build/breakwater team scheme "$team" examples/terns.json --note "wings met softer, less shift"
    for sheet in roster splits; do
        build/breakwater team import "$team" examples/terns-$sheet.csv --sheet $sheet
    done
    build/breakwater log "$team" import examples/terns-season.csv
} 2>/dev/null
