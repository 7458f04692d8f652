#include "core/files/read_bytes.h"

#include <cerrno>
#include <fstream>

#include "core/files/text_check.h"

namespace gazewright {

std::variant<std::string, SystemWords> read_bytes(const std::filesystem::path& file) {
  std::error_code ignored;
  if (std::filesystem::is_directory(file, ignored)) return words_for_reading(EISDIR);
  errno = 0;
  std::ifstream stream(file, std::ios::binary);
  if (!stream) return words_for_reading(errno);
  std::string text(kLargestFile_bytes + 1, '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (stream.bad()) return words_for_reading(errno);
  text.resize(static_cast<std::size_t>(stream.gcount()));
  return text;
}

}  // namespace gazewright
