#include "core/rig/fields.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/units/units.h"

namespace gazewright {
namespace {

Rig full_rig() {
  Rig rig;
  for (const Axis axis : kAxes) {
    rig.axis(axis).stops.presence = Presence::given;
    rig.axis(axis).cable.presence = Presence::given;
  }
  for (const Shape& shape : {Shape{Ball{}}, Shape{Shell{}}, Shape{Tube{}}, Shape{Box{}},
                             Shape{Point{}}, Shape{Tensor{}}}) {
    Body body;
    body.shape = shape;
    rig.on_tilt.push_back(body);
  }
  rig.keep_outs.emplace_back();
  rig.detectors.emplace_back();
  rig.duty.emplace_back();
  rig.materials.emplace_back();
  return rig;
}

TEST(FieldTable, HasAPathOfItsOwnForEveryField) {
  Rig rig = full_rig();
  std::set<std::string> paths;
  for (const FieldRef& field : all_fields(rig))
    EXPECT_TRUE(paths.insert(path_of(field)).second) << path_of(field) << " is there twice";
  // Counted by hand from the rig file of version 1: 2 texts, 12 + 1 + 7 quantities before the axes;
  // an axis has 3 texts, 18 + 6 + 17 + 10 + 4 + 15 + 23 + 7 + 11 + 2 + 12 + 10 + 2 quantities and
  // 14 choices; 3 of axis_at; six bodies with name, mass and 3 of the centre, their shapes 1 + 2 +
  // 4 + 3 + 0 + 6; a keep-out with its name and two ends each way; 7 of the camera, 6 of the task,
  // 2 choices and 8 quantities of tracking, a name and 4 quantities of a detector; of the arm a
  // text, 3 choices and 6 quantities; 3 of pointing, 3 of a move of the duty, 2 texts and 6
  // quantities of a material.
  const std::size_t of_axis = 3 + 137 + 14, of_tracking = 10 + 5, of_rest = 10 + 3 + 3 + 8;
  EXPECT_EQ(paths.size(), 2u + 20 + 2 * of_axis + 3 + 6 * 5 + 16 + 5 + 13 + of_tracking + of_rest);
}

TEST(FieldTable, GivesEveryQuantityALabelHelpAndUnitsThatConvert) {
  Rig rig = full_rig();
  for (const FieldRef& field : all_fields(rig)) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr) continue;
    SCOPED_TRACE(ref->path);
    EXPECT_FALSE(ref->info->label.empty());
    EXPECT_TRUE(ref->info->help.ends_with("."));
    // A field's own unit reads back as the field's dimension.
    const double one =
        ref->info->unit == "px" ? 1 : from_si(1, ref->info->si_unit, ref->info->unit);
    EXPECT_TRUE(std::isfinite(one));
    EXPECT_EQ(find_info(ref->path), ref->info);
  }
}

TEST(FieldTable, HasNoDefaultOutsideItsOwnRange) {
  Rig rig = full_rig();
  for (const FieldRef& field : all_fields(rig)) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr || !ref->info->fallback) continue;
    EXPECT_EQ(range_problem(*ref->info, *ref->info->fallback), "") << ref->path;
  }
}

TEST(FieldTable, LeavesOutStopsAndCableThatAreNotGiven) {
  Rig rig;
  rig.pan.stops.presence = Presence::none;
  EXPECT_TRUE(fields_under(rig, "pan.stops").empty());
  EXPECT_TRUE(fields_under(rig, "tilt.cable").empty());
  EXPECT_EQ(fields_under(rig, "pan.motor").size(), 21u);
  EXPECT_EQ(fields_under(rig, "pan.mot").size(), 0u);
}

TEST(FindQuantity, FindsByPathAndGivesNullForAnyOther) {
  Rig rig = full_rig();
  EXPECT_EQ(find_quantity(rig, "pan.motor.rotor_inertia"), &rig.pan.motor.rotor_inertia_kgm2);
  EXPECT_EQ(find_quantity(rig, "tilt.axis_at[2]"), &rig.tilt_axis_at_m[2]);
  EXPECT_EQ(find_quantity(rig, "task.duty.moves_per_minute"), &rig.task.moves_per_minute);
  EXPECT_EQ(find_quantity(rig, "on_tilt[3].shape.box[0]"),
            &std::get<Box>(rig.on_tilt[3].shape).side_m[0]);
  EXPECT_EQ(find_quantity(rig, "pan.motor.name"), nullptr);
  EXPECT_EQ(find_quantity(rig, "on_tilt[9].mass"), nullptr);
  EXPECT_EQ(find_info("on_tilt[9].mass"), &body_mass_info());  // of any body
  EXPECT_EQ(find_info("nothing.of.the.kind"), nullptr);
}

