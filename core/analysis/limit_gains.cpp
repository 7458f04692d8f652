#include "core/analysis/limit_gains.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/field_value.h"
#include "core/analysis/inputs.h"
#include "core/analysis/price.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kWorthTrying = 0.01;  // share of the time
constexpr double kWorthSaving = 0.01;  // of the settle time
constexpr int kBisections = 5;
constexpr int kDigits = 2;
constexpr std::size_t kMostGains = 5;

/// A field that may ease a limit. `is_limit`: the field is the limit itself.
struct LimitLever {
  MoveLimit limit;
  std::string_view path;
  Way way;
  double step;
  bool is_limit = false;
};
constexpr LimitLever kLevers[] = {
    {MoveLimit::drive_current, "<axis>.drive.current_limit", Way::up, 1.25, true},
    {MoveLimit::drive_current, "<axis>.gearbox.ratio", Way::up, 1.25},
    {MoveLimit::motor_current, "<axis>.motor.peak_current", Way::up, 1.25, true},
    {MoveLimit::motor_current, "<axis>.gearbox.ratio", Way::up, 1.25},
    {MoveLimit::gear_torque, "<axis>.gearbox.peak_torque", Way::up, 1.25, true},
    {MoveLimit::voltage, "supply.voltage", Way::up, 1.25, true},
    {MoveLimit::voltage, "<axis>.gearbox.ratio", Way::down, 1.25},
    {MoveLimit::supply, "supply.current_limit", Way::up, 1.25, true},
    {MoveLimit::speed, "<axis>.loop.speed_limit", Way::up, 1.25, true},
    {MoveLimit::loop, "<axis>.loop.position_gain", Way::up, 1.25},
    {MoveLimit::loop, "<axis>.loop.position_gain", Way::down, 1.25},
    {MoveLimit::loop, "<axis>.loop.speed_gain", Way::up, 1.25},
    {MoveLimit::loop, "<axis>.loop.speed_integral_gain", Way::down, 1.25},
    {MoveLimit::gap, "<axis>.gearbox.backlash", Way::down, 2},
};

struct Trial {
  std::optional<double> settle_s;
  double share = 0;  ///< of the limit in question
};

class GainSolver {
 public:
  GainSolver(Context& now, const Rig& rig, Axis axis, const LimitLever& lever,
             const std::stop_token& stop)
      : now_(now),
        rig_(rig),
        axis_(axis),
        lever_(lever),
        stop_(stop),
        path_(for_axis(lever.path, axis)),
        info_(find_info(path_)),
        settle_s_(*now.step(axis).figures.settle_time_s) {}

  std::optional<LimitGain> solve() {
    const Quantity* quantity = find_quantity(now_.rig(), path_);
    if (quantity == nullptr || info_ == nullptr || !quantity->si) return std::nullopt;
    const double start = *quantity->si;
    if (!(start > 0) || !std::isfinite(start)) return std::nullopt;
    double value = allowed(start, lever_.step);
    if (value == start || !range_problem(*info_, value).empty()) return std::nullopt;
    Trial trial = tried(value);
    if (lever_.is_limit && trial.settle_s && trial.share == 0) {
      value = allowed(start, least_factor(start));
      trial = tried(value);
    }
    if (!trial.settle_s || settle_s_ - *trial.settle_s <= kWorthSaving * settle_s_) {
      return std::nullopt;
    }
    return gain(value, settle_s_ - *trial.settle_s);
  }

 private:
  /// The value changed by a factor, in two digits. The loop's speed limit goes no further than
  /// drive and gearbox allow.
  double allowed(double start, double factor) const {
    const bool up = lever_.way == Way::up;
    const double value = rounded_value(*info_, up ? start * factor : start / factor, up, kDigits);
    if (lever_.limit != MoveLimit::speed) return value;
    const AxisModel& model = now_.model(axis_);
    const double most = std::min(model.drive_speed_limit_radps,
                                 model.gear.input_speed_limit_radps / model.gear.ratio);
    return std::max(start, std::min(value, most));
  }

  Trial tried(double value) const {
    Rig rig = rig_;
    find_quantity(rig, path_)->si = value;
    Context context(rig, stop_);
    const AxisModel& model = context.model(axis_);
    const double move = context.move_rad(axis_);
    // Watched at least as long as the step itself: what has a tail leaves the band again late.
    const auto& [trace, figures] =
        simulate_until_settled(model, move, context.band_rad(), stop_, 2 * settle_s_);
    const auto settle = figures.settle_time_s;
    if (!settle || stop_.stop_requested()) return {};
    const auto shares =
        limit_shares(limits_in_force(model, trace, move, *settle), trace.sample_time_s, *settle);
    return {settle, shares ? share_of(*shares, lever_.limit) : 0};
  }

  /// Where the limit is never met, between the present value and one step.
  double least_factor(double start) const {
    const bool up = lever_.way == Way::up;
    double met = 1, free = lever_.step;
    for (int i = 0; i < kBisections; ++i) {
      const double middle = std::sqrt(met * free);
      const Trial trial = tried(up ? start * middle : start / middle);
      (trial.settle_s && trial.share == 0 ? free : met) = middle;
    }
    return free;
  }

  LimitGain gain(double value, double saved_s) const {
    const double share = share_of(*now_.step_limit_shares(axis_), lever_.limit);
    return {.limit = lever_.limit,
            .share = share,
            .saved_s = saved_s,
            .reason = words("%1 of the time %2 holds it back", say_percent(share),
                            words(words_of(lever_.limit))),
            .change = words("%1 would save %2", say_change(path_, *info_, value, Change::to),
                            say(saved_s, "s", "ms")),
            .path = path_,
            .value_si = value};
  }

  Context& now_;
  const Rig& rig_;
  Axis axis_;
  const LimitLever& lever_;
  const std::stop_token& stop_;
  std::string path_;
  const FieldInfo* info_;
  double settle_s_;
};

/// Adds the worst of what would then fail.
void add_price(LimitGain& gain, const Rig& rig, Axis axis, std::span<const Finding> findings,
               const std::stop_token& stop) {
  gain.change = with_price(
      gain.change, price_of(remedied(rig, {{}, gain.path, gain.value_si}), axis, findings, stop));
}

}  // namespace

std::vector<LimitGain> limit_gains(Context& context, const Rig& rig, Axis axis,
                                   std::span<const Finding> findings, const std::stop_token& stop) {
  std::vector<LimitGain> gains;
  if (!context.missing(kSettle, axis).empty()) return gains;
  const auto& shares = context.step_limit_shares(axis);
  if (!shares) return gains;
  for (const LimitLever& lever : kLevers) {
    if (stop.stop_requested()) return gains;
    if (share_of(*shares, lever.limit) < kWorthTrying) continue;
    auto gain = GainSolver(context, rig, axis, lever, stop).solve();
    if (gain) gains.push_back(std::move(*gain));
  }
  std::ranges::stable_sort(gains, std::ranges::greater{}, &LimitGain::saved_s);
  if (gains.size() > kMostGains) gains.resize(kMostGains);
  for (LimitGain& gain : gains) add_price(gain, rig, axis, findings, stop);
  return gains;
}

}  // namespace gazewright
