#pragma once

#include <string_view>

/// A rig file that says everything, with comments and several ways of laying out.
inline constexpr std::string_view kWholeRig = R"(# Tide-pool owl, as built in spring
rig: 1
title: Tide-pool owl
notes: |
  the lobby owl
  that watches visitors
supply:   {voltage: 24 V, current_limit: 15 A, absorbs: 0 A, bus_capacitance: 1.5 mF, trip_voltage: 32 V}   # bench supply
surroundings: {temperature: 30 degC}
stand:
  lean: 0 deg        # level
  mass: 3.2 kg
  half_width: "110 mm"
  height: '140 mm'
pan:
  motor:   {name: outrunner A, speed_constant: 410 rpm/V, phase_resistance: 62 mohm,
            pole_pairs: 7, rotor_inertia: {value: 118 g.cm2, spread: 10 %, source: datasheet}}
  drive:   {current_limit: 30 A, speed_limit: none}
  gearbox: {name: two-stage, ratio: 18, efficiency: 0.90, backlash: 16 arcmin, peak_torque: 25 kg.cm}
  encoder: {at: output, bits: 14}
  stops:   none
  cable:   {outer_diameter: 5.2 mm, count: 2, routing: coil}
  loop:    {position_gain: 30 1/s}
tilt:
  axis_at: [0 mm, 0 mm, 165 mm]
  stops:   {tab_width: 8 mm, radius: 26 mm}
on_pan:
  - {name: side arm, mass: 210 g, centre: [0 mm, 62 mm, 85 mm], shape: {box: [40 mm, 16 mm, 170 mm]}}
  - name: "lamp: left"
    mass: 30 g
    shape: {tube: {along: z, diameter: 12 mm, bore: 0 mm, length: 50 mm}}
on_tilt:
  - {name: ball, mass: 160 g, centre: [0 mm, 0 mm, 0 mm], shape: {shell: {diameter: 120 mm, wall: 2.4 mm}}}
  - {name: lens, mass: 20 g, centre: [40 mm, 0 mm, 0 mm], shape: point}
  - {name: eye, mass: 20 g, shape: {ball: {diameter: 20 mm}}}
  - {name: board, mass: 20 g, shape: {inertia: [30 g.cm2, 40 g.cm2, 50 g.cm2, 1 g.cm2, 0 g.cm2, -2 g.cm2]}}
keep_outs:
  - {name: lamp post, pan: [-20 deg, 15 deg], tilt: [30 deg, 60 deg]}   # by the door
camera:   {columns: 1280, rows: 720, horizontal_view: 62 deg}
task:     {pan_move: 40 deg, settle_band: 4, duty: {moves_per_minute: 40}}
tracking:
  target: path
  gain: 6 1/s
  path:
    - [0 s, -20 deg, 0 deg]   # comes in
    - [1.5 s, 25 deg, 4 deg]
detectors:
  - {name: fast, frame_rate: 60 Hz, delay: 22 ms, noise: 6, drop_outs: 0.05}
)";
