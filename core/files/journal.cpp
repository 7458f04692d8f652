#include "core/files/journal.h"

#include <utility>

namespace gazewright {
namespace {

constexpr std::string_view kHead = "# gazewright journal 1: edits that were not saved\n";
constexpr std::string_view kFileKey = "# of the file: ";

}  // namespace

std::string journal_text(const Journal& journal) {
  std::string text(kHead);
  text += kFileKey;
  for (const char letter : journal.file) {  // a file name may hold line ends
    if (letter == '\n')
      text += "%0A";
    else if (letter == '%')
      text += "%25";
    else
      text += letter;
  }
  return text + '\n' + journal.text;
}

std::optional<Journal> read_journal(std::string_view text) {
  if (!text.starts_with(kHead)) return std::nullopt;
  text.remove_prefix(kHead.size());
  if (!text.starts_with(kFileKey)) return std::nullopt;
  text.remove_prefix(kFileKey.size());
  const std::size_t end = text.find('\n');
  if (end == std::string_view::npos) return std::nullopt;
  Journal journal;
  for (std::size_t i = 0; i < end; ++i) {
    const std::string_view coded = text.substr(i, 3);
    if (coded == "%0A")
      journal.file += '\n';
    else if (coded == "%25")
      journal.file += '%';
    else
      journal.file += text[i];
    if (coded == "%0A" || coded == "%25") i += 2;
  }
  journal.text = text.substr(end + 1);
  return journal;
}

JournalWriter::JournalWriter(Tell tell) : tell_(std::move(tell)), thread_([this] { run(); }) {}

JournalWriter::~JournalWriter() {
  {
    const std::lock_guard guard(lock_);
    ending_ = true;
  }
  wanted_.notify_one();
  thread_.join();
}

void JournalWriter::keep(const std::filesystem::path& journal, KeptEdit edit) {
  {
    const std::lock_guard guard(lock_);
    waiting_.insert_or_assign(journal, std::move(edit));
  }
  wanted_.notify_one();
}

void JournalWriter::remove(const std::filesystem::path& journal) {
  {
    const std::lock_guard guard(lock_);
    waiting_.insert_or_assign(journal, std::nullopt);
  }
  wanted_.notify_one();
}

bool JournalWriter::wait() {
  std::unique_lock guard(lock_);
  done_.wait(guard, [this] { return waiting_.empty() && !working_; });
  return !std::exchange(failed_, false);
}

void JournalWriter::run() {
  std::unique_lock guard(lock_);
  while (true) {
    wanted_.wait(guard, [this] { return !waiting_.empty() || ending_; });
    if (waiting_.empty()) return;
    const auto next = waiting_.extract(waiting_.begin());
    working_ = true;
    guard.unlock();
    const auto fault = carry_out(next.key(), next.mapped());
    if (tell_) tell_(fault);
    guard.lock();
    working_ = false;
    failed_ = failed_ || fault;
    done_.notify_all();
  }
}

std::optional<Diagnostic> JournalWriter::carry_out(const std::filesystem::path& journal,
                                                   const std::optional<KeptEdit>& edit) {
  std::error_code fault;
  if (!edit) {
    std::filesystem::remove(journal, fault);
    return std::nullopt;
  }
  return save_text(journal, journal_text({edit->file, write_rig(edit->rig, edit->original_text)}));
}

}  // namespace gazewright
