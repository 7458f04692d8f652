# resources/words/gazewright_*.ts, compiled and carried in the program as :/words/gazewright_*.qm.
file(GLOB word_files CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/resources/words/*.ts")
find_program(GAZEWRIGHT_LRELEASE lrelease
  HINTS "${QT6_INSTALL_PREFIX}/${QT6_INSTALL_BINS}" "${QT6_INSTALL_PREFIX}/lib/qt6/bin")
if(NOT GAZEWRIGHT_LRELEASE)
  message(STATUS "lrelease is missing (package qt6-l10n-tools): the window speaks English only")
  return()
endif()

set(entries "")
set(compiled "")
foreach(file IN LISTS word_files)
  get_filename_component(name "${file}" NAME_WE)
  add_custom_command(OUTPUT ${name}.qm DEPENDS "${file}"
    COMMAND ${GAZEWRIGHT_LRELEASE} -silent "${file}" -qm ${name}.qm)
  string(APPEND entries "<file>${name}.qm</file>")
  list(APPEND compiled ${name}.qm)
endforeach()
file(CONFIGURE OUTPUT words.qrc CONTENT
  "<RCC version=\"1.0\"><qresource prefix=\"/words\">${entries}</qresource></RCC>\n")
add_custom_command(OUTPUT qrc_words.cpp DEPENDS words.qrc ${compiled}
  COMMAND Qt6::rcc --name words --output qrc_words.cpp words.qrc)
target_sources(gazewright_resources PRIVATE "${CMAKE_CURRENT_BINARY_DIR}/qrc_words.cpp")
