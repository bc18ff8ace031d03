# SPDX-License-Identifier: GPL-3.0-or-later
# `wasm`: the pure rooms and src/web as one WebAssembly module with no imports. There is no C library
# here and --allow-undefined is not given, so a stray printf, malloc or sin is a link error: this
# link is the test that the core is pure.
#
# wasm-ld is called directly: clang's driver would run wasm-opt when it happens to be installed.
# -mbulk-memory turns the copies and zeroings the compiler makes into single instructions;
# -fno-builtin must stay away, or square root becomes an import. --stack-first makes a stack
# overflow trap instead of eating data.
find_program(BW_WASM_CC NAMES clang-14 clang)
find_program(BW_WASM_LD NAMES wasm-ld-14 wasm-ld)
set(BW_WASM ${CMAKE_BINARY_DIR}/wasm/breakwater.wasm)

if(NOT BW_WASM_CC OR NOT BW_WASM_LD)
  add_custom_target(wasm
    COMMAND ${CMAKE_COMMAND} -E echo "clang-14 and lld-14 are needed: tools/setup.sh build"
    COMMAND ${CMAKE_COMMAND} -E false)
  return()
endif()

set(objects "")
foreach(room core scheme draw trial web)
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/${room}/*.c)
  foreach(source IN LISTS sources)
    get_filename_component(name ${source} NAME_WE)
    set(object ${CMAKE_BINARY_DIR}/wasm/${room}/${name}.o)
    add_custom_command(OUTPUT ${object}
      COMMAND ${CMAKE_COMMAND} -E make_directory ${CMAKE_BINARY_DIR}/wasm/${room}
      COMMAND ${BW_WASM_CC} --target=wasm32 -nostdlib -mbulk-memory -std=c17 -O2 ${BW_STRICT}
              -ffile-prefix-map=${CMAKE_SOURCE_DIR}/= -I${CMAKE_SOURCE_DIR}/src
              -MD -MF ${object}.d -c ${source} -o ${object}
      DEPENDS ${source} DEPFILE ${object}.d
      COMMENT "Compiling src/${room}/${name}.c to WebAssembly" VERBATIM)
    list(APPEND objects ${object})
  endforeach()
endforeach()

if(objects)
  add_custom_command(OUTPUT ${BW_WASM}
    COMMAND ${BW_WASM_LD} --no-entry --strip-all --gc-sections --stack-first -z stack-size=262144
            ${objects} -o ${BW_WASM}
    DEPENDS ${objects} COMMENT "Linking wasm/breakwater.wasm" VERBATIM)
endif()
add_custom_target(wasm DEPENDS ${BW_WASM})

# `board-file`: the board as one self-contained page, bundled in Node (npm ci --ignore-scripts).
add_custom_target(board-file
  COMMAND node ${CMAKE_SOURCE_DIR}/tools/build-board.mjs ${BW_WASM}
          ${CMAKE_BINARY_DIR}/board/breakwater-board.html
  DEPENDS wasm VERBATIM)
