#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/files/rig_file.h"

namespace gazewright::tests {

/// A complete rig of invented data that all of its figures can be given for.
inline const char* const kOwl = R"(rig: 1
title: Tide-pool owl
supply:   {voltage: 24 V, current_limit: 15 A, absorbs: 0 A, bus_capacitance: 1.5 mF, trip_voltage: 32 V}
surroundings: {temperature: 30 degC}
stand:    {lean: 0 deg, mass: 3.2 kg, half_width: 110 mm, height: 140 mm, sway_stiffness: 900 N.m/rad}
pan:
  motor:   {name: outrunner A, speed_constant: 410 rpm/V, phase_resistance: 62 mohm, phase_inductance: 28 uH, pole_pairs: 7, rotor_inertia: 118 g.cm2, peak_current: 45 A, mass: 140 g, thermal_resistance: 4.1 K/W, thermal_time: 14 min, winding_limit: 120 degC}
  drive:   {current_limit: 30 A, control_rate: 8 kHz, current_bandwidth: 1 kHz, modulation_limit: 0.95, speed_limit: none}
  gearbox: {name: two-stage, ratio: 18, efficiency: 0.90, back_efficiency: 0.88, inertia: 12 g.cm2, backlash: 8 arcmin, stiffness: 900 N.m/rad, damping: 0.4 N.m.s/rad, drag: 6 mN.m, viscous: 20 uN.m.s/rad, rated_torque: 6 N.m, peak_torque: 12 N.m, input_speed_limit: 8000 rpm, mass: 260 g}
  encoder: {at: motor, bits: 14, error: 0.5 deg}
  friction: {coulomb: 40 mN.m, viscous: 4 mN.m.s/rad}
  stops:   {tab_width: 8 mm, post_width: 10 mm, radius: 26 mm, centre: 0 deg, soft_inset: 6 deg, stiffness: 400 N.m/rad}
  cable:   {outer_diameter: 5.2 mm, count: 2, routing: twist, free_length: 260 mm, bend_radius: 40 mm, twist_rating: 900 deg/m}
  loop:    {position_gain: 30 1/s, speed_gain: 0.9 N.m.s/rad, speed_integral_gain: 12 N.m/rad, speed_limit: 900 deg/s, estimator_bandwidth: 400 Hz}
tilt:
  axis_at: [0 mm, 0 mm, 165 mm]
  motor:   {name: outrunner A, speed_constant: 410 rpm/V, phase_resistance: 62 mohm, phase_inductance: 28 uH, pole_pairs: 7, rotor_inertia: 118 g.cm2, peak_current: 45 A, mass: 140 g}
  drive:   {current_limit: 25 A, control_rate: 8 kHz, current_bandwidth: 1 kHz, modulation_limit: 0.95, speed_limit: none}
  gearbox: {name: one-stage, ratio: 9, efficiency: 0.92, back_efficiency: 0.91, inertia: 9 g.cm2, backlash: 7 arcmin, stiffness: 600 N.m/rad, damping: 0.2 N.m.s/rad, drag: 5 mN.m, viscous: 15 uN.m.s/rad, rated_torque: 4 N.m, peak_torque: 8 N.m, input_speed_limit: 9000 rpm, mass: 210 g}
  encoder: {at: motor, bits: 14, error: 0.5 deg}
  friction: {coulomb: 30 mN.m, viscous: 3 mN.m.s/rad}
  stops:   {tab_width: 30 mm, post_width: 32 mm, radius: 26 mm, centre: 10 deg, soft_inset: 5 deg, stiffness: 300 N.m/rad}
  cable:   {outer_diameter: 5.2 mm, count: 2, routing: twist, free_length: 180 mm, bend_radius: 40 mm, twist_rating: 900 deg/m}
  loop:    {position_gain: 30 1/s, speed_gain: 0.2 N.m.s/rad, speed_integral_gain: 3 N.m/rad, speed_limit: 900 deg/s, estimator_bandwidth: 400 Hz}
on_pan:
  - {name: side arm, mass: 210 g, centre: [0 mm, 62 mm, 85 mm], shape: {box: [40 mm, 16 mm, 170 mm]}}
  - {name: tilt motor, mass: 140 g, centre: [0 mm, 88 mm, 165 mm], shape: {tube: {along: y, diameter: 42 mm, bore: 8 mm, length: 26 mm}}}
on_tilt:
  - {name: ball, mass: 160 g, centre: [0 mm, 0 mm, 0 mm], shape: {shell: {diameter: 120 mm, wall: 2.4 mm}}}
  - {name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm], shape: {box: [22 mm, 40 mm, 40 mm]}}
camera:   {columns: 1280, rows: 720, horizontal_view: 62 deg, exposure: 6 ms, frame_rate: 60 Hz, delay: 45 ms}
task:     {pan_move: 40 deg, tilt_move: 25 deg, within: 250 ms, settle_band: 4, target_distance: 2.5 m, duty: {moves_per_minute: 40}}
)";

inline Rig rig_of(const std::string& yaml) {
  LoadedRig loaded = parse_rig(yaml, "test.rig.yaml");
  for (const Diagnostic& diagnostic : loaded.diagnostics) ADD_FAILURE() << to_text(diagnostic);
  return loaded.rig.value_or(Rig{});
}
inline Rig owl() { return rig_of(kOwl); }

}  // namespace gazewright::tests
