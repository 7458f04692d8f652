#include <algorithm>
#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/heat_values.h"
#include "core/analysis/left_out.h"
#include "core/analysis/say.h"
#include "core/heat/duty_types.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kHeatSource = "two heat capacities, copper fed back; handbook: heat";
constexpr const char* kSimulated = "the duty's simulated moves; handbook: heat";
constexpr const char* kDutyType =
    "IEC 60034-1, two heat capacities, copper fed back; handbook: heat";
constexpr const char* kNeverSteady =
    "thermal runaway: the copper's loss outgrows the cooling, there is no steady temperature";
constexpr const char* kNever = "never: it stays below the limit without end";
constexpr const char* kTooHot = "the air alone is as hot as the winding's limit";

constexpr auto kHousing =
    joined(kDutyHeat, std::array<InputPath, 1>{"<axis>.motor.winding_to_housing"});
constexpr auto kMagnet = joined(kHousing, std::array<InputPath, 1>{"<axis>.motor.magnet_limit"});
constexpr auto kIntermittent = joined(kDutyHeat, kWindingLimit);

using Value = Answer (*)(Context&, Axis);

/// With a thermal model that does not contradict itself.
template <Value V>
Answer thermal(Context& c, Axis a) {
  if (std::string why = why_no_thermal(c, a); !why.empty()) return Answer::none(why);
  return V(c, a);
}
/// Of the simulated duty.
template <Value V>
Answer of_duty(Context& c, Axis a) {
  if (const std::string& why = duty_heat(c, a).because; !why.empty()) return Answer::none(why);
  return V(c, a);
}
/// Of the temperatures that the duty comes to.
template <Value V>
Answer where_steady(Context& c, Axis a) {
  return duty_temperatures(c, a) ? V(c, a) : Answer::none(kNeverSteady);
}
template <Value V>
Answer of_temperatures(Context& c, Axis a) {
  return thermal<of_duty<where_steady<V>>>(c, a);
}

double limit_K(Context& c, Axis a) { return c.rig().axis(a).motor.winding_limit_K.value(); }
double resistance_ohm(Context& c, Axis a) {
  return c.rig().axis(a).motor.phase_resistance_ohm.value();
}
double current_of_A(Context& c, Axis a, double copper20_W) {
  return std::sqrt(copper20_W / (1.5 * resistance_ohm(c, a)));
}

Answer lasting_current(Context& c, Axis a) {
  const double loss_W = lasting_copper20_W(motor_thermal(c, a), limit_K(c, a));
  return loss_W > 0 ? Answer(current_of_A(c, a, loss_W)) : Answer::none(kTooHot);
}
Answer stall_current(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  const double current_A =
      lasting_stall_current_A(stall_thermal(c, a), resistance_ohm(c, a), limit_K(c, a));
  return current_A > 0 ? Answer(current_A) : Answer::none(kTooHot);
}
Answer runaway_current(Context& c, Axis a) {
  return current_of_A(c, a, runaway_copper20_W(motor_thermal(c, a)));
}

/// Time to the limit at a multiple of the lasting current, turning, from the air's temperature on.
Answer time_at(Context& c, Axis a, double of_lasting) {
  if (c.is_quick()) return left_out_of_drag();
  const Answer lasting = lasting_current(c, a);
  if (!lasting.value) return lasting;
  const MotorThermal motor = stall_thermal(c, a);
  return {time_to_limit_s(motor, turning_losses(resistance_ohm(c, a), of_lasting * *lasting.value),
                          {motor.air_K, motor.air_K}, limit_K(c, a)),
          kNever};
}
Answer time_at_1_5(Context& c, Axis a) { return time_at(c, a, 1.5); }
Answer time_at_2(Context& c, Axis a) { return time_at(c, a, 2); }
Answer time_at_3(Context& c, Axis a) { return time_at(c, a, 3); }

Answer time_stalled(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  const MotorThermal motor = stall_thermal(c, a);
  return {
      time_to_limit_s(motor, stalled_losses(resistance_ohm(c, a), c.model(a).drive.current_limit_A),
                      {motor.air_K, motor.air_K}, limit_K(c, a)),
      kNever};
}

Answer rms_current(Context& c, Axis a) { return duty_heat(c, a).rms_current_A; }
Answer duty_factor(Context& c, Axis a) { return duty_heat(c, a).duty_factor(); }
Answer gear_loss(Context& c, Axis a) { return duty_heat(c, a).gear_W; }
Answer winding(Context& c, Axis a) { return duty_temperatures(c, a)->hottest.winding_K; }
Answer housing(Context& c, Axis a) { return duty_temperatures(c, a)->hottest.housing_K; }
Answer mount(Context& c, Axis a) {
  return mount_K(c, a, duty_temperatures(c, a)->hottest.housing_K);
}
Answer magnet(Context& c, Axis a) { return magnet_K(duty_temperatures(c, a)->hottest); }

Answer intermittent_current(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  const DutyHeat& duty = duty_heat(c, a);
  if (!(duty.moving_s > 0)) return Answer::none(words("nothing moves"));
  const double current_A = intermittent_current_A(
      stall_thermal(c, a), resistance_ohm(c, a), limit_K(c, a), duty.moving_s,
      std::max(duty.cycle_s - duty.moving_s, 0.0), c.model(a).drive.current_limit_A);
  return current_A > 0 ? Answer(current_A) : Answer::none(kTooHot);
}

constexpr double kShortTime_s = 600;  ///< the shortest of IEC 60034-1's usual ones (from memory)
Answer short_time_current(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  const double current_A =
      short_time_current_A(stall_thermal(c, a), resistance_ohm(c, a), limit_K(c, a), kShortTime_s,
                           c.model(a).drive.current_limit_A);
  return current_A > 0 ? Answer(current_A) : Answer::none(kTooHot);
}

