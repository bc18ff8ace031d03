# SPDX-License-Identifier: GPL-3.0-or-later
# The front door. CMake and Ninja do the work; `cmake --list-presets` shows what lies behind.
PREFIX ?= /usr/local
JOBS ?= $(shell nproc)
FUZZ_SECONDS ?= 30

.NOTPARALLEL:
.PHONY: build setup demo check coverage board board-file board-static bench wasm fuzz install format clean help

build: build/build.ninja ## the program, at build/breakwater
	cmake --build build -j $(JOBS) --target breakwater

build/build.ninja:
	cmake --preset release

setup: ## install what the build needs (Debian 12)
	tools/setup.sh build

demo: setup build ## check the example scheme and print its book into out/
	tools/demo.sh

check: ## every test, in every build; ends with the count
	@tools/setup.sh check
	@JOBS=$(JOBS) tools/check.sh

coverage: ## how many lines of each room the tests run, and which they do not
	@JOBS=$(JOBS) tools/coverage

board: setup build ## serve the board on a copy of the demo scheme and season, and print its address
	@mkdir -p out
	@cp -n examples/terns.json out/board.json
	@test -f out/terns.team || tools/demo-team.sh out/terns.team
	build/breakwater board out/board.json --team out/terns.team

board-file: build/build.ninja ## the board as one page, at build/board/breakwater-board.html
	cmake --build build -j $(JOBS) --target board-file

board-static: build/build.ninja ## the board for any web host, in build/board/static
	cmake --build build -j $(JOBS) --target board-static

node_modules/.package-lock.json: package-lock.json
	npm ci --ignore-scripts --no-audit --no-fund

bench: build board-file ## measure, and write out/bench.json
	cmake --build build -j $(JOBS) --target breakwater-bench
	mkdir -p out
	build/bench/breakwater-bench out/bench.json
	node bench/frames.mjs out/bench.json

wasm: build/build.ninja ## the core as build/wasm/breakwater.wasm
	cmake --build build -j $(JOBS) --target wasm

fuzz: ## run each fuzz target for FUZZ_SECONDS (30)
	cmake --preset fuzz
	cmake --build --preset fuzz -j $(JOBS)
	tools/fuzz.sh $(FUZZ_SECONDS)

install: build ## into PREFIX (/usr/local), below DESTDIR
	DESTDIR='$(DESTDIR)' cmake --install build --prefix '$(PREFIX)'

format: ## lay out every C file as .clang-format says
	tools/list-sources | xargs $$(tools/find-tool clang-format) -i

clean: ## remove what was built
	rm -rf build out

help: ## this list
	@awk -F':.*## ' '/^[a-z-]+:.*## / { printf "%-10s %s\n", $$1, $$2 }' Makefile
