#include <algorithm>
#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/left_out.h"
#include "core/analysis/stand_values.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kStatics =
    "statics of a rigid stand, its own centre at half its height; handbook: structure";
constexpr const char* kSpring =
    "a damped spring at the foot, the task's step of each axis; twist as stiff as sway (a round "
    "column's is 0.77 of it); handbook: structure";
constexpr const char* kMode =
    "one degree of freedom, the stand as an even column; handbook: structure";
constexpr auto kFirstMode = joined(kStandWeight, kStandSpring);

double larger_sway_rad(Context& c, double scale) {
  return scale *
         std::max(stand_swayed(c, Axis::pan).largest_rad, stand_swayed(c, Axis::tilt).largest_rad);
}

Answer sway(Context& c, double scale) {
  if (c.is_quick()) return left_out_of_drag();
  return larger_sway_rad(c, scale);
}
Answer sway_of(Context& c, Axis a, double scale) {
  if (c.is_quick()) return left_out_of_drag();
  return scale * stand_swayed(c, a).largest_rad;
}
Answer sway_left(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  if (!c.step(a).figures.settle_time_s) return Answer::none(words("the axis never settles"));
  return c.pixels_per_radian() * stand_swayed(c, a).left_rad;
}

Answer grip_needed(Context& c, Axis) {
  const FeetPull feet = pull_at_feet(c);
  return feet.sum_N() / feet.pressing_N;
}

const FigureRow kStandFigures[] = {
    {{"stand.holding_moment", "Moment that holds the stand upright", "N.m", "N.m",
      "(stand.mass + moving mass)·g·cos λ·half_width", kStatics, kStandWeight},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return tipping(c).holding_Nm; }},
    {{"stand.resting_moment", "Moment that tips it at rest", "N.m", "N.m",
      "load's offset and lean, the worst pose", kStatics, kStandWeight},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return tipping(c).resting_Nm; }},
    {{"stand.tip_lean", "Lean at which it tips at rest", "rad", "deg",
      "atan2(mass·half_width − load·offset, masses·heights)", kStatics, kStandWeight},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return tipping(c).lean_rad; }},
    {{"stand.moving_moment", "Moment that the fastest moves tip it with", "N.m", "N.m",
      "tilt's reaction + m·offset·√(α² + ω⁴)·height of both axes at once", kStatics, kStandMoves},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return push_of(c).overturning_Nm; }},
    {{"stand.pan_reaction", "Largest torque that pan turns the stand with", "N.m", "N.m",
      "(load + N·rotor)·largest acceleration", kStatics, kStandMoves},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return push_of(c).pan_Nm; }},
    {{"stand.grip_needed", "Friction that keeps the feet in place", "1", "1",
      "(weight·sin λ + sideways force + pan's reaction/half_width)/(weight·cos λ)", kStatics,
      kStandMoves},
     Axes::rig,
     grip_needed},
    {{"stand.first_mode", "First mode of the stand", "Hz", "Hz", "√(sway_stiffness/J)/2π", kMode,
      kFirstMode},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return stand_first_mode_Hz(c); }},
    {{"stand.sway", "Stand sways in the task's moves", "rad", "deg",
      "larger one of pan's twist and tilt's sway", kSpring, kStandSways},
     Axes::rig,
     [](Context& c, Axis) { return sway(c, 1); }},
    {{"stand.sway_px", "Stand sways in the picture", "1", "px", "sway · pixels_per_radian", kSpring,
      kStandSwaysInPicture},
     Axes::rig,
     [](Context& c, Axis) { return sway(c, c.pixels_per_radian()); }},
    {{"<axis>.stand.sway", "Stand turns in the axis' move", "rad", "deg",
      "largest of x'' + 2ζω·x' + ω²·x = T(t)/J", kSpring, kStandSways},
     Axes::both,
     [](Context& c, Axis a) { return sway_of(c, a, 1); }},
    {{"<axis>.stand.sway_left_px", "Stand still sways when the axis has settled", "1", "px",
      "amplitude from settle_time on · pixels_per_radian", kSpring, kStandSwaysInPicture},
     Axes::both,
     sway_left},
};

}  // namespace

std::span<const FigureRow> stand_figures() { return kStandFigures; }

}  // namespace gazewright