Answer hold(Context& c, Axis a) {
  const HoldHeat& held = hold_heat(c, a);
  return held.at ? Answer(held.at->winding_K) : Answer::none(kNeverSteady);
}
Answer hold_current(Context& c, Axis a) { return hold_heat(c, a).current_A; }

const FigureRow kHeatFigures[] = {
    {{"<axis>.heat.rms_current", "RMS current over the duty", "A", "A",
      "√(∫i² dt/cycle), phase amplitude, moves simulated, holding in between", kSimulated,
      kDutyMoves},
     Axes::both,
     of_duty<rms_current>},
    {{"<axis>.heat.cyclic_duration_factor", "Cyclic duration factor", "1", "%",
      "time in motion over the cycle", "duty type S3 of IEC 60034-1", kDutyMoves},
     Axes::both,
     of_duty<duty_factor>},
    {{"<axis>.heat.gear_loss", "Gear loss over the duty", "W", "W",
      "(∫ drag, tooth friction and damping)/cycle; all of it heats the housing", kSimulated,
      kDutyMoves},
     Axes::both,
     of_duty<gear_loss>},
    {{"<axis>.heat.winding_temperature", "Hottest winding over the duty", "K", "degC",
      "C_w·θ_w' = 1.5·R20·i²·(1 + α·θ_w) − (θ_w − θ_h)/R_wh, periodic; air with its spread",
      kHeatSource, kDutyHeat},
     Axes::both,
     of_temperatures<winding>},
    {{"<axis>.heat.housing_temperature", "Hottest housing over the duty", "K", "degC",
      "C_h·θ_h' = (θ_w − θ_h)/R_wh + gear loss − (θ_h − θ_air)/R_ha, periodic", kHeatSource,
      kHousing},
     Axes::both,
     of_temperatures<housing>,
     true},
    {{"<axis>.heat.mount_temperature", "Bracket at the motor over the duty", "K", "degC",
      "housing − housing_to_mount·half of the heat; without details as hot as the winding",
      "common practice, no source; handbook: heat", kDutyHeat},
     Axes::both,
     of_temperatures<mount>},
    {{"<axis>.heat.magnet_temperature", "Magnets over the duty", "K", "degC",
      "mean of winding and housing", "common practice, no source; handbook: heat", kMagnet},
     Axes::both,
     of_temperatures<magnet>,
     true},
    {{"<axis>.heat.hold_current", "Current that holds the worst angle", "A", "A",
      "largest pull of gravity and cables/(N·Kt), no friction helping; at most the limit",
      "statics; handbook: heat", kHoldCurrent},
     Axes::both,
     hold_current},
    {{"<axis>.heat.hold_temperature", "Worst winding holding the worst angle", "K", "degC",
      "steady, R·i² in one winding of 3·R_wh, a quarter in the others; R_wh 40 % if not entered",
      "balanced three-phase current at standstill; handbook: heat", kHoldHeat},
     Axes::both,
     thermal<hold>},
    {{"<axis>.heat.continuous_current", "Current that it bears without end, turning", "A", "A",
      "√((θ_limit − θ_air)/(R_th·1.5·R20·(1 + α·θ_limit))), duty type S1", kHeatSource, kLasting},
     Axes::both,
     thermal<lasting_current>},
    {{"<axis>.heat.stall_current", "Current that it bears without end, standing", "A", "A",
      "the same for the worst winding at standstill", kHeatSource, kLasting},
     Axes::both,
     thermal<stall_current>},
    {{"<axis>.heat.intermittent_current", "Current that it bears in the duty's moves", "A", "A",
      "heats the winding just to its limit, turning while it moves, none at rest, periodic: duty "
      "type S3; at most the smaller of the motor's peak and the drive's limit",
      kDutyType, kIntermittent},
     Axes::both,
     thermal<of_duty<intermittent_current>>},
    {{"<axis>.heat.short_time_current", "Current that it bears for 10 min from cold", "A", "A",
      "heats the winding just to its limit in 10 min, turning: duty type S2 10 min; at most the "
      "smaller of the motor's peak and the drive's limit",
      kDutyType, kTimeToLimit},
     Axes::both,
     thermal<short_time_current>},
    {{"<axis>.heat.runaway_current", "Current of thermal runaway", "A", "A",
      "1/√(R_th·1.5·R20·α): above it there is no steady temperature", kHeatSource, kSteadyHeat},
     Axes::both,
     thermal<runaway_current>},
    {{"<axis>.heat.time_to_limit", "Time to the winding's limit, stalled", "s", "s",
      "worst winding, standing at the current limit from the air's temperature on", kHeatSource,
      kTimeToLimit},
     Axes::both,
     thermal<time_stalled>},
    {{"<axis>.heat.time_at_1_5", "Time to the limit at 1.5 times the lasting current", "s", "s",
      "turning, from the air's temperature on", kHeatSource, kTimeToLimit},
     Axes::both,
     thermal<time_at_1_5>},
    {{"<axis>.heat.time_at_2", "Time to the limit at twice the lasting current", "s", "s",
      "turning, from the air's temperature on", kHeatSource, kTimeToLimit},
     Axes::both,
     thermal<time_at_2>},
    {{"<axis>.heat.time_at_3", "Time to the limit at 3 times the lasting current", "s", "s",
      "turning, from the air's temperature on", kHeatSource, kTimeToLimit},
     Axes::both,
     thermal<time_at_3>},
};

}  // namespace

std::span<const FigureRow> heat_figures() { return kHeatFigures; }

}  // namespace gazewright
