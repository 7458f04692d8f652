// Doubts of many rigs: threads, stop requests, random rigs and the table of usual spreads.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>
#include <set>
#include <thread>

#include "core/analysis/doubt_runs.h"
#include "core/data/data_library.h"
#include "core/rig/fields.h"
#include "tests/core/analysis/doubts_support.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::owl;
using tests::quick;

/// Every value of the rig an estimate.
Rig guessed(Rig rig) {
  for (const FieldRef& field : all_fields(rig))
    if (const auto* ref = std::get_if<QuantityRef>(&field))
      if (ref->quantity->has_value()) ref->quantity->source = Source::estimate;
  return rig;
}

void expect_same(const Doubts& a, const Doubts& b) {
  ASSERT_EQ(a.figures.size(), b.figures.size());
  for (std::size_t f = 0; f < a.figures.size(); ++f) {
    EXPECT_EQ(a.figures[f].id, b.figures[f].id);
    EXPECT_EQ(a.figures[f].uncertainty_si, b.figures[f].uncertainty_si);
    ASSERT_EQ(a.figures[f].shifts.size(), b.figures[f].shifts.size());
    for (std::size_t s = 0; s < a.figures[f].shifts.size(); ++s) {
      EXPECT_EQ(a.figures[f].shifts[s].unknown, b.figures[f].shifts[s].unknown);
      EXPECT_EQ(a.figures[f].shifts[s].low, b.figures[f].shifts[s].low);
      EXPECT_EQ(a.figures[f].shifts[s].share, b.figures[f].shifts[s].share);
    }
  }
  for (const Axis axis : kAxes) {
    const auto at = static_cast<std::size_t>(axis);
    EXPECT_EQ(a.step[at].high_rad, b.step[at].high_rad);
  }
  ASSERT_EQ(a.worth.size(), b.worth.size());
  for (std::size_t i = 0; i < a.worth.size(); ++i) EXPECT_EQ(a.worth[i].text, b.worth[i].text);
}

TEST(DoubtRuns, AreTheSameOnAnyNumberOfThreads) {
  Rig rig = owl();
  for (const char* path : {"pan.motor.rotor_inertia", "pan.gearbox.backlash", "on_tilt[1].mass",
                           "tilt.friction.coulomb", "tilt.motor.speed_constant"})
    find_quantity(rig, path)->source = Source::estimate;
  const Analysis now = quick(rig);
  const Doubts one = doubts_with(rig, now, 1);
  EXPECT_GE(one.figures.size(), 8u);
  EXPECT_GE(one.worth.size(), 3u);
  expect_same(one, doubts_with(rig, now, 2));
  expect_same(one, doubts_with(rig, now, 5));
  expect_same(one, doubts_of(rig, now));
}

TEST(DoubtRuns, AStopRequestEndsThemSoonWithNothing) {
  const Rig rig = guessed(owl());
  const auto begin = std::chrono::steady_clock::now();
  const Analysis now = quick(rig);
  const auto one = std::chrono::steady_clock::now() - begin;
  const std::size_t count = unknowns_of(rig).size();
  ASSERT_GT(count, 50u);
  std::stop_source stop;
  Doubts all;
  const auto start = std::chrono::steady_clock::now();
  {
    const std::jthread asker([&] {
      std::this_thread::sleep_for(2 * one);
      stop.request_stop();
    });
    all = doubts_of(rig, now, stop.get_token());
  }
  // All of them would take a hundred analyses and more on two threads; a quarter of that is late.
  EXPECT_LT(std::chrono::steady_clock::now() - start, count * one / 4);
  EXPECT_TRUE(all.figures.empty());
  EXPECT_TRUE(all.unknowns.empty());
  EXPECT_TRUE(doubts_of(rig, now, stop.get_token()).worth.empty()) << "asked for before it begins";
}

TEST(DoubtRuns, ARigThatSaysNothingHasNoDoubts) {
  const Doubts all = doubts_of(Rig{}, quick(Rig{}));
  EXPECT_TRUE(all.figures.empty());
  EXPECT_TRUE(all.worth.empty());
  EXPECT_TRUE(all.step[0].time_s.empty());
}

