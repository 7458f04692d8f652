#include "core/files/user_folder.h"

#include <cstdlib>

namespace gazewright {
namespace {

/// The variable's path; empty where that is none or relative.
std::filesystem::path absolute_path_in(const char* variable) {
  const char* value = std::getenv(variable);  // NOLINT(concurrency-mt-unsafe): at the start only
  const std::filesystem::path path(value == nullptr ? "" : value);
  return path.is_absolute() ? path : std::filesystem::path();
}

}  // namespace

std::filesystem::path user_folder(std::string_view name) {
  std::filesystem::path data = absolute_path_in("XDG_DATA_HOME");
  if (data.empty()) {
    const std::filesystem::path home = absolute_path_in("HOME");
    if (home.empty()) return {};
    data = home / ".local/share";
  }
  return data / "gazewright" / name;
}

}  // namespace gazewright
