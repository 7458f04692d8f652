# Checks against programs that are not ours: MuJoCo (linked) and SciPy (python scripts that run
# gazewright-batch). GAZEWRIGHT_REQUIRE_REFERENCES=ON makes their absence an error.
if(TARGET MuJoCo::MuJoCo)
  file(GLOB mujoco_test_sources CONFIGURE_DEPENDS mujoco/*.cpp)
  gazewright_tests(mujoco_tests SOURCES ${mujoco_test_sources} LINKS MuJoCo::MuJoCo GTest::gtest_main)
else()
  message(STATUS "MuJoCo is missing (package libmujoco-dev): its comparison is left out")
endif()

file(GLOB scipy_scripts CONFIGURE_DEPENDS scipy/*.py)
list(FILTER scipy_scripts EXCLUDE REGEX "/_[^/]*$") # a leading underscore marks a shared module
set(scipy_missing 1)
if(GAZEWRIGHT_PYTHON)
  execute_process(COMMAND ${GAZEWRIGHT_PYTHON} -c "import scipy.integrate"
    RESULT_VARIABLE scipy_missing OUTPUT_QUIET ERROR_QUIET)
endif()
if(NOT scipy_missing AND TARGET gazewright-batch)
  foreach(script IN LISTS scipy_scripts)
    get_filename_component(name "${script}" NAME_WE)
    add_test(NAME scipy.${name}
      COMMAND ${GAZEWRIGHT_PYTHON} -B "${script}" $<TARGET_FILE:gazewright-batch>
        "${PROJECT_SOURCE_DIR}")
    set_tests_properties(scipy.${name} PROPERTIES LABELS scipy COST 100) # long ones: start first
  endforeach()
elseif(scipy_missing AND GAZEWRIGHT_REQUIRE_REFERENCES)
  message(FATAL_ERROR "SciPy is missing: install the package python3-scipy")
elseif(scipy_missing)
  message(STATUS "SciPy is missing (package python3-scipy): its comparison is left out")
endif()
