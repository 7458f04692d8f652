# Each fuzz/fuzz_NAME.cpp defines LLVMFuzzerTestOneInput. Every build replays its corpus
# (fuzz/corpus/NAME/*) as a test; with clang and GAZEWRIGHT_FUZZ=ON it is also a libFuzzer program.
file(GLOB fuzz_sources CONFIGURE_DEPENDS fuzz/fuzz_*.cpp)
if(GAZEWRIGHT_FUZZ AND NOT CMAKE_CXX_COMPILER_ID MATCHES "Clang")
  message(FATAL_ERROR "GAZEWRIGHT_FUZZ needs clang: configure with -DCMAKE_CXX_COMPILER=clang++")
endif()
foreach(source IN LISTS fuzz_sources)
  get_filename_component(program "${source}" NAME_WE)
  string(REPLACE "fuzz_" "" subject "${program}")
  set(corpus "${PROJECT_SOURCE_DIR}/tests/fuzz/corpus/${subject}")

  gazewright_tests(${program}_replay SOURCES ${source} fuzz/replay.cpp LINKS GTest::gtest_main)
  target_compile_definitions(${program}_replay PRIVATE GAZEWRIGHT_CORPUS="${corpus}")

  if(GAZEWRIGHT_FUZZ)
    add_executable(${program} ${source})
    target_link_libraries(${program} PRIVATE gazewright_core gazewright_flags)
    target_compile_options(${program} PRIVATE -fsanitize=fuzzer)
    target_link_options(${program} PRIVATE -fsanitize=fuzzer)
  endif()
endforeach()
