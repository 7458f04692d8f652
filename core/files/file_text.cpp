#include "core/files/file_text.h"

#include <cerrno>
#include <fstream>

#include "core/files/system_words.h"
#include "core/files/text_check.h"

namespace gazewright {

std::variant<std::string, Diagnostic> file_text(const std::filesystem::path& file) {
  const auto refused = [&](const SystemWords& words) {
    return Diagnostic{file.string(), 0, 0, words.problem, words.fix, Diagnostic::Weight::error};
  };
  std::error_code ignored;
  if (std::filesystem::is_directory(file, ignored)) return refused(words_for_reading(EISDIR));
  errno = 0;
  std::ifstream stream(file, std::ios::binary);
  if (!stream) return refused(words_for_reading(errno));
  std::string text(kLargestFile_bytes + 1, '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (stream.bad()) return refused(words_for_reading(errno));
  text.resize(static_cast<std::size_t>(stream.gcount()));
  return text;
}

}  // namespace gazewright
