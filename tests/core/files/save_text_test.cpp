#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/files/rig_file.h"
#include "tests/support/folder.h"

namespace gazewright {
namespace {

namespace fs = std::filesystem;

/// A folder of its own for each test, gone afterwards.
class SaveText : public ::testing::Test {
 protected:
  static std::string content(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
  }
  std::size_t files_in_folder() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }
  static std::string said(const std::optional<Diagnostic>& fault) {
    return fault ? to_text(*fault) : "saved";
  }

  const tests::Folder own_;
  const fs::path& folder_ = own_.root();
};

TEST_F(SaveText, WritesEveryByteAndLeavesNothingElseBehind) {
  const fs::path file = folder_ / "owl.rig.yaml";
  const std::string bytes = std::string("a\0b\n\xff", 5) + std::string(300'000, 'x');
  EXPECT_EQ(said(save_text(file, bytes)), "saved");
  EXPECT_EQ(content(file), bytes);
  EXPECT_EQ(said(save_text(file, "short")), "saved");
  EXPECT_EQ(content(file), "short");
  EXPECT_EQ(files_in_folder(), 1u);
}

TEST_F(SaveText, KeepsThePermissionsOfAnExistingFile) {
  const fs::path file = folder_ / "owl.rig.yaml";
  ASSERT_EQ(said(save_text(file, "one")), "saved");
  fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_write);
  EXPECT_EQ(said(save_text(file, "two")), "saved");
  EXPECT_EQ(fs::status(file).permissions(),
            fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_write);
}

TEST_F(SaveText, GivesANewFileThePermissionsThatProgramsGive) {
  const mode_t old_mask = ::umask(027);
  const auto fault = save_text(folder_ / "owl.rig.yaml", "one");
  ::umask(old_mask);
  EXPECT_EQ(said(fault), "saved");
  EXPECT_EQ(static_cast<int>(fs::status(folder_ / "owl.rig.yaml").permissions()), 0640);
}

TEST_F(SaveText, FollowsALinkAndKeepsIt) {
  fs::create_directory(folder_ / "real");
  ASSERT_EQ(said(save_text(folder_ / "real" / "owl.rig.yaml", "one")), "saved");
  fs::create_symlink("real/owl.rig.yaml", folder_ / "link.rig.yaml");
  EXPECT_EQ(said(save_text(folder_ / "link.rig.yaml", "two")), "saved");
  EXPECT_TRUE(fs::is_symlink(folder_ / "link.rig.yaml"));
  EXPECT_EQ(content(folder_ / "real" / "owl.rig.yaml"), "two");
}

TEST_F(SaveText, SaysThatAFolderIsMissing) {
  const std::string file = (folder_ / "gone" / "owl.rig.yaml").string();
  EXPECT_EQ(
      said(save_text(file, "one")),
      file + ": error: the folder does not exist\n  fix: make the folder first, or choose another");
}

TEST_F(SaveText, SaysThatAPathLeadsThroughAFile) {
  ASSERT_EQ(said(save_text(folder_ / "file", "one")), "saved");
  const std::string file = (folder_ / "file" / "owl.rig.yaml").string();
  EXPECT_EQ(
      said(save_text(file, "one")),
      file + ": error: a part of its path is a file, not a folder\n  fix: choose another folder");
}

TEST_F(SaveText, SaysThatTheNameIsAFolder) {
  EXPECT_EQ(
      said(save_text(folder_, "one")),
      folder_.string() + ": error: this is a folder, not a file\n  fix: choose a file name in it");
}

TEST_F(SaveText, SaysThatTheDiskIsFull) {
  // Every write to this device fails with "no space left" (man 4 full).
  EXPECT_EQ(said(save_text("/dev/full", "one")),
            "/dev/full: error: the disk is full\n  fix: make room, or choose another disk");
}

TEST_F(SaveText, LeavesTheOldFileAsItWasWhenTheNewOneDoesNotFit) {
  const fs::path file = folder_ / "owl.rig.yaml";
  ASSERT_EQ(said(save_text(file, "the old one")), "saved");
  rlimit old_limit{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &old_limit), 0);
  rlimit small = old_limit;
  small.rlim_cur = 1000;
  const auto old_handler = std::signal(SIGXFSZ, SIG_IGN);
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  const auto fault = save_text(file, std::string(5000, 'x'));
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &old_limit), 0);
  std::signal(SIGXFSZ, old_handler);
  EXPECT_EQ(said(fault), file.string() +
                             ": error: the file would be larger than is allowed here\n"
                             "  fix: choose another disk");
  EXPECT_EQ(content(file), "the old one");
  EXPECT_EQ(files_in_folder(), 1u);
}

TEST_F(SaveText, LoadRigReadsBackWhatWasSavedAndSaysWhyItCannot) {
  const fs::path file = folder_ / "owl.rig.yaml";
  ASSERT_EQ(said(save_text(file, "rig: 1\ntitle: Owl\n")), "saved");
  const LoadedRig loaded = load_rig(file);
  ASSERT_TRUE(loaded.rig.has_value());
  EXPECT_EQ(loaded.rig->title, "Owl");
  EXPECT_EQ(loaded.text, "rig: 1\ntitle: Owl\n");

  const auto why = [](const fs::path& path) {
    const LoadedRig refused = load_rig(path);
    EXPECT_FALSE(refused.rig.has_value());
    return refused.diagnostics.size() == 1 ? to_text(refused.diagnostics[0]) : "not one problem";
  };
  EXPECT_EQ(
      why("/no/such.rig.yaml"),
      "/no/such.rig.yaml: error: there is no such file\n  fix: check the name and the folder");
  EXPECT_EQ(
      why(folder_),
      folder_.string() + ": error: this is a folder, not a file\n  fix: choose a rig file in it");
  EXPECT_EQ(why(file / "x"), (file / "x").string() +
                                 ": error: a part of its path is a file, not a folder\n  fix: "
                                 "check the name and the folder");
  EXPECT_EQ(why("/dev/zero"),
            "/dev/zero:1:1: error: the file is larger than 1 MiB\n"
            "  fix: a rig takes a few kilobytes; choose another file");
}

}  // namespace
}  // namespace gazewright
