#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
exec node "${BW_ROOT:-.}/tests/scheme/sentences.mjs"
