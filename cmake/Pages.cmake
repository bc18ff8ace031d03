# SPDX-License-Identifier: GPL-3.0-or-later
# Pages made in Node and carried inside the program. board/pages.cmake lists them:
#
#   bw_page(NAME SCRIPT tools/build-NAME.mjs SOURCES pattern... FILES file...
#           [MODULE file.wasm] [ROOM room EMBED symbol=file...])
#
# SCRIPT is run as `node SCRIPT MODULE.wasm FOLDER`, FOLDER being BW_PAGES/NAME and the module the
# board's if none is named, and writes every one of FILES there (tools/bundle.mjs has what such scripts
# share). It runs again when the script, the module, or a file that a pattern of SOURCES finds has
# changed; patterns begin at the root of the tree.
#
# EMBED puts files into the library of src/ROOM: `symbol=file` gives the bytes from bw_NAME_symbol up
# to bw_NAME_symbol_end. In C, in a header of that room:
#
#   extern const unsigned char bw_board_page[], bw_board_page_end[];
#
# The list is read twice. The project in board/ makes the pages, once for all build trees; here, in
# the program's project, they are asked for (cmake/make-pages.cmake) and embedded.

if(PROJECT_NAME STREQUAL breakwater-pages)
  function(bw_page name)
    cmake_parse_arguments(PARSE_ARGV 1 PAGE "" "SCRIPT;MODULE;ROOM" "SOURCES;FILES;EMBED")
    list(TRANSFORM PAGE_SOURCES PREPEND ${BW_ROOT}/)
    list(TRANSFORM PAGE_FILES PREPEND ${BW_PAGES}/${name}/)
    file(GLOB sources CONFIGURE_DEPENDS ${PAGE_SOURCES})
    set(module ${BW_WASM})
    if(PAGE_MODULE)
      set(module ${BW_PAGES}/wasm/${PAGE_MODULE})
    endif()
    add_custom_command(OUTPUT ${PAGE_FILES}
      COMMAND node ${BW_ROOT}/${PAGE_SCRIPT} ${module} ${BW_PAGES}/${name}
      DEPENDS ${BW_ROOT}/${PAGE_SCRIPT} ${BW_ROOT}/tools/bundle.mjs ${BW_ROOT}/package-lock.json
              ${module} ${sources}
      COMMENT "Making the pages of ${name}" VERBATIM)
    add_custom_target(${name} ALL DEPENDS ${PAGE_FILES})
  endfunction()
  return()
endif()

set(BW_PAGES ${CMAKE_SOURCE_DIR}/build CACHE PATH "Where the pages are made, for all build trees")
set(BW_PAGE_FILES "")

function(bw_embed name room)
  get_target_property(kind bw_${room} TYPE)
  if(kind STREQUAL INTERFACE_LIBRARY)
    return()
  endif()
  set(source "/* Written by cmake/Pages.cmake. */\n    .section .rodata\n")
  foreach(pair IN LISTS ARGN)
    string(REGEX MATCH "^([a-z_]+)=(.+)$" matched ${pair})
    set(symbol bw_${name}_${CMAKE_MATCH_1})
    set(file ${BW_PAGES}/${name}/${CMAKE_MATCH_2})
    list(APPEND files ${file})
    string(APPEND source "    .global ${symbol}, ${symbol}_end\n    .balign 16\n${symbol}:\n"
                         "    .incbin \"${file}\"\n${symbol}_end:\n    .byte 0\n")
  endforeach()
  string(APPEND source "    .section .note.GNU-stack, \"\", %progbits\n")
  set(assembly ${CMAKE_BINARY_DIR}/pages_of_${name}.S)
  file(CONFIGURE OUTPUT ${assembly} CONTENT "${source}" @ONLY)
  set_source_files_properties(${assembly} PROPERTIES OBJECT_DEPENDS "${files}")
  target_sources(bw_${room} PRIVATE ${assembly})
  add_dependencies(bw_${room} pages)
endfunction()

function(bw_page name)
  cmake_parse_arguments(PARSE_ARGV 1 PAGE "" "SCRIPT;MODULE;ROOM" "SOURCES;FILES;EMBED")
  if(PAGE_ROOM)
    bw_embed(${name} ${PAGE_ROOM} ${PAGE_EMBED})
  endif()
  list(TRANSFORM PAGE_FILES PREPEND ${BW_PAGES}/${name}/)
  set(BW_PAGE_FILES ${BW_PAGE_FILES} ${PAGE_FILES} PARENT_SCOPE)
endfunction()

include(${CMAKE_SOURCE_DIR}/board/pages.cmake)

add_custom_target(pages
  COMMAND ${CMAKE_COMMAND} -D BW_ROOT=${CMAKE_SOURCE_DIR} -D BW_PAGES=${BW_PAGES}
          -P ${CMAKE_SOURCE_DIR}/cmake/make-pages.cmake
  BYPRODUCTS ${BW_PAGE_FILES} ${BW_PAGES}/wasm/breakwater.wasm ${BW_PAGES}/wasm/breakwater-test.wasm
             ${BW_PAGES}/wasm/handout.wasm
  COMMENT "Seeing to the pages" VERBATIM)

# What one asks for by name: the modules, the one-file board, the board for a static host.
foreach(alias wasm board-file board-static)
  add_custom_target(${alias})
  add_dependencies(${alias} pages)
endforeach()
