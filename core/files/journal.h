#pragma once

#include <condition_variable>
#include <filesystem>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <thread>

#include "core/files/rig_file.h"
#include "core/rig/rig.h"

namespace gazewright {

/// What a journal file holds: the unsaved rig of one document, and the file it is to be saved to.
struct Journal {
  std::string file;  ///< empty: never saved
  std::string text;  ///< of the whole rig, as saving would write it
  bool operator==(const Journal&) const = default;
};

/// A journal is a rig file under a head of comments, so that it can be rescued by hand too.
std::string journal_text(const Journal& journal);
/// Empty where the text has not the head of a journal.
std::optional<Journal> read_journal(std::string_view text);

/// An edit to keep safe. The text is worked out on the writer's thread.
struct KeptEdit {
  std::string file;
  Rig rig;
  std::string original_text;  ///< of the file, for its comments and layout; may be empty
};

/// Writes journals on a thread of its own. Each is replaced as a whole (save_text), so that after a
/// kill at any moment the file holds either the edit before or this one, never a part. Of several
/// requests for one journal the newest wins.
class JournalWriter {
 public:
  /// Called on the writer's thread after each write or removal, with the fault or nothing.
  using Tell = std::function<void(const std::optional<Diagnostic>& fault)>;

  explicit JournalWriter(Tell tell = {});
  ~JournalWriter();  ///< does what is waiting, then ends
  JournalWriter(const JournalWriter&) = delete;
  JournalWriter& operator=(const JournalWriter&) = delete;

  void keep(const std::filesystem::path& journal, KeptEdit edit);
  void remove(const std::filesystem::path& journal);  ///< no fault where there is none
  /// Returns when everything that was asked for is done. True: no write since the last wait failed.
  bool wait();

 private:
  void run();
  static std::optional<Diagnostic> carry_out(const std::filesystem::path& journal,
                                             const std::optional<KeptEdit>& edit);

  Tell tell_;
  std::mutex lock_;
  std::condition_variable wanted_, done_;
  std::map<std::filesystem::path, std::optional<KeptEdit>> waiting_;  ///< nothing: remove it
  bool working_ = false, ending_ = false, failed_ = false;
  std::thread thread_;
};

}  // namespace gazewright
