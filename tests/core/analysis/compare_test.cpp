// The present design beside its variants: what differs, by how much, and which is best.
#include "core/analysis/compare.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

std::shared_ptr<const Rig> changed(Rig rig, const char* path, double value_si) {
  rig.title.clear();
  rig.notes.clear();
  rig.variants.clear();
  *find_quantity(rig, path) = si_quantity(value_si);
  return std::make_shared<const Rig>(rig);
}

const CompareRow* row(const std::vector<CompareRow>& rows, const std::string& id) {
  const auto at = std::ranges::find(rows, id, &CompareRow::id);
  return at == rows.end() ? nullptr : &*at;
}

/// The owl with two variants: a low ratio on pan, and a heavy ball.
Rig owl_with_variants() {
  Rig rig = tests::owl();
  rig.variants.push_back({"low ratio", "", changed(rig, "pan.gearbox.ratio", 9)});
  rig.variants.push_back({"", "", changed(rig, "on_tilt[0].mass", 0.5)});
  return rig;
}

TEST(Compare, ListsTheInputsThatDifferAndNoOthers) {
  const Rig rig = owl_with_variants();
  const Comparison comparison = compare(rig, Analysis{}, {});
  EXPECT_EQ(comparison.names,
            (std::vector<std::string>{"present design", "low ratio", "variant 2"}));
  ASSERT_EQ(comparison.inputs.size(), 2u);
  const CompareRow& ratio = comparison.inputs[0];
  EXPECT_EQ(ratio.id, "pan.gearbox.ratio");
  EXPECT_EQ(ratio.label, "Pan gearbox: ratio");
  EXPECT_EQ(ratio.cells[0].value, rig.pan.gearbox.ratio.si);
  EXPECT_EQ(ratio.cells[1].value, 9);
  EXPECT_TRUE(ratio.cells[1].differs);
  EXPECT_FALSE(ratio.cells[0].differs);
  EXPECT_FALSE(ratio.cells[2].differs);
  const std::string body = rig.on_tilt[0].name;
  EXPECT_EQ(comparison.inputs[1].id, "on_tilt[" + body + "].mass");
}

TEST(Compare, PathsWhoseNumbersOnlyReadAlikeInARowDiffer) {
  const auto with_point = [](double time_s, double pan_rad) {
    Rig rig = tests::owl();
    rig.tracking.path = {{si_quantity(time_s), si_quantity(pan_rad), si_quantity(0.5)}};
    return rig;
  };
  Rig rig = with_point(1, 23);
  rig.variants.push_back({"a", "", std::make_shared<const Rig>(with_point(12, 3))});
  const auto inputs = compare(rig, Analysis{}, {}).inputs;
  const CompareRow* path = row(inputs, "tracking.path");
  ASSERT_NE(path, nullptr);
  EXPECT_TRUE(path->cells[1].differs);
}

TEST(Compare, ADefaultWrittenOutIsNoDifference) {
  Rig rig = tests::owl();
  rig.stand.sway_damping = {};
  const double fallback = *find_info("stand.sway_damping")->fallback;
  rig.variants.push_back({"a", "", changed(rig, "stand.sway_damping", fallback)});
  EXPECT_TRUE(compare(rig, Analysis{}, {}).inputs.empty());
  rig.variants[0].rig = changed(rig, "stand.sway_damping", 2 * fallback);
  const auto inputs = compare(rig, Analysis{}, {}).inputs;
  ASSERT_EQ(inputs.size(), 1u);
  EXPECT_EQ(inputs[0].cells[0].word, "default");
}

TEST(Compare, BodiesAreComparedByNameWhereverTheyStand) {
  Rig rig = tests::owl();
  Rig other = rig;
  Body slug = other.on_tilt.back();
  slug.name = "slug";
  other.on_tilt.insert(other.on_tilt.begin(), slug);
  rig.variants.push_back({"a", "", changed(other, "pan.gearbox.ratio", *rig.pan.gearbox.ratio.si)});
  const auto inputs = compare(rig, Analysis{}, {}).inputs;
  ASSERT_FALSE(inputs.empty());
  for (const CompareRow& each : inputs) {
    EXPECT_TRUE(each.id.starts_with("on_tilt[slug].")) << each.id;
    EXPECT_EQ(each.cells[0].word, "not there");
    EXPECT_TRUE(each.cells[1].differs);
  }
}

TEST(Compare, WordsAndPartsThatAreNotThereDiffer) {
  Rig rig = tests::owl();
  Rig other = rig;
  other.pan.encoder.at.value = "output";
  other.tilt.cable = {};
  other.tilt.cable.presence = Presence::none;
  rig.variants.push_back({"a", "", changed(other, "pan.gearbox.ratio", *rig.pan.gearbox.ratio.si)});
  const auto inputs = compare(rig, Analysis{}, {}).inputs;
  ASSERT_NE(row(inputs, "pan.encoder.at"), nullptr);
  EXPECT_TRUE(row(inputs, "pan.encoder.at")->is_words());
  EXPECT_EQ(row(inputs, "pan.encoder.at")->cells[1].word, "output");
  ASSERT_NE(row(inputs, "tilt.cable"), nullptr);
  EXPECT_EQ(row(inputs, "tilt.cable")->cells[1].word, "none");
}

