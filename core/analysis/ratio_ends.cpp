#include "core/analysis/ratio_ends.h"

#include <algorithm>

#include "core/analysis/context.h"

namespace gazewright {
namespace {

std::optional<MoveLimit> largest_limit(AxisModel model, double move_rad, double ratio) {
  model.gear.ratio = ratio;
  const auto shares = fastest_move_shares(model, move_rad);
  if (!shares) return std::nullopt;
  return static_cast<MoveLimit>(std::ranges::max_element(*shares) - shares->begin());
}

}  // namespace

RatioEnds ratio_ends(const Rig& rig, Axis axis, const RatioSweep& sweep) {
  if (sweep.band_most <= sweep.band_least || sweep.ratio.empty()) return {};
  Context context(rig);
  const AxisModel& model = context.model(axis);
  const double move_rad = context.move_rad(axis);
  const auto moves = [](const std::optional<double>& time_s) { return time_s.has_value(); };
  const auto& times = sweep.shortest_time_s;
  const auto first = std::ranges::find_if(times, moves) - times.begin();
  const auto last = std::find_if(times.rbegin(), times.rend(), moves).base() - times.begin() - 1;
  const double least = sweep.ratio[static_cast<std::size_t>(first)];
  const double most = sweep.ratio[static_cast<std::size_t>(last)];
  RatioEnds ends;
  if (sweep.band_least > least) ends.below = largest_limit(model, move_rad, least);
  if (sweep.band_most < most) ends.above = largest_limit(model, move_rad, most);
  return ends;
}

}  // namespace gazewright
