#include "core/analysis/gain_advice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/analysis/analysis.h"
#include "core/analysis/say.h"
#include "core/analysis/swap.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

const GainAdvice& advice_of(const Analysis& analysis, Axis axis) {
  return analysis.advice[static_cast<std::size_t>(axis)];
}

Rig with_values(Rig rig, const std::vector<FieldValue>& values) {
  for (const FieldValue& value : values)
    *find_quantity(rig, value.path) = si_quantity(value.value_si);
  return rig;
}

std::string all_of(const GainAdvice& advice) {
  std::string text;
  for (const std::string& sentence : advice.sentences) text += sentence + '\n';
  return text;
}

TEST(GainAdvice, TakenKeepsTheMarginsThatItSpeaksOf) {
  const Rig rig = owl();
  const Analysis before = analyse(rig, {.remedies = false});
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    const GainAdvice& advice = advice_of(before, axis);
    ASSERT_EQ(advice.values.size(), 3U);
    EXPECT_FALSE(advice.limited_by.empty());
    const Analysis after = analyse(with_values(rig, advice.values), {.remedies = false});
    EXPECT_EQ(after.value(name + ".loop.crossover").has_value(), true);
    EXPECT_GE(*after.value(name + ".loop.phase_margin"), 45 * M_PI / 180);
    EXPECT_GE(*after.value(name + ".loop.gain_margin"), 2);
    EXPECT_GE(*after.value(name + ".loop.position_phase_margin"), 45 * M_PI / 180);
    EXPECT_LE(*after.value(name + ".loop.position_peak"), 1.06);
    // The search interpolates between points 2.3 % apart.
    EXPECT_NEAR(*after.value(name + ".loop.crossover") / *after.value(name + ".advice.crossover"),
                1, tol(2e-3));
    EXPECT_EQ(after.value(name + ".step.settle_time"), before.value(name + ".advice.settle_time"));
    EXPECT_EQ(std::min(after.value(name + ".loop.phase_margin"),
                       after.value(name + ".loop.position_phase_margin")),
              before.value(name + ".advice.phase_margin"));
    EXPECT_LT(after.value(name + ".step.settle_time").value_or(9),
              before.value(name + ".step.settle_time").value_or(9));
    // The advice does not depend on the gains that are there.
    EXPECT_EQ(*after.value(name + ".advice.speed_gain"),
              *before.value(name + ".advice.speed_gain"));
  }
}

TEST(GainAdvice, SaysItsReasons) {
  const Analysis analysis = analyse(owl(), {.remedies = false});
  const std::string text = all_of(advice_of(analysis, Axis::pan));
  for (const char* word :
       {"Speed gain", "Speed integral gain", "Position gain", "One count of the encoder",
        "times the inertia of the motor", "symmetrical optimum", "Higher"})
    EXPECT_NE(text.find(word), std::string::npos) << word << " in\n" << text;
}

std::string effect_of(const Rig& rig, Axis axis) {
  return advice_of(analyse(rig, {.remedies = false}), axis).sentences.front();
}

TEST(GainAdvice, SaysFirstWhatTakingItDoesToSettlingAndMargins) {
  const Rig rig = owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_EQ(effect_of(rig, Axis::pan),
            "With these gains the move settles in " +
                say(*analysis.value("pan.advice.settle_time"), "s", "ms") + " instead of " +
                say(*analysis.value("pan.step.settle_time"), "s", "ms") + ": phase margin " +
                say(*analysis.value("pan.advice.phase_margin"), "rad", "deg") + " instead of " +
                say(std::min(*analysis.value("pan.loop.phase_margin"),
                             *analysis.value("pan.loop.position_phase_margin")),
                    "rad", "deg") +
                effect_of(rig, Axis::pan).substr(effect_of(rig, Axis::pan).find(", gain margin")));
  Rig untuned = rig;
  untuned.pan.loop.speed_gain_Nmsprad = {};
  EXPECT_TRUE(effect_of(untuned, Axis::pan)
                  .starts_with("With these gains the move settles in " +
                               say(*analysis.value("pan.advice.settle_time"), "s", "ms") +
                               ": phase margin "));
  Rig blind = rig;
  blind.camera.columns = {};
  EXPECT_TRUE(effect_of(blind, Axis::pan).starts_with("These gains leave phase margin "))
      << effect_of(blind, Axis::pan);
}

