#include "core/files/rig_file.h"

#include <algorithm>

#include "core/files/read_bytes.h"
#include "core/files/reader.h"
#include "core/files/text_check.h"

namespace gazewright {

LoadedRig parse_rig(std::string_view text, const std::string& file_name) {
  LoadedRig loaded;
  loaded.text = std::string(text.substr(0, kLargestFile_bytes));
  const std::string_view content =
      text.starts_with(kByteOrderMark) ? text.substr(kByteOrderMark.size()) : text;
  ReadText read = read_text(content);
  loaded.rig = std::move(read.rig);
  loaded.diagnostics = to_diagnostics(std::move(read.faults), content, file_name);
  return loaded;
}

LoadedRig load_rig(const std::filesystem::path& file) {
  const auto bytes = read_bytes(file);
  if (const auto* text = std::get_if<std::string>(&bytes)) return parse_rig(*text, file.string());
  const auto& words = std::get<SystemWords>(bytes);
  LoadedRig loaded;
  loaded.diagnostics.push_back(
      {file.string(), 0, 0, words.problem, words.fix, Diagnostic::Weight::error});
  return loaded;
}

}  // namespace gazewright
