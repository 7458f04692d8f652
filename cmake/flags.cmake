# Flags that every target of ours shares. No -ffast-math anywhere, and no fused multiply-add behind
# our back: a rig gives the same figures on every machine and in every preset.
add_library(gazewright_flags INTERFACE)
target_compile_options(gazewright_flags INTERFACE
  -Wall -Wextra -Wpedantic -Wnon-virtual-dtor -Woverloaded-virtual -Wfloat-conversion
  -ffp-contract=off)
# In a batch a file's local name may be another file's own, and all files but one count as headers.
set(is_batched $<BOOL:$<TARGET_PROPERTY:GAZEWRIGHT_IS_BATCHED>>)
target_compile_options(gazewright_flags INTERFACE $<$<NOT:${is_batched}>:-Wshadow>)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  target_compile_options(gazewright_flags INTERFACE
    $<${is_batched}:-Wshadow=local> $<${is_batched}:-Wno-subobject-linkage>)
  # gcc 12 warns wrongly about "text" + std::string (GCC bug 105651).
  target_compile_options(gazewright_flags INTERFACE -Wno-restrict)
endif()

if(GAZEWRIGHT_SANITIZE)
  # An access through a null, misplaced or too small object is the address sanitizer's to find; checking
  # each one twice costs a quarter of the suite's time.
  add_compile_options(-fsanitize=${GAZEWRIGHT_SANITIZE} -fno-sanitize-recover=all
    -fno-sanitize=null,alignment,object-size,vptr -fno-omit-frame-pointer)
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

# What builds everything anew compiles a dozen files at once, as headers take most of the time; who works
# on the code builds each alone, which finds a missing include.
option(GAZEWRIGHT_BATCHED "Compile source files in batches" OFF)
function(gazewright_compile_batched target)
  if(NOT GAZEWRIGHT_BATCHED OR NOT GAZEWRIGHT_PYTHON)
    return()
  endif()
  get_target_property(sources ${target} SOURCES)
  list(FILTER sources INCLUDE REGEX "^${CMAKE_CURRENT_SOURCE_DIR}/.*\\.cpp$")
  execute_process(COMMAND "${GAZEWRIGHT_PYTHON}" -B "${PROJECT_SOURCE_DIR}/cmake/batches.py" ${sources}
    OUTPUT_VARIABLE lines OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
  string(REPLACE "\n" ";" lines "${lines}")
  foreach(line IN LISTS lines)
    string(REGEX MATCH "^([0-9]+) (.*)$" found "${line}")
    set_source_files_properties("${CMAKE_MATCH_2}" PROPERTIES UNITY_GROUP ${CMAKE_MATCH_1})
  endforeach()
  set_target_properties(${target} PROPERTIES
    UNITY_BUILD ON UNITY_BUILD_MODE GROUP GAZEWRIGHT_IS_BATCHED ON)
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
