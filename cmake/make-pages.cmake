# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -D BW_ROOT=SOURCES -D BW_PAGES=FOLDER -P make-pages.cmake: brings the pages of board/ up to
# date. Quiet when that works; one at a time, since several build trees share them.
set(project ${BW_PAGES}/pages)
file(MAKE_DIRECTORY ${project})
file(LOCK ${project}/lock GUARD PROCESS TIMEOUT 900)

function(run what)
  execute_process(COMMAND ${ARGN} WORKING_DIRECTORY ${BW_ROOT} RESULT_VARIABLE failed
                  OUTPUT_VARIABLE said ERROR_VARIABLE said)
  if(failed)
    message("${said}")
    message(FATAL_ERROR "${what}")
  endif()
endfunction()

if(NOT EXISTS ${BW_ROOT}/node_modules/.package-lock.json OR
   ${BW_ROOT}/package-lock.json IS_NEWER_THAN ${BW_ROOT}/node_modules/.package-lock.json)
  run("The page's bundler could not be fetched with npm; is the package server reachable?"
      npm ci --ignore-scripts --no-audit --no-fund)
endif()
if(NOT EXISTS ${project}/build.ninja)
  run("The pages cannot be made here; `make setup` installs what is missing on Debian 12."
      ${CMAKE_COMMAND} -G Ninja -S ${BW_ROOT}/board -B ${project} -D BW_PAGES=${BW_PAGES})
endif()
run("The pages could not be made." ${CMAKE_COMMAND} --build ${project})
