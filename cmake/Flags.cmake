# SPDX-License-Identifier: GPL-3.0-or-later
# Same input, same bits: strict C17, no contraction to fused multiply-add, never -ffast-math.
# -fno-trapping-math and -fno-math-errno change no result; they let clamps become blends and
# square root become one instruction.
set(CMAKE_C_STANDARD 17)
set(CMAKE_C_STANDARD_REQUIRED ON)
set(CMAKE_C_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_C_FLAGS_RELEASE "-O2")
set(CMAKE_C_FLAGS_DEBUG "-O0 -g")

set(BW_STRICT -Wall -Wextra -Wpedantic -ffp-contract=off -fno-trapping-math -fno-math-errno)
if(BW_WERROR)
  list(APPEND BW_STRICT -Werror)
endif()
add_compile_options("$<$<COMPILE_LANGUAGE:C>:${BW_STRICT}>")

# In src/ every function is static or declared in a header.
set(BW_PROTOTYPES $<$<COMPILE_LANGUAGE:C>:-Wstrict-prototypes> $<$<COMPILE_LANGUAGE:C>:-Wmissing-prototypes>)

# No machine's own paths in the program: the same sources give the same bytes anywhere.
add_compile_options(-ffile-prefix-map=${CMAKE_SOURCE_DIR}/=)

if(BW_SANITIZE)
  set(CMAKE_C_FLAGS_DEBUG "-O2 -g")
  add_compile_options(-fsanitize=${BW_SANITIZE} -fno-sanitize-recover=all
                      -fno-omit-frame-pointer)
  add_link_options(-fsanitize=${BW_SANITIZE})
endif()
if(BW_FUZZ)
  add_compile_options(-fsanitize=fuzzer-no-link)
endif()
if(BW_COVERAGE)
  set(CMAKE_C_FLAGS_DEBUG "-Og -g") # a third of the time of -O0, and lines are still told apart
  add_compile_options(--coverage -fprofile-update=atomic)
  add_link_options(--coverage)
endif()
