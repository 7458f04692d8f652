# Flags that every target of ours shares. No -ffast-math anywhere, and no fused multiply-add behind
# our back: a rig gives the same figures on every machine and in every preset.
add_library(gazewright_flags INTERFACE)
target_compile_options(gazewright_flags INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Woverloaded-virtual -Wfloat-conversion
  -ffp-contract=off)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # gcc 12 warns wrongly about "text" + std::string (GCC bug 105651).
  target_compile_options(gazewright_flags INTERFACE -Wno-restrict)
endif()

if(GAZEWRIGHT_SANITIZE)
  add_compile_options(-fsanitize=${GAZEWRIGHT_SANITIZE} -fno-sanitize-recover=all
    -fno-omit-frame-pointer)
  add_link_options(-fsanitize=${GAZEWRIGHT_SANITIZE})
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    # The gcc manual: sanitizers make warnings that follow values fire where nothing is wrong. The
    # other presets keep them.
    target_compile_options(gazewright_flags INTERFACE -Wno-maybe-uninitialized -Wno-array-bounds
      -Wno-stringop-overflow -Wno-stringop-overread)
  endif()
endif()

# Sanitizers make compiling slow: what every file includes is compiled once. Other presets compile
# without, so that a missing include is found.
function(gazewright_compile_once target)
  if(GAZEWRIGHT_SANITIZE)
    target_precompile_headers(${target} PRIVATE ${ARGN})
  endif()
endfunction()

# Sanitizers are for core's arithmetic as people run it; what only drives or shows it compiles twice as
# fast without optimising.
function(gazewright_leave_plain target)
  if(GAZEWRIGHT_SANITIZE)
    target_compile_options(${target} PRIVATE -O0)
  endif()
endfunction()

# Tests seek faults of the program, not of themselves: without the address sanitizer's and ubsan's code
# they compile in half the time. What they call in core and app, and the heap, stays watched. The thread
# sanitizer has to see both sides.
function(gazewright_leave_unwatched target)
  if(GAZEWRIGHT_SANITIZE MATCHES "address")
    target_compile_options(${target} PRIVATE -fno-sanitize=all)
  endif()
endfunction()
