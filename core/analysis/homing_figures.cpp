#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

constexpr auto kHoming = joined(kStopGeometry, std::array<InputPath, 1>{"<axis>.gearbox.ratio"});
constexpr std::array<InputPath, 1> kRatio{"<axis>.gearbox.ratio"};

bool reads_output(Context& c, Axis a) { return c.model(a).control.encoder_at_output; }

Answer homing_spacing(Context& c, Axis a) {
  return homing_spacing_rad(reads_output(c, a) ? 1 : c.model(a).gear.ratio);
}

Answer candidates(Context& c, Axis a) {
  const auto& stops = c.travel(a).stops_rad;
  if (!stops) return Answer::none(kTooWide);
  if (std::isinf(*stops)) return Answer::none(kNoStops);
  return homing_candidates(*stops, reads_output(c, a) ? 1 : c.model(a).gear.ratio);
}

const FigureRow kRows[] = {
    {{"<axis>.homing.spacing", "Angle between equal encoder readings", "rad", "deg",
      "2π/N, encoder at the motor; 2π at the output", "geometry; handbook: travel", kRatio},
     Axes::both,
     homing_spacing},
    {{"<axis>.homing.candidates", "Output angles that fit one reading", "1", "1",
      "⌈travel between stops / spacing⌉", "geometry; handbook: travel", kHoming},
     Axes::both,
     candidates},
};

}  // namespace

std::span<const FigureRow> homing_figures() { return kRows; }

}  // namespace gazewright
