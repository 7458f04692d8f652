#include "core/analysis/move_limits.h"

#include <algorithm>
#include <array>
#include <numeric>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/limit_gains.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kWorthSaying = 0.005;  // shows as 1 %

/// "61 % the drive's current limit, 39 % the bus voltage".
std::string list_of(const LimitShares& shares) {
  std::array<std::size_t, kMoveLimits> order{};
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, [&](auto a, auto b) { return shares[a] > shares[b]; });
  std::string text;
  for (const std::size_t i : order) {
    if (shares[i] < kWorthSaying) continue;
    text += (text.empty() ? "" : ", ") + say_percent(shares[i]) + " " +
            words(words_of(static_cast<MoveLimit>(i)));
  }
  return text;
}

std::string step_sentence(Context& context, Axis axis) {
  if (const auto missing = context.missing(kSettle, axis); !missing.empty()) {
    return say_needs(missing);
  }
  const auto& shares = context.step_limit_shares(axis);
  const auto& settle_s = context.step(axis).figures.settle_time_s;
  if (!settle_s) return words("never settles: %1", why_never_settles(context, axis));
  if (!shares) return words("the move is inside the settle band from the start");
  return words("of the %1 until it settles: %2", say(*settle_s, "s", "ms"), list_of(*shares));
}

std::string fastest_sentence(Context& context, Axis axis) {
  if (!context.missing(kRigidMove, axis).empty()) return {};
  const auto& shares = context.fastest_limit_shares(axis);
  if (!shares) return {};
  return words("of the %1 of the shortest move, gear rigid and torque switched ideally: %2",
               say(context.fastest(axis)->time_s, "s", "ms"), list_of(*shares));
}

}  // namespace

std::string_view words_of(MoveLimit limit) {
  static constexpr std::array<std::string_view, kMoveLimits> kWords{
      "the drive's current limit", "the motor's peak current",   "the gearbox's peak torque",
      "the bus voltage",           "the supply's current limit", "the loop's speed limit",
      "the loop itself",           "the gap of the gearbox"};
  return kWords[static_cast<std::size_t>(limit)];
}

MoveLimits move_limits(Context& context, Axis axis) {
  MoveLimits limits;
  if (context.missing(kStep, axis).empty()) limits.step = context.step_limits(axis);
  limits.sentence = step_sentence(context, axis);
  limits.fastest = fastest_sentence(context, axis);
  return limits;
}

}  // namespace gazewright
