# What `cmake --install` puts where. Everything optional is installed when it is there.
foreach(program gazewright gazewright-batch)
  if(TARGET ${program})
    install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
  endif()
endforeach()

set(resources "${PROJECT_SOURCE_DIR}/resources")
set(share "${CMAKE_INSTALL_DATADIR}")
install(DIRECTORY sample-rigs/ DESTINATION ${share}/gazewright/sample-rigs
  FILES_MATCHING PATTERN "*.rig.yaml")
install(DIRECTORY resources/data/ DESTINATION ${share}/gazewright/data
  FILES_MATCHING PATTERN "*.yaml")
if(EXISTS "${resources}/handbook")
  install(DIRECTORY resources/handbook/ DESTINATION ${share}/gazewright/handbook)
endif()
install(FILES resources/org.gazewright.Gazewright.desktop DESTINATION ${share}/applications
  OPTIONAL)
install(FILES resources/org.gazewright.Gazewright.metainfo.xml DESTINATION ${share}/metainfo
  OPTIONAL)
install(FILES resources/org.gazewright.Gazewright.mime.xml DESTINATION ${share}/mime/packages
  OPTIONAL)
install(FILES resources/icons/org.gazewright.Gazewright.svg
  DESTINATION ${share}/icons/hicolor/scalable/apps OPTIONAL)
