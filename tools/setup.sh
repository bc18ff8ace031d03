#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing on Debian 12. `setup.sh build` for the program, `setup.sh check` for the
# tests as well. Does nothing, quickly, when everything is there; where it may not install, it says
# what to install.
set -eu

# One package a word. "package=command" is also satisfied by the command, wherever it came from.
build="gcc=gcc libc6-dev cmake=cmake ninja-build=ninja pkgconf=pkg-config
    libcairo2-dev libpango1.0-dev libfontconfig-dev libfreetype-dev libjansson-dev
    libavcodec-dev libavformat-dev libavutil-dev libswscale-dev libsqlite3-dev libmicrohttpd-dev
    libqrencode-dev libutf8proc-dev libnlopt-dev libgsl-dev clang-14=clang-14 lld-14=wasm-ld-14 nodejs=node npm=npm"
check="clang-tidy-14=clang-tidy-14 clang-format-14=clang-format-14 libclang-rt-14-dev
    git=git chromium=chromium chromium-headless-shell=chromium-headless-shell
    poppler-utils=pdftotext qpdf=qpdf sqlite3=sqlite3 zsh=zsh fish=fish man-db=man bash-completion"

case "${1:-build}" in
    build) wanted=$build ;;
    check) wanted="$build $check" ;;
    *)
        echo "usage: tools/setup.sh [build|check]" >&2
        exit 2
        ;;
esac

# Prints the words of $wanted that neither a command nor an installed package satisfies.
missing() {
    packages=""
    for word in $wanted; do
        case $word in
            *=*) command -v "${word#*=}" >/dev/null || packages="$packages ${word%=*}" ;;
            *) packages="$packages $word" ;;
        esac
    done
    command -v dpkg-query >/dev/null || { echo "$packages"; return; }
    # shellcheck disable=SC2086  # a list of plain names
    installed=$(dpkg-query -W -f '${Package} ${db:Status-Status}\n' $packages 2>/dev/null |
        awk '$2 == "installed" { print $1 }')
    for package in $packages; do
        printf '%s\n' "$installed" | grep -qx "$package" || printf ' %s' "$package"
    done
}

need=$(missing)
[ -n "$need" ] || exit 0

if ! command -v apt-get >/dev/null; then
    echo "Missing, by their Debian 12 names:$need. Please install them, then try again." >&2
    exit 1
fi
if [ "$(id -u)" = 0 ]; then
    as_root=""
elif command -v sudo >/dev/null && sudo -n true 2>/dev/null; then
    as_root=sudo
else
    echo "Missing:$need. Please run: sudo apt-get install --no-install-recommends$need" >&2
    exit 1
fi

echo "Installing$need"
apt() {
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300 \
        -o Acquire::Retries=3 -qq "$@" </dev/null >/dev/null
}
tries=3
until apt update; do
    tries=$((tries - 1))
    if [ "$tries" = 0 ]; then
        echo "apt-get update failed three times; are the package servers reachable?" >&2
        exit 1
    fi
    sleep 5
done
# shellcheck disable=SC2086
apt install -y --no-install-recommends $need

need=$(missing)
if [ -n "$need" ]; then
    echo "Still missing after installation:$need" >&2
    exit 1
fi
