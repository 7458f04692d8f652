#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/analysis/swap.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

/// An owl that fails in many ways.
Rig troubled() {
  Rig rig = owl();
  rig.pan.cable.free_length_m = si_quantity(0.12);
  rig.pan.stops.soft_inset_rad = si_quantity(0.01);
  rig.pan.gearbox.peak_torque_Nm = si_quantity(7);
  rig.pan.gearbox.backlash_rad = si_quantity(0.03);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(6);
  rig.tilt.gearbox.input_speed_limit_radps = si_quantity(50);
  rig.task.within_s = si_quantity(0.1);
  return rig;
}

TEST(Findings, ComeSortedWithFailuresFirst) {
  const Analysis a = analyse(troubled());
  ASSERT_FALSE(a.findings.empty());
  EXPECT_EQ(a.findings.front().verdict, Verdict::fails);
  EXPECT_TRUE(
      std::is_sorted(a.findings.begin(), a.findings.end(), [](const auto& x, const auto& y) {
        return x.verdict == Verdict::fails && y.verdict == Verdict::holds;
      }));
  double last = -2;
  for (const Finding& f : a.findings) {
    if (f.verdict != Verdict::fails || !f.margin) continue;
    EXPECT_GE(*f.margin, last);
    last = *f.margin;
  }
}

TEST(Findings, MarginIsCapacityOverDemandLessOne) {
  Rig rig = troubled();
  for (const Axis axis : kAxes)  // else it is tight until somebody looks it up
    rig.axis(axis).cable.bend_radius_m.source = Source::datasheet;
  const Analysis a = analyse(rig);
  int numbers = 0;
  for (const Finding& f : a.findings) {
    if (!f.demand || !f.capacity || *f.demand <= 0) continue;
    if (f.id == "gearboxes.swap") {  // a comparison
      EXPECT_FALSE(f.margin);
      continue;
    }
    ++numbers;
    ASSERT_TRUE(f.margin) << f.id;
    EXPECT_NEAR(*f.margin, *f.capacity / *f.demand - 1, 1e-9) << f.id;
    const Verdict expected = *f.margin < 0      ? Verdict::fails
                             : *f.margin < 0.15 ? Verdict::tight
                                                : Verdict::holds;
    EXPECT_EQ(f.verdict, expected) << f.id;
  }
  EXPECT_GT(numbers, 15);
}

TEST(Findings, CableShorterThanTheStopsFailsWithTheNumbersOfTheSketch) {
  // 900 deg/m on 120 mm allow ±108°, the stops ±165°.
  const Analysis a = analyse(troubled());
  const Finding* f = finding(a, "pan.travel.cable");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::fails);
  EXPECT_NEAR(*f->capacity, 2 * 108 * M_PI / 180, 1e-9);
}

/// The strongest test of a remedy: do what it says.
TEST(Remedies, MakeTheirFindingHoldWhenApplied) {
  const Rig rig = troubled();
  const Analysis before = analyse(rig);
  int tried = 0;
  for (const Finding& f : before.findings) {
    for (const Remedy& remedy : f.remedies) {
      if (remedy.path == "swap" || remedy.path.starts_with("counterweight.")) continue;
      Rig mended = rig;
      Quantity* quantity = find_quantity(mended, remedy.path);
      ASSERT_NE(quantity, nullptr) << remedy.path;
      *quantity = si_quantity(remedy.value_si);
      for (const FieldValue& other : remedy.also)
        *find_quantity(mended, other.path) = si_quantity(other.value_si);
      const Analysis after = analyse(mended, {.remedies = false});
      const Finding* now = finding(after, f.id);
      ASSERT_NE(now, nullptr);
      EXPECT_TRUE(now->verdict == Verdict::holds || now->verdict == Verdict::tight)
          << f.id << ": " << remedy.text << " -> " << now->because;
      ++tried;
    }
  }
  EXPECT_GE(tried, 8);
}

