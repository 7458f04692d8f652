#pragma once

#include <array>
#include <string_view>

/// Which fields a figure or a check needs, as lists that are shared.
namespace gazewright {

using InputPath = std::string_view;

template <std::size_t N, std::size_t M>
constexpr std::array<InputPath, N + M> joined(const std::array<InputPath, N>& a,
                                              const std::array<InputPath, M>& b) {
  std::array<InputPath, N + M> all{};
  for (std::size_t i = 0; i < N; ++i) all[i] = a[i];
  for (std::size_t i = 0; i < M; ++i) all[N + i] = b[i];
  return all;
}

inline constexpr std::array<InputPath, 1> kSpeedConstant{"<axis>.motor.speed_constant"};
inline constexpr std::array<InputPath, 2> kMotorConstant{"<axis>.motor.speed_constant",
                                                         "<axis>.motor.phase_resistance"};
/// The envelope at standstill.
inline constexpr std::array<InputPath, 7> kStallMotor{
    "<axis>.motor.speed_constant", "<axis>.motor.phase_resistance", "<axis>.motor.peak_current",
    "<axis>.drive.current_limit",  "<axis>.drive.modulation_limit", "supply.voltage",
    "supply.current_limit"};
inline constexpr std::array<InputPath, 2> kGearForce{"<axis>.gearbox.ratio",
                                                     "<axis>.gearbox.efficiency"};
inline constexpr std::array<InputPath, 1> kGearPeak{"<axis>.gearbox.peak_torque"};
inline constexpr auto kUncappedStall = joined(kStallMotor, kGearForce);
inline constexpr auto kStall = joined(kUncappedStall, kGearPeak);

inline constexpr std::array<InputPath, 6> kTopSpeed{
    "<axis>.motor.speed_constant", "supply.voltage",       "<axis>.drive.modulation_limit",
    "<axis>.drive.speed_limit",    "<axis>.gearbox.ratio", "<axis>.gearbox.input_speed_limit"};

inline constexpr std::array<InputPath, 2> kRotors{"<axis>.motor.rotor_inertia",
                                                  "<axis>.gearbox.inertia"};
inline constexpr std::array<InputPath, 2> kLoadAndCoulomb{"<load>", "<axis>.friction.coulomb"};
inline constexpr auto kAcceleration = joined(joined(kStall, kRotors), kLoadAndCoulomb);
inline constexpr auto kBestAcceleration = joined(joined(kUncappedStall, kRotors), kLoadAndCoulomb);

/// The rigid train of section 5.
inline constexpr std::array<InputPath, 7> kRigidExtras{
    "<axis>.motor.phase_inductance", "<axis>.motor.pole_pairs", "<axis>.gearbox.back_efficiency",
    "<axis>.gearbox.drag",           "<axis>.gearbox.viscous",  "<axis>.friction.viscous",
    "<axis>.cable.<spring>"};
inline constexpr auto kRigidTrain = joined(kAcceleration, kRigidExtras);
/// Braking from the fastest speed that the loop asks for.
inline constexpr auto kBraking =
    joined(joined(kRigidTrain, kTopSpeed), std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
inline constexpr auto kRigidMove =
    joined(kRigidTrain, std::array<InputPath, 1>{"task.<axis>_move"});

/// The two-inertia train and its control.
inline constexpr std::array<InputPath, 3> kResonance{"<load>", "<axis>.gearbox.stiffness",
                                                     "<axis>.gearbox.ratio"};
inline constexpr auto kResonanceWithRotor = joined(kResonance, kRotors);
inline constexpr std::array<InputPath, 10> kLoopExtras{
    "<axis>.gearbox.damping",          "<axis>.gearbox.viscous",
    "<axis>.friction.viscous",         "<axis>.drive.control_rate",
    "<axis>.drive.current_bandwidth",  "<axis>.loop.speed_gain",
    "<axis>.loop.speed_integral_gain", "<axis>.loop.estimator_bandwidth",
    "<axis>.loop.position_gain",       "<axis>.cable.<spring>"};
inline constexpr auto kLoops = joined(kResonanceWithRotor, kLoopExtras);

/// The gap of the gearbox and what rubs, around the loops.
inline constexpr std::array<InputPath, 6> kGapExtras{
    "<axis>.gearbox.backlash",        "<axis>.gearbox.drag",
    "<axis>.friction.coulomb",        "<axis>.gearbox.efficiency",
    "<axis>.gearbox.back_efficiency", "<axis>.encoder.bits"};
inline constexpr auto kGapSwing = joined(kLoops, kGapExtras);
/// What gains are advised from: all but the gains.
inline constexpr std::array<InputPath, 7> kAdviceExtras{
    "<axis>.gearbox.damping",         "<axis>.gearbox.viscous",
    "<axis>.friction.viscous",        "<axis>.drive.control_rate",
    "<axis>.drive.current_bandwidth", "<axis>.loop.estimator_bandwidth",
    "<axis>.cable.<spring>"};
inline constexpr auto kAdvice =
    joined(joined(joined(kResonanceWithRotor, kStall), kGapExtras), kAdviceExtras);

inline constexpr std::array<InputPath, 13> kStepExtras{
    "<axis>.gearbox.backlash",   "<axis>.gearbox.stiffness",
    "<axis>.gearbox.damping",    "<axis>.encoder.bits",
    "<axis>.drive.control_rate", "<axis>.drive.current_bandwidth",
    "<axis>.loop.speed_gain",    "<axis>.loop.speed_integral_gain",
    "<axis>.loop.speed_limit",   "<axis>.loop.estimator_bandwidth",
    "<axis>.loop.position_gain", "<axis>.drive.speed_limit",
    "task.<axis>_move"};
inline constexpr auto kStep = joined(kRigidMove, kStepExtras);
/// The same as one input, for lists that are looked through on every frame of a drag.
inline constexpr std::array<InputPath, 1> kWholeStep{"<step>"};
/// All that the steps of both axes need.
inline constexpr std::array<InputPath, 1> kBothSteps{"<both steps>"};
inline constexpr std::array<InputPath, 3> kToPixels{"camera.columns", "camera.horizontal_view",
                                                    "task.settle_band"};
inline constexpr std::array<InputPath, 2> kScale{"camera.columns", "camera.horizontal_view"};
inline constexpr auto kSettle = joined(kStep, kToPixels);
/// The settle time with the advised gains: all but the gains.
inline constexpr auto kAdvisedSettle =
    joined(joined(joined(kAdvice, kRigidMove), kToPixels),
           std::array<InputPath, 2>{"<axis>.loop.speed_limit", "<axis>.drive.speed_limit"});

/// What the kind of stops or of routing in use needs, see fields_in_use().
inline constexpr std::array<InputPath, 1> kStopGeometry{"<axis>.stops.<travel>"};
inline constexpr std::array<InputPath, 1> kSoftInset{"<axis>.stops.soft_inset"};
inline constexpr auto kSoft = joined(kStopGeometry, kSoftInset);
inline constexpr std::array<InputPath, 1> kCableTravel{"<axis>.cable.<travel>"};
inline constexpr auto kUsable = joined(kSoft, kCableTravel);

}  // namespace gazewright
