# SPDX-License-Identifier: GPL-3.0-or-later
# Every page there is; cmake/Pages.cmake says how to add one.
bw_page(board
  SCRIPT tools/build-board.mjs
  SOURCES board/*.js board/index.html board/*.css board/*.svg assets/fonts/*.otf examples/terns.json
  FILES breakwater-board.html served.html
        static/index.html static/board.js static/board.css static/core.wasm
        static/regular.otf static/bold.otf static/example.json static/worker.js static/icon.svg
  ROOM serve
  EMBED file=breakwater-board.html
        page=served.html script=static/board.js style=static/board.css
        core=static/core.wasm regular=static/regular.otf bold=static/bold.otf
        example=static/example.json worker=static/worker.js icon=static/icon.svg)

bw_page(handout
  SCRIPT tools/build-handout.mjs
  MODULE handout.wasm
  SOURCES handout/*.js handout/*.html handout/*.css board/abi.js board/feed.js assets/fonts/*.otf
  FILES template.html
  ROOM report
  EMBED template=template.html)