// Taken with its gearboxes exchanged the sample's pan settles slower, with more margin.
TEST(GainAdvice, SaysPlainlyWhereItSettlesSlowerAndWhatThatBuys) {
  const Rig rig = with_gearboxes_swapped(
      load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value());
  const Analysis now = analyse(rig, {.remedies = false});
  ASSERT_GT(*now.value("pan.advice.settle_time"), 2 * *now.value("pan.step.settle_time"));
  const std::string effect = advice_of(now, Axis::pan).sentences.front();
  EXPECT_TRUE(effect.starts_with("With these gains the move settles slower, in ")) << effect;
  EXPECT_NE(effect.find(". That buys margin: phase margin "), std::string::npos) << effect;
}

TEST(GainAdvice, FollowsTheWantedBandwidthAndMargin) {
  Rig rig = owl();
  rig.pan.loop.wanted_bandwidth_Hz = si_quantity(15);
  const Analysis modest = analyse(rig, {.remedies = false});
  EXPECT_EQ(advice_of(modest, Axis::pan).limited_by, "the wanted bandwidth");
  EXPECT_NEAR(*modest.value("pan.advice.crossover") / (2 * M_PI * 15), 1, tol(0.02));
  rig.pan.loop.wanted_bandwidth_Hz = si_quantity(3000);
  const std::string text = all_of(advice_of(analyse(rig, {.remedies = false}), Axis::pan));
  EXPECT_NE(text.find("is wanted and not sound"), std::string::npos) << text;
  rig = owl();
  rig.pan.loop.wanted_margin_rad = si_quantity(65 * M_PI / 180);
  EXPECT_LT(*analyse(rig, {.remedies = false}).value("pan.advice.crossover"),
            *analyse(owl(), {.remedies = false}).value("pan.advice.crossover"));
}

TEST(GainAdvice, NamesWhatIsMissing) {
  Rig rig = owl();
  rig.tilt.gearbox.stiffness_Nmprad = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  const GainAdvice& advice = advice_of(analysis, Axis::tilt);
  EXPECT_TRUE(advice.values.empty());
  ASSERT_EQ(advice.sentences.size(), 1U);
  EXPECT_EQ(advice.sentences[0], "Gains cannot be advised: needs tilt.gearbox.stiffness.");
  EXPECT_EQ(analysis.figure("tilt.advice.speed_gain")->because, "needs tilt.gearbox.stiffness");
}

TEST(GainAdvice, NeedsTheLengthOfACableThatSpringsBack) {
  Rig rig = owl();
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.01);
  rig.pan.cable.free_length_m = {};
  const GainAdvice advice = advice_of(analyse(rig, {.remedies = false}), Axis::pan);
  EXPECT_TRUE(advice.values.empty());
  ASSERT_EQ(advice.sentences.size(), 1U);
  EXPECT_EQ(advice.sentences[0], "Gains cannot be advised: needs pan.cable.free_length.");
}

TEST(GainAdvice, DoesNotNeedTheGains) {
  Rig rig = owl();
  rig.pan.loop.position_gain_1ps = rig.pan.loop.speed_gain_Nmsprad = {};
  EXPECT_TRUE(analyse(rig, {.remedies = false}).value("pan.advice.speed_gain").has_value());
}

TEST(GainAdvice, IsTheFirstRemedyForGainsThatMakeTheLoopUnstable) {
  Rig rig = owl();
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(60);
  const Analysis wild = analyse(rig);
  EXPECT_EQ(wild.figure("pan.loop.bandwidth")->because,
            "the loops are unstable: there is no steady answer");
  const Finding* f = finding(wild, "pan.loop.phase_margin");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::fails);
  ASSERT_FALSE(f->remedies.empty());
  const Remedy& remedy = f->remedies.front();
  EXPECT_TRUE(remedy.text.starts_with("the advised pan gains ")) << remedy.text;
  EXPECT_EQ(remedy.also.size(), 2U);
  Rig mended = with_values(rig, {{remedy.path, remedy.value_si}});
  mended = with_values(mended, remedy.also);
  const Verdict now = finding(analyse(mended, {.remedies = false}), f->id)->verdict;
  EXPECT_TRUE(now == Verdict::holds || now == Verdict::tight);
}

