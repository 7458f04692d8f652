#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/units/units.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

const FieldInfo& info(const char* path) { return *find_info(path); }

double value(const char* path, const char* text) {
  const auto read = read_quantity(text, info(path));
  const auto* problem = std::get_if<UnitProblem>(&read);
  EXPECT_EQ(problem, nullptr) << text << ": " << (problem ? problem->problem : "");
  return problem ? std::nan("") : *std::get<Quantity>(read).si;
}

/// "problem | fix"
std::string refusal(const char* path, const char* text) {
  const auto read = read_quantity(text, info(path));
  const auto* problem = std::get_if<UnitProblem>(&read);
  return problem == nullptr ? "accepted" : problem->problem + " | " + problem->fix;
}

TEST(ReadQuantity, TakesAUnitInEveryWayThatPeopleWriteIt) {
  const char* inertia = "pan.motor.rotor_inertia";
  for (const char* text : {"118 g.cm2", "118g.cm2", " 118  g.cm2 ", "118 g.cm^2", "118 g*cm^2",
                           "118 g·cm²", "118 gcm2", "118 g cm2", "118\u00a0g\u00b7cm\u00b2",
                           "+118 g.cm2", "1.18e2 g.cm2", "0.118 kg.cm2"})
    EXPECT_NEAR(value(inertia, text), 118e-7, tol(118e-19)) << text;
  for (const char* text :
       {"0.2 Nm", "0.2 N.m", "0.2 N*m", "0.2 N·m", "0.2 N m", "200 mNm", "20 Ncm", "200 Nmm"})
    EXPECT_NEAR(value("pan.gearbox.drag", text), 0.2, tol(2e-13)) << text;
  for (const char* text : {"30 1/s", "30 s-1", "30 s^-1", "30/s", "30 s\u207b\u00b9"})
    EXPECT_DOUBLE_EQ(value("pan.loop.position_gain", text), 30) << text;
  EXPECT_DOUBLE_EQ(value("supply.voltage", "24V"), 24);
  EXPECT_DOUBLE_EQ(value("pan.motor.phase_resistance", "62 m\u03a9"), 0.062);
  EXPECT_DOUBLE_EQ(value("pan.motor.phase_inductance", "28 \u00b5H"), 28e-6);
  EXPECT_DOUBLE_EQ(value("tilt.axis_at[0]", "\u221262 mm"), -0.062);
  EXPECT_NEAR(value("pan.stops.soft_inset", "6\u00b0"), 6 * std::numbers::pi / 180, tol(1e-13));
  EXPECT_DOUBLE_EQ(value("surroundings.temperature", "30 \u00b0C"), 303.15);
  EXPECT_DOUBLE_EQ(value("pan.gearbox.efficiency", "90 %"), 0.9);
  EXPECT_DOUBLE_EQ(value("task.settle_band", "4 px"), 4);
  EXPECT_DOUBLE_EQ(value("pan.gearbox.ratio", "18"), 18);
  EXPECT_EQ(value("supply.current_limit", "none"), kInfinity);
}

TEST(ReadQuantity, KeepsWhatWasWritten) {
  const auto read = read_quantity("  118 g.cm2 ", info("pan.motor.rotor_inertia"));
  EXPECT_EQ(std::get<Quantity>(read).written, "118 g.cm2");
}

TEST(ReadQuantity, TakesKilogramCentimetresAsATorqueWhereATorqueIsDueOnly) {
  EXPECT_NEAR(value("pan.gearbox.rated_torque", "2.5 kg.cm"), 2.5 * 0.0980665, tol(1e-13));
  EXPECT_EQ(refusal("pan.gearbox.stiffness", "2.5 kg.cm"),
            "2.5 kg.cm is a mass times a length; a torque per angle is due | write for example 2.5 "
            "N.m/rad");
}

