#include "core/analysis/drive_settings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "core/analysis/analysis.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::owl;

Rig newt() {
  return load_rig(std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs/quick-newt.rig.yaml")
      .rig.value();
}

/// Settings of one axis, by key.
struct Settings {
  std::vector<DriveSetting> rows;

  Settings(const Rig& rig, Axis axis)
      : rows(drive_settings(rig, analyse(rig, {.remedies = false}), axis)) {}
  const DriveSetting* find(std::string_view key) const {
    const auto at = std::ranges::find(rows, key, &DriveSetting::key);
    return at == rows.end() ? nullptr : &*at;
  }
  const DriveSetting& operator[](std::string_view key) const {
    const DriveSetting* row = find(key);
    EXPECT_NE(row, nullptr) << key;
    static const DriveSetting none;
    return row != nullptr ? *row : none;
  }
  double shown(std::string_view key) const {
    const DriveSetting& row = (*this)[key];
    return row.value && row.unit != "1" ? from_si(*row.value, row.si_unit, row.unit)
                                        : row.value.value_or(NAN);
  }
};

TEST(DriveSettings, GainsAtTheMotorAreThoseOfTheOutputOverTheRatioSquared) {
  // By hand, pan of the quick newt: N = 8, K = 0.4 N·m·s/rad, Ki = 30 N·m/rad, KV = 300 rpm/V.
  // Kt = (√3/2)·60/(2π·300) = 27.566 mN·m/A; K/N² = 0.4/64 = 0.00625; per turn a second 2π of it.
  const Settings s(newt(), Axis::pan);
  const double kt_NmpA = std::sqrt(3.0) / 2 * 60 / (2 * M_PI * 300);
  EXPECT_NEAR(s.shown("torque_constant"), 27.566, tol(5e-4));
  EXPECT_NEAR(s.shown("torque_constant_rms"), 38.985, tol(5e-4));
  EXPECT_NEAR(s["speed_gain_motor"].value.value(), 0.00625, tol(1e-15));
  EXPECT_NEAR(s.shown("speed_gain_motor"), 0.0392699, tol(5e-8));
  EXPECT_NEAR(s["speed_gain_current"].value.value(), 0.00625 / kt_NmpA, tol(1e-12));
  EXPECT_NEAR(s.shown("speed_gain_current"), 0.226725, tol(5e-6));
  EXPECT_NEAR(s["speed_integral_gain_motor"].value.value(), 30.0 / 64, tol(1e-14));
  EXPECT_NEAR(s.shown("speed_integral_gain_motor"), 2.94524, tol(5e-6));
  EXPECT_NEAR(s["speed_integral_gain_current"].value.value(), 30.0 / 64 / kt_NmpA, tol(1e-11));
  EXPECT_EQ(s["position_gain"].value, 80);
}

TEST(DriveSettings, TheMotorsGainMakesTheSameTorqueAtTheOutput) {
  for (const double ratio : {1.0, 5.0, 18.0, 0.5}) {
    const double gain_Nmsprad = 0.9, speed_radps = 3;
    const double motor_Nm = gain_at_motor(gain_Nmsprad, ratio) * (ratio * speed_radps);
    EXPECT_NEAR(ratio * motor_Nm, gain_Nmsprad * speed_radps, tol(1e-14));
  }
}

TEST(DriveSettings, LimitsAreTheLeastOfThoseThatTheyGoThrough) {
  Rig rig = newt();
  const Settings s(rig, Axis::pan);
  EXPECT_EQ(s["current_limit"].value, 14);
  EXPECT_EQ(s["current_limit"].from, "pan.drive.current_limit");
  // Loop 1200 deg/s, drive 1250 deg/s, gearbox 8000 rpm/8 = 6000 deg/s; 1200/6·8 = 1600 rpm.
  EXPECT_NEAR(s.shown("speed_limit"), 1200, tol(1e-9));
  EXPECT_NEAR(s.shown("speed_limit_motor"), 1600, tol(1e-9));
  rig.pan.gearbox.peak_torque_Nm = si_quantity(1);
  rig.pan.gearbox.input_speed_limit_radps = si_quantity(800 * 2 * M_PI / 60);
  const Settings weak(rig, Axis::pan);
  // 1 N·m/(0.94·8·27.566 mN·m/A) = 4.824 A; 800 rpm at the input are 600 deg/s at the output.
  EXPECT_NEAR(weak["current_limit"].value.value(), 4.824, tol(5e-4));
  EXPECT_EQ(weak["current_limit"].from, "pan.gearbox.peak_torque");
  EXPECT_NEAR(weak.shown("speed_limit"), 600, tol(1e-9));
  EXPECT_NEAR(weak.shown("speed_limit_motor"), 800, tol(1e-9));
}

TEST(DriveSettings, TheWindingTripsBelowItsLimit) {
  Rig rig = newt();
  rig.pan.motor.winding_limit_K = si_quantity(273.15 + 120);
  const Settings s(rig, Axis::pan);
  EXPECT_NEAR(s["thermal_trip"].value.value(), 273.15 + 110, tol(1e-9));
  rig.pan.motor.winding_limit_K = {};
  rig.pan.motor.insulation = {};
  EXPECT_FALSE(Settings(rig, Axis::pan)["thermal_trip"].value);
}

TEST(DriveSettings, TheLastingCurrentIsBorneTurningAndStandingStill) {
  Rig rig = newt();
  rig.pan.drive.current_limit_A = si_quantity(1000);
  rig.pan.motor.peak_current_A = si_quantity(1000);
  const Analysis a = analyse(rig, {.remedies = false});
  const double turning = a.value("pan.heat.continuous_current").value();
  const double standing = a.value("pan.heat.stall_current").value();
  ASSERT_LT(standing, turning);
  EXPECT_EQ(Settings(rig, Axis::pan)["lasting_current"].value, standing);
  EXPECT_EQ(Settings(rig, Axis::pan)["lasting_current"].from, "pan.heat.stall_current");
}

TEST(DriveSettings, CountsAndSoftLimitsAreInTheirOwnTurns) {
  const Settings s(newt(), Axis::pan);
  EXPECT_EQ(s["encoder_counts"].value, 16384);
  EXPECT_EQ(s["encoder_counts_output"].value, 131072);
  const Analysis analysis = analyse(newt(), {.remedies = false});
  const double soft_rad = *analysis.value("pan.travel.soft");
  EXPECT_NEAR(s["soft_limit_least"].value.value(), -soft_rad / 2, tol(1e-12));
  EXPECT_NEAR(s["soft_limit_most"].value.value(), soft_rad / 2, tol(1e-12));
  EXPECT_NEAR(s.shown("soft_limit_most_motor"), 8 * soft_rad / 2 / (2 * M_PI), tol(1e-9));
  Rig at_output = newt();
  at_output.pan.encoder.at.value = "output";
  EXPECT_EQ(Settings(at_output, Axis::pan)["encoder_counts_output"].value, 16384);
}

TEST(DriveSettings, TheFirstSetIsLowerAndItsLoopsHoldAsFar) {
  for (const char* name : {"quick-newt", "hasty-heron", "harbour-cormorant"}) {
    Rig rig = load_rig(std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs" /
                       (std::string(name) + ".rig.yaml"))
                  .rig.value();
    const Analysis last = analyse(rig, {.remedies = false});
    Rig first = rig;
    for (const Axis axis : kAxes) {
      for (const DriveSetting& row : drive_settings(rig, last, axis)) {
        if (!row.first) continue;
        EXPECT_LE(*row.first, *row.value) << row.key;
        if (row.formula.empty() && row.from.find(".loop.") != std::string::npos)
          *find_quantity(first, row.from) = si_quantity(*row.first);
      }
      EXPECT_EQ(first.axis(axis).loop.speed_gain_Nmsprad.si,
                kFirstGain * rig.axis(axis).loop.speed_gain_Nmsprad.value());
      EXPECT_EQ(first.axis(axis).loop.speed_integral_gain_Nmprad.si, 0);
    }
    const Analysis begun = analyse(first, {.remedies = false});
    for (const Axis axis : kAxes) {
      const std::string margin = std::string(name_of(axis)) + ".loop.phase_margin";
      ASSERT_TRUE(begun.value(margin)) << name << ' ' << margin;
      EXPECT_GE(*begun.value(margin), *last.value(margin)) << name << ' ' << margin;
    }
  }
}

TEST(DriveSettings, WhatIsMissingIsNamedAndNeverZero) {
  Rig rig = owl();
  rig.pan.motor.pole_pairs = {};
  rig.pan.motor.speed_constant_radpsV = {};
  rig.pan.loop.speed_gain_Nmsprad = {};
  rig.supply.trip_voltage_V = {};
  const Settings s(rig, Axis::pan);
  EXPECT_FALSE(s["pole_pairs"].value);
  EXPECT_EQ(s["pole_pairs"].text, "needs pan.motor.pole_pairs");
  EXPECT_EQ(s["speed_gain_current"].text, "needs pan.loop.speed_gain, pan.motor.speed_constant");
  EXPECT_TRUE(s["speed_gain"].text.starts_with("needs pan.loop.speed_gain"));
  EXPECT_EQ(s["over_voltage_trip"].text, "needs supply.trip_voltage");
  EXPECT_FALSE(s["current_limit"].value);
  EXPECT_FALSE(s["current_limit"].first);
  const Settings nothing(Rig{}, Axis::tilt);
  for (const DriveSetting& row : nothing.rows) {
    EXPECT_FALSE(row.label.empty());
    EXPECT_TRUE(row.value || !row.text.empty()) << row.key;
    if (row.value) {
      EXPECT_TRUE(std::isfinite(*row.value)) << row.key;
    }
  }
}

TEST(DriveSettings, AGainThatIsMissingNamesTheAdvisedOne) {
  Rig rig = newt();
  rig.pan.loop.speed_gain_Nmsprad = {};
  const Settings s(rig, Axis::pan);
  EXPECT_NE(s["speed_gain"].text.find("; advised: "), std::string::npos) << s["speed_gain"].text;
}

TEST(DriveSettings, OnlyAnAxisThatMovesToFindItsAngleHasHomingCurrentAndSpeed) {
  const Rig rig = newt();
  const Settings pan(rig, Axis::pan), tilt(rig, Axis::tilt);
  EXPECT_EQ(pan["homing_current"].value, 1.2);
  EXPECT_NEAR(pan.shown("homing_speed_motor"), 40, tol(1e-9));  // 30 deg/s · 8 = 240 deg/s
  EXPECT_EQ(tilt.find("homing_current"), nullptr);
  const auto pairs = paired_settings(rig, analyse(rig, {.remedies = false}));
  std::size_t in_pairs = 0;
  for (const SettingPair& pair : pairs) in_pairs += pair.of[0].has_value() + pair.of[1].has_value();
  EXPECT_EQ(in_pairs, pan.rows.size() + tilt.rows.size());
  EXPECT_TRUE(std::ranges::is_sorted(pairs, {}, [&](const SettingPair& pair) {
    return std::ranges::find(pairs, pair.any().group,
                             [](const SettingPair& p) { return p.any().group; }) -
           pairs.begin();
  }));
}

}  // namespace
}  // namespace gazewright
