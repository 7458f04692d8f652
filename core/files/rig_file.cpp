#include "core/files/rig_file.h"

#include "core/files/file_text.h"
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

LoadedRig load_rig(const std::filesystem::path& file) { return loaded_from(file, parse_rig); }

}  // namespace gazewright