TEST(ReadQuantity, TakesKVAsTurnsAMinutePerVoltAndSaysThatASmallKIsAKilovolt) {
  for (const char* text : {"120 KV", "120KV", "120 rpm/V"})
    EXPECT_NEAR(value("pan.motor.speed_constant", text), 4 * std::numbers::pi, tol(2e-14)) << text;
  EXPECT_EQ(refusal("pan.motor.speed_constant", "120 kV"),
            "120 kV is a voltage; an angular speed per voltage is due | kV is a kilovolt; write "
            "120 KV or 120 rpm/V");
  EXPECT_EQ(refusal("supply.voltage", "24 KV"),
            "24 KV is an angular speed per voltage; a voltage is due | write for example 24 V");
}

TEST(ReadQuantity, RefusesABareNumberWhereThereIsADimension) {
  EXPECT_EQ(refusal("pan.motor.rotor_inertia", "35"),
            "35 has no unit; an inertia is due | write for example 35 g.cm2");
  EXPECT_EQ(refusal("pan.gearbox.backlash", "0"),
            "0 has no unit; an angle is due | write for example 0 arcmin");
  EXPECT_EQ(refusal("supply.current_limit", "15"),
            "15 has no unit; a current is due | write for example 15 A, or none");
}

TEST(ReadQuantity, OffersTheUnitInWhichABareNumberIsUsual) {
  const auto mend = [](const char* path, const char* text) {
    const std::string said = refusal(path, text);
    return said.substr(said.find("| ") + 2);
  };
  EXPECT_EQ(mend("task.within", "0.2"), "write for example 0.2 s or 200 ms");
  EXPECT_EQ(mend("task.within", "0.5"), "write for example 0.5 s or 500 ms");
  EXPECT_EQ(mend("task.within", "150"), "write for example 150 ms");
  EXPECT_EQ(mend("camera.exposure", "0.008"), "write for example 0.008 s or 8 ms");
  EXPECT_EQ(mend("camera.horizontal_view", "62"), "write for example 62 deg");
  EXPECT_EQ(mend("pan.motor.mass", "0.096"), "write for example 0.096 kg or 96 g");
  EXPECT_EQ(mend("pan.motor.phase_resistance", "0.065"), "write for example 0.065 ohm or 65 mohm");
  EXPECT_EQ(mend("pan.motor.speed_constant", "300"), "write for example 300 rpm/V");
}

TEST(ReadQuantity, UnderstandsARatioOfTwoNumbers) {
  const char* meant =
      " is two numbers; a ratio is one | write 10: so many turns of the motor for "
      "one of the output";
  for (const char* text : {"1:10", "10:1", "10 : 1", "10 to 1"})
    EXPECT_EQ(refusal("pan.gearbox.ratio", text), text + std::string(meant));
  EXPECT_NE(refusal("pan.gearbox.ratio", "1:5,18").find("write 5.18: "), std::string::npos);
  for (const char* text : {"1:0", "0:0", "1:-3", "1:x", "1:", "1:2:3"})
    EXPECT_EQ(refusal("pan.gearbox.ratio", text).find("two numbers"), std::string::npos) << text;
}

TEST(ReadQuantity, RefusesAnotherDimensionAndSaysWhichItIs) {
  EXPECT_EQ(refusal("pan.motor.rotor_inertia", "35 V"),
            "35 V is a voltage; an inertia is due | write for example 35 g.cm2");
  EXPECT_EQ(refusal("pan.gearbox.drag", "6 nm"),
            "6 nm is a length; a torque is due | nm is a nanometre; write for example 6 mN.m");
  EXPECT_EQ(refusal("pan.gearbox.stiffness", "900 N.m"),
            "900 N.m is a torque; a torque per angle is due | write for example 900 N.m/rad");
  EXPECT_EQ(refusal("surroundings.temperature", "30 C"),
            "30 C is an electric charge; a temperature is due | write for example 30 degC");
  EXPECT_EQ(refusal("pan.gearbox.ratio", "18 deg"),
            "18 deg is an angle; a plain number is due | write for example 18");
  EXPECT_EQ(refusal("pan.gearbox.ratio", "18 px"),
            "18 px is a number of pixels; a plain number is due | write for example 18");
}

