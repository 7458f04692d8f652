# What the desktop and the system see: manual pages, desktop files, the Debian package. Tools of the
# distribution judge them; GAZEWRIGHT_REQUIRE_REFERENCES=ON makes their absence an error.
if(NOT GAZEWRIGHT_PYTHON OR NOT TARGET gazewright)
  return()
endif()

# A test that needs tools: its name, script and arguments, then NEEDS tool package tool package ...
function(gazewright_desktop_test name script)
  cmake_parse_arguments(arg "" "" "ARGUMENTS;NEEDS" ${ARGN})
  while(arg_NEEDS)
    list(POP_FRONT arg_NEEDS tool package)
    find_program(GAZEWRIGHT_${tool} ${tool})
    if(NOT GAZEWRIGHT_${tool} AND GAZEWRIGHT_REQUIRE_REFERENCES)
      message(FATAL_ERROR "${tool} is missing: install the package ${package}")
    elseif(NOT GAZEWRIGHT_${tool})
      message(STATUS "${tool} is missing (package ${package}): the test ${name} is left out")
      return()
    endif()
  endwhile()
  add_test(NAME desktop.${name}
    COMMAND ${GAZEWRIGHT_PYTHON} -B "${PROJECT_SOURCE_DIR}/tests/desktop/${script}" ${arg_ARGUMENTS})
  set_tests_properties(desktop.${name} PROPERTIES LABELS desktop)
endfunction()

set(man "${PROJECT_SOURCE_DIR}/resources/man")
gazewright_desktop_test(manual manual.py
  ARGUMENTS "${man}/gazewright.1" $<TARGET_FILE:gazewright> NEEDS groff groff-base)
gazewright_desktop_test(batch_manual manual.py
  ARGUMENTS "${man}/gazewright-batch.1" $<TARGET_FILE:gazewright-batch>
    figures trace sweep travel track compare doubts sheet shelf fit
  NEEDS groff groff-base)
gazewright_desktop_test(files desktop_files.py ARGUMENTS "${PROJECT_SOURCE_DIR}"
  NEEDS desktop-file-validate desktop-file-utils appstreamcli appstream
    update-mime-database shared-mime-info)
gazewright_desktop_test(package package.py
  ARGUMENTS "${PROJECT_BINARY_DIR}" "${CMAKE_COMMAND}" "${CMAKE_CPACK_COMMAND}"
  NEEDS dpkg-shlibdeps dpkg-dev)
# Every text of the program is in every translation, with the same holes.
add_test(NAME desktop.translations
  COMMAND ${GAZEWRIGHT_PYTHON} -B "${PROJECT_SOURCE_DIR}/cmake/words.py" --check)
set_tests_properties(desktop.translations PROPERTIES LABELS desktop)
