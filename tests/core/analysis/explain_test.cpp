#include "core/analysis/explain.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>

#include "core/analysis/checks.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

using tests::owl;

const InputUse* input(const std::vector<InputUse>& inputs, std::string_view path) {
  const auto at = std::ranges::find(inputs, path, &InputUse::path);
  return at == inputs.end() ? nullptr : &*at;
}

TEST(Explain, EveryFigureHasAPageOfTheHandbookAndItsConditions) {
  for (const FigureInfo& info : figure_table()) {
    const std::string page(page_of(info));
    EXPECT_TRUE(std::filesystem::exists(std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) /
                                        "resources/handbook" / (page + ".md")))
        << info.id << " -> " << page;
    EXPECT_FALSE(conditions_of(page).empty()) << info.id << " -> " << page;
    EXPECT_FALSE(info.formula.empty()) << info.id;
    EXPECT_FALSE(info.source.empty()) << info.id;
  }
}

TEST(Explain, InputsAreNamedOnceWithValueAndOrigin) {
  const Rig rig = owl();
  const auto why = explain(rig, analyse(rig, {.remedies = false}), "pan.step.settle_time");
  ASSERT_TRUE(why);
  ASSERT_TRUE(why->value);
  std::set<std::string> paths;
  for (const InputUse& use : why->inputs) {
    EXPECT_TRUE(paths.insert(use.path).second) << use.path << " twice";
    EXPECT_EQ(use.path.find('<'), std::string::npos) << use.path << " is not opened up";
    EXPECT_FALSE(use.is_missing) << use.path;
  }
  const InputUse* ratio = input(why->inputs, "pan.gearbox.ratio");
  ASSERT_NE(ratio, nullptr);
  EXPECT_DOUBLE_EQ(ratio->quantity.value(), 18);
  EXPECT_EQ(ratio->label, "Ratio");
  EXPECT_EQ(ratio->quantity.source, Source::unstated);
  const InputUse* camera = input(why->inputs, "on_tilt[1]");
  ASSERT_NE(camera, nullptr);
  EXPECT_EQ(camera->label, "camera");
  EXPECT_DOUBLE_EQ(camera->quantity.value(), 0.048);
  EXPECT_EQ(why->page, "motion");
}

TEST(Explain, AnEntryLeftEmptyIsToldAsItsUsualValue) {
  Rig rig = owl();
  rig.pan.drive.modulation_limit = {};
  const auto why = explain(rig, analyse(rig, {.remedies = false}), "pan.output.torque_stall");
  ASSERT_TRUE(why);
  const InputUse* limit = input(why->inputs, "pan.drive.modulation_limit");
  ASSERT_NE(limit, nullptr);
  EXPECT_EQ(limit->quantity.source, Source::by_default);
  EXPECT_DOUBLE_EQ(limit->quantity.value(), *limit->info->fallback);
}

/// Their runs take these fields where they are there and say themselves what they lack, so that the
/// tables do not name them.
bool is_told_otherwise(std::string_view id) {
  return id == "tracking.blur_px" || id.ends_with(".heat.cyclic_duration_factor") ||
         id.ends_with(".heat.intermittent_current");
}

/// The other way round: what a field changes stands on it by the tables too.
TEST(Explain, FiguresThatAFieldChangesStandOnIt) {
  const Rig whole = owl();
  const Analysis before = analyse(whole, {.remedies = false});
  for (const char* path : {"pan.gearbox.ratio", "pan.gearbox.backlash", "tilt.motor.rotor_inertia",
                           "tilt.friction.coulomb", "camera.horizontal_view"}) {
    Rig rig = whole;
    *find_quantity(rig, path) = si_quantity(find_quantity(whole, path)->value() * 1.07);
    const Analysis after = analyse(rig, {.remedies = false});
    std::set<std::string> named;
    for (const Figure* figure : figures_on(rig, after, path)) named.insert(figure->id);
    EXPECT_FALSE(named.empty()) << path;
    for (std::size_t i = 0; i < after.figures.size(); ++i) {
      const Figure& a = before.figures[i];
      const Figure& b = after.figures[i];
      if (!a.value || !b.value || std::abs(*a.value - *b.value) <= 1e-6 * std::abs(*a.value))
        continue;
      if (is_told_otherwise(b.id)) continue;
      EXPECT_TRUE(named.contains(b.id)) << path << " changes " << b.id;
    }
  }
}

TEST(Explain, EveryFindingOfAnAxisHasItsInputs) {
  const Rig rig = owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  int with_inputs = 0;
  for (const Finding& finding : analysis.findings) {
    const auto inputs = inputs_of_finding(rig, finding);
    with_inputs += inputs.empty() ? 0 : 1;
    if (finding.id == "pan.move.time") {
      EXPECT_NE(input(inputs, "task.within"), nullptr);
    }
  }
  EXPECT_GT(with_inputs, static_cast<int>(analysis.findings.size()) * 3 / 4);
}

TEST(Explain, IdsOfAnAxisAndOfTheRigAreToldApart) {
  EXPECT_EQ(id_pattern("tilt.move.time"), "<axis>.move.time");
  EXPECT_EQ(id_pattern("supply.peak_power"), "supply.peak_power");
  EXPECT_EQ(axis_of_id("pan.x"), Axis::pan);
  EXPECT_FALSE(axis_of_id("panorama.x"));
}

}  // namespace
}  // namespace gazewright
