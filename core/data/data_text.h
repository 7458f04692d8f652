#pragma once

#include <span>
#include <string_view>

/// The readable data files of resources/data, built into the program.
namespace gazewright {

struct DataText {
  std::string_view name;  ///< "materials" of materials.yaml
  std::string_view yaml;
};
/// All of them, by name.
std::span<const DataText> data_texts();
/// The text of one; empty where there is no such file.
std::string_view data_text(std::string_view name);

}  // namespace gazewright
