# Writes the texts of resources/data into a source file, so that the programs need no files beside
# them:  gazewright_embed_data(OUT_VARIABLE). The build configures itself anew when one changes.
function(gazewright_embed_data out)
  file(GLOB files CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/resources/data/*.yaml")
  set(source "${PROJECT_BINARY_DIR}/generated/data_texts.cpp")
  set(rows "")
  foreach(file IN LISTS files)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${file}")
    get_filename_component(name "${file}" NAME_WE)
    file(READ "${file}" text)
    string(APPEND rows "    {\"${name}\", R\"data(${text})data\"},\n")
  endforeach()
  file(WRITE "${source}.new"
    "#include \"core/data/data_text.h\"\n\n"
    "namespace gazewright {\nnamespace {\nconstexpr DataText kTexts[] = {\n${rows}};\n}\n\n"
    "std::span<const DataText> data_texts() { return kTexts; }\n\n}  // namespace gazewright\n")
  file(COPY_FILE "${source}.new" "${source}" ONLY_IF_DIFFERENT)
  set(${out} "${source}" PARENT_SCOPE)
endfunction()
