# SPDX-License-Identifier: GPL-3.0-or-later
# Each tests/fuzz/fuzz_NAME.c defines LLVMFuzzerTestOneInput. With BW_FUZZ (clang) it becomes a
# libFuzzer program; in every other build a runner that feeds it the files of
# tests/fuzz/corpus/NAME, as a CTest test.
file(GLOB fuzzers CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/tests/fuzz/fuzz_*.c)
add_custom_target(fuzz)
foreach(source IN LISTS fuzzers)
  get_filename_component(target ${source} NAME_WE)
  string(REGEX REPLACE "^fuzz_" "" name ${target})
  add_executable(${target} ${source})
  set_target_properties(${target} PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/fuzz)
  target_include_directories(${target} PRIVATE ${CMAKE_SOURCE_DIR}/tests/kit ${CMAKE_SOURCE_DIR})
  target_link_libraries(${target} PRIVATE ${BW_ROOMS} m)
  bw_native(${target})
  add_dependencies(fuzz ${target})
  if(BW_FUZZ)
    target_link_options(${target} PRIVATE -fsanitize=fuzzer)
  else()
    target_sources(${target} PRIVATE ${CMAKE_SOURCE_DIR}/tests/fuzz/corpus_main.c)
    add_test(NAME fuzz/${name} COMMAND ${target} ${CMAKE_SOURCE_DIR}/tests/fuzz/corpus/${name})
    bw_test_environment(fuzz/${name})
  endif()
endforeach()