TEST(ReadQuantity, KeepsHertzAndRadiansASecondApart) {
  EXPECT_EQ(refusal("pan.loop.estimator_bandwidth", "2500 rad/s"),
            "2500 rad/s is an angular speed; a frequency is due | divide by 2\u03c0: 397.887 Hz");
  EXPECT_EQ(refusal("pan.loop.speed_limit", "2 Hz"),
            "2 Hz is a frequency; an angular speed is due | turns a second are 720 deg/s");
  EXPECT_EQ(refusal("pan.loop.position_gain", "30 Hz"),
            "30 Hz could mean turns or radians a second; a rate is due | write it in 1/s, for a "
            "bandwidth "
            "2\u03c0 times its Hz");
}

TEST(ReadQuantity, RefusesWhatIsNotAFiniteNumber) {
  for (const char* text : {"nan V", "NaN V", ".nan", "inf V", ".inf", "-.inf"})
    EXPECT_EQ(
        refusal("supply.voltage", text),
        std::string(text) + " is not a finite number; a voltage is due | write for example 1 V");
  EXPECT_EQ(refusal("supply.voltage", "1e999 V"),
            "1e999 V is not a finite number; a voltage is due | write a value above 0 V");
  EXPECT_EQ(refusal("supply.voltage", "V"),
            "\"V\" does not begin with a number; a voltage is due | write for example 1 V");
  EXPECT_EQ(refusal("supply.voltage", ""),
            "nothing is written; a voltage is due | write for example 1 V");
  EXPECT_EQ(refusal("supply.voltage", "none"),
            "none is not allowed here; a voltage is due | write for example 1 V");
  EXPECT_EQ(refusal("supply.voltage", "24,5 V"), "24,5 V has a comma in its number | write 24.5 V");
}

TEST(ReadQuantity, RefusesUnitsThatNobodyKnows) {
  EXPECT_EQ(refusal("supply.voltage", "24 blob"),
            "the unit \"blob\" is not known; a voltage is due | write for example 24 V");
  for (const char* unit : {"V)", "(V", "((((((V))))))", "V @ 5", "V since 1970", "lg(re 1 V)",
                           "2 V", "V99999999", "/", "^", "V^", "V..V", "\u20ac"})
    EXPECT_EQ(refusal("supply.voltage", (std::string("24 ") + unit).c_str()),
              std::string("the unit \"") + unit +
                  "\" is not known; a voltage is due | write for example 24 V");
}

TEST(ReadQuantity, RefusesWhatIsOutOfRangeWithTheRange) {
  EXPECT_EQ(refusal("pan.motor.mass", "-2 g"),
            "-2 g is negative; a mass cannot be negative | write a value above 0 g");
  EXPECT_EQ(refusal("pan.gearbox.efficiency", "1.4"),
            "1.4 is above the most allowed, 1 | write a value above 0 and up to 1");
  EXPECT_EQ(refusal("pan.encoder.bits", "14.5"),
            "14.5 is not a whole number | write a whole number from 1 to 32");
  EXPECT_EQ(refusal("stand.lean", "100 deg"),
            "100 deg is above the most allowed, 90 deg | write a value from -90 deg to 90 deg");
}

TEST(ReadSpread, IsAPercentOrAQuantity) {
  const FieldInfo& inertia = info("pan.motor.rotor_inertia");
  EXPECT_NEAR(std::get<double>(read_spread("10 %", inertia, 118e-7)), 11.8e-7, tol(1e-18));
  EXPECT_NEAR(std::get<double>(read_spread("5 g.cm2", inertia, 118e-7)), 5e-7, tol(1e-18));
  EXPECT_NEAR(std::get<double>(read_spread("\u00b15 g.cm2", inertia, 118e-7)), 5e-7, tol(1e-18));
  // Of a temperature it is a difference, which has no zero.
  EXPECT_DOUBLE_EQ(std::get<double>(read_spread("5 degC", info("pan.motor.winding_limit"), 393.15)),
                   5);
  EXPECT_EQ(
      std::get<UnitProblem>(read_spread("10 %", info("surroundings.temperature"), 303.15)).fix,
      "write for example 5 K")
      << "30 degC are not a tenth more than 27";
  EXPECT_EQ(std::get<UnitProblem>(read_spread("-10 %", inertia, 118e-7)).problem,
            "-10 % is negative; a spread is the half-width of a range");
  EXPECT_EQ(std::get<UnitProblem>(read_spread("5 V", inertia, 118e-7)).problem,
            "5 V is a voltage; an inertia is due");
}

