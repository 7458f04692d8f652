#include "core/analysis/bearing_case.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/analysis/usable_travel.h"
#include "core/motion/slowing.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

AxisMotion fastest_motion(const AxisModel& model) {
  return {fastest_asked_radps(model), largest_acceleration_radps2(model)};
}

RollingBearing rolling_bearing(const Bearing& b) {
  return {b.rolling.value == "roller" ? Rolling::roller : Rolling::ball, b.dynamic_rating_N.value(),
          b.static_rating_N.value(), b.contact_angle_rad.value(), b.calculation_factor.value()};
}

std::optional<EquivalentLoad> equivalent(Context& c, Axis a, const BearingCase& on,
                                         double more_radial_N) {
  const Bearing& b = c.rig().axis(a).bearing;
  if (carrier_of(c.rig().axis(a)) == Carrier::pair)
    return equivalent_load(on.bearing, std::max(on.near_N, on.far_N) + more_radial_N, on.axial_N);
  return equivalent_load_alone(on.bearing, carried_of(c, a).load->radial_N + more_radial_N,
                               on.axial_N, on.moment_Nm, b.pitch_diameter_m.value());
}

BearingCase case_of(Context& c, Axis a) {
  const AxisParts& parts = c.rig().axis(a);
  const Bearing& b = parts.bearing;
  BearingCase on{.bearing = rolling_bearing(b), .load = {}, .because = {}};
  const Carried& carried = carried_of(c, a);
  if (!carried.load) {
    on.because = carried.because;
    return on;
  }
  const CarriedLoad& load = *carried.load;
  on.axial_N = load.axial_N;
  if (carrier_of(parts) == Carrier::pair) {
    const PairLoad pair =
        pair_load(load.radial_N, load.moment_Nm, b.spacing_m.value(), b.overhang_m.value());
    on.near_N = pair.near_N;
    on.far_N = pair.far_N;
    on.axial_N +=
        b.preload_N.value() + thrust_of_radial_N(on.bearing, std::max(pair.near_N, pair.far_N));
  } else {
    on.moment_Nm = load.moment_at_Nm(b.overhang_m.value());
  }
  on.load = equivalent(c, a, on, 0);
  if (!on.load)
    on.because = for_axis(
        words("cylindrical rollers bear no axial load: see <axis>.bearing.contact_angle"), a);
  return on;
}

/// Turned angle over time of the list of moves, which is repeated without end; a move takes at
/// least as long as its longer way at top speed.
double mean_of_list_radps(Context& c, Axis a) {
  const std::vector<DutyMove>& duty = c.rig().duty;
  const double pan_radps = fastest_asked_radps(c.model(Axis::pan));
  const double tilt_radps = fastest_asked_radps(c.model(Axis::tilt));
  double way_rad = 0, time_s = 0;
  for (std::size_t i = 0; i < duty.size(); ++i) {
    const DutyMove& from = duty[i == 0 ? duty.size() - 1 : i - 1];
    const double pan = std::abs(duty[i].pan_rad.value() - from.pan_rad.value());
    const double tilt = std::abs(duty[i].tilt_rad.value() - from.tilt_rad.value());
    way_rad += a == Axis::pan ? pan : tilt;
    time_s += duty[i].dwell_s.value() + std::max(pan / pan_radps, tilt / tilt_radps);
  }
  return way_rad > 0 ? way_rad / time_s : 0;
}

}  // namespace

Carrier carrier_of(const AxisParts& parts) {
  const Bearing& b = parts.bearing;
  if (b.kind.value == "gearbox") return Carrier::gearbox;
  const bool is_filled_in =
      b.dynamic_rating_N.si || b.static_rating_N.si || b.moment_rating_Nm.si || b.spacing_m.si;
  if (!is_filled_in) return Carrier::gearbox;
  return b.kind.value == "single" ? Carrier::single : Carrier::pair;
}

