#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string>

#include "core/files/rig_file.h"
#include "core/files/system_words.h"

namespace gazewright {
namespace {

namespace fs = std::filesystem;

/// Closes on every way out.
class OpenFile {
 public:
  explicit OpenFile(int number) : number_(number) {}
  ~OpenFile() { close(); }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  int number() const { return number_; }
  /// 0 or an errno: some systems report a full disk only here.
  int close() {
    const int closed = number_ < 0 ? 0 : ::close(number_);
    number_ = -1;
    return closed == 0 ? 0 : errno;
  }

 private:
  int number_;
};

int write_all(int number, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(number, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

/// Where a chain of links ends, so that saving keeps the link and replaces what it points to.
fs::path end_of_links(fs::path file) {
  constexpr int kMostLinks = 40;
  std::error_code fault;
  for (int i = 0; i < kMostLinks && fs::is_symlink(file, fault); ++i) {
    const fs::path target = fs::read_symlink(file, fault);
    if (fault) break;
    file = target.is_absolute() ? target : file.parent_path() / target;
  }
  return file;
}

/// A new file beside the old one, under a name that nobody has; negative with errno where there is
/// no place for it.
int create_beside(const fs::path& folder, fs::path& name) {
  constexpr int kMostTries = 100;
  for (int i = 0; i < kMostTries; ++i) {
    name = folder / (".saving-" + std::to_string(::getpid()) + "-" + std::to_string(i));
    const int number = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (number >= 0 || errno != EEXIST) return number;
  }
  return -1;
}

/// The name must be there after a power cut too; a folder that cannot be flushed is no fault.
void flush_folder(const fs::path& folder) {
  const OpenFile open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (open.number() >= 0) ::fsync(open.number());
}

/// A device or a pipe has no old content to save.
int write_in_place(const fs::path& file, std::string_view bytes) {
  OpenFile open(::open(file.c_str(), O_WRONLY | O_CLOEXEC));
  if (open.number() < 0) return errno;
  if (const int fault = write_all(open.number(), bytes)) return fault;
  return open.close();
}

/// @param old_file  whose permissions the new one takes over, where it exists
int fill(OpenFile& file, std::string_view bytes, const fs::path& old_file) {
  if (const int fault = write_all(file.number(), bytes)) return fault;
  struct stat old {};
  const bool has_old = ::stat(old_file.c_str(), &old) == 0;
  if (has_old && ::fchmod(file.number(), old.st_mode & 07777) != 0) return errno;
  if (::fsync(file.number()) != 0) return errno;
  return file.close();
}

int replace(const fs::path& file, std::string_view bytes) {
  const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
  fs::path name;
  OpenFile beside(create_beside(folder, name));
  if (beside.number() < 0) return errno;
  int fault = fill(beside, bytes, file);
  if (fault == 0 && ::rename(name.c_str(), file.c_str()) != 0) fault = errno;
  if (fault != 0) ::unlink(name.c_str());
  if (fault == 0) flush_folder(folder);
  return fault;
}

}  // namespace

std::optional<Diagnostic> save_text(const fs::path& file, std::string_view bytes) {
  const fs::path target = end_of_links(file);
  std::error_code ignored;
  const auto kind = fs::status(target, ignored).type();
  const bool is_special = kind == fs::file_type::character || kind == fs::file_type::fifo;
  int fault = EISDIR;
  if (is_special)
    fault = write_in_place(target, bytes);
  else if (kind != fs::file_type::directory)
    fault = replace(target, bytes);
  if (fault == 0) return std::nullopt;
  const SystemWords words = words_for_writing(fault);
  return Diagnostic{file.string(), 0, 0, words.problem, words.fix, Diagnostic::Weight::error};
}

}  // namespace gazewright
