#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

constexpr double kScanFactor = 1.15;
constexpr int kBisections = 12;
constexpr std::size_t kMostRemedies = 3;

/// Solves one lever: the value nearest to the present one from which on the check holds.
class LeverSolver {
 public:
  LeverSolver(const Check& check, const Rig& rig, Axis axis, const Lever& lever,
              const std::stop_token& stop)
      : check_(check),
        rig_(rig),
        axis_(axis),
        lever_(lever),
        stop_(stop),
        path_(for_axis(lever.path, axis)),
        info_(find_info(path_)) {}

  std::optional<Remedy> solve(double* change) {
    const auto start = start_size();
    if (info_ == nullptr || !start || *start <= 0) return std::nullopt;
    const bool up = lever_.way == Lever::Way::up;
    double bad = *start;
    for (double factor = kScanFactor; factor <= lever_.reach * kScanFactor; factor *= kScanFactor) {
      if (stop_.stop_requested()) return std::nullopt;
      const double value = up ? *start * factor : *start / factor;
      if (!range_problem(*info_, sign_ * whole_if_due(value)).empty()) return std::nullopt;
      if (!holds(value)) {
        bad = value;
        continue;
      }
      const double solved = rounded(between(bad, value));
      if (!range_problem(*info_, sign_ * solved).empty() || !holds(solved)) return std::nullopt;
      *change = std::abs(std::log(solved / *start));
      return Remedy{text(sign_ * solved), path_, sign_ * solved};
    }
    return std::nullopt;
  }

 private:
  /// The present value less its sign where it goes to zero: all sizes below are without it.
  std::optional<double> start_size() {
    const auto start = start_value();
    if (start && *start < 0 && lever_.way == Lever::Way::to_zero) sign_ = -1;
    return start ? std::optional(sign_ * *start) : std::nullopt;
  }

  /// The present value; for a speed limit that is not set, the top speed it would have to undercut.
  std::optional<double> start_value() {
    Context context(rig_);
    const Quantity* quantity = find_quantity(context.rig(), path_);
    if (quantity == nullptr || !quantity->si) return std::nullopt;
    if (std::isfinite(*quantity->si)) return *quantity->si;
    if (info_ == nullptr || info_->si_unit != "rad/s") return std::nullopt;
    return top_speed_radps(context.model(axis_));
  }

  bool holds(double value) const {
    Rig trial = rig_;
    find_quantity(trial, path_)->si = sign_ * whole_if_due(value);
    Context context(trial, stop_);
    const auto compare = check_.trial != nullptr ? check_.trial : check_.compare;
    const auto verdict = verdict_of(compare(context, axis_));
    return verdict == Verdict::holds || verdict == Verdict::tight;
  }

  double between(double bad, double good) const {
    for (int i = 0; i < kBisections && !stop_.stop_requested(); ++i) {
      const double middle = std::sqrt(bad * good);
      (holds(middle) ? good : bad) = middle;
    }
    return good;
  }

  double whole_if_due(double value) const {
    if (!info_->whole) return value;
    return lever_.way == Lever::Way::up ? std::ceil(value) : std::floor(value);
  }

  /// Three significant digits in the field's unit, towards the side that holds.
  double rounded(double value) const {
    if (info_->whole) return whole_if_due(value);
    const double scale = info_->is_plain_number() ? 1 : to_unit(1);
    const double shown = value * scale;
    const double step = std::pow(10, std::floor(std::log10(shown)) - 2);
    const double steps = lever_.way == Lever::Way::up ? std::ceil(shown / step - 1e-9)
                                                      : std::floor(shown / step + 1e-9);
    return steps * step / scale;
  }
  double to_unit(double si) const { return from_si(si, info_->si_unit, info_->unit); }

  std::string text(double value) const {
    std::string name = path_.substr(0, path_.rfind('.') + 1);
    std::replace(name.begin(), name.end(), '.', ' ');
    std::string label(info_->label);
    label[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(label[0])));
    const char* side = lever_.way == Lever::Way::up     ? " or more "
                       : lever_.way == Lever::Way::down ? " or less "
                                                        : " or nearer to 0 ";
    return name + label + " " + say(value, info_->si_unit, info_->unit) + side +
           std::string(check_.goal);
  }

  const Check& check_;
  const Rig& rig_;
  Axis axis_;
  const Lever& lever_;
  const std::stop_token& stop_;
  std::string path_;
  const FieldInfo* info_;
  double sign_ = 1;
};

}  // namespace

std::vector<Remedy> remedies_of(const Check& check, const Rig& rig, Axis axis,
                                const std::stop_token& stop) {
  std::vector<std::pair<double, Remedy>> found;
  for (const Lever& lever : check.levers) {
    double change = 0;
    auto remedy = LeverSolver(check, rig, axis, lever, stop).solve(&change);
    if (remedy) found.emplace_back(change, std::move(*remedy));
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Remedy> remedies;
  for (auto& [change, remedy] : found) {
    if (remedies.size() < kMostRemedies) remedies.push_back(std::move(remedy));
  }
  return remedies;
}

}  // namespace gazewright