TEST(ControlRate, TooSlowForTheResonanceFailsAndSaysSo) {
  Rig rig = owl();
  rig.pan.drive.control_rate_Hz = si_quantity(250);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(8);
  const Finding* f = nullptr;
  const Analysis slow = analyse(rig);
  f = finding(slow, "pan.loop.rate");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::fails) << f->because;
  EXPECT_NE(f->because.find("four samples a period of the resonance"), std::string::npos);
  EXPECT_FALSE(f->remedies.empty());
  EXPECT_EQ(finding(analyse(owl(), {.remedies = false}), "pan.loop.rate")->verdict, Verdict::holds);
}

TEST(ControlRate, IsNotMendedByARateThatTheResonanceIsAMultipleOf) {
  Rig rig = owl();
  rig.pan.gearbox.stiffness_Nmprad = si_quantity(1e6);
  rig.pan.gearbox.damping_Nmsprad = si_quantity(0);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(8);
  const double resonance_Hz =
      finding(analyse(rig, {.remedies = false}), "pan.loop.rate")->demand.value() / 4;
  for (const double factor : {0.9, 1.0, 1.1}) {  // at 1 the sampled loop has a zero
    rig.pan.drive.control_rate_Hz = si_quantity(factor * resonance_Hz);
    const Analysis analysis = analyse(rig, {.remedies = false});
    const Finding* f = finding(analysis, "pan.loop.rate");
    EXPECT_EQ(f->verdict, Verdict::fails) << factor << ": " << f->because;
  }
}

TEST(ControlRate, IsNoMatterForAResonanceAtWhichTheLoopDoesNothing) {
  Rig rig = owl();
  rig.pan.gearbox.stiffness_Nmprad = si_quantity(1e6);
  rig.pan.gearbox.damping_Nmsprad = si_quantity(20);
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Finding* f = finding(analysis, "pan.loop.rate");
  EXPECT_EQ(f->verdict, Verdict::holds) << f->because;
  EXPECT_NE(f->because.find("is too fast for the control rate, but"), std::string::npos);
}

TEST(GainAdvice, IsLeftOutOfAQuickAnalysisWithAReason) {
  const Analysis quick = analyse(owl(), {.quick = true});
  const Analysis whole = analyse(owl(), {.remedies = false});
  EXPECT_TRUE(advice_of(quick, Axis::pan).sentences.empty());
  for (const char* id : {"pan.advice.speed_gain", "tilt.advice.crossover"}) {
    EXPECT_TRUE(quick.figure(id)->is_aside) << id;
    EXPECT_EQ(quick.figure(id)->because, "worked out when nothing is dragged") << id;
    EXPECT_TRUE(whole.value(id)) << id;
  }
  // What a drag does show is the same.
  for (const Finding& shown : quick.findings) {
    const Finding* same = finding(whole, shown.id.c_str());
    ASSERT_NE(same, nullptr) << shown.id;
    EXPECT_EQ(same->because, shown.because) << shown.id;
  }
}

TEST(GapSwing, IsAFindingInPixelsAndBandWithTheEncoderAtTheOutput) {
  Rig rig = owl();
  rig.pan.encoder.at = {"output"};
  rig.pan.encoder.bits = si_quantity(22);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1.3);
  rig.pan.gearbox.backlash_rad = si_quantity(0.01);
  const Analysis a = analyse(rig);
  const auto amplitude = a.value("pan.gap.limit_cycle_amplitude");
  ASSERT_TRUE(amplitude) << a.figure("pan.gap.limit_cycle_amplitude")->because;
  EXPECT_NEAR(*a.value("pan.gap.limit_cycle_px"), *amplitude * *a.value("camera.pixels_per_radian"),
              tol(1e-9));
  const Finding* f = finding(a, "pan.gap.limit_cycle");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::fails);
  EXPECT_FALSE(f->remedies.empty());
  EXPECT_FALSE(a.value("tilt.gap.limit_cycle_px"));
}

}  // namespace
}  // namespace gazewright
