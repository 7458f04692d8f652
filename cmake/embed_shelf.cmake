# Writes the parts of resources/shelf into a source file, so that the programs need no files beside
# them:  gazewright_embed_shelf(OUT_VARIABLE). The build configures itself anew when one changes.
function(gazewright_embed_shelf out)
  file(GLOB files CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/resources/shelf/*.yaml")
  set(source "${PROJECT_BINARY_DIR}/generated/shelf_texts.cpp")
  set(rows "")
  foreach(file IN LISTS files)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${file}")
    get_filename_component(name "${file}" NAME)
    file(READ "${file}" text)
    string(APPEND rows "    {\"${name}\", R\"shelf(${text})shelf\"},\n")
  endforeach()
  file(WRITE "${source}.new"
    "#include \"core/shelf/shelf.h\"\n\n"
    "namespace gazewright {\nnamespace {\nconstexpr ShelfText kTexts[] = {\n${rows}};\n}\n\n"
    "std::span<const ShelfText> shelf_texts() { return kTexts; }\n\n}  // namespace gazewright\n")
  file(COPY_FILE "${source}.new" "${source}" ONLY_IF_DIFFERENT)
  set(${out} "${source}" PARENT_SCOPE)
endfunction()
