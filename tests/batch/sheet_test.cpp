#include <gtest/gtest.h>

#include <filesystem>

#include "tests/batch/program.h"

/// The verb `sheet`: the design sheet as PDF, where this build has one.
namespace gazewright::test {
namespace {

#ifdef GAZEWRIGHT_HAS_SHEET

TEST(BatchSheet, WritesAPdfWithoutADisplay) {
  const Folder folder;
  const Ran ran = run_batch({"sheet", sample("quick-newt"), "--out", folder.path("newt.pdf")});
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  const std::string pdf = bytes_of(folder.path("newt.pdf"));
  EXPECT_TRUE(pdf.starts_with("%PDF-"));
  EXPECT_NE(pdf.find("%%EOF"), std::string::npos);
}

TEST(BatchSheet, TheTwoPapersDiffer) {
  const Folder folder;
  const auto media_box = [&](const std::string& paper) {
    const std::string file = folder.path(paper + ".pdf");
    EXPECT_EQ(run_batch({"sheet", sample("quick-newt"), "--out", file, "--paper", paper}).status,
              0);
    const std::string pdf = bytes_of(file);
    const std::size_t at = pdf.find("/MediaBox");
    return at == std::string::npos ? std::string() : pdf.substr(at, pdf.find(']', at) - at);
  };
  // ISO 216 A4 is 210 mm × 297 mm, 595 × 842 points; ANSI Letter 8.5 in × 11 in, 612 × 792.
  EXPECT_NE(media_box("a4").find("595"), std::string::npos);
  EXPECT_NE(media_box("letter").find("612"), std::string::npos);
}

TEST(BatchSheet, AMissingFolderIsASentence) {
  const Folder folder;
  const Ran ran = run_batch({"sheet", sample("quick-newt"), "--out", folder.path("no/newt.pdf")});
  EXPECT_EQ(ran.status, 4);
  EXPECT_NE(ran.err.find("no/newt.pdf"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("\n  fix: "), std::string::npos) << ran.err;
}

TEST(BatchSheet, ATargetThatCannotBeReplacedStaysAsItWas) {
  const Ran ran = run_batch({"sheet", sample("quick-newt"), "--out", "/dev/full/x.pdf"});
  EXPECT_EQ(ran.status, 4);
  const Folder folder;
  const std::string folder_named_pdf = folder.path("taken.pdf");
  std::filesystem::create_directory(folder_named_pdf);
  EXPECT_EQ(run_batch({"sheet", sample("quick-newt"), "--out", folder_named_pdf}).status, 4);
  EXPECT_TRUE(std::filesystem::is_directory(folder_named_pdf));
}

#else

TEST(BatchSheet, WithoutQtSaysSo) {
  const Folder folder;
  const Ran ran = run_batch({"sheet", sample("quick-newt"), "--out", folder.path("newt.pdf")});
  EXPECT_EQ(ran.status, 2);
  EXPECT_EQ(ran.err,
            "gazewright-batch: this build has no design sheet: Qt was not found when it was built\n"
            "  fix: build with the Qt 6 packages, or use figures, trace, sweep, travel, track, "
            "compare and doubts\n");
  EXPECT_FALSE(std::filesystem::exists(folder.path("newt.pdf")));
}

#endif

}  // namespace
}  // namespace gazewright::test
