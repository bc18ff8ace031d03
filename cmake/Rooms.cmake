# SPDX-License-Identifier: GPL-3.0-or-later
# bw_room(NAME [PURE] [THREADS] [USES room...] [PACKAGES pkg-config-module...] [LOADS module...])
#   makes the library bw_NAME from src/NAME/*.c and the folders in it. It may include "NAME/x.h" and the headers of the
#   rooms it USES, and no others: each room has an include folder of its own in the build tree, which
#   holds nothing but a link to src/NAME. PURE rooms use nothing but the freestanding C headers
#   (tools/check-symbols, and the link of cmake/Wasm.cmake); the others may use POSIX. Packages are asked for, and linked,
#   only where a room with sources needs them.
#   LOADS are packages whose headers are used and whose libraries the room opens when it needs them.
#   An assembler file (.S) holds data that becomes part of the program: the fonts.
# bw_program(PROGRAM FOLDER [THREADS] [USES room...])  the same for the program itself.
find_package(PkgConfig REQUIRED)

set(BW_ROOMS "")

# The imported target of a package into ${out}; ends the configuration when there is none.
function(bw_find_package target package out)
  string(MAKE_C_IDENTIFIER "BW_${package}" prefix)
  if(NOT TARGET PkgConfig::${prefix})
    pkg_check_modules(${prefix} QUIET IMPORTED_TARGET ${package})
    if(NOT TARGET PkgConfig::${prefix})
      message(FATAL_ERROR "${target} needs the library ${package}, which pkg-config does not "
                          "find. `make setup` installs what is missing on Debian 12.")
    endif()
  endif()
  set(${out} PkgConfig::${prefix} PARENT_SCOPE)
endfunction()

function(bw_packages target)
  foreach(package IN LISTS ARGN)
    bw_find_package(${target} ${package} imported)
    target_link_libraries(${target} PRIVATE ${imported})
  endforeach()
endfunction()

function(bw_loads target)
  foreach(package IN LISTS ARGN)
    bw_find_package(${target} ${package} imported)
    target_include_directories(${target} SYSTEM PRIVATE
      $<TARGET_PROPERTY:${imported},INTERFACE_INCLUDE_DIRECTORIES>)
  endforeach()
  target_link_libraries(${target} PRIVATE ${CMAKE_DL_LIBS})
endfunction()

function(bw_native target)
  target_compile_definitions(${target} PRIVATE _POSIX_C_SOURCE=200809L
                             BW_VERSION="${PROJECT_VERSION}")
endfunction()

function(bw_threads target)
  set(THREADS_PREFER_PTHREAD_FLAG ON)
  find_package(Threads REQUIRED)
  target_link_libraries(${target} PRIVATE Threads::Threads)
endfunction()

# The folder from which "NAME/x.h" can be included, and nothing else.
function(bw_include_folder name out)
  set(folder ${CMAKE_BINARY_DIR}/include/${name})
  file(MAKE_DIRECTORY ${folder})
  file(CREATE_LINK ${CMAKE_SOURCE_DIR}/src/${name} ${folder}/${name} SYMBOLIC)
  set(${out} ${folder} PARENT_SCOPE)
endfunction()

function(bw_room name)
  cmake_parse_arguments(PARSE_ARGV 1 ROOM "PURE;THREADS" "" "USES;PACKAGES;LOADS")
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/${name}/*.c
                                      ${CMAKE_SOURCE_DIR}/src/${name}/*/*.c
                                      ${CMAKE_SOURCE_DIR}/src/${name}/*.S)
  file(GLOB fonts CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/assets/fonts/*)
  foreach(source IN LISTS sources)
    if(source MATCHES "\\.S$")
      set_source_files_properties(${source} PROPERTIES OBJECT_DEPENDS "${fonts}"
                                  INCLUDE_DIRECTORIES ${CMAKE_SOURCE_DIR})
    endif()
  endforeach()
  set(target bw_${name})
  list(TRANSFORM ROOM_USES PREPEND bw_)
  if(NOT sources)
    add_library(${target} INTERFACE)
    target_link_libraries(${target} INTERFACE ${ROOM_USES})
  else()
    add_library(${target} STATIC ${sources})
    bw_include_folder(${name} folder)
    target_include_directories(${target} PUBLIC ${folder})
    target_compile_options(${target} PRIVATE ${BW_PROTOTYPES})
    target_link_libraries(${target} PUBLIC ${ROOM_USES})
    bw_packages(${target} ${ROOM_PACKAGES})
    if(ROOM_LOADS)
      bw_loads(${target} ${ROOM_LOADS})
    endif()
    if(NOT ROOM_PURE)
      bw_native(${target})
      target_link_libraries(${target} PUBLIC m)
    endif()
    if(ROOM_THREADS)
      bw_threads(${target})
    endif()
  endif()
  set(BW_ROOMS ${target} ${BW_ROOMS} PARENT_SCOPE)
endfunction()

function(bw_program program folder)
  cmake_parse_arguments(PARSE_ARGV 2 ROOM "THREADS" "" "USES;PACKAGES")
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/${folder}/*.c
                                      ${CMAKE_SOURCE_DIR}/src/${folder}/*/*.c)
  if(NOT sources)
    message(STATUS "src/${folder} is empty: no program ${program}")
    return()
  endif()
  list(TRANSFORM ROOM_USES PREPEND bw_)
  add_executable(${program} ${sources})
  bw_include_folder(${folder} includes)
  target_include_directories(${program} PRIVATE ${includes})
  target_compile_options(${program} PRIVATE ${BW_PROTOTYPES})
  target_link_libraries(${program} PRIVATE ${ROOM_USES} m)
  bw_packages(${program} ${ROOM_PACKAGES})
  bw_native(${program})
  if(ROOM_THREADS)
    bw_threads(${program})
  endif()
  install(TARGETS ${program})
endfunction()
