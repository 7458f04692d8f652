# What `cmake --install` puts where. Everything optional is installed when it is there.
set(share "${CMAKE_INSTALL_DATADIR}")
foreach(program gazewright gazewright-batch)
  if(TARGET ${program})
    install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
    install(FILES resources/man/${program}.1 DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
  endif()
endforeach()

install(DIRECTORY sample-rigs/ DESTINATION ${share}/gazewright/sample-rigs
  FILES_MATCHING PATTERN "*.rig.yaml")
install(DIRECTORY resources/data/ DESTINATION ${share}/gazewright/data
  FILES_MATCHING PATTERN "*.yaml")
install(DIRECTORY resources/handbook/ DESTINATION ${share}/gazewright/handbook)
install(FILES resources/package/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

# What the desktop knows of the window.
if(TARGET gazewright)
  set(id org.gazewright.Gazewright)
  install(FILES resources/${id}.desktop DESTINATION ${share}/applications)
  install(FILES resources/${id}.metainfo.xml DESTINATION ${share}/metainfo)
  install(FILES resources/${id}.mime.xml DESTINATION ${share}/mime/packages)
  set(icons "${share}/icons/hicolor")
  install(FILES resources/icons/${id}.svg DESTINATION ${icons}/scalable/apps)
  install(FILES resources/icons/${id}-symbolic.svg DESTINATION ${icons}/symbolic/apps)
  install(FILES resources/icons/application-x-gazewright-rig.svg
    DESTINATION ${icons}/scalable/mimetypes)
endif()
