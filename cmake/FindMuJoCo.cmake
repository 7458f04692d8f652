# Finds the MuJoCo library. Debian 12's own CMake package for it names a folder that does not exist
# and cannot be linked, hence this one. Gives the target MuJoCo::MuJoCo.
find_path(MuJoCo_INCLUDE_DIR mujoco/mujoco.h)
find_library(MuJoCo_LIBRARY mujoco)
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(MuJoCo REQUIRED_VARS MuJoCo_LIBRARY MuJoCo_INCLUDE_DIR
  REASON_FAILURE_MESSAGE "install the package libmujoco-dev")
if(MuJoCo_FOUND AND NOT TARGET MuJoCo::MuJoCo)
  add_library(MuJoCo::MuJoCo UNKNOWN IMPORTED)
  set_target_properties(MuJoCo::MuJoCo PROPERTIES
    IMPORTED_LOCATION "${MuJoCo_LIBRARY}"
    INTERFACE_INCLUDE_DIRECTORIES "${MuJoCo_INCLUDE_DIR}")
endif()
mark_as_advanced(MuJoCo_INCLUDE_DIR MuJoCo_LIBRARY)
