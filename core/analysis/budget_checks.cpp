#include <algorithm>

#include "core/analysis/budget_values.h"
#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/files/spelling.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kPointing = joined(kBudgetPixels, std::array<InputPath, 1>{"task.settle_band"});

/// The two largest, as "backlash 62 %, encoder 31 %" of the sum of squares.
std::string largest_of(const Budget& all) {
  std::array<std::pair<double, std::string_view>, kBudgetTerms> squares;
  double sum = 0;
  for (std::size_t i = 0; i < kBudgetTerms; ++i) {
    const double u = all.terms[i].deviation_rad.value_or(0);
    squares[i] = {u * u, all.terms[i].name};
    sum += u * u;
  }
  std::ranges::stable_sort(squares, std::ranges::greater(),
                           &std::pair<double, std::string_view>::first);
  if (!(sum > 0)) return words("nothing makes it point amiss");
  std::string text = words("most of it: ");
  for (std::size_t i = 0; i < 2 && squares[i].first > 0; ++i) {
    text += (i > 0 ? ", " : "") + in_sentence(squares[i].second) + " " +
            say_percent(squares[i].first / sum);
  }
  return text;
}

/// About 95 of 100 errors against the settle band.
Compared pointing(Context& c, Axis a) {
  const double band_px = c.rig().task.settle_band_px.value();
  const Budget& all = budget(c, a);
  const BudgetTerm& windup = all.term(BudgetId::windup);
  if (!windup.half_width_rad && windup.because == kNeedsTravel)
    return {std::nullopt, band_px, windup.because};
  return {kCoverage * deviation_rad(all) * c.pixels_per_radian(), band_px,
          words("95 of 100 errors are within that; %1", largest_of(all))};
}

constexpr Lever kLevers[] = {
    {"<axis>.gearbox.backlash", Way::down, 100},    {"<axis>.encoder.error", Way::down, 100},
    {"<axis>.gearbox.stiffness", Way::up, 20},      {"<axis>.bracket.stiffness", Way::up, 20},
    {"<axis>.bearing.radial_play", Way::down, 20},  {"<axis>.bearing.spacing", Way::up, 4},
    {"<axis>.friction.breakaway", Way::down, 10},   {"pointing.mount_error", Way::down, 100},
    {"pointing.calibration_error", Way::down, 100}, {"pointing.vision_noise", Way::down, 100}};

const Check kBudgetChecks[] = {
    {.id = "<axis>.pointing.error",
     .what = "Pointing error inside the settle band",
     .goal = "would bring the pointing error inside the band",
     .part = "<axis>.encoder",
     .si_unit = "1",
     .unit = "px",
     .inputs = kPointing,
     .compare = pointing,
     .levers = kLevers,
     .asked_by = "<axis>.encoder.error"},
};

}  // namespace

std::span<const Check> budget_checks() { return kBudgetChecks; }

}  // namespace gazewright
