# `cpack` in a build folder makes a Debian package there. What it depends on is read off the
# programs (dpkg-shlibdeps), so that a new library needs no line here.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME gazewright)
set(CPACK_PACKAGE_CONTACT "The Gazewright maintainers <maintainers@gazewright.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "design fast two-axis pan-tilt rigs")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Gazewright helps people who build a camera that looks about as quickly as
 an eye. From one description of the rig it says which gearbox belongs on
 which axis, how fast each axis moves and what limits it, how far it may turn,
 and how steady the picture is. With a window, a design sheet in PDF and a
 batch program.")
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Nobody links the plugin that reads the icon.
if(TARGET gazewright)
  set(CPACK_DEBIAN_PACKAGE_DEPENDS libqt6svg6)
  set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-dejavu-core, qt6-wayland, qt6-translations-l10n")
endif()
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_VERBATIM_VARIABLES ON)
include(CPack)