TEST(WithDefaults, FillsWhatIsDocumentedAndNothingElse) {
  Rig rig = full_rig();
  rig.pan.gearbox.efficiency = si_quantity(0.8);
  const Rig filled = with_defaults(rig);
  EXPECT_EQ(filled.supply.current_limit_A.si, kInfinity);
  EXPECT_EQ(filled.supply.absorbs_A.si, 0.0);
  EXPECT_EQ(filled.surroundings.temperature_K.si, 298.15);
  EXPECT_EQ(filled.stand.lean_rad.si, 0.0);
  EXPECT_EQ(filled.pan.drive.control_rate_Hz.si, 8000.0);
  EXPECT_EQ(filled.pan.drive.current_bandwidth_Hz.si, 1000.0);
  EXPECT_EQ(filled.pan.drive.modulation_limit.si, 0.95);
  EXPECT_EQ(filled.pan.drive.speed_limit_radps.si, kInfinity);
  EXPECT_EQ(filled.tilt.gearbox.efficiency.si, 0.85);
  EXPECT_EQ(filled.task.settle_band_px.si, 4.0);
  EXPECT_EQ(filled.pan.encoder.at.value, "motor");
  EXPECT_EQ(filled.pan.cable.routing.value, "twist");
  EXPECT_EQ(filled.pan.cable.count.si, 1.0);
  EXPECT_EQ(filled.supply.absorbs_A.source, Source::by_default);
  for (const Quantity* missing :
       {&filled.supply.voltage_V, &filled.pan.motor.mass_kg, &filled.pan.friction.coulomb_Nm,
        &filled.camera.delay_s, &filled.pan.gearbox.peak_torque_Nm, &filled.pan.encoder.error_rad,
        &filled.tilt_axis_at_m[0]})
    EXPECT_FALSE(missing->has_value());
}

TEST(WithDefaults, TakesTheBackDrivingEfficiencyFromTheEfficiency) {
  Rig rig;
  rig.pan.gearbox.efficiency = si_quantity(0.8);
  rig.tilt.gearbox.efficiency = si_quantity(0.4);
  const Rig filled = with_defaults(rig);
  EXPECT_DOUBLE_EQ(*filled.pan.gearbox.back_efficiency.si, 0.75);  // 2 - 1/0.8
  EXPECT_EQ(filled.tilt.gearbox.back_efficiency.si,
            0.0);  // 2 - 1/0.4 = -0.5: the gear locks itself
}

TEST(WithDefaults, LeavesWhatTheUserWroteAsItIs) {
  Rig rig;
  rig.supply.absorbs_A = std::get<Quantity>(read_quantity("2 A", *find_info("supply.absorbs")));
  rig.pan.gearbox.back_efficiency = si_quantity(0.5, Source::measured);
  const Rig filled = with_defaults(rig);
  EXPECT_EQ(filled.supply.absorbs_A, rig.supply.absorbs_A);
  EXPECT_EQ(filled.pan.gearbox.back_efficiency, rig.pan.gearbox.back_efficiency);
}

TEST(RangeProblem, SaysTheRangeInTheUnitOfTheField) {
  const auto problem = [](const char* path, double si) {
    return range_problem(*find_info(path), si);
  };
  EXPECT_EQ(problem("supply.absorbs", -2), "-2 A is below the least allowed, 0 A");
  EXPECT_EQ(problem("pan.cable.outer_diameter", 0), "0 mm is not allowed: it must be above 0 mm");
  EXPECT_EQ(problem("stand.lean", 3.14159265358979323846),
            "180 deg is above the most allowed, 90 deg");
  EXPECT_EQ(problem("pan.motor.mass", -0.14), "-140 g is negative; a mass cannot be negative");
  EXPECT_EQ(problem("pan.encoder.bits", 14.5), "14.5 is not a whole number");
  EXPECT_EQ(problem("supply.voltage", std::nan("")), "not a number");
  EXPECT_EQ(problem("supply.voltage", kInfinity), "not a finite number");
  EXPECT_EQ(problem("supply.current_limit", kInfinity), "");
  EXPECT_EQ(problem("pan.gearbox.efficiency", 1), "");
  EXPECT_EQ(problem("pan.gearbox.back_efficiency", 0), "");
}

}  // namespace
}  // namespace gazewright