const Carried& carried_of(Context& c, Axis a) {
  return c.kept<Carried>(a, [&]() -> Carried {
    const auto tilt_rad = usable_interval(c, Axis::tilt);
    if (!tilt_rad) return {{}, why_no_travel(c, Axis::tilt)};
    const AxisMotion tilt = fastest_motion(c.model(Axis::tilt));
    AxisModel pan = c.model(Axis::pan);
    const auto motion = [&](double at_rad) -> BothMotions {
      pan.load.inertia_kgm2 = mass_matrix_kgm2(c.bodies(), at_rad)(0, 0);
      return {fastest_motion(pan), tilt};
    };
    const CarriedLoad load = carried_load(c.bodies(), a, motion, tilt_rad->least, tilt_rad->most);
    if (!std::isfinite(load.radial_N + load.axial_N + load.moment_Nm))
      return {{}, words("an axis without inertia speeds up without end")};
    return {load, {}};
  });
}

const BearingCase& bearing_case(Context& c, Axis a) {
  return c.kept<BearingCase>(a, [&] { return case_of(c, a); });
}

Answer stop_force_N(Context& c, Axis a) {
  if (std::string missing = missing_of_bumper(c, a); !missing.empty())
    return Answer::none(std::move(missing));
  return stop_case(c, a).worst().torque_Nm / c.rig().axis(a).stops.radius_m.value();
}

Answer static_load_at_stop_N(Context& c, Axis a) {
  Answer force = stop_force_N(c, a);
  if (!force.value) return force;
  const BearingCase& on = bearing_case(c, a);
  if (!on.load) return Answer::none(on.because);
  return equivalent(c, a, on, *force.value)->static_N;
}

Answer mean_speed_radps(Context& c, Axis a) {
  if (!c.rig().duty.empty()) return mean_of_list_radps(c, a);
  const Quantity& moves = c.rig().task.moves_per_minute;
  if (!moves.si) return Answer::none(words("needs %1", "task.duty.moves_per_minute"));
  return std::abs(c.move_rad(a)) * *moves.si / 60;
}

Answer bearing_life_s(Context& c, Axis a) {
  const BearingCase& on = bearing_case(c, a);
  if (!on.load) return Answer::none(on.because);
  Answer mean_radps = mean_speed_radps(c, a);
  if (!mean_radps.value) return mean_radps;
  const double turns =
      rating_life_turns(on.bearing.rolling, on.bearing.dynamic_rating_N, on.load->dynamic_N);
  return *mean_radps.value > 0 ? turns * 2 * std::numbers::pi / *mean_radps.value : kInfinity;
}

double lens_arm_m(Context& c, Axis a) {
  const double overhang = c.rig().axis(a).bearing.overhang_m.value();
  const double centre = centre_along_axis_m(c.bodies(), a);
  return a == Axis::pan ? overhang - centre : overhang + std::abs(centre);
}

std::optional<Play> bearing_play(Context& c, Axis a) {
  const Bearing& b = c.rig().axis(a).bearing;
  const bool is_pair = carrier_of(c.rig().axis(a)) == Carrier::pair;
  const auto entered = [&](const Quantity& play) -> std::optional<double> {
    if (play.si) return play.si;
    return b.preload_N.value() > 0 && is_pair ? std::optional(0.0) : std::nullopt;
  };
  const auto radial = entered(b.radial_play_m);
  if (!radial) return std::nullopt;
  if (is_pair) return pair_play(*radial, b.spacing_m.value(), lens_arm_m(c, a));
  const auto axial = entered(b.axial_play_m);
  if (!axial) return std::nullopt;
  return single_play(*radial, *axial, b.pitch_diameter_m.value(), lens_arm_m(c, a));
}

Answer output_load_N(Context& c, Axis a) {
  const Carried& carried = carried_of(c, a);
  if (!carried.load) return Answer::none(carried.because);
  const Gearbox& gear = c.rig().axis(a).gearbox;
  const double moment_Nm = carried.load->moment_at_Nm(gear.load_at_m.value());
  const double at_m = gear.overhung_at_m.value();
  if (moment_Nm <= 0) return carried.load->radial_N;
  if (at_m <= 0)
    return Answer::none(for_axis(
        words("needs <axis>.gearbox.overhung_at, as the load has a moment about its face"), a));
  return std::max(carried.load->radial_N, moment_Nm / at_m);
}

}  // namespace gazewright