/// A rig whose pan has no room for the task's 40°, and the field that mends it.
struct NoRoom {
  const char* mends;
  void (*spoil)(AxisParts&);
};
constexpr double kDeg = M_PI / 180;
const NoRoom kNoRoom[]{
    {"pan.stops.centre", [](AxisParts& p) { p.stops.centre_rad = si_quantity(-200 * kDeg); }},
    {"pan.stops.centre", [](AxisParts& p) { p.stops.centre_rad = si_quantity(145 * kDeg); }},
    {"pan.stops.soft_inset", [](AxisParts& p) { p.stops.soft_inset_rad = si_quantity(2.7); }},
    {"pan.stops.window",
     [](AxisParts& p) {
       p.stops.kind = {"window"};
       p.stops.window_rad = si_quantity(60 * kDeg);  // the tab takes 18 of it, the insets 12
     }},
    {"pan.stops.post_width",
     [](AxisParts& p) {  // 148° and 164°
       p.stops.tab_width_m = si_quantity(0.050);
       p.stops.post_width_m = si_quantity(0.0515);
     }},
    {"pan.cable.free_length", [](AxisParts& p) { p.cable.free_length_m = si_quantity(0.02); }},
    {"pan.cable.free_length",
     [](AxisParts& p) {  // a coil that fills 98 % of its room
       p.cable.routing = {"coil"};
       p.cable.hub_radius_m = si_quantity(0.018);
       p.cable.wall_radius_m = si_quantity(0.030);
       p.cable.thickness_m = si_quantity(0.0012);
       p.cable.free_length_m = si_quantity(1.485);
     }},
};

TEST(Remedies, OfAMoveThatDoesNotFitMendTheFieldThatIsWrong) {
  for (const NoRoom& entry : kNoRoom) {
    Rig rig = owl();
    entry.spoil(rig.pan);
    const Analysis a = analyse(rig);
    const Finding* f = finding(a, "pan.travel.move");
    ASSERT_NE(f, nullptr);
    ASSERT_EQ(f->verdict, Verdict::fails) << entry.mends;
    const auto remedy = std::ranges::find(f->remedies, entry.mends, &Remedy::path);
    ASSERT_NE(remedy, f->remedies.end()) << entry.mends << ": " << f->because;
    Quantity& field = *find_quantity(rig, entry.mends);
    EXPECT_GT(remedy->value_si * *field.si, 0) << "keeps its sign: " << remedy->text;
    field = si_quantity(remedy->value_si);
    const Analysis after = analyse(rig, {.remedies = false});
    EXPECT_NE(finding(after, "pan.travel.move")->verdict, Verdict::fails) << remedy->text;
  }
}

TEST(Remedies, OfAnAngleOfEitherSignSayThatItGoesNearerToZero) {
  Rig rig = owl();
  // 320° less twice 6° of inset leave ±154°; ±20° are wanted, so the centre may be at ±134°.
  rig.pan.stops.centre_rad = si_quantity(-145 * kDeg);
  const Analysis a = analyse(rig);
  const auto& remedies = finding(a, "pan.travel.move")->remedies;
  const auto centre = std::ranges::find(remedies, "pan.stops.centre", &Remedy::path);
  ASSERT_NE(centre, remedies.end());
  EXPECT_EQ(centre->text, "pan stops centre −134° or nearer to 0 would make room for the move");
}

TEST(Remedies, AreTheValueThatJustHolds) {
  const Rig rig = troubled();
  const Analysis before = analyse(rig);
  const Finding* f = finding(before, "pan.travel.cable");
  ASSERT_NE(f, nullptr);
  const auto remedy = std::find_if(f->remedies.begin(), f->remedies.end(), [](const Remedy& r) {
    return r.path == "pan.cable.free_length";
  });
  ASSERT_NE(remedy, f->remedies.end());
  const double exact = *before.value("pan.travel.stops") / (2 * 900 * M_PI / 180);
  // Rounded up to three digits: at most 1 % above the exact length.
  EXPECT_GE(remedy->value_si, exact);
  EXPECT_LE(remedy->value_si, exact * 1.01);
  EXPECT_EQ(remedy->text,
            "pan cable free length 178 mm or more would let the stop come before the cable");
}

TEST(Findings, ARigThatCannotMoveFailsAndSaysWhy) {
  Rig rig = owl();
  rig.pan.friction.coulomb_Nm = si_quantity(50);
  const Analysis a = analyse(rig);
  EXPECT_EQ(finding(a, "pan.move.torque")->verdict, Verdict::fails);
  const Finding* move = finding(a, "pan.move.time");
  EXPECT_EQ(move->verdict, Verdict::fails);
  EXPECT_FALSE(move->demand.has_value());
  EXPECT_TRUE(move->because.starts_with("never settles: cannot move")) << move->because;
}

