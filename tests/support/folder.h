#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace gazewright::tests {

/// A folder of a test's own, removed at its end with all that is in it.
class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "gazewright-XXXXXX").string();
    EXPECT_NE(::mkdtemp(name.data()), nullptr);
    root_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(root_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  const std::filesystem::path& root() const { return root_; }
  std::string path(const std::string& name) const { return (root_ / name).string(); }
  /// Writes a file and returns its path.
  std::string write(const std::string& name, const std::string& bytes) const {
    std::string file = path(name);
    std::ofstream(file, std::ios::binary) << bytes;
    return file;
  }

 private:
  std::filesystem::path root_;
};

}  // namespace gazewright::tests
