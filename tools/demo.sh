#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What `make demo` shows: the Port Merrow Terns' scheme, checked and printed as a book.
set -eu
cd "$(dirname "$0")/.."
mkdir -p out

echo "Reading and checking examples/terns.json"
build/breakwater check examples/terns.json

echo "Printing the book"
build/breakwater draw examples/terns.json --book -o out/terns-book.pdf
echo "Made out/terns-book.pdf ($(($(wc -c <out/terns-book.pdf) / 1024)) kB)"