TEST(Findings, ALoopWithoutCrossoverEitherHoldsOrFailsButIsNotUnknown) {
  Rig rig = owl();
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e6);  // above unit gain up to half the sample rate
  const Analysis wild = analyse(rig);
  EXPECT_FALSE(wild.value("pan.loop.crossover").has_value());
  EXPECT_EQ(finding(wild, "pan.loop.phase_margin")->verdict, Verdict::fails);
  for (const Remedy& remedy : finding(wild, "pan.loop.phase_margin")->remedies)
    EXPECT_NE(remedy.path, "pan.loop.position_gain") << "it cannot mend the speed loop";
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e-9);
  rig.pan.loop.speed_integral_gain_Nmprad = si_quantity(0);
  const Analysis tame = analyse(rig, {.remedies = false});
  EXPECT_FALSE(tame.value("pan.loop.crossover").has_value());
  EXPECT_EQ(finding(tame, "pan.loop.phase_margin")->verdict, Verdict::holds);
}

TEST(Findings, ALoopWithoutCrossoverLeavesThePhaseMarginToTheOther) {
  Rig rig = owl();
  rig.pan.loop.speed_integral_gain_Nmprad = si_quantity(0);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e-4);
  rig.pan.loop.position_gain_1ps = si_quantity(1e4);
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_FALSE(a.value("pan.loop.crossover").has_value());
  const Finding* f = finding(a, "pan.loop.phase_margin");
  ASSERT_TRUE(f->margin.has_value());
  EXPECT_NE(f->because.find("speed loop no crossover"), std::string::npos) << f->because;
}

TEST(Findings, AMissingInputMakesThemUnknownAndIsNamed) {
  Rig rig = owl();
  rig.tilt.gearbox.backlash_rad = {};
  const Analysis a = analyse(rig);
  EXPECT_EQ(finding(a, "tilt.pointing.gap")->verdict, Verdict::unknown);
  EXPECT_EQ(finding(a, "tilt.pointing.gap")->because, "needs tilt.gearbox.backlash");
  EXPECT_EQ(finding(a, "pan.pointing.gap")->verdict, Verdict::holds);
}

TEST(Findings, AreNotMadeOfACableThatIsNotThere) {
  Rig rig = owl();
  ASSERT_NE(finding(analyse(rig, {.remedies = false}), "pan.travel.cable"), nullptr);
  rig.pan.cable = {};
  rig.pan.cable.presence = Presence::none;
  EXPECT_EQ(finding(analyse(rig, {.remedies = false}), "pan.travel.cable"), nullptr);
}

Rig with_values(Rig rig, const std::vector<FieldValue>& values) {
  for (const FieldValue& value : values)
    *find_quantity(rig, value.path) = si_quantity(value.value_si);
  return rig;
}

/// With the gains that are advised for it on both axes.
Rig well_tuned(Rig rig) {
  const Analysis analysis = analyse(rig, {.remedies = false});
  for (const GainAdvice& advice : analysis.advice) rig = with_values(rig, advice.values);
  return rig;
}

std::optional<double> slower_s(const Analysis& analysis) {
  const auto pan = analysis.value("pan.step.settle_time");
  const auto tilt = analysis.value("tilt.step.settle_time");
  return pan && tilt ? std::optional(std::max(*pan, *tilt)) : std::nullopt;
}

TEST(Swap, SaysWhatAnalysingBothArrangementsWithTheGainsAdvisedForThemSays) {
  const Rig rig = owl();
  const Analysis study = analyse(rig);
  const Analysis now = analyse(well_tuned(rig), {.remedies = false});
  const Analysis swapped = analyse(well_tuned(with_gearboxes_swapped(rig)), {.remedies = false});
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    const auto& swap = study.swap.axis[static_cast<std::size_t>(axis)];
    EXPECT_EQ(swap.settle_now_s, now.value(name + ".step.settle_time"));
    EXPECT_EQ(swap.settle_swapped_s, swapped.value(name + ".step.settle_time"));
    EXPECT_EQ(swap.shortest_swapped_s, swapped.value(name + ".move.shortest_time"));
  }
  EXPECT_TRUE(study.swap.text.starts_with(
      "with gains advised for each, with the gearboxes exchanged pan would settle in "))
      << study.swap.text;
  const Finding* f = finding(study, "gearboxes.swap");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->because, study.swap.text);
  EXPECT_EQ(f->capacity, slower_s(swapped));
}

