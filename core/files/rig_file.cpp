#include "core/files/rig_file.h"

#include <algorithm>
#include <cerrno>
#include <fstream>

#include "core/files/reader.h"
#include "core/files/system_words.h"
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
  const auto refused = [&](const SystemWords& words) {
    LoadedRig loaded;
    loaded.diagnostics.push_back(
        {file.string(), 0, 0, words.problem, words.fix, Diagnostic::Weight::error});
    return loaded;
  };
  std::error_code ignored;
  if (std::filesystem::is_directory(file, ignored)) return refused(words_for_reading(EISDIR));
  errno = 0;
  std::ifstream stream(file, std::ios::binary);
  if (!stream) return refused(words_for_reading(errno));
  std::string text(kLargestFile_bytes + 1, '\0');  // one more than is allowed, so that more is seen
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (stream.bad()) return refused(words_for_reading(errno));
  text.resize(static_cast<std::size_t>(stream.gcount()));
  return parse_rig(text, file.string());
}

}  // namespace gazewright
