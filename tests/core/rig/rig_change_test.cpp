#include "core/rig/rig_change.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

/// The change leads there and back, and says whether it needed whole rigs for it.
bool needs_whole_rigs(const Rig& before, const Rig& after) {
  const RigChange change(before, after);
  EXPECT_EQ(change.redone(before), after);
  EXPECT_EQ(change.undone(after), before);
  return change.keeps_whole_rigs();
}

TEST(RigChange, OfFieldsKeepsOnlyThem) {
  const Rig owl = tests::rig_of(tests::kOwl);
  Rig other = owl;
  other.pan.gearbox.ratio = si_quantity(21, Source::measured);
  other.pan.gearbox.name = "three-stage";
  other.pan.encoder.at.value = "output";
  other.tilt.motor.mass_kg = {};
  other.on_tilt[0].mass_kg = si_quantity(0.3);
  EXPECT_FALSE(needs_whole_rigs(owl, other));
  EXPECT_FALSE(needs_whole_rigs(owl, owl));
}

TEST(RigChange, OfMoreThanFieldsKeepsBothRigs) {
  const Rig owl = tests::rig_of(tests::kOwl);
  Rig more = owl;
  more.on_tilt.push_back(owl.on_tilt[0]);
  EXPECT_TRUE(needs_whole_rigs(owl, more));
  Rig renamed = owl;
  renamed.on_tilt[0].name = "another";
  renamed.unknown_keys.clear();
  renamed.variants.push_back({.name = "first", .note = {}, .rig = std::make_shared<Rig>(owl)});
  EXPECT_TRUE(needs_whole_rigs(owl, renamed));
  Rig bare = owl;
  bare.pan.cable.presence = Presence::missing;
  EXPECT_TRUE(needs_whole_rigs(owl, bare));
}

TEST(RigChange, OfRandomFieldsLeadsThereAndBack) {
  std::mt19937 random(20261127);
  Rig before = tests::rig_of(tests::kOwl);
  for (int i = 0; i < 200; ++i) {
    Rig after = before;
    const std::vector<FieldRef> fields = all_fields(after);
    for (std::size_t k = 0; k <= random() % 4; ++k) {
      const FieldRef& field = fields[random() % fields.size()];
      if (const auto* ref = std::get_if<QuantityRef>(&field))
        *ref->quantity =
            random() % 3 == 0 ? Quantity{} : si_quantity(static_cast<double>(random()));
      else if (const auto* text = std::get_if<TextRef>(&field))
        *text->text += 'x';
    }
    EXPECT_FALSE(needs_whole_rigs(before, after));
    before = after;
  }
}

}  // namespace
}  // namespace gazewright