TEST(Swap, DoesNotNeedTheGainsOfTheFile) {
  Rig rig = owl();
  const Swap tuned = analyse(rig).swap;
  for (const Axis axis : kAxes) {
    Loop& loop = rig.axis(axis).loop;
    loop.position_gain_1ps = loop.speed_gain_Nmsprad = loop.speed_integral_gain_Nmprad = {};
  }
  const Swap untuned = analyse(rig).swap;
  EXPECT_TRUE(tuned.axis[0].settle_swapped_s);
  for (std::size_t axis = 0; axis < 2; ++axis) {
    EXPECT_EQ(untuned.axis[axis].settle_now_s, tuned.axis[axis].settle_now_s);
    EXPECT_EQ(untuned.axis[axis].settle_swapped_s, tuned.axis[axis].settle_swapped_s);
  }
}

/// Seen from the output, an undamped resonance leaves no gains that hold.
TEST(Swap, KeepsTodaysGainsWhereNoneCanBeAdvisedAndSaysSo) {
  Rig rig = owl();
  rig.tilt.encoder.at = {"output"};
  rig.tilt.gearbox.damping_Nmsprad = si_quantity(0);
  rig.tilt.gearbox.viscous_Nmsprad = rig.tilt.friction.viscous_Nmsprad = si_quantity(0);
  const Analysis study = analyse(rig);
  const auto& tilt = study.swap.axis[static_cast<std::size_t>(Axis::tilt)];
  ASSERT_TRUE(study.advice[static_cast<std::size_t>(Axis::tilt)].values.empty());
  EXPECT_EQ(tilt.settle_now_s, study.value("tilt.step.settle_time"));
  EXPECT_EQ(
      tilt.settle_swapped_s,
      analyse(with_gearboxes_swapped(rig), {.remedies = false}).value("tilt.step.settle_time"));
  EXPECT_TRUE(study.swap.text.starts_with("with gains advised for pan and today's for tilt, ") ||
              study.swap.text.starts_with("with today's gains, "))
      << study.swap.text;
}

/// Done as it says, the remedy does what it says.
TEST(Swap, RemedyTakesTheAdvisedGainsAlong) {
  Rig rig = owl();
  if (finding(analyse(rig), "gearboxes.swap")->remedies.empty()) rig = with_gearboxes_swapped(rig);
  const Analysis study = analyse(rig);
  const Finding* f = finding(study, "gearboxes.swap");
  ASSERT_EQ(f->remedies.size(), 1U) << f->because;
  const Remedy& remedy = f->remedies.front();
  EXPECT_EQ(remedy.path, "swap");
  EXPECT_EQ(remedy.also.size(), 6U);
  const Analysis after =
      analyse(with_values(with_gearboxes_swapped(rig), remedy.also), {.remedies = false});
  EXPECT_EQ(slower_s(after), f->capacity);
  const auto before = slower_s(study);
  EXPECT_LT(*slower_s(after), before.value_or(kInfinity));
}

TEST(Swap, SaysInWordsWhatIsMissingAndWhatNeverSettles) {
  Rig rig = owl();
  rig.tilt.gearbox.ratio = {};
  const std::string missing = analyse(rig).swap.text;
  EXPECT_TRUE(missing.starts_with("what exchanging the gearboxes would do is not known: needs "))
      << missing;
  rig = owl();
  rig.pan.friction.coulomb_Nm = si_quantity(100);  // nothing moves it, with either gearbox
  const std::string never = analyse(rig).swap.text;
  EXPECT_NE(never.find("pan would never settle (now never)"), std::string::npos) << never;
}

TEST(Analyse, EndsEarlyWhenAskedTo) {
  std::stop_source stop;
  stop.request_stop();
  const Analysis a = analyse(troubled(), {}, stop.get_token());
  EXPECT_LT(a.findings.size(), analyse(troubled()).findings.size());
}

}  // namespace
}  // namespace gazewright
