#include <gtest/gtest.h>

#include <random>

#include "app/window/places.h"
#include "tests/app/random_edit.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// Edits of any field, in the real window, beside the history as it should be.
class RandomEdits {
 public:
  RandomEdits(OwlWindow& owl, unsigned seed) : owl_(owl), random_(seed), rigs_{owl.rig()}, at_(0) {}

  /// An edit, a drag of several, or some undo and redo. Returns how many edits that were.
  int step() {
    switch (below(6)) {
      case 0:
        walk(-1);
        return 0;
      case 1:
        walk(1);
        return 0;
      case 2:
        return drag();
      default:
        take(edited(owl_.rig()), -1);
        return 1;
    }
  }
  void undoAll() {
    while (history().canUndo()) history().undo();
  }
  void redoAll() {
    while (history().canRedo()) history().redo();
  }
  QUndoStack& history() { return owl_.window.document().history(); }
  const Rig& expected() const { return rigs_[at_]; }
  const Rig& start() const { return rigs_.front(); }
  const Rig& end() const { return rigs_.back(); }
  std::size_t steps() const { return rigs_.size() - 1; }

 private:
  std::size_t below(std::size_t count) { return random_() % count; }

  void take(const Rig& after, int dragId) {
    if (after == expected()) return;
    owl_.window.document().edit("edit", after, dragId);
    rigs_.resize(at_ + 1);
    rigs_.push_back(after);
    ++at_;
  }
  /// Several frames with one id are one step; one that ends where it began is none.
  int drag() {
    const int id = Document::newDragId();
    const int frames = 2 + static_cast<int>(below(12));
    const std::size_t before = at_;
    for (int i = 0; i < frames; ++i) {
      const Rig after = i + 1 < frames || below(4) != 0 ? edited(owl_.rig()) : rigs_[before];
      if (after == owl_.rig()) continue;
      owl_.window.document().edit("drag", after, id);
      rigs_.resize(before + 1);
      if (!(after == rigs_[before])) rigs_.push_back(after);
      at_ = rigs_.size() - 1;
    }
    return frames;
  }
  void walk(int by) {
    for (std::size_t i = 0; i < 1 + below(5); ++i) {
      if (by < 0 && at_ > 0) --at_, history().undo();
      if (by > 0 && at_ + 1 < rigs_.size()) ++at_, history().redo();
    }
  }
  Rig edited(const Rig& rig) { return tests::with_random_edit(rig, random_); }

  OwlWindow& owl_;
  std::mt19937 random_;
  std::vector<Rig> rigs_;
  std::size_t at_;
};

class RandomEditsOfSample : public ::testing::TestWithParam<int> {};

TEST_P(RandomEditsOfSample, UndoneRedoneAndDraggedAreAlwaysTheRigOfThatStep) {
  const QStringList samples = sample_files();
  ASSERT_EQ(samples.size(), 3);
  OwlWindow owl;
  ASSERT_TRUE(owl.window.openSample(samples[GetParam()]));
  RandomEdits edits(owl, 20261126u + static_cast<unsigned>(GetParam()));
  int done = 0;
  while (done < 667) {
    done += edits.step();
    ASSERT_EQ(owl.rig(), edits.expected()) << "after " << done << " edits";
    if (done % 50 == 0) QCoreApplication::processEvents();
  }
  ASSERT_GT(edits.steps(), 20u);
  edits.redoAll();
  EXPECT_EQ(owl.rig(), edits.end());
  edits.undoAll();
  EXPECT_EQ(owl.rig(), edits.start());
  EXPECT_FALSE(owl.window.isWindowModified());
  edits.redoAll();
  EXPECT_EQ(owl.rig(), edits.end());
}

INSTANTIATE_TEST_SUITE_P(Samples, RandomEditsOfSample, ::testing::Range(0, 3));

}  // namespace
}  // namespace gazewright
