#include <gtest/gtest.h>

#include <QScrollArea>
#include <filesystem>

#include "app/window/parts.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

/// No card asks for more width than a small window gives it, else its fields are cut at the right.
TEST(CardWidth, FitsEveryPartOfEverySampleInASmallWindow) {
  OwlWindow owl;
  owl.window.resize(1366, 768);
  int cards = 0;
  const std::filesystem::path samples =
      std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs";
  for (const auto& entry : std::filesystem::directory_iterator(samples)) {
    ASSERT_TRUE(owl.window.openFile(QString::fromStdString(entry.path().string())));
    for (const PartEntry& part_of_rig : all_parts(owl.rig())) {
      if (part_of_rig.part.empty()) continue;
      owl.window.select(QString::fromStdString(part_of_rig.part));
      const auto* scroll = owl.window.card().findChild<QScrollArea*>();
      ASSERT_NE(scroll, nullptr);
      EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width())
          << part_of_rig.part << " of " << entry.path().filename();
      ++cards;
    }
  }
  EXPECT_GE(cards, 3 * 20);
}

}  // namespace
}  // namespace gazewright::tests
