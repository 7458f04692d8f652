#include <gtest/gtest.h>

#include <filesystem>
#include <regex>

#include "tests/batch/program.h"

/// What goes wrong outside the program: files, devices, pipes.
namespace gazewright::test {
namespace {

/// Status 3, nothing printed, and every line of standard error is a place or a mend.
void expect_bad_rig(const Ran& ran, const std::string& name, const std::string& hint) {
  EXPECT_EQ(ran.status, 3) << name;
  EXPECT_EQ(ran.out, "") << name;
  EXPECT_NE(ran.err.find(name), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find(hint), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("\n  fix: "), std::string::npos) << ran.err;
  EXPECT_TRUE(ran.err.ends_with('\n'));
}

TEST(BatchFaults, AFileThatIsNotThere) {
  const Folder folder;
  expect_bad_rig(run_batch({"figures", folder.path("gone.rig.yaml")}), "gone.rig.yaml", "error");
  expect_bad_rig(run_batch({"figures", folder.path("no/such/gone.rig.yaml")}), "gone.rig.yaml",
                 "error");
}

TEST(BatchFaults, AFolderIsNotARig) {
  const Folder folder;
  expect_bad_rig(run_batch({"figures", folder.path("")}), folder.path(""), "error");
}

TEST(BatchFaults, BytesThatAreNoText) {
  const Folder folder;
  const std::string file =
      folder.write("noise.rig.yaml", std::string("\x7f\0\x01\xff\xfe\0rig: 1", 12));
  expect_bad_rig(run_batch({"figures", file}), "noise.rig.yaml", "error");
  expect_bad_rig(run_batch({"figures", "-"}, std::string("\xff\xfe\0\0", 4)), "standard input",
                 "error");
}

TEST(BatchFaults, AnEmptyFileOrInput) {
  const Folder folder;
  expect_bad_rig(run_batch({"figures", folder.write("empty.rig.yaml", "")}), "empty.rig.yaml",
                 "error");
  expect_bad_rig(run_batch({"figures", "-"}, ""), "standard input", "error");
}

TEST(BatchFaults, AFileWithoutEndIsNotReadForEver) {
  expect_bad_rig(run_batch({"figures", "/dev/zero"}), "/dev/zero", "error");
}

TEST(BatchFaults, EveryProblemHasItsPlaceAndAllComeAtOnce) {
  std::string text = sample_with("quick-newt", "voltage: 24 V", "voltage: 24");
  const std::string from = "mass: 34 g", to = "mass: -34 g";
  text.replace(text.find(from), from.size(), to);
  const Ran ran = run_batch({"figures", "-"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  const std::regex place("standard input:[0-9]+:[0-9]+: error: ");
  const auto begin = std::sregex_iterator(ran.err.begin(), ran.err.end(), place);
  EXPECT_EQ(std::distance(begin, std::sregex_iterator()), 2) << ran.err;
}

TEST(BatchFaults, AnUnknownKeyIsAWarningAndTheRigStillCounts) {
  const std::string text =
      sample_with("quick-newt", "surroundings: {", "surroundings: {humidity: 40 %, ");
  const Ran ran = run_batch({"figures", "--json", "-"}, text);
  EXPECT_EQ(ran.status, 0);
  EXPECT_EQ(ran.out, run_batch({"figures", "--json", sample("quick-newt")}).out);
  EXPECT_NE(ran.err.find("warning"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("humidity"), std::string::npos) << ran.err;
}

TEST(BatchFaults, AFullDeviceIsASentence) {
  ASSERT_TRUE(std::filesystem::exists("/dev/full"));
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"figures", "--json", sample("quick-newt")},
        {"trace", sample("quick-newt"), "--axis", "pan"},
        {"sweep", sample("quick-newt"), "--axis", "pan", "--ratio", "4:6:1"},
        {"--help"}}) {
    const Ran ran = run_batch_into("/dev/full", arguments);
    EXPECT_EQ(ran.status, 4);
    EXPECT_EQ(ran.err,
              "gazewright-batch: the output could not be written: No space left on device\n"
              "  fix: make room or write somewhere else\n");
  }
}

TEST(BatchFaults, AReaderThatWentAwayIsASentence) {
  const Ran ran = run_batch_unread({"figures", "--json", sample("quick-newt")});
  EXPECT_EQ(ran.status, 4);
  EXPECT_EQ(ran.err,
            "gazewright-batch: the reader of the output went away before everything was written\n"
            "  fix: let it read to the end, or write to a file\n");
}

}  // namespace
}  // namespace gazewright::test
