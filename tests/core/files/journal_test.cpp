#include "core/files/journal.h"

#include <gtest/gtest.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "tests/core/files/whole_rig.h"
#include "tests/support/folder.h"

namespace gazewright {
namespace {

namespace fs = std::filesystem;

class JournalFiles : public ::testing::Test {
 protected:
  static std::string content(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
  }
  /// The rig in the journal, with a word where there is none.
  std::optional<Rig> kept_rig() const {
    const auto journal = read_journal(content(file_));
    return journal ? parse_rig(journal->text, "journal").rig : std::nullopt;
  }

  const tests::Folder own_;
  const fs::path& folder_ = own_.root();
  const fs::path file_ = folder_ / "owl.journal";
};

Rig whole_rig() { return *parse_rig(kWholeRig, "whole.rig.yaml").rig; }

Rig numbered(Rig rig, int number) {
  rig.title = "edit " + std::to_string(number);
  return rig;
}

TEST(JournalText, IsReadAsItWasWritten) {
  for (const char* file : {"", "/home/maker/owl.rig.yaml", "/tmp/50% off\nowl%0A%.rig.yaml"}) {
    for (const char* text : {"", "rig: 1\n", "\n\nrig: 1", "\xEF\xBB\xBFrig: 1\n"}) {
      const Journal journal{file, text};
      EXPECT_EQ(read_journal(journal_text(journal)), journal) << file << " " << text;
    }
  }
}

TEST(JournalText, WithoutItsHeadItIsNoJournal) {
  const std::string whole = journal_text({"owl.rig.yaml", "rig: 1\n"});
  const std::size_t head = whole.find("owl.rig.yaml") + std::string("owl.rig.yaml\n").size();
  for (std::size_t cut = 0; cut < head; ++cut) {
    EXPECT_FALSE(read_journal(whole.substr(0, cut))) << cut;
  }
  EXPECT_TRUE(read_journal(whole));
  EXPECT_FALSE(read_journal("rig: 1\n"));
}

TEST(JournalText, IsARigFileThatCanBeRescuedByHand) {
  const Rig rig = whole_rig();
  const auto read = parse_rig(journal_text({"/home/owl.rig.yaml", write_rig(rig)}), "rescued");
  ASSERT_TRUE(read.rig);
  EXPECT_EQ(*read.rig, rig);
}

TEST_F(JournalFiles, KeepsTheNewestEditWithTheCommentsOfItsFile) {
  JournalWriter writer;
  const std::string original = "# the lobby owl\nrig: 1\ntitle: owl\n";
  const Rig rig = *parse_rig(original, "owl").rig;
  for (int i = 0; i < 100; ++i) writer.keep(file_, {"/a/owl.rig.yaml", numbered(rig, i), original});
  EXPECT_TRUE(writer.wait());
  const auto journal = read_journal(content(file_));
  ASSERT_TRUE(journal);
  EXPECT_EQ(journal->file, "/a/owl.rig.yaml");
  EXPECT_EQ(journal->text, "# the lobby owl\nrig: 1\ntitle: edit 99\n");
}

TEST_F(JournalFiles, RemovesAJournalAndDoesWhatWaitsBeforeItEnds) {
  {
    JournalWriter writer;
    writer.keep(file_, {{}, numbered({}, 1), {}});
    EXPECT_TRUE(writer.wait());
    EXPECT_TRUE(fs::exists(file_));
    writer.keep(folder_ / "other.journal", {{}, numbered({}, 2), {}});
    writer.remove(file_);
    writer.remove(folder_ / "never.journal");
  }
  EXPECT_FALSE(fs::exists(file_));
  EXPECT_TRUE(fs::exists(folder_ / "other.journal"));
}

TEST_F(JournalFiles, TellsThatAnEditCouldNotBeKept) {
  std::string said;
  {
    JournalWriter writer([&](const std::optional<Diagnostic>& fault) {
      if (fault) said = fault->problem;
    });
    writer.keep(folder_ / "gone" / "owl.journal", {});
    EXPECT_FALSE(writer.wait());
    writer.keep(file_, {});
    EXPECT_TRUE(writer.wait());
    writer.keep("/dev/full", {});
    EXPECT_FALSE(writer.wait());
  }
  EXPECT_EQ(said, "the disk is full");
}

/// Writes numbered edits and says each number once it is kept; runs until it is killed.
[[noreturn]] void keep_until_killed(const fs::path& file, const Rig& rig, int pipe, int number) {
  JournalWriter writer;
  while (true) {
    writer.keep(file, {"/a/owl.rig.yaml", numbered(rig, ++number), {}});
    if (writer.wait() && ::write(pipe, &number, sizeof number) != sizeof number) std::abort();
  }
}

/// The last number that came through the pipe.
int last_said(int pipe, int before) {
  int number = before;
  while (::read(pipe, &number, sizeof number) == sizeof number) {
  }
  return number;
}

TEST_F(JournalFiles, TwoHundredKillsAtRandomMomentsLoseNoKeptEdit) {
  const Rig rig = whole_rig();
  std::mt19937 random(20261126);
  std::uniform_int_distribution<int> wait_us(0, 6000);
  int said = 0, killed_within_a_write = 0;
  for (int round = 0; round < 200; ++round) {
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) keep_until_killed(file_, rig, ends[1], said);
    ::close(ends[1]);
    pollfd first{ends[0], POLLIN, 0};
    ASSERT_EQ(::poll(&first, 1, 60'000), 1);  // it is at work
    ::usleep(static_cast<useconds_t>(wait_us(random)));
    ASSERT_EQ(::kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
    const int before = said;
    said = last_said(ends[0], before);
    ::close(ends[0]);
    ASSERT_GT(said, before);
    const auto kept = kept_rig();
    ASSERT_TRUE(kept) << "round " << round << " left no whole journal";
    const int number = std::stoi(kept->title.substr(5));
    // The one that was just being written may be there already.
    ASSERT_TRUE(number == said || number == said + 1) << number << " after " << said;
    EXPECT_EQ(*kept, numbered(rig, number));
    said = number;
    for (const auto& entry : fs::directory_iterator(folder_)) {
      if (entry.path() != file_) ++killed_within_a_write, fs::remove(entry.path());
    }
  }
  // Else the kills were not at random moments, and the test saw nothing.
  EXPECT_GT(killed_within_a_write, 10);
}

}  // namespace
}  // namespace gazewright
