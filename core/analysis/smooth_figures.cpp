#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/smooth_values.h"
#include "core/words/words.h"

namespace gazewright {

std::optional<std::string> why_not_slow(Context& c, Axis a) {
  const SlowParts parts = slow_parts(c.rig(), a);
  if (parts.cogging_Nm > 0 && std::isnan(parts.cogging_per_turn))
    return for_axis(words("needs %1", "<axis>.motor.cogging_per_turn"), a);
  if (!c.slow_limits(a)) return words("the loops swing by themselves: no speed is steady");
  return {};
}

bool has_cogging(Context& c, Axis a) { return slow_parts(c.rig(), a).cogging_Nm > 0; }
bool has_falling_friction(Context& c, Axis a) { return slow_parts(c.rig(), a).falling_Nm > 0; }

namespace {

constexpr const char* kSmoothSource = "linear model wound tight; handbook: smoothness";
constexpr auto kSlowPixels = joined(kSlow, kScale);
constexpr const char* kNoCogging = "no cogging torque is entered";
constexpr const char* kNoFall = "no breakaway torque above the Coulomb friction is entered";

using Value = double (*)(Context&, Axis);
using Asked = bool (*)(Context&, Axis);

template <Value V>
Answer value(Context& c, Axis a) {
  if (auto why = why_not_slow(c, a)) return Answer::none(*why);
  return V(c, a);
}
template <Value V>
Answer of_cogging(Context& c, Axis a) {
  return has_cogging(c, a) ? value<V>(c, a) : Answer::aside(kNoCogging);
}
template <Value V>
Answer of_friction(Context& c, Axis a) {
  return has_falling_friction(c, a) ? value<V>(c, a) : Answer::aside(kNoFall);
}

double lowest(Context& c, Axis a) { return c.slow_limits(a)->lowest_radps(); }
double by_friction(Context& c, Axis a) { return c.slow_limits(a)->friction_radps; }
double by_cogging(Context& c, Axis a) { return c.slow_limits(a)->cogging_radps; }
double by_encoder(Context& c, Axis a) { return c.slow_limits(a)->encoder_radps; }

double ripple_px(Context& c, Axis a) {
  const double speed = lowest(c, a);
  return (cogging_ripple_rad(c.model(a), slow_parts(c.rig(), a), speed) +
          encoder_ripple_rad(c.model(a), speed)) *
         c.pixels_per_radian();
}
double cogging_frequency(Context& c, Axis a) {
  return slow_parts(c.rig(), a).cogging_per_turn * c.model(a).gear.ratio * lowest(c, a);
}
double worst_speed(Context& c, Axis a) { return c.worst_cogging(a).speed_radps; }
double worst_px(Context& c, Axis a) {
  return c.worst_cogging(a).ripple_rad * c.pixels_per_radian();
}
double jump_px(Context& c, Axis a) {
  return stick_slip_jump_rad(c.model(a), slow_parts(c.rig(), a)) * c.pixels_per_radian();
}
double resolution(Context& c, Axis a) { return speed_resolution_radps(c.model(a)); }

const FigureRow kSmoothFigures[] = {
    {{"<axis>.smooth.lowest_speed", "Lowest steady speed", "rad/s", "deg/s",
      "the largest of the limits by friction, cogging and encoder", kSmoothSource, kSlow},
     Axes::both,
     value<lowest>},
    {{"<axis>.smooth.lowest_speed_friction", "Lowest speed without stick-slip", "rad/s", "deg/s",
      "where the friction falls with speed as steeply as the loops just stand; 0: nowhere",
      "Armstrong-Hélouvry's curve, stability of the sampled loop; handbook: smoothness", kSlow},
     Axes::both,
     of_friction<by_friction>,
     true},
    {{"<axis>.smooth.lowest_speed_cogging", "Lowest speed over the cogging", "rad/s", "deg/s",
      "where cogging_torque·periods·N·|compliance| is 1: the ripple's speed is the mean speed",
      kSmoothSource, kSlow},
     Axes::both,
     of_cogging<by_cogging>,
     true},
    {{"<axis>.smooth.lowest_speed_encoder", "Lowest speed over the counts", "rad/s", "deg/s",
      "where the loops' gain for reading errors at speed/count is 1/2: the ripple's speed is the "
      "mean speed",
      kSmoothSource, kSlow},
     Axes::both,
     value<by_encoder>},
    {{"<axis>.smooth.speed_resolution", "Speed of one count in a sample", "rad/s", "deg/s",
      "(1 − exp(−2π·estimator_bandwidth·dt))·count/dt", "design section 5", kSlow},
     Axes::both,
     value<resolution>},
    {{"<axis>.smooth.ripple_px", "Ripple at the lowest steady speed", "1", "px",
      "(cogging_torque·|compliance| + count/π·|gain for reading errors|)·pixels_per_radian",
      kSmoothSource, kSlowPixels},
     Axes::both,
     value<ripple_px>},
    {{"<axis>.smooth.cogging_frequency", "Cogging at the lowest steady speed", "rad/s", "Hz",
      "periods·N·lowest_speed", "geometry", kSlow},
     Axes::both,
     of_cogging<cogging_frequency>,
     true},
    {{"<axis>.smooth.worst_speed", "Speed of the worst cogging ripple", "rad/s", "deg/s",
      "where |compliance| at periods·N·speed is largest", kSmoothSource, kSlow},
     Axes::both,
     of_cogging<worst_speed>,
     true},
    {{"<axis>.smooth.worst_ripple_px", "Worst cogging ripple", "1", "px",
      "cogging_torque·largest |compliance|·pixels_per_radian", kSmoothSource, kSlowPixels},
     Axes::both,
     of_cogging<worst_px>,
     true},
    {{"<axis>.smooth.friction_jump_px", "Jump when it breaks away", "1", "px",
      "2·(breakaway − coulomb)·(1/(speed_gain·position_gain + speed_integral_gain) + "
      "1/stiffness)·pixels_per_radian",
      "a mass on a spring, undamped; handbook: smoothness", kSlowPixels},
     Axes::both,
     of_friction<jump_px>,
     true},
};

}  // namespace

std::span<const FigureRow> smooth_figures() { return kSmoothFigures; }

}  // namespace gazewright
