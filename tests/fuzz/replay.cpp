// Feeds every file of a fuzz target's corpus to it, so that a fault once found stays mended.
#include <gtest/gtest.h>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

TEST(Corpus, IsThereAndNoFileInItBringsTheReaderDown) {
  int replayed = 0;
  for (const auto& entry : std::filesystem::directory_iterator(GAZEWRIGHT_CORPUS)) {
    SCOPED_TRACE(entry.path().string());
    std::ifstream file(entry.path(), std::ios::binary);
    ASSERT_TRUE(file) << "cannot read " << entry.path();
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    const auto* data = reinterpret_cast<const std::uint8_t*>(bytes.data());
    EXPECT_EQ(LLVMFuzzerTestOneInput(data, bytes.size()), 0);
    ++replayed;
  }
  EXPECT_GT(replayed, 0) << "the corpus " << GAZEWRIGHT_CORPUS << " is empty";
}
