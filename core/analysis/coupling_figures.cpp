#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kCouplingSource = "simulation of both axes at once; handbook: motion";
constexpr auto kInPixels = joined(kBothSteps, kScale);
constexpr auto kBothSettle = joined(kBothSteps, kToPixels);

Answer disturbance(Context& c, Axis a, double scale) {
  const Coupling* coupling = c.coupling();
  if (coupling == nullptr) return left_out_of_drag();
  const Coupling::Held& held = coupling->holding(a);
  if (held.trace.ran_away) return Answer::none(words("runs away: a loop is unstable"));
  return held.largest_rad * scale;
}

Answer settle_time(Context& c, Axis) {
  const Coupling* coupling = c.coupling();
  if (coupling == nullptr) return left_out_of_drag();
  if (coupling->settle_time_s) return *coupling->settle_time_s;
  if (coupling->both.ran_away) return Answer::none(words("runs away: a loop is unstable"));
  std::string who;
  for (const Axis axis : kAxes) {
    if (coupling->figures[static_cast<std::size_t>(axis)].settle_time_s) continue;
    who += (who.empty() ? "" : words(" and ")) + words(name_of(axis));
  }
  return Answer::none(words("%1 not settled after %2", who,
                            say(coupling->both.of(Axis::pan).time_s.back(), "s", "s")));
}

Answer peak_bus_current(Context& c, Axis) {
  const Coupling* coupling = c.coupling();
  return coupling == nullptr ? left_out_of_drag() : Answer(coupling->peak_bus_A);
}

const FigureRow kCouplingFigures[] = {
    {{"<axis>.coupling.disturbance", "Pushed off by the other axis", "rad", "deg",
      "largest angle off its place while it holds and the other axis makes its task move",
      kCouplingSource, kBothSteps},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return disturbance(c, a, 1); }},
    {{"<axis>.coupling.disturbance_px", "Pushed off by the other axis, in the picture", "1", "px",
      "disturbance · pixels_per_radian", "small-angle pinhole", kInPixels},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return disturbance(c, a, c.pixels_per_radian()); }},
    {{"both.settle_time", "Move and settle, both axes at once", "s", "ms",
      "last time that either is outside ± settle band, both begun together on one supply",
      kCouplingSource, kBothSettle},
     Axes::rig,
     settle_time},
    {{"both.peak_bus_current", "Peak current from the supply, both axes at once", "A", "A",
      "largest sum of both bus currents, Σ 1.5·i·(R·i + e)/V", kCouplingSource, kBothSteps},
     Axes::rig,
     peak_bus_current},
};

}  // namespace

std::span<const FigureRow> coupling_figures() { return kCouplingFigures; }

}  // namespace gazewright
