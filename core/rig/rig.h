#pragma once

#include <array>
#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "core/rig/quantity.h"

/// The rig as a plain value: what a rig file says and nothing that is computed. Every part has a
/// table of its fields in core/rig/fields.h, which the file reader, the window's cards and the
/// sheet's list of assumptions share.
namespace gazewright {

enum class Axis { pan, tilt };
inline constexpr std::array<Axis, 2> kAxes{Axis::pan, Axis::tilt};
const char* name_of(Axis axis);  ///< "pan" or "tilt"

/// A word out of a short list that the field's table gives, e.g. encoder.at: motor | output.
struct Choice {
  std::string value;  ///< empty: missing, the field's default holds
  bool operator==(const Choice&) const = default;
};

/// A key that this version does not know, kept as it was written.
struct UnknownKey {
  std::string path;  ///< of the map that holds it, "" for the top
  std::string key;
  std::string yaml;  ///< its value as YAML text
  bool operator==(const UnknownKey&) const = default;
};

/// Whether a part that a rig may do without is described, said to be absent, or not mentioned.
enum class Presence { missing, none, given };

struct Supply {
  Quantity voltage_V, current_limit_A, absorbs_A, bus_capacitance_F, trip_voltage_V,
      brake_resistor_ohm;
  Quantity source_resistance_ohm;            ///< inside the source, without the leads
  Quantity lead_length_m, lead_conductor_m;  ///< one way; diameter of the copper
  Quantity fuse_A;
  Quantity brake_voltage_V, brake_power_W;  ///< where the chopper cuts in; lasting, of the resistor
  bool operator==(const Supply&) const = default;
};
struct Surroundings {
  Quantity temperature_K;
  bool operator==(const Surroundings&) const = default;
};
struct Stand {
  Quantity lean_rad, mass_kg, half_width_m, height_m, sway_stiffness_Nmprad;
  Quantity sway_damping;  ///< damping ratio
  Quantity grip;          ///< friction coefficient of the feet; infinity: screwed down
  bool operator==(const Stand&) const = default;
};
struct Motor {
  std::string name;
  Quantity
      speed_constant_radpsV;  ///< KV: no-load speed per volt of line-to-line back-EMF amplitude
  Quantity phase_resistance_ohm, phase_inductance_H, pole_pairs, rotor_inertia_kgm2, peak_current_A,
      mass_kg;
  Quantity thermal_resistance_KpW, thermal_time_s, winding_limit_K;
  Choice insulation;  ///< unstated | A | E | B | F | H | N: thermal class of IEC 60085
  Quantity winding_to_housing_KpW, winding_time_s;  ///< part of thermal_resistance; of the winding
  Quantity housing_to_mount_KpW;
  Quantity magnet_limit_K, bearing_limit_K;
  std::string mount_material;  ///< of the part that holds the motor, see Material
  Quantity mount_limit_K;      ///< instead of the material's
  Quantity cogging_torque_Nm;  ///< amplitude, at the rotor
  Quantity cogging_per_turn;   ///< periods in one turn of the rotor
  bool operator==(const Motor&) const = default;
};
struct Drive {
  Quantity current_limit_A, control_rate_Hz, current_bandwidth_Hz, modulation_limit;
  Quantity speed_limit_radps;  ///< of the axis output
  Quantity idle_power_W;       ///< taken from the bus while nothing moves
  bool operator==(const Drive&) const = default;
};
struct Gearbox {
  std::string name;
  Quantity ratio, efficiency, back_efficiency;
  Quantity inertia_kgm2;  ///< at the input
  Quantity backlash_rad, stiffness_Nmprad, damping_Nmsprad;
  Quantity drag_Nm, viscous_Nmsprad;  ///< at the input
  Quantity rated_torque_Nm, peak_torque_Nm, input_speed_limit_radps, mass_kg;
  Quantity overhung_load_N, overhung_at_m;  ///< radial load that the output bears, that far out
  Quantity axial_load_N;                    ///< that the output bears along its axis
  Quantity load_at_m;                       ///< where the load hangs, from the output's face
  bool operator==(const Gearbox&) const = default;
};
struct Encoder {
  Choice at;            ///< motor | output
  Choice motor_sensor;  ///< unstated | no | yes: one of the motor's own beside it, to commutate by
  Quantity bits, error_rad;
  Quantity magnet_offset_m, magnet_tilt_rad, magnet_gap_m, magnet_diameter_m, magnet_thickness_m,
      magnet_remanence_T, field_least_T, field_most_T;
  bool operator==(const Encoder&) const = default;
};
struct Friction {
  Quantity coulomb_Nm, viscous_Nmsprad;         ///< at the output, load side
  Quantity breakaway_Nm, stribeck_speed_radps;  ///< from rest; where it has fallen to Coulomb's
  bool operator==(const Friction&) const = default;
};
struct Stops {
  Presence presence = Presence::missing;
  Choice kind;  ///< tab | trailing | window
  Quantity tab_width_m, post_width_m, radius_m, centre_rad, soft_inset_rad, stiffness_Nmprad;
  Quantity trailers, trailer_width_m;  ///< kind trailing: loose tabs between tab and post
  Quantity window_rad;                 ///< kind window: from face to face
  Quantity bumper_travel_rad;          ///< after it `hard_stiffness` acts; infinity: never
  Quantity hard_stiffness_Nmprad, rebound;
  Choice material;  ///< unstated | pla | petg | asa | nylon | polycarbonate | aluminium | steel
  Quantity tab_height_m, tab_thickness_m, tab_strength_Pa;
  bool operator==(const Stops&) const = default;
};
struct Cable {
  Presence presence = Presence::missing;
  Quantity outer_diameter_m, count;
  Choice routing;  ///< twist | coil | loop | slip_ring
  Quantity free_length_m, bend_radius_m;
  Quantity twist_rating_radpm;                        ///< each way from the untwisted state
  Quantity lay_radius_m, slack_m;                     ///< twist: of the outermost cable's centre
  Quantity hub_radius_m, wall_radius_m, thickness_m;  ///< coil
  Quantity anchor_radius_m, moving_radius_m;          ///< loop: the fixed and the turning clamp
  Quantity torsion_stiffness_Nm2prad, bending_stiffness_Nm2;  ///< of one cable
  Quantity friction_Nm;                                       ///< of all cables or of the slip ring
  Quantity conductors, conductor_m, current_A,
      supply_length_m;  ///< of one cable; diameter of the copper
  Quantity signal_bandwidth_Hz, ring_circuits, ring_current_A, ring_bandwidth_Hz;
  bool operator==(const Cable&) const = default;
};
/// How the axis finds its angle after power-up, and where it rests.
struct Homing {
  Choice by;           ///< stop | flag | output | second_encoder
  Choice keeps_count;  ///< no | yes: the motor's turns through a restart
  Quantity current_A, speed_radps;
  Quantity flag_error_rad;                  ///< repeatability of the flag, at the output
  Quantity second_ratio, second_error_rad;  ///< turns of the second encoder per output turn
  Quantity home_rad, park_rad;
  bool operator==(const Homing&) const = default;
};
struct Loop {
  Quantity position_gain_1ps, speed_gain_Nmsprad, speed_integral_gain_Nmprad, speed_limit_radps;
  Quantity estimator_bandwidth_Hz;
  Quantity speed_feed_forward, acceleration_feed_forward;  ///< fractions of what the move needs
  Quantity acceleration_limit_radps2, jerk_limit_radps3;   ///< of planned moves, at the output
  Quantity wanted_bandwidth_Hz, wanted_margin_rad;         ///< of the speed loop, for advice
  bool operator==(const Loop&) const = default;
};
/// What bends between the axis' output and the camera: printed arms and their joints.
struct Bracket {
  Quantity stiffness_Nmprad, damping_ratio;
  bool operator==(const Bracket&) const = default;
};
/// What the axis turns in, besides the gearbox's own bearings.
struct Bearing {
  Choice kind;                                 ///< pair | single | gearbox
  Choice rolling;                              ///< ball | roller
  Quantity dynamic_rating_N, static_rating_N;  ///< C and C0 of one bearing
  Quantity moment_rating_Nm;                   ///< static, of a bearing that stands alone
  Quantity spacing_m;                          ///< kind pair: from centre to centre
  Quantity overhang_m;  ///< from the nearer bearing's centre to the load's, along the axis
  Quantity pitch_diameter_m, contact_angle_rad, calculation_factor;
  Quantity preload_N;                    ///< axial
  Quantity radial_play_m, axial_play_m;  ///< of one bearing as mounted
  Quantity life_s;                       ///< wanted
  bool operator==(const Bearing&) const = default;
};
/// How the axis' output holds its load: a circle of screws, a shaft.
struct Joint {
  Choice thread;          ///< M2 ... M8
  Choice property_class;  ///< 4.8 ... 12.9, A2-70 ...
  Choice holds_in;        ///< nut | metal | insert | print
  Quantity screws, circle_diameter_m, tightening_torque_Nm;
  Quantity thread_friction, face_friction;    ///< coefficients
  Quantity pull_out_N;                        ///< of one insert or printed thread
  Choice shaft;                               ///< none | clamp | flat | key
  Quantity shaft_diameter_m, shaft_length_m;  ///< of the hold
  Quantity clamp_force_N;                     ///< shaft clamp: of all its screws together
  Quantity shaft_pressure_Pa;                 ///< that hub or key bear
  bool operator==(const Joint&) const = default;
};
/// A counterweight's place, opposite to the centre of mass.
struct Balance {
  Quantity counterweight_arm_m, counterweight_density_kgpm3;
  bool operator==(const Balance&) const = default;
};
struct AxisParts {
  Motor motor;
  Drive drive;
  Gearbox gearbox;
  Encoder encoder;
  Friction friction;
  Stops stops;
  Cable cable;
  Homing homing;
  Loop loop;
  Bracket bracket;
  Bearing bearing;
  Joint joint;
  Balance balance;
  bool operator==(const AxisParts&) const = default;
};

/// The printed arm between the pan output and the tilt axis.
struct Arm {
  std::string material;  ///< see Material
  Choice support;        ///< side | fork: one arm or two
  Choice section;        ///< box | bar
  Choice layers;         ///< along | across: how they lie to the arm's length
  Quantity length_m, width_m, height_m, wall_m;  ///< width across, height up: of the section
  Quantity infill;                               ///< 0 to 1
  Quantity modulus_Pa;                           ///< instead of the material's
  bool operator==(const Arm&) const = default;
};
/// A material of the user's own; the built-in ones are in resources/data.
struct Material {
  std::string name, source;
  Quantity modulus_Pa, layer_modulus_Pa;    ///< along the layers, across them
  Quantity strength_Pa, layer_strength_Pa;  ///< tensile
  Quantity softening_K, density_kgpm3;
  bool operator==(const Material&) const = default;
};

/// Shapes, centred on the body's centre and aligned with its carrier's axes.
struct Ball {
  Quantity diameter_m;
  bool operator==(const Ball&) const = default;
};
struct Shell {
  Quantity diameter_m, wall_m;
  bool operator==(const Shell&) const = default;
};
struct Tube {
  Choice along;
  Quantity diameter_m, bore_m, length_m;
  bool operator==(const Tube&) const = default;
};
struct Box {
  std::array<Quantity, 3> side_m;
  bool operator==(const Box&) const = default;
};
struct Point {
  bool operator==(const Point&) const = default;
};
/// Tensor elements about the centre: xx, yy, zz, xy, xz, yz; the products carry their sign (Ixz =
/// -∫xz dm).
struct Tensor {
  std::array<Quantity, 6> element_kgm2;
  bool operator==(const Tensor&) const = default;
};
using Shape = std::variant<Ball, Shell, Tube, Box, Point, Tensor>;

struct Body {
  std::string name;
  Quantity mass_kg;
  std::array<Quantity, 3> centre_m;  ///< in P for on_pan, in T for on_tilt
  Shape shape = Point{};
  bool operator==(const Body&) const = default;
};
/// A window of pan by tilt that the rig must stay out of, given by hand.
struct KeepOut {
  std::string name;
  std::array<Quantity, 2> pan_rad, tilt_rad;  ///< from, to
  bool operator==(const KeepOut&) const = default;
};
struct Camera {
  Quantity columns, rows, horizontal_view_rad, exposure_s, frame_rate_Hz, delay_s;
  Quantity readout_s;  ///< from the first row's exposure to the last row's
  bool operator==(const Camera&) const = default;
};
/// One way of finding the target in the camera's pictures.
struct Detector {
  std::string name;
  Quantity frame_rate_Hz, delay_s;
  Quantity noise_px;   ///< standard deviation of the place that it finds
  Quantity drop_outs;  ///< part of the pictures in which it finds nothing
  bool operator==(const Detector&) const = default;
};
/// A place of the target on a path given by hand.
struct PathPoint {
  Quantity time_s, pan_rad, tilt_rad;
  bool operator==(const PathPoint&) const = default;
};
/// What the rig has to follow, and how the outer loop follows it.
struct Tracking {
  Choice target;                                     ///< walk | sine | jump | path
  Choice acts_on;                                    ///< error | angle
  Quantity speed_mps, passing_distance_m, height_m;  ///< target walk; height above the tilt axis
  Quantity amplitude_rad, frequency_Hz, jump_rad;
  Quantity gain_1ps, feed_forward;
  std::vector<PathPoint> path;  ///< target path; times ascend
  bool operator==(const Tracking&) const = default;
};
struct Task {
  Quantity pan_move_rad, tilt_move_rad, within_s;
  Quantity settle_band_px;  ///< half-width of the band
  Quantity target_distance_m, moves_per_minute;
  bool operator==(const Task&) const = default;
};

/// A stretch of the duty: go there, then stay.
struct DutyMove {
  Quantity pan_rad, tilt_rad;  ///< to these angles
  Quantity dwell_s;            ///< from being there to the next move
  bool operator==(const DutyMove&) const = default;
};
/// What else makes the rig point amiss, besides its parts.
struct Pointing {
  Quantity mount_error_rad, calibration_error_rad;  ///< largest, each way
  Quantity vision_noise_px;                         ///< standard deviation
  bool operator==(const Pointing&) const = default;
};

struct Rig;
/// A design set aside under a name, to compare with or to come back to.
struct Variant {
  std::string name, note;
  std::shared_ptr<const Rig> rig;  ///< never null; has no variants, title or notes of its own
  bool operator==(const Variant& other) const;
};

struct Rig {
  std::string title, notes;
  Supply supply;
  Surroundings surroundings;
  Stand stand;
  AxisParts pan, tilt;
  std::array<Quantity, 3> tilt_axis_at_m;  ///< origin of T in P
  std::vector<Body> on_pan, on_tilt;
  bool on_pan_is_bare = false;  ///< said to carry nothing but the tilt (`on_pan: []`); else an
                                ///< empty on_pan is missing
  std::vector<KeepOut> keep_outs;
  Camera camera;
  Task task;
  Tracking tracking;
  Arm arm;
  Pointing pointing;
  std::vector<DutyMove> duty;       ///< repeated without end; empty: the task's moves
  std::vector<Material> materials;  ///< of the user's own
  std::vector<Detector> detectors;  ///< empty: the camera's own frame rate and delay
  std::vector<Variant> variants;
  std::vector<UnknownKey> unknown_keys;

  const AxisParts& axis(Axis a) const { return a == Axis::pan ? pan : tilt; }
  AxisParts& axis(Axis a) { return a == Axis::pan ? pan : tilt; }
  bool operator==(const Rig&) const = default;
};

}  // namespace gazewright
