# SPDX-License-Identifier: GPL-3.0-or-later
# Each tests/ROOM/test_*.c is one program and one CTest test, named ROOM/test_*; so is each script
# tests/ROOM/test_*.sh. All of them find the program in BREAKWATER and the source tree in BW_ROOT.
# `pure-tests` are those that use no library but C's.
set(BW_TEST_ROOMS core scheme draw trial web outside paint file tune report team serve cli)

# A test links its own room, which brings those it uses, and what the tests of that room need beside it:
# a scheme read from a file, mostly. So a changed line is tried without building what does not use it.
set(BW_TEST_USES_core scheme)
set(BW_TEST_USES_scheme file)
set(BW_TEST_USES_draw file)
set(BW_TEST_USES_file web)
set(BW_TEST_USES_report web)
set(BW_TEST_USES_outside tune file)

# Searches of many breaks: minutes without optimisation. They carry the label "long", which the debug
# and msan presets leave out; that the model gives the same answer there, web/test_golden says.
set(BW_LONG_TESTS serve/test_suggest serve/test_save cli/test_teach.sh cli/test_handout.sh
                  cli/test_rehearse.sh)

# Those that spend nearly all their time in the pure core, whose own tests run sanitised, are "model" too:
# the sanitised build leaves them out.
set(BW_MODEL_TESTS core/test_trade web/test_tester tune/test_tune outside/test_covering_published
                   cli/test_test_verb.sh cli/test_tune.sh cli/test_review.sh cli/test_progress.sh)

# Those that run threads of ours, one for each place that starts some (films, the battery, the judge, the
# server and its jobs, sets of fonts): `threaded-tests`, with the label "threads", which is what the
# thread-sanitised build runs.
set(BW_THREADED_TESTS paint/test_fonts report/test_films report/test_battery tune/test_judge
                      serve/test_door serve/test_share serve/test_team_desk serve/test_waiting)

function(bw_test_environment test)
  set(environment "BW_ROOT=${CMAKE_SOURCE_DIR}" "BREAKWATER=${CMAKE_BINARY_DIR}/breakwater"
      "LSAN_OPTIONS=suppressions=${CMAKE_SOURCE_DIR}/tests/leaks.supp:print_suppressions=0"
      "TSAN_OPTIONS=suppressions=${CMAKE_SOURCE_DIR}/tests/races.supp")
  get_filename_component(room ${test} DIRECTORY)
  # The longest begin first, so that none of them is still at it when all the others have ended.
  set(cost 1)
  if(test IN_LIST BW_LONG_TESTS OR test IN_LIST BW_MODEL_TESTS)
    set(cost 100)
  elseif(room MATCHES "^(cli|serve|report|team)$")
    set(cost 10)
  endif()
  if(test IN_LIST BW_LONG_TESTS)
    list(APPEND room long)
  elseif(test IN_LIST BW_MODEL_TESTS)
    list(APPEND room long model)
  endif()
  if(test IN_LIST BW_THREADED_TESTS)
    list(APPEND room threads)
  endif()
  set_tests_properties(${test} PROPERTIES ENVIRONMENT "${environment}" LABELS "${room}"
                       WORKING_DIRECTORY ${CMAKE_SOURCE_DIR} TIMEOUT 600 COST ${cost})
endfunction()

add_custom_target(pure-tests)
add_custom_target(threaded-tests)
foreach(room IN LISTS BW_TEST_ROOMS)
  file(GLOB programs CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/tests/${room}/test_*.c)
  foreach(source IN LISTS programs)
    get_filename_component(name ${source} NAME_WE)
    set(target ${room}_${name})
    add_executable(${target} ${source})
    set_target_properties(${target} PROPERTIES
      RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/tests/${room} OUTPUT_NAME ${name})
    target_include_directories(${target} PRIVATE ${CMAKE_SOURCE_DIR}/tests/kit ${CMAKE_SOURCE_DIR})
    set(rooms ${room} ${BW_TEST_USES_${room}})
    list(REMOVE_ITEM rooms outside)
    list(TRANSFORM rooms PREPEND bw_)
    target_link_libraries(${target} PRIVATE ${rooms} m)
    bw_native(${target})
    bw_threads(${target})
    if(room MATCHES "^(core|web)$")
      add_dependencies(pure-tests ${target})
    endif()
    if(${room}/${name} IN_LIST BW_THREADED_TESTS)
      add_dependencies(threaded-tests ${target})
    endif()
    if(room STREQUAL "outside")
      bw_packages(${target} gsl)
    endif()
    if(target STREQUAL "paint_test_film") # reads films back
      bw_packages(${target} libavcodec libavformat libavutil)
    endif()
    add_test(NAME ${room}/${name} COMMAND ${target})
    bw_test_environment(${room}/${name})
  endforeach()
  file(GLOB scripts CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/tests/${room}/test_*.sh)
  foreach(script IN LISTS scripts)
    get_filename_component(name ${script} NAME)
    add_test(NAME ${room}/${name} COMMAND sh ${script})
    bw_test_environment(${room}/${name})
  endforeach()
endforeach()
