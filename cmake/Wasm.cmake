# SPDX-License-Identifier: GPL-3.0-or-later
# The pure rooms and src/web as WebAssembly modules with no imports. There is no C library here and
# --allow-undefined is not given, so a stray printf, malloc or sin is a link error: this link is the
# test that the core is pure. Three modules: the board's; the tests', which has the golden scene and
# the random scenes as well, a weight that no page need carry; the hand-out's (web/hand*), for phones.
#
# wasm-ld is called directly: clang's driver would run wasm-opt when it happens to be installed.
# -mbulk-memory turns the copies and zeroings the compiler makes into single instructions;
# -fno-builtin must stay away, or square root becomes an import. --stack-first makes a stack
# overflow trap instead of eating data.
find_program(BW_WASM_CC NAMES clang-14 clang REQUIRED)
find_program(BW_WASM_LD NAMES wasm-ld-14 wasm-ld REQUIRED)
set(BW_WASM ${BW_PAGES}/wasm/breakwater.wasm)
set(BW_WASM_TEST ${BW_PAGES}/wasm/breakwater-test.wasm)
set(BW_WASM_HANDOUT ${BW_PAGES}/wasm/handout.wasm)
set(BW_WASM_TESTS_ONLY web/golden web/agree web/agree_tests)

set(objects "")
set(test_objects "")
set(handout_objects "")
foreach(room core scheme draw trial web)
  file(GLOB sources CONFIGURE_DEPENDS ${BW_ROOT}/src/${room}/*.c ${BW_ROOT}/src/${room}/*/*.c)
  foreach(source IN LISTS sources)
    get_filename_component(name ${source} NAME_WE)
    set(object ${BW_PAGES}/wasm/${room}/${name}.o)
    add_custom_command(OUTPUT ${object}
      COMMAND ${CMAKE_COMMAND} -E make_directory ${BW_PAGES}/wasm/${room}
      COMMAND $ENV{CMAKE_C_COMPILER_LAUNCHER} ${BW_WASM_CC} --target=wasm32 -nostdlib -mbulk-memory
              -std=c17 -O2 ${BW_STRICT} -ffile-prefix-map=${BW_ROOT}/= -I${BW_ROOT}/src
              -MD -MF ${object}.d -c ${source} -o ${object}
      DEPENDS ${source} DEPFILE ${object}.d
      COMMENT "Compiling src/${room}/${name}.c to WebAssembly" VERBATIM)
    if("${room}/${name}" STREQUAL "web/abi") # tells both modules' memory
      list(APPEND handout_objects ${object})
    endif()
    if("${room}/${name}" MATCHES "^web/hand(_|$)")
      list(APPEND handout_objects ${object})
      continue()
    endif()
    if(NOT "${room}/${name}" IN_LIST BW_WASM_TESTS_ONLY)
      list(APPEND objects ${object})
    endif()
    list(APPEND test_objects ${object})
    if(NOT room STREQUAL "web")
      list(APPEND handout_objects ${object})
    endif()
  endforeach()
endforeach()

function(bw_wasm_link module)
  add_custom_command(OUTPUT ${module}
    COMMAND ${BW_WASM_LD} --no-entry --strip-all --gc-sections --stack-first -z stack-size=262144
            ${ARGN} -o ${module}
    DEPENDS ${ARGN} COMMENT "Linking ${module}" VERBATIM)
endfunction()
bw_wasm_link(${BW_WASM} ${objects})
bw_wasm_link(${BW_WASM_TEST} ${test_objects})
bw_wasm_link(${BW_WASM_HANDOUT} ${handout_objects})
add_custom_target(modules ALL DEPENDS ${BW_WASM} ${BW_WASM_TEST} ${BW_WASM_HANDOUT})