TEST(DoubtRuns, TheRigItselfMayLackWhatAnEndHas) {
  // Unknown figures of the rig as it is stay out, whatever the ends say.
  Rig rig = owl();
  rig.pan.motor.rotor_inertia_kgm2 = {};
  rig.on_pan[0].mass_kg.source = Source::estimate;
  const Doubts all = doubts_of(rig, quick(rig));
  EXPECT_EQ(all.figure("pan.step.settle_time"), nullptr);
  EXPECT_NE(all.figure("mass.total"), nullptr);
  EXPECT_TRUE(all.step[0].time_s.empty());
}

void expect_sound(const Doubts& all, const Analysis& now, int rig) {
  for (const DoubtedFigure& figure : all.figures) {
    EXPECT_TRUE(std::isfinite(figure.uncertainty_si) && figure.uncertainty_si >= 0)
        << figure.id << ' ' << rig;
    EXPECT_EQ(now.value(figure.id), figure.value) << figure.id << ' ' << rig;
    double shares = 0;
    bool is_whole = true;
    for (const Shift& shift : figure.shifts) {
      EXPECT_TRUE(std::isfinite(shift.low.value_or(0)) && std::isfinite(shift.high.value_or(0)));
      const bool has_both = shift.low && shift.high;
      EXPECT_EQ(has_both, shift.because.empty()) << figure.id << ' ' << rig;
      is_whole = is_whole && has_both;
      shares += shift.share;
    }
    EXPECT_EQ(figure.is_known_whole, is_whole) << figure.id << ' ' << rig;
    EXPECT_NEAR(shares, 1, tol(1e-9)) << figure.id << ' ' << rig;  // a hundred roundings
  }
  for (const Doubts::Worth& worth : all.worth) {
    EXPECT_FALSE(worth.text.empty() || worth.most_of.empty()) << rig;
    EXPECT_EQ(worth.text.find("nan"), std::string::npos) << worth.text;
  }
  for (const Axis axis : kAxes) {
    const StepBand& band = all.step[static_cast<std::size_t>(axis)];
    const Trace& step = now.of(axis).step;
    for (std::size_t i = 0; i < band.time_s.size(); ++i)
      ASSERT_TRUE(band.low_rad[i] <= step.angle_rad[i] && step.angle_rad[i] <= band.high_rad[i])
          << rig << ' ' << i;
  }
}

TEST(DoubtRuns, AreFiniteAndAddUpForRandomRigs) {
  std::mt19937 random(6304);
  std::uniform_real_distribution<double> decades(-0.7, 0.7), part(0, 1);
  std::size_t in_doubt = 0;
  for (int i = 0; i < 15; ++i) {
    Rig rig = owl();
    for (const FieldRef& field : all_fields(rig)) {
      const auto* ref = std::get_if<QuantityRef>(&field);
      if (ref == nullptr || !ref->quantity->si || !std::isfinite(*ref->quantity->si)) continue;
      const double tried = *ref->quantity->si * std::pow(10, decades(random));
      if (!ref->info->whole && range_problem(*ref->info, tried).empty()) ref->quantity->si = tried;
      if (part(random) < 0.1) ref->quantity->source = Source::estimate;
      if (part(random) < 0.05) ref->quantity->spread_si = std::abs(tried) * 2 * part(random);
    }
    const Analysis now = quick(rig);
    const Doubts all = doubts_of(rig, now);
    expect_sound(all, now, i);
    in_doubt += all.figures.size();
  }
  EXPECT_GT(in_doubt, 50u);  // else the rigs would be too wild to mean anything
}

TEST(UsualSpreads, EveryRowIsOfAFieldThatThereIs) {
  Rig rig;
  for (const Axis axis : kAxes)
    rig.axis(axis).stops.presence = rig.axis(axis).cable.presence = Presence::given;
  for (const Shape& shape : {Shape(Ball{}), Shape(Tensor{})}) {
    rig.on_tilt.push_back({"", {}, {}, shape});
  }
  std::set<std::string, std::less<>> kinds;
  for (const FieldRef& field : all_fields(rig))
    if (const auto* ref = std::get_if<QuantityRef>(&field))
      kinds.insert(kind_of_input(ref->path, *ref->info));
  for (const DataRow& row : data_table("spreads").rows)
    EXPECT_TRUE(kinds.contains(row.name)) << row.name << " is no field";
}

}  // namespace
}  // namespace gazewright