TEST(WrittenQuantity, HasTheFewestDigitsThatReadBack) {
  const auto written = [](const char* path, const char* text, const char* unit) {
    return written_quantity(value(path, text), info(path), unit);
  };
  EXPECT_EQ(written("pan.motor.rotor_inertia", "118 g.cm2", "g.cm2"), "118 g.cm2");
  EXPECT_EQ(written("pan.cable.outer_diameter", "5.2 mm", "m"), "0.0052 m");
  EXPECT_EQ(written("task.pan_move", "40 deg", "deg"), "40 deg");
  EXPECT_EQ(written("surroundings.temperature", "30 degC", "degC"), "30 degC");
  EXPECT_EQ(written("pan.drive.control_rate", "8 kHz", "Hz"), "8000 Hz");
  EXPECT_EQ(written("pan.gearbox.efficiency", "90 %", "%"), "90 %");
  EXPECT_EQ(written("task.settle_band", "4 px", "px"), "4");
  EXPECT_EQ(written("pan.gearbox.ratio", "18", "1"), "18");
  EXPECT_EQ(written("supply.current_limit", "none", "A"), "none");
  EXPECT_EQ(written("stand.lean", "0 deg", "deg"), "0 deg");
  EXPECT_EQ(written("supply.voltage", "24 V", "blob"), "24 V");
  EXPECT_EQ(written_quantity(1.0 / 3, info("pan.gearbox.ratio"), "1"), "0.333333333333");
}

TEST(WrittenQuantity, ReadsBackWithinItsPromiseAtEveryScale) {
  for (const char* path : {"pan.motor.rotor_inertia", "pan.gearbox.stiffness",
                           "pan.loop.speed_limit", "supply.voltage"}) {
    for (double si = 1.7e-12; si < 1e13; si *= 23.7) {
      const std::string text = written_quantity(si, info(path), info(path).unit);
      EXPECT_NEAR(value(path, text.c_str()) / si, 1, tol(1e-12)) << text;
    }
  }
}

TEST(UnitOfWritten, IsTheTextAfterTheNumber) {
  EXPECT_EQ(unit_of_written("118 g.cm2"), "g.cm2");
  EXPECT_EQ(unit_of_written("24V"), "V");
  EXPECT_EQ(unit_of_written("18"), "");
  EXPECT_EQ(unit_of_written("none"), "");
  EXPECT_EQ(unit_of_written(""), "");
}

TEST(PrettyUnit, IsWhatPeopleRead) {
  EXPECT_EQ(pretty_unit("g.cm2"), "g\u00b7cm\u00b2");
  EXPECT_EQ(pretty_unit("N.m.s/rad"), "N\u00b7m\u00b7s/rad");
  EXPECT_EQ(pretty_unit("uN.m.s/rad"), "\u00b5N\u00b7m\u00b7s/rad");
  EXPECT_EQ(pretty_unit("deg/s"), "\u00b0/s");
  EXPECT_EQ(pretty_unit("degC"), "\u00b0C");
  EXPECT_EQ(pretty_unit("mohm"), "m\u03a9");
  EXPECT_EQ(pretty_unit("uH"), "\u00b5H");
  EXPECT_EQ(pretty_unit("s-1"), "s\u207b\u00b9");
  EXPECT_EQ(pretty_unit("1/s"), "1/s");
  EXPECT_EQ(pretty_unit("rpm/V"), "rpm/V");
  EXPECT_EQ(pretty_unit("1"), "");
}

}  // namespace
}  // namespace gazewright