TEST(Compare, FiguresAreThoseOfEachDesignAnalysedAlone) {
  const Rig rig = owl_with_variants();
  const Analysis present = analyse(rig), low = analyse(*rig.variants[0].rig);
  const Comparison comparison = compare_variants(rig, present);
  for (const HeadlineFigure& headline : headline_figures()) {
    std::string id(headline.id);
    if (id.starts_with('<')) id.replace(0, 6, "pan");
    const CompareRow* found = row(comparison.figures, id);
    if (present.figure(id)->is_aside && low.figure(id)->is_aside) {
      EXPECT_EQ(found, nullptr) << id << " is of interest for neither";
      continue;
    }
    ASSERT_NE(found, nullptr) << id;
    EXPECT_EQ(found->cells[0].value, present.value(id)) << id;
    EXPECT_EQ(found->cells[1].value, low.value(id)) << id;
  }
  const CompareRow& top = *row(comparison.figures, "pan.output.torque_stall");
  EXPECT_GT(*top.cells[0].value, *top.cells[1].value) << "half the ratio, half the torque";
  EXPECT_FALSE(top.cells[1].is_best);
  const CompareRow& inertia = *row(comparison.figures, "tilt.output.torque_stall");
  for (const CompareCell& cell : inertia.cells) EXPECT_FALSE(cell.is_best) << "all are the same";
}

TEST(Compare, AllFiguresContainTheMainOnes) {
  const Rig rig = owl_with_variants();
  const Analysis present = analyse(rig, {.remedies = false});
  const Comparison main = compare_variants(rig, present);
  const Comparison all = compare_variants(rig, present, {.all_figures = true});
  EXPECT_GT(all.figures.size(), 2 * main.figures.size());
  for (const CompareRow& each : main.figures) {
    const CompareRow* found = row(all.figures, each.id);
    ASSERT_NE(found, nullptr) << each.id;
    for (std::size_t i = 0; i < each.cells.size(); ++i)
      EXPECT_EQ(found->cells[i].is_best, each.cells[i].is_best) << each.id;
  }
}

TEST(Compare, CountsFindingsByVerdictAndShowsThoseThatChange) {
  const Rig rig = owl_with_variants();
  const Analysis present = analyse(rig);
  const Comparison comparison = compare_variants(rig, present);
  double counted = 0;
  for (const char* verdict : {"fails", "tight", "unknown", "holds"})
    counted += *row(comparison.findings, std::string("findings.") + verdict)->cells[0].value;
  const auto compared = std::ranges::count_if(
      present.findings, [](const Finding& finding) { return finding.id != "gearboxes.swap"; });
  EXPECT_EQ(counted, double(compared));
  const CompareRow& worst = *row(comparison.findings, "findings.worst_margin");
  double least = kInfinity;
  for (const Finding& finding : present.findings)
    if (finding.margin && finding.id != "gearboxes.swap") least = std::min(least, *finding.margin);
  EXPECT_EQ(worst.cells[0].value, least);
  EXPECT_FALSE(worst.cells[0].word.empty());
  for (std::size_t i = 5; i < comparison.findings.size(); ++i) {
    const auto& cells = comparison.findings[i].cells;
    EXPECT_TRUE(std::ranges::any_of(cells, [](const auto& cell) { return cell.differs; }))
        << comparison.findings[i].id;
  }
}

TEST(Compare, WhatIsNotWorkedOutYetIsSaidAndNeverBest) {
  const Rig rig = owl_with_variants();
  const Analysis present = analyse(rig, {.remedies = false});
  const Comparison comparison = compare(rig, present, {});
  for (const CompareRow& each : comparison.figures) {
    EXPECT_EQ(each.cells[1].word, "not worked out yet");
    EXPECT_FALSE(each.cells[1].value.has_value());
    EXPECT_FALSE(each.cells[1].differs);
    EXPECT_FALSE(each.cells[0].is_best);
  }
}

TEST(Compare, AnalysisTakesNoNoticeOfVariants) {
  const Rig with = owl_with_variants(), without = tests::owl();
  const Analysis a = analyse(with), b = analyse(without);
  ASSERT_EQ(a.figures.size(), b.figures.size());
  for (std::size_t i = 0; i < a.figures.size(); ++i)
    EXPECT_EQ(a.figures[i].value, b.figures[i].value) << a.figures[i].id;
  EXPECT_EQ(a.findings.size(), b.findings.size());
}

}  // namespace
}  // namespace gazewright
