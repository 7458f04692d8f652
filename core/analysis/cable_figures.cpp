#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

Answer cable_travel(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (cable.presence == Presence::none) return Answer::none("there is no cable across this axis");
  return span(c.travel(a).cable_rad, "this routing's travel is not worked out yet; enter twist",
              "the cable does not limit the travel");
}

const FigureRow kRows[] = {
    {{"<axis>.travel.cable", "Travel the cable allows", "rad", "deg",
      "twist: 2·twist_rating·free_length", "rating by the cable's maker; handbook: travel", kTwist},
     Axes::both,
     cable_travel},
};

}  // namespace

std::span<const FigureRow> cable_figures() { return kRows; }

}  // namespace gazewright
